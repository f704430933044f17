import { describe, expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/quantity/wire.ts';
import { emtFill, emtFor, thhnArea } from '../../src/worksheets/tables/nec-ch9-conduit.ts';

describe('conduit', () => {
  it('holds 40 % of its inside area, to the table’s own rounding, and grows with its trade size', () => {
    for (const { trade, insideIn2, fillIn2 } of emtFill.rows)
      expect(Math.abs(fillIn2 - emtFill.share * insideIn2), trade).toBeLessThan(0.0006);
    const fills = emtFill.rows.map(({ fillIn2 }) => fillIn2);
    expect(fills).toEqual([...fills].sort((a, b) => a - b));
  });

  it('grows with the wire, and wire is always more than its metal', () => {
    const areas = thhnArea.rows.map(({ areaIn2 }) => areaIn2);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    for (const { gauge, areaIn2 } of thhnArea.rows)
      expect(areaIn2 * 25.4 ** 2, `${gauge}`).toBeGreaterThan(awgAreaMm2(gauge));
  });

  // NEC Annex C, Table C.1 (EMT, THHN), from memory.
  it.each([
    ['1/2', 12, 9],
    ['3/4', 12, 16],
    ['1/2', 10, 5],
    ['3/4', 10, 10],
    ['1', 8, 9],
    ['1 1/4', 6, 11],
  ])('%s in takes %i AWG × %i and no more', (trade, gauge, most) => {
    expect(emtFor(awgAreaMm2(gauge), most)).toBe(trade);
    expect(emtFor(awgAreaMm2(gauge), most + 1)).not.toBe(trade);
  });

  it('has no size beyond its tables', () => {
    expect(emtFor(300, 3)).toBeUndefined();
    expect(emtFor(awgAreaMm2(-3), 40)).toBeUndefined();
  });
});
