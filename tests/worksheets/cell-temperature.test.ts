import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellTempsOf, type Mounting, mountings, spreadOf } from '../../src/worksheets/pv/cell-temp.ts';
import { cellTemperature } from '../../src/worksheets/pv/cell-temperature.ts';

type In = Parameters<typeof cellTemperature.compute>[0];

const hotRoof: In = {
  irradiance: 1000,
  airC: 35,
  windMs: 1,
  mounting: 'roof-gap',
  noctC: 45,
  efficiency: 0.2,
};

function outOf(change: Partial<In>) {
  const result = cellTemperature.compute({ ...hotRoof, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('cell temperature', () => {
  it('puts the open rack below the gap and the gap below the flush roof', () => {
    const by = (mounting: Mounting): number => outOf({ mounting }).hottestC!;
    expect(by('open-rack')).toBeLessThan(by('roof-gap'));
    expect(by('roof-gap')).toBeLessThan(by('roof-flush'));
  });

  it('leaves models made for the open out on a roof', () => {
    expect(outOf({}).noctC).toBeUndefined();
    expect(outOf({}).faimanC).toBeUndefined();
    expect(outOf({ mounting: 'open-rack' }).noctC).toBeCloseTo(35 + 31.25, 9);
  });

  it('warns of a flush roof, of wind and of models that part', () => {
    const said = (change: Partial<In>): string[] =>
      cellTemperature.remarks!({ ...hotRoof, ...change }, outOf(change)).map(
        (remark) => remark.id.split('.').at(-1)!,
      );
    expect(said({ mounting: 'roof-flush' })).toContain('flush');
    expect(said({ windMs: 8 })).toContain('windy');
    expect(said({ windMs: 12 })).toContain('apart');
    expect(said({ irradiance: 100 })).not.toContain('apart');
  });

  const weather = fc.record({
    irradiance: fc.double({ min: 1, max: 1500, noNaN: true }),
    airC: fc.double({ min: -50, max: 55, noNaN: true }),
    windMs: fc.double({ min: 0, max: 30, noNaN: true }),
  });
  const module = fc.record({
    mounting: fc.constantFrom(...mountings),
    noctC: fc.double({ min: 35, max: 60, noNaN: true }),
    efficiency: fc.double({ min: 0, max: 0.3, noNaN: true }),
  });
  const values = (temps: object): number[] =>
    Object.values(temps).filter((temp): temp is number => temp !== undefined);

  it('stands at the air in the dark, and above it in light, in proportion to the light', () => {
    fc.assert(
      fc.property(weather, module, (w, m) => {
        for (const dark of values(cellTempsOf({ ...w, irradiance: 0 }, m)))
          expect(dark).toBeCloseTo(w.airC, 9);
        const here = values(cellTempsOf(w, m));
        const double = values(cellTempsOf({ ...w, irradiance: 2 * w.irradiance }, m));
        for (const [i, temp] of here.entries()) {
          expect(temp).toBeGreaterThan(w.airC);
          expect(double[i]! - w.airC).toBeCloseTo(2 * (temp - w.airC), 6);
        }
      }),
    );
  });

  it('moves with the air degree for degree, and never rises with wind', () => {
    fc.assert(
      fc.property(weather, module, (w, m) => {
        const here = values(cellTempsOf(w, m));
        const warmer = values(cellTempsOf({ ...w, airC: w.airC + 7 }, m));
        const windier = values(cellTempsOf({ ...w, windMs: w.windMs + 2 }, m));
        for (const [i, temp] of here.entries()) {
          expect(warmer[i]! - temp).toBeCloseTo(7, 9);
          expect(windier[i]!).toBeLessThanOrEqual(temp);
        }
        const { coolestC, likelyC, hottestC } = spreadOf(cellTempsOf(w, m));
        expect(coolestC).toBeLessThanOrEqual(likelyC);
        expect(likelyC).toBeLessThanOrEqual(hottestC);
      }),
    );
  });
});
