import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/quantity/wire.ts';
import { pvRun } from '../../src/worksheets/pv/pv-run.ts';

type In = Parameters<typeof pvRun.compute>[0];

const usual: In = {
  impAmps: 10.8,
  iscAmps: 11.5,
  volts: 272,
  lengthM: 60,
  areaMm2: awgAreaMm2(8),
  metal: 'plain',
  insulation: 'c90',
  termination: 'c75',
  earthC: 25,
  conductors: 2,
  basis: 'nec-2023',
  dropLimit: 0.02,
  sunS: 1500 * 3600,
  squareShare: 0.65,
  price: undefined,
};

function outOf(change: Partial<In>) {
  const result = pvRun.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

const said = (change: Partial<In>): string[] =>
  pvRun.remarks!({ ...usual, ...change }, outOf(change)).map((remark) => remark.id.split('.').at(-1)!);

describe('a long run', () => {
  it.each<[string, Partial<In>, string]>([
    ['8 AWG over 60 m', {}, 'fits'],
    ['the same over 200 m', { lengthM: 200 }, 'dropHigh'],
    ['four strings on 14 AWG', { areaMm2: awgAreaMm2(14), impAmps: 43, iscAmps: 46, lengthM: 5 }, 'tooSmall'],
    ['another code', { basis: 'other' }, 'notChecked'],
    ['another code, long', { basis: 'other', lengthM: 200 }, 'dropHighNotChecked'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('names the smallest size that serves both code and drop', () => {
    const long = { lengthM: 200 };
    const out = outOf(long);
    expect(out.smallestMm2).toBe(Math.max(out.codeMm2!, out.dropMm2!));
    expect(outOf({ ...long, areaMm2: out.smallestMm2! }).verdict).toBe('fits');
    expect(said(long)).toContain('larger');
    expect(outOf({ basis: 'other' }).codeMm2).toBeUndefined();
    // Elsewhere metric sizes are sold.
    expect(outOf({ basis: 'other', lengthM: 200 }).dropMm2).toBe(16);
    expect(said({ lengthM: 1000, volts: 50, dropLimit: 0.01, areaMm2: awgAreaMm2(-3) })).toContain('noSize');
  });

  it('prices the heat in proportion', () => {
    const out = outOf({ price: 0.4 });
    expect(out.costYear).toBeCloseTo((0.4 * out.heatYearJ!) / 3.6e6, 9);
    expect(out.savesMoney).toBeCloseTo((0.4 * out.savesYearJ!) / 3.6e6, 9);
    expect(out.heatShare! / out.dropShare!).toBeCloseTo(0.65, 9);
    expect(outOf({}).costYear).toBeUndefined();
  });

  it.each<[string, Partial<In>]>([
    ['impAboveIsc', { impAmps: 12 }],
    ['noRow', { metal: 'aluminium', areaMm2: 2.08 }],
    ['moreThanAll', { lengthM: 1000, volts: 12, areaMm2: awgAreaMm2(14) }],
  ])('refuses with %s', (reason, change) => {
    const result = pvRun.compute({ ...usual, ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.pv-run.${reason}`);
  });

  it('loses more with length, heat and aluminium, and a quarter at twice the volts', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 150, noNaN: true }),
        fc.double({ min: -10, max: 45, noNaN: true }),
        fc.constantFrom(10, 8, 6, 4, 2, 0, -3).map(awgAreaMm2),
        (lengthM, earthC, areaMm2) => {
          const here = outOf({ lengthM, earthC, areaMm2 });
          expect(outOf({ lengthM: 2 * lengthM, earthC, areaMm2 }).dropVolts! / here.dropVolts!).toBeCloseTo(
            2,
            9,
          );
          expect(outOf({ lengthM, earthC: earthC + 10, areaMm2 }).dropVolts!).toBeGreaterThan(
            here.dropVolts!,
          );
          expect(outOf({ lengthM, earthC, areaMm2, metal: 'aluminium' }).dropVolts!).toBeGreaterThan(
            here.dropVolts!,
          );
          expect(outOf({ lengthM, earthC, areaMm2: areaMm2 * 1.3 }).dropVolts!).toBeLessThan(here.dropVolts!);
          const twice = outOf({
            lengthM,
            earthC,
            areaMm2,
            volts: 2 * usual.volts,
            impAmps: usual.impAmps / 2,
          });
          // The cooler metal takes a little off on top of the square.
          expect(twice.heatWatts! / here.heatWatts!).toBeLessThanOrEqual(0.25);
          expect(twice.heatWatts! / here.heatWatts!).toBeGreaterThan(0.23);
        },
      ),
    );
  });
});
