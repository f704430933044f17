import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clampZero } from '../../src/worksheets/battery-dc/clamp-zero.ts';

type In = Parameters<typeof clampZero.compute>[0];
const usual: In = {
  readAmps: 2.4,
  zeroAmps: 0.3,
  turnedAmps: undefined,
  turns: 1,
  ofReading: 0.02,
  counts: 5,
  countAmps: 0.1,
  question: 'measure',
};

function outOf(change: Partial<In>) {
  const result = clampZero.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}
const amps = fc.double({ min: -300, max: 300, noNaN: true });
const smallZero = fc.double({ min: -0.9, max: 0.9, noNaN: true });

describe('clamp zero', () => {
  it.each<[string, Partial<In>, string]>([
    ['a good reading', { readAmps: 30 }, 'measured'],
    ['a small one on a coarse clamp', {}, 'coarse'],
    ['0.0 on a clamp whose counts fill the limit', { readAmps: 0.3, question: 'pvZero' }, 'none'],
    ['one digit more', { readAmps: 0.4, question: 'pvZero' }, 'cannotTell'],
    ['0.0 with wide counts', { readAmps: 0.3, counts: 10, question: 'pvZero' }, 'cannotTell'],
    ['0.02 on a fine clamp', { readAmps: 0.02, zeroAmps: 0, countAmps: 0.01, question: 'pvZero' }, 'none'],
    ['0 on a clamp not zeroed', { readAmps: 0, zeroAmps: undefined, question: 'pvZero' }, 'notZeroed'],
    ['a string’s current', { readAmps: 9, question: 'pvZero' }, 'flows'],
    ['standby in a battery cable', { readAmps: 1.5, question: 'batteryZero' }, 'none'],
    ['a charge current by its sign', { readAmps: -8, question: 'batteryZero' }, 'flows'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('finds the current whatever the zero error is, once the clamp is turned over', () => {
    fc.assert(
      fc.property(amps, smallZero, (current, zero) => {
        const out = outOf({ readAmps: current + zero, turnedAmps: zero - current, zeroAmps: undefined });
        expect(out.amps).toBeCloseTo(current, 9);
        expect(out.offsetAmps).toBeCloseTo(zero, 9);
      }),
    );
  });

  it('never says that nothing flows while more than the limit may', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.option(smallZero, { nil: undefined }),
        fc.constantFrom('pvZero' as const, 'batteryZero' as const),
        (readAmps, zeroAmps, question) => {
          const out = outOf({ readAmps, zeroAmps, question });
          if (out.verdict === 'none') {
            expect(zeroAmps).toBeDefined();
            expect(out.mostAmps).toBeLessThanOrEqual(question === 'pvZero' ? 0.5 : 2);
          }
        },
      ),
    );
  });

  it('shares reading and error over the turns in the jaw', () => {
    const [once, twice] = [outOf({ readAmps: 1.3 }), outOf({ readAmps: 2.3, turns: 2 })];
    expect(twice.amps).toBeCloseTo(once.amps!, 9);
    expect(twice.errorAmps).toBeLessThan(once.errorAmps!);
  });

  it.each<[string, Partial<In>, string]>([
    ['the clamp was not turned', { readAmps: 9, turnedAmps: 9.1, zeroAmps: undefined }, 'notTurned'],
    ['the two zeros are far apart', { readAmps: 9, turnedAmps: -5, zeroAmps: 0 }, 'zerosDisagree'],
  ])('says so when %s', (_, change, reason) => {
    const result = clampZero.compute({ ...usual, ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.clamp-zero.${reason}`);
  });
});
