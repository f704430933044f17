import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { insulationFrom, type PoleToGround } from '../../src/worksheets/pv/insulation.ts';
import { insulationPosition } from '../../src/worksheets/pv/insulation-position.ts';

type In = Parameters<typeof insulationPosition.compute>[0];

const vocVolts = 320;
const meterOhms = 10e6;

/** What the meter shows for one leak after `at` of eight modules. */
const readingsFor = (ohms: number, at: number): Pick<PoleToGround, 'positiveVolts' | 'negativeVolts'> => {
  const sum = (vocVolts * meterOhms) / (meterOhms + ohms);
  return { positiveVolts: (sum * at) / 8, negativeVolts: (-sum * (8 - at)) / 8 };
};

const given = (ohms: number, at: number): In => ({
  vocVolts,
  ...readingsFor(ohms, at),
  modules: 8,
  vocRatedVolts: 328,
  meterOhms,
  meterShare: 0.005,
  meterVolts: 0.2,
  lightDrift: 0.01,
  ownLimitOhms: undefined,
});

function outOf(input: In) {
  const result = insulationPosition.compute(input);
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('insulation and place of a fault', () => {
  it.each<[number, number, string, string]>([
    [10e3, 3, 'leak', 'between'],
    [10e3, 0, 'leak', 'positiveLead'],
    [10e3, 8, 'leak', 'negativeLead'],
    [1e6, 4, 'cannotTell', 'between'],
    [60e6, 4, 'sound', 'none'],
  ])('%d Ω after module %d is called %s, %s', (ohms, at, verdict, place) => {
    const out = outOf(given(ohms, at));
    expect(out.verdict).toBe(verdict);
    expect(out.place).toBe(place);
  });

  it('holds the true leak and the true place inside its ranges, whatever the meter does within its error', () => {
    const error = fc.double({ min: -1, max: 1, noNaN: true });
    const ohmsLog = fc.double({ min: 3, max: 8, noNaN: true }).map((power) => 10 ** power);
    fc.assert(
      fc.property(ohmsLog, fc.integer({ min: 0, max: 8 }), error, error, error, (ohms, at, eA, eC, eV) => {
        const clean = readingsFor(ohms, at);
        const [poleErrorVolts, vocErrorVolts] = [1.5, 4];
        const result = insulationFrom({
          vocVolts: vocVolts + eV * vocErrorVolts,
          positiveVolts: clean.positiveVolts + eA * poleErrorVolts,
          negativeVolts: clean.negativeVolts + eC * poleErrorVolts,
          meterOhms,
          modules: 8,
          poleErrorVolts,
          vocErrorVolts,
        });
        if (!result.ok) throw new Error(result.reason.id);
        const { isoOhms, modulesFromPositive: place } = result.out;
        expect(isoOhms.low).toBeLessThanOrEqual(ohms * 1.000001);
        if (isoOhms.high !== undefined) expect(isoOhms.high).toBeGreaterThanOrEqual(ohms * 0.999999);
        if (place) {
          expect(place.low).toBeLessThanOrEqual(at + 1e-9);
          expect(place.high).toBeGreaterThanOrEqual(at - 1e-9);
        }
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  it('admits that small leaks look like a dead short, and says from where on it can tell', () => {
    const out = outOf(given(10e3, 4));
    expect(out.isoLowOhms).toBe(0);
    expect(out.alikeBelowOhms).toBeGreaterThan(100e3);
    const remarks = insulationPosition.remarks!(given(10e3, 4), out).map((remark) => remark.id);
    expect(remarks).toContain('worksheet.insulation-position.couldBeDeadShort');
  });

  it('bounds a sound array from below only', () => {
    const out = outOf({ ...given(10e3, 4), positiveVolts: 0.1, negativeVolts: -0.1 });
    expect(out.isoHighOhms).toBeUndefined();
    expect(out.verdict).toBe('sound');
  });

  it('takes the larger of the standard’s least value and the inverter’s own', () => {
    expect(outOf({ ...given(60e6, 4), ownLimitOhms: 2e6 }).leastOhms).toBe(2e6);
    expect(outOf({ ...given(60e6, 4), ownLimitOhms: 2e5 }).leastOhms).toBe(1e6);
  });

  it.each<[string, Partial<In>]>([
    ['reversed', { positiveVolts: -100, negativeVolts: 200 }],
    ['sameSign', { positiveVolts: 100, negativeVolts: 200 }],
    ['sameSign', { positiveVolts: -100, negativeVolts: -200 }],
    ['moreThanVoc', { positiveVolts: 300, negativeVolts: -200 }],
  ])('refuses with %s', (reason, change) => {
    const result = insulationPosition.compute({ ...given(10e3, 4), ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.insulation-position.${reason}`);
  });
});
