import { defineWorksheet, type ResultsOf, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { batteryZeroAmps, pvZeroAmps } from './zero-amps.ts';

/** What a clamp reading makes of the current, with what it cannot tell. */
export interface ClampReading {
  /** Zero taken off, turns shared out, sign kept [A]. */
  readonly amps: number;
  /** The true current lies within ± this of `amps`, if the clamp keeps its data sheet [A]. */
  readonly errorAmps: number;
}

/**
 * A clamp's error by its data sheet: ± (share of the reading + counts of the last digit).
 * The zero error taken off beforehand is not credited again: a clamp's counts hold more than its zero.
 * @param amps through the jaw, zero taken off [A]; @param turns of the conductor through the jaw, ≥ 1.
 */
export function clampReading(
  amps: number,
  ofReading: number,
  counts: number,
  countAmps: number,
  turns = 1,
): ClampReading {
  return { amps: amps / turns, errorAmps: (ofReading * Math.abs(amps) + counts * countAmps) / turns };
}

/**
 * The zero error and the current from two readings on the same conductor, the clamp turned over between them: the
 * current changes its sign, the zero error does not.
 */
export function turnedOver(oneWay: number, otherWay: number): { zeroAmps: number; amps: number } {
  return { zeroAmps: (oneWay + otherWay) / 2, amps: (oneWay - otherWay) / 2 };
}

const inputs = {
  readAmps: { kind: 'current', min: -2000, max: 2000, signed: true },
  zeroAmps: { kind: 'current', min: -50, max: 50, signed: true, optional: true },
  turnedAmps: { kind: 'current', min: -2000, max: 2000, signed: true, optional: true },
  turns: { kind: 'count', min: 1, max: 20, default: 1 },
  ofReading: { kind: 'ratio', min: 0, max: 0.1, default: 0.03, from: ['meter.dcClamp.ofReading'] },
  counts: { kind: 'count', min: 0, max: 50, default: 10, from: ['meter.dcClamp.counts'] },
  countAmps: { kind: 'current', min: 0.001, max: 10, default: 0.1 },
  question: { options: ['measure', 'pvZero', 'batteryZero'], default: 'measure' },
} as const;
const outputs = {
  verdict: { verdicts: ['measured', 'coarse', 'none', 'flows', 'cannotTell', 'notZeroed'], headline: true },
  amps: { kind: 'current', headline: true },
  leastAmps: { kind: 'current', headline: true },
  mostAmps: { kind: 'current', headline: true },
  offsetAmps: { kind: 'current' },
  errorAmps: { kind: 'current' },
  errorShare: { kind: 'ratio' },
  limitAmps: { kind: 'current' },
} as const;
type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

/** An error above this share of the current makes it a hint and no measurement. Common practice. */
const coarseShare = 0.25;
/** A zero error above this is worth finding the cause of [A]. Common practice. */
const largeZeroAmps = 1;
/** The two ways of finding the zero must agree within the counts of the clamp, taken twice. */
const agreeTimes = 2;

/** What a DC clamp's reading is worth once its zero error is known. */
export const clampZero = defineWorksheet({
  id: 'clamp-zero',
  group: 'battery-dc',
  hazards: ['pv-arc', 'battery-arc', 'live-metering'],
  inputs,
  outputs,
  compute(given) {
    const { readAmps, zeroAmps, turnedAmps, turns, ofReading, counts, countAmps } = given;
    const turned = turnedAmps === undefined ? undefined : turnedOver(readAmps, turnedAmps);
    if (
      turned &&
      Math.abs(turned.zeroAmps) > Math.abs(turned.amps) &&
      Math.abs(turned.zeroAmps) > largest(given)
    )
      return refuse('worksheet.clamp-zero.notTurned', { readAmps, turnedAmps: turnedAmps ?? 0 });
    if (turned && zeroAmps !== undefined && Math.abs(turned.zeroAmps - zeroAmps) > largest(given))
      return refuse('worksheet.clamp-zero.zerosDisagree', { zeroAmps, turnedZeroAmps: turned.zeroAmps });
    const through = turned?.amps ?? readAmps - (zeroAmps ?? 0);
    const { amps, errorAmps } = clampReading(through, ofReading, counts, countAmps, turns);
    const size = Math.abs(amps);
    const limitAmps = limitOf(given);
    return give({
      verdict: verdictOf(given, size, errorAmps, limitAmps),
      amps,
      leastAmps: Math.max(0, size - errorAmps),
      mostAmps: size + errorAmps,
      offsetAmps: turned?.zeroAmps ?? zeroAmps,
      errorAmps,
      errorShare: size > countAmps / 2 ? errorAmps / size : undefined,
      limitAmps,
    });
  },
  working(given, out) {
    return [
      given.turnedAmps !== undefined
        ? say('turned', given, out)
        : given.zeroAmps !== undefined
          ? say('zero', given, out)
          : say('plain', given, out),
      say('error', given, out, { throughAmps: Math.abs(out.amps ?? 0) * given.turns }),
      say('most', given, out, { sizeAmps: Math.abs(out.amps ?? 0) }),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(Math.abs(out.offsetAmps ?? 0) > largeZeroAmps ? ['largeZero'] : []),
      ...(out.offsetAmps === undefined && given.question === 'measure' ? ['zeroUnknown'] : []),
      'drifts',
    ];
    return ids.map((id) => say(`worksheet.clamp-zero.${id}`, given, out));
  },
  sources: [{ id: 'clamp-accuracy' }, { id: 'common-practice' }],
});

const largest = ({ counts, countAmps }: In): number =>
  Math.max(largeZeroAmps, agreeTimes * counts * countAmps);

function limitOf({ question }: In): number | undefined {
  if (question === 'measure') return undefined;
  return question === 'pvZero' ? pvZeroAmps : batteryZeroAmps;
}

function verdictOf(
  given: In,
  size: number,
  errorAmps: number,
  limitAmps: number | undefined,
): Out['verdict'] {
  if (limitAmps === undefined) return errorAmps > coarseShare * size ? 'coarse' : 'measured';
  if (size - errorAmps > limitAmps) return 'flows';
  // A clamp that was not zeroed on the spot never shows that nothing flows.
  if (given.zeroAmps === undefined && given.turnedAmps === undefined) return 'notZeroed';
  return size + errorAmps <= limitAmps ? 'none' : 'cannotTell';
}
