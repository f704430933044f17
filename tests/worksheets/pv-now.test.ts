import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { moduleNow } from '../../src/worksheets/pv/module-now.ts';
import { pvNow } from '../../src/worksheets/pv/pv-now.ts';

type In = Parameters<typeof pvNow.compute>[0];

const usual: In = {
  vocVolts: 41,
  vmpVolts: 34,
  iscAmps: 11.5,
  impAmps: 10.8,
  vocPerC: -0.0028,
  vmpPerC: -0.0035,
  iscPerC: 0.0005,
  cells: 60,
  modules: 8,
  strings: 1,
  irradiance: 800,
  lightBy: 'meter',
  airC: 20,
  windMs: 2,
  mounting: 'open-rack',
  backC: undefined,
  readOpenVolts: undefined,
  readVolts: undefined,
  readAmps: undefined,
};

function outOf(change: Partial<In>) {
  const result = pvNow.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

const said = (change: Partial<In>): string[] =>
  pvNow.remarks!({ ...usual, ...change }, outOf(change)).map((remark) => remark.id.split('.').at(-1)!);

describe('expected volts and amps now', () => {
  const out = outOf({});
  it.each<[string, Partial<In>, string]>([
    ['nothing read', {}, 'noReading'],
    [
      'all as expected',
      { readOpenVolts: out.openVolts, readVolts: out.workVolts, readAmps: out.workAmps },
      'asExpected',
    ],
    ['two modules short', { readOpenVolts: (out.openVolts! * 6) / 8 }, 'openLow'],
    ['two modules more', { readOpenVolts: (out.openVolts! * 10) / 8 }, 'openHigh'],
    ['full battery', { readVolts: out.openVolts! * 0.98, readAmps: 1 }, 'heldBack'],
    ['too high with its amps', { readVolts: out.openVolts! * 0.98 }, 'workingHigh'],
    ['caught at a low peak', { readVolts: out.workVolts! * 0.6, readAmps: out.workAmps }, 'workingLow'],
    ['half the amps', { readVolts: out.workVolts, readAmps: out.workAmps! / 2 }, 'ampsLow'],
    ['twice the amps', { readAmps: 2 * out.workAmps! }, 'ampsHigh'],
    ['no amps at all', { readAmps: 0 }, 'ampsLow'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('counts what is missing in modules', () => {
    const short = { readOpenVolts: (out.openVolts! * 7) / 8 };
    expect(outOf(short).missingModules).toBeCloseTo(1, 6);
    expect(said({ readOpenVolts: (out.openVolts! * 6) / 8 })).toContain('wholeModules');
    expect(said({ lightBy: 'eye' })).toContain('byEye');
  });

  it('widens the amps with a light guessed by eye, far more than the volts', () => {
    const eye = outOf({ lightBy: 'eye' });
    const ratio = (low: number, high: number): number => high / low;
    expect(ratio(eye.workLowAmps!, eye.workHighAmps!)).toBeGreaterThan(1.8);
    expect(ratio(eye.openLowVolts!, eye.openHighVolts!)).toBeLessThan(1.25);
  });

  it('takes a measured back over air and wind', () => {
    const measured = outOf({ backC: 40, airC: 5 });
    expect(measured.cellC).toBeCloseTo(40 + 3 * 0.8, 9);
    expect(measured.openVolts).toBeCloseTo(outOf({ backC: 40, airC: 45 }).openVolts!, 9);
  });

  it.each<[string, Partial<In>]>([
    ['vmpAboveVoc', { vmpVolts: 42 }],
    ['impAboveIsc', { impAmps: 12 }],
  ])('refuses with %s', (reason, change) => {
    const result = pvNow.compute({ ...usual, ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.pv-now.${reason}`);
  });

  it('stands at the label in full sun at 25 °C; amps in proportion to light, volts up with it and down with heat', () => {
    expect(moduleNow(usual, 1000, 25)).toEqual({ vocVolts: 41, vmpVolts: 34, iscAmps: 11.5, impAmps: 10.8 });
    fc.assert(
      fc.property(
        fc.double({ min: 100, max: 700, noNaN: true }),
        fc.double({ min: -20, max: 80, noNaN: true }),
        (irradiance, cellC) => {
          const here = moduleNow(usual, irradiance, cellC);
          const brighter = moduleNow(usual, 2 * irradiance, cellC);
          const hotter = moduleNow(usual, irradiance, cellC + 5);
          expect(brighter.impAmps / here.impAmps).toBeCloseTo(2, 9);
          expect(brighter.vocVolts).toBeGreaterThan(here.vocVolts);
          expect(hotter.vocVolts).toBeLessThan(here.vocVolts);
          expect(hotter.vmpVolts).toBeLessThan(here.vmpVolts);
          expect(hotter.iscAmps).toBeGreaterThan(here.iscAmps);
        },
      ),
    );
  });
});
