import type { MessageRef } from '../../quantity/message.ts';
import type { ExpectContext, WorkDef } from '../context.ts';
import {
  ampsU,
  bandShare,
  changeU,
  deadShare,
  endsOhms,
  feederOhms,
  fewVoltsU,
  legLimitAmps,
  nominalLeg,
  ohmsOf,
  openShare,
  poorTimes,
  testAmps,
} from './site.ts';

/** Under this share of the test load's amps it is not on. */
const onShare = 0.3;
/** Of the load's amps, what may come back by the ground. Common practice. */
const strayShare = 0.1;

/** One line under the heater: line and neutral told apart by neutral to ground at the panel. */
function lineStep(context: ExpectContext, block: string) {
  const { readings, sheet } = context;
  const at = (id: string) => readings[id];
  const [d0, o0, d1, o1] = [at('line-still.v1'), at('out-line.v1'), at(`${block}.d1`), at(`${block}.o1`)];
  const [ng, amps, ground] = [at(`${block}.ng`), at(`${block}.amps`), at(`${block}.ground`)];
  if (d0 === undefined || o0 === undefined || d1 === undefined || o1 === undefined) return undefined;
  if (ng === undefined || amps === undefined || ground === undefined) return undefined;
  const outFall = o0 - o1;
  const fall = d0 - d1 - outFall;
  const flowing = Math.max(amps, 0.1);
  const neutral = ohmsOf(ng, fewVoltsU(sheet, ng), flowing, ampsU(sheet, flowing));
  const both = ohmsOf(fall, changeU(sheet, fall, 4), flowing, ampsU(sheet, flowing));
  const feeder = feederOhms(sheet);
  return {
    d1,
    ng,
    amps,
    ground,
    outFall,
    fall,
    neutral,
    line: { low: both.low - neutral.high, best: both.best - neutral.best, high: both.high - neutral.low },
    limit: feeder === undefined ? undefined : poorTimes * (feeder + endsOhms),
    // A neutral cannot lose more than line and neutral lose together: volts above that are those of one that floats.
    floats: ng - fewVoltsU(sheet, ng) > Math.max(0, fall) + changeU(sheet, fall, 4),
  };
}

type LineStep = NonNullable<ReturnType<typeof lineStep>>;

const saysOf = (context: ExpectContext, found: LineStep): MessageRef[] => [
  {
    id: found.limit === undefined ? 'expected.legs.lineUnknown' : 'expected.legs.line',
    params: {
      amps: found.amps,
      fall: found.fall,
      ng: found.ng,
      neutralOhms: Math.max(0, found.neutral.best),
      lineOhms: Math.max(0, found.line.best),
      lineHigh: Math.max(0, found.line.high),
      limit: found.limit ?? 0,
      limitAmps: legLimitAmps(context.sheet),
    },
  },
];

const answer = (outcome: string, says: readonly MessageRef[]) =>
  ({ ok: true, outcome, use: { worksheet: 'leg-volts', inputs: {} }, says }) as const;

/** It held under the heater. */
const lineHeld: WorkDef = {
  id: 'legs-line-step',
  answers: ['sound', 'long', 'no-reference', 'neutral-joint', 'hot-joint', 'both-joints', 'cannot-tell'],
  work(context) {
    const found = lineStep(context, 'line-loaded');
    if (!found) return { ok: false, missing: [] };
    const { neutral, line, limit } = found;
    const more = (one: typeof neutral, other: typeof neutral) =>
      limit === undefined ? one.low > poorTimes * other.high + 0.05 : one.low > limit;
    const [n, h] = [more(neutral, line), more(line, neutral)];
    const full = (Math.max(0, neutral.best) + Math.max(0, line.best)) * legLimitAmps(context.sheet);
    const unclear = limit !== undefined && line.best > limit;
    const outcome = found.floats
      ? 'no-reference'
      : n && h
        ? 'both-joints'
        : n
          ? 'neutral-joint'
          : h
            ? 'hot-joint'
            : unclear
              ? 'cannot-tell'
              : full > bandShare * nominalLeg(context.sheet)
                ? 'long'
                : 'sound';
    return answer(outcome, saysOf(context, found));
  },
};

/** It did not hold, or something of it read out of its band. */
const lineMoved: WorkDef = {
  id: 'legs-line-moved',
  answers: [
    'neutral-open',
    'no-reference',
    'line-open',
    'source-sags',
    'neutral-joint',
    'hot-joint',
    'ground-carries',
    'no-load',
    'cannot-tell',
  ],
  work(context) {
    const block = context.readings['line-loaded.d1'] === undefined ? 'line-loaded-out' : 'line-loaded';
    const found = lineStep(context, block);
    if (!found) return { ok: false, missing: [] };
    const { sheet } = context;
    const nominal = nominalLeg(sheet);
    const { d1, ng, amps, ground, outFall, floats, neutral, line, limit } = found;
    const on = amps >= onShare * testAmps(sheet);
    const dead = d1 <= deadShare * nominal;
    // A neutral that carries the heater's amps to a live panel is not open, wherever it stands to ground.
    const open = ng > openShare * nominal && (dead || (!on && !floats));
    const outcome =
      outFall > bandShare * nominal
        ? 'source-sags'
        : open
          ? 'neutral-open'
          : dead
            ? 'line-open'
            : ground - ampsU(sheet, ground) > strayShare * testAmps(sheet)
              ? 'ground-carries'
              : !on
                ? 'no-load'
                : floats
                  ? 'no-reference'
                  : neutral.low > Math.max(limit ?? 0, line.high)
                    ? 'neutral-joint'
                    : line.low > Math.max(limit ?? 0, neutral.high)
                      ? 'hot-joint'
                      : 'cannot-tell';
    return answer(outcome, saysOf(context, found));
  },
};

export const lineWorks: readonly WorkDef[] = [lineHeld, lineMoved];
