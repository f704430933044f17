import { describe, expect, it } from 'vitest';
import { idleDraw } from '../../src/worksheets/battery-dc/idle-draw.ts';

type In = Parameters<typeof idleDraw.compute>[0];

const usual: In = {
  busVolts: 52.5,
  amps: 2,
  ampsError: 0.1,
  windowS: 4 * 3600,
  chargePath: 0.8,
  nightS: 14 * 3600,
  bankJoules: 20.48 * 3.6e6,
  loadWatts: undefined,
  loadedAmps: undefined,
  loadedVolts: undefined,
};

function outOf(change: Partial<In>) {
  const result = idleDraw.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('idle draw', () => {
  it('carries a day’s idle to the array it eats, losses apart', () => {
    const out = outOf({});
    expect(out.idleWatts).toBe(105);
    expect(out.arrayLosslessWatts).toBeCloseTo(630, 9);
    expect(out.arrayWatts).toBeCloseTo(787.5, 9);
    expect(out.nightShare).toBeCloseTo((105 * 14) / 20_480, 9);
  });

  it('brackets the idle by the clamp’s own error', () => {
    const out = outOf({ ampsError: 0.5 });
    expect(out.idleLowWatts).toBeCloseTo(78.75, 9);
    expect(out.idleHighWatts).toBeCloseTo(131.25, 9);
  });

  it('takes the efficiency from a loaded reading with the idle off', () => {
    expect(outOf({ loadWatts: 1000, loadedAmps: 21.8, loadedVolts: 52 }).efficiency).toBeCloseTo(0.972, 3);
  });

  it('says so when more comes out than goes in', () => {
    const result = idleDraw.compute({ ...usual, loadWatts: 1000, loadedAmps: 19, loadedVolts: 52 });
    expect(!result.ok && result.reason.id).toBe('worksheet.idle-draw.moreOutThanIn');
  });

  it('warns of a clamp too coarse for so small a current', () => {
    const given = { ...usual, ampsError: 0.6 };
    expect(idleDraw.remarks!(given, outOf({ ampsError: 0.6 })).map((remark) => remark.id)).toContain(
      'worksheet.idle-draw.clampCoarse',
    );
  });
});
