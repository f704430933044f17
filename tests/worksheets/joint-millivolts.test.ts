import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointMillivolts } from '../../src/worksheets/battery-dc/joint-millivolts.ts';

type In = Parameters<typeof jointMillivolts.compute>[0];
const usual: In = {
  part: 'joint',
  volts: 0.008,
  amps: 120,
  voltsError: 0.0002,
  twinVolts: undefined,
  firstOhms: undefined,
  fullAmps: 200,
};

function outOf(change: Partial<In>) {
  const result = jointMillivolts.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}
const remarksOf = (change: Partial<In>) =>
  jointMillivolts.remarks!({ ...usual, ...change }, outOf(change)).map((each) => each.id.split('.').at(-1));

describe('one joint by millivolts', () => {
  it.each<[string, Partial<In>, string]>([
    ['a good lug', {}, 'sound'],
    ['a bad lug', { volts: 0.12 }, 'high'],
    ['the same volts across a breaker', { volts: 0.1, part: 'breaker' }, 'sound'],
    ['a lug twice its twin', { twinVolts: 0.004 }, 'high'],
    ['a lug like its twin', { twinVolts: 0.0078 }, 'sound'],
    ['twice what it was when new', { firstOhms: 0.00003 }, 'high'],
    ['a coarse meter', { voltsError: 0.01 }, 'undetermined'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('does not compare with a twin that the meter cannot see', () => {
    expect(outOf({ twinVolts: 0.0001 }).timesTwin).toBeUndefined();
    expect(outOf({ twinVolts: 0.0001 }).verdict).toBe('sound');
  });

  it('warns of heat by watts, also of what it will be at most amps', () => {
    expect(remarksOf({ volts: 0.02 })).toContain('hot');
    expect(remarksOf({ volts: 0.15, amps: 150 })).toContain('burning');
    expect(remarksOf({ volts: 0.1, amps: 100 })).toContain('wouldBurn');
    expect(remarksOf({})).not.toContain('hot');
  });

  it('gives heat that rises with the square of the current at one resistance', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        fc.double({ min: 1, max: 900, noNaN: true }),
        (volts, amps) => {
          const here = outOf({ volts, amps, fullAmps: 2 * amps });
          expect(here.fullWatts! / here.heatWatts!).toBeCloseTo(4, 9);
          expect(here.heatWatts).toBeCloseTo(volts * amps, 9);
          expect(here.lowOhms).toBeLessThanOrEqual(here.ohms!);
          expect(here.highOhms).toBeGreaterThanOrEqual(here.ohms!);
        },
      ),
    );
  });
});
