import type { MessageRef } from '../../quantity/message.ts';
import type { ExpectContext, WorkDef } from '../context.ts';
import {
  ampsU,
  apartVolts,
  bandShare,
  changeU,
  deadShare,
  endsOhms,
  feederOhms,
  fewVoltsU,
  legLimitAmps,
  legsCosine,
  nominalLeg,
  ohmsOf,
  openShare,
  poorTimes,
  type Range,
  testAmps,
  voltsU,
} from './site.ts';

/** Under this share of the test load's amps it is not on. */
const onShare = 0.3;
/** Of the neutral's amps, what may come back by the ground. Common practice. */
const strayShare = 0.1;
/** Where the feeder's length is not known, a conductor this far above its fellow has a joint in it [Ω]. Common practice. */
const unknownFeederOhms = 0.05;

/** One heater on one leg: how far each end of each leg has moved, less what the source itself moved [V]. */
interface Moved {
  nominal: number;
  amps: number;
  /** Volts the loaded leg reads at the panel with the load on. */
  loadedVolts: number;
  /** Fall of the loaded leg over the feeder: hot and neutral together. */
  fall: number;
  /** Shift of the panel's neutral toward the loaded leg. */
  shift: number;
  /** The same at the output: what the unit itself did. */
  outFall: number;
  outShift: number;
  /** Expanded uncertainty of a change over the feeder. */
  u: number;
}

function movedBy(context: ExpectContext, blocks: Blocks): Moved | undefined {
  const { sheet, readings } = context;
  const cosine = legsCosine(sheet);
  const at = (id: string) => readings[id];
  const [d0l, d0o, o0l, o0o] = [
    at(blocks.still[0]),
    at(blocks.still[1]),
    at(blocks.out[0]),
    at(blocks.out[1]),
  ];
  const [d1l, d1o, o1l, o1o] = [
    at(blocks.loaded[0]),
    at(blocks.loaded[1]),
    at(blocks.outLoaded[0]),
    at(blocks.outLoaded[1]),
  ];
  if ([d0l, d0o, o0l, o0o, d1l, d1o, o1l, o1o].some((volts) => volts === undefined)) return undefined;
  const toward = -(cosine ?? -1);
  const outFall = o0l! - o1l!;
  const outRise = o1o! - o0o!;
  const fall = d0l! - d1l! - outFall;
  const rise = d1o! - d0o! - outRise;
  const amps = at(blocks.amps) ?? testAmps(sheet);
  return {
    nominal: nominalLeg(sheet),
    amps,
    loadedVolts: d1l!,
    fall,
    shift: rise / toward,
    outFall,
    outShift: outRise / toward,
    u: changeU(sheet, Math.max(Math.abs(fall), Math.abs(rise)), 4),
  };
}

interface Blocks {
  /** Loaded leg, other leg: with nothing on, at the panel and at the output. */
  still: readonly [string, string];
  out: readonly [string, string];
  loaded: readonly [string, string];
  outLoaded: readonly [string, string];
  amps: string;
}

const still1 = { still: ['panel-still.v1', 'panel-still.v2'], out: ['out-legs.v1', 'out-legs.v2'] } as const;

/** Neutral and hot conductor in ohms, each with its range. */
interface Ohms {
  neutral: Range;
  hot: Range;
  /** What each may have; `undefined` where the sheet does not know the feeder. */
  limit: number | undefined;
}

/** Neutral by its own volts to ground where these can be believed; else by the shift of the legs. */
function ohms(context: ExpectContext, moved: Moved, ng: { volts: number; amps: number } | undefined): Ohms {
  const { sheet } = context;
  const uAmps = ampsU(sheet, moved.amps);
  const bySeeSaw = ohmsOf(moved.shift, moved.u, moved.amps, uAmps);
  const neutral = ng
    ? ohmsOf(ng.volts, fewVoltsU(sheet, ng.volts), ng.amps, ampsU(sheet, ng.amps))
    : bySeeSaw;
  const both = ohmsOf(moved.fall, moved.u, moved.amps, uAmps);
  const hot = { low: both.low - neutral.high, best: both.best - neutral.best, high: both.high - neutral.low };
  const feeder = feederOhms(sheet);
  return { neutral, hot, limit: feeder === undefined ? undefined : poorTimes * (feeder + endsOhms) };
}

/** Clearly more than it may have; where the feeder is not known, clearly more than the other conductor. */
const poor = (one: Range, other: Range, limit: number | undefined): boolean =>
  limit === undefined
    ? one.low > Math.max(poorTimes * other.high, other.high + unknownFeederOhms)
    : one.low > limit;

const perhaps = (one: Range, other: Range, limit: number | undefined): boolean =>
  limit === undefined ? one.best > poorTimes * other.high + unknownFeederOhms : one.best > limit;

/** Both conductors as their length makes them, and still the leg's full amps would take it out of its band. */
const isLong = ({ sheet }: ExpectContext, { neutral, hot }: Ohms): boolean =>
  (Math.max(0, neutral.best) + Math.max(0, hot.best)) * legLimitAmps(sheet) > bandShare * nominalLeg(sheet);

function says(context: ExpectContext, moved: Moved, { neutral, hot, limit }: Ohms): MessageRef[] {
  const params = {
    amps: moved.amps,
    fall: moved.fall,
    shift: moved.shift,
    outFall: moved.outFall,
    neutralLow: Math.max(0, neutral.low),
    neutralOhms: Math.max(0, neutral.best),
    neutralHigh: Math.max(0, neutral.high),
    hotLow: Math.max(0, hot.low),
    hotOhms: Math.max(0, hot.best),
    hotHigh: Math.max(0, hot.high),
    limit: limit ?? 0,
    limitAmps: legLimitAmps(context.sheet),
  };
  return [
    { id: 'expected.legs.step', params },
    { id: limit === undefined ? 'expected.legs.feederUnknown' : 'expected.legs.feeder', params },
  ];
}

const answer = (outcome: string, list: readonly MessageRef[]) =>
  ({ ok: true, outcome, use: { worksheet: 'leg-volts', inputs: {} }, says: list }) as const;

/** The legs left their bands under the heater. */
const stepMoved: WorkDef = {
  id: 'legs-step-moved',
  answers: [
    'neutral-open',
    'at-output',
    'output-collapses',
    'line-or-neutral',
    'leg-open',
    'source-sags',
    'neutral-joint',
    'hot-joint',
    'both-joints',
    'long',
    'wrong-leg',
    'no-load',
    'cannot-tell',
  ],
  work(context) {
    const panel = context.readings['panel-loaded.v1'] === undefined ? 'panel-loaded-out' : 'panel-loaded';
    const moved = movedBy(context, {
      ...still1,
      loaded: [`${panel}.v1`, `${panel}.v2`],
      outLoaded: ['out-moved.v1', 'out-moved.v2'],
      amps: 'out-moved.amps',
    });
    if (!moved) return { ok: false, missing: [] };
    const early = extremes(context, moved, context.readings[`${panel}.v2`] ?? 0);
    if (early)
      return answer(early, [
        {
          id: 'expected.legs.moved',
          params: { fall: moved.fall, shift: moved.shift, outFall: moved.outFall, amps: moved.amps },
        },
      ]);
    const found = ohms(context, moved, undefined);
    const [n, h] = [poor(found.neutral, found.hot, found.limit), poor(found.hot, found.neutral, found.limit)];
    const outcome =
      n && h
        ? 'both-joints'
        : n
          ? 'neutral-joint'
          : h
            ? 'hot-joint'
            : isLong(context, found)
              ? 'long'
              : 'cannot-tell';
    return answer(outcome, says(context, moved, found));
  },
};

/** What needs no ohms: nothing on, the wrong leg, an open conductor, an output that gives way. */
function extremes({ sheet }: ExpectContext, moved: Moved, otherVolts: number): string | undefined {
  const { nominal, amps, fall, shift, outFall, outShift, loadedVolts, u } = moved;
  const common = (legsCosine(sheet) ?? -1) > 0.9;
  if (common && outFall > bandShare * nominal) return 'output-collapses';
  if (!common && outShift > apartVolts + u && outFall > 0) return 'at-output';
  if (outFall > bandShare * nominal) return 'source-sags';
  const loadedDead = loadedVolts <= deadShare * nominal;
  if (shift > openShare * nominal) {
    // In step, a lost neutral takes both legs down; the other leg, which carries nothing, follows the loaded one.
    return 'neutral-open';
  }
  if (loadedDead) return common && otherVolts <= deadShare * nominal ? 'line-or-neutral' : 'leg-open';
  if (fall < -u && !common) return 'wrong-leg';
  if (amps < onShare * testAmps(sheet)) return 'no-load';
  return undefined;
}

/** The legs held under the heater: what the conductors have in ohms. */
const step: WorkDef = {
  id: 'legs-step',
  answers: [
    'sound',
    'long',
    'neutral-joint',
    'hot-joint',
    'both-joints',
    'ground-carries',
    'no-reference',
    'no-load',
    'cannot-tell',
  ],
  work(context) {
    const { readings, sheet } = context;
    const moved = movedBy(context, {
      ...still1,
      loaded: ['panel-loaded.v1', 'panel-loaded.v2'],
      outLoaded: ['out-loaded.v1', 'out-loaded.v2'],
      amps: 'out-loaded.amps',
    });
    if (!moved) return { ok: false, missing: [] };
    if (moved.amps < onShare * testAmps(sheet))
      return answer('no-load', [{ id: 'expected.legs.noLoad', params: { amps: moved.amps } }]);
    const [volts, amps, ground] = [
      readings['ng-loaded.ng'],
      readings['ng-loaded.neutral'],
      readings['ng-loaded.ground'],
    ];
    const stray = ground !== undefined && ground - ampsU(sheet, ground) > strayShare * moved.amps;
    const read = volts !== undefined && amps !== undefined && amps > onShare * testAmps(sheet);
    // Volts that no drop of this shift explains are those of a neutral that floats.
    const floats = read && volts - fewVoltsU(sheet, volts) > Math.max(0, moved.shift) + moved.u;
    const found = ohms(context, moved, read && !floats && !stray ? { volts, amps } : undefined);
    const outcome = stray ? 'ground-carries' : joints(context, found, floats, read);
    return answer(outcome, says(context, moved, found));
  },
};

function joints(context: ExpectContext, found: Ohms, floats: boolean, read: boolean): string {
  const n = poor(found.neutral, found.hot, found.limit);
  const h = poor(found.hot, found.neutral, found.limit);
  if (n && h) return 'both-joints';
  if (n) return 'neutral-joint';
  if (h) return 'hot-joint';
  if (floats) return 'no-reference';
  if (perhaps(found.hot, found.neutral, found.limit)) return 'cannot-tell';
  if (!read && perhaps(found.neutral, found.hot, found.limit)) return 'cannot-tell';
  return isLong(context, found) ? 'long' : 'sound';
}

/**
 * The neutral held under the heater on leg 1 and no longer does: the empty leg stands high, or the neutral moved by more than
 * its ohms can explain, the meter's error counted.
 */
function wentBad(context: ExpectContext, moved: Moved): boolean {
  const { readings, sheet } = context;
  const other = readings['leg-2-loaded.d1'] ?? 0;
  if (other - voltsU(sheet, other) > (1 + bandShare) * moved.nominal) return true;
  const u = moved.u / Math.abs(legsCosine(sheet) ?? 1);
  const now = ohmsOf(moved.shift, u, moved.amps, ampsU(sheet, moved.amps));
  const [ng, amps] = [readings['ng-loaded.ng'], readings['ng-loaded.neutral']];
  const before =
    ng === undefined || amps === undefined || context.outcomes['step-work'] === 'no-reference'
      ? undefined
      : ohmsOf(ng, fewVoltsU(sheet, ng), Math.max(amps, 0.1), ampsU(sheet, amps)).high;
  const feeder = feederOhms(sheet);
  const limit =
    feeder !== undefined
      ? poorTimes * (feeder + endsOhms)
      : before !== undefined
        ? Math.max(poorTimes * before, before + unknownFeederOhms)
        : Number.POSITIVE_INFINITY;
  return now.low > limit;
}

/** The heater on leg 2: the neutral is known by now, so what is over belongs to hot 2. */
const step2: WorkDef = {
  id: 'legs-step-2',
  answers: ['sound', 'hot-joint', 'leg-open', 'see-saw', 'no-load', 'cannot-tell'],
  work(context) {
    const { readings, sheet } = context;
    const moved = movedBy(context, {
      still: ['panel-still.v2', 'panel-still.v1'],
      out: ['out-legs.v2', 'out-legs.v1'],
      loaded: ['leg-2-loaded.d2', 'leg-2-loaded.d1'],
      outLoaded: ['leg-2-loaded.o2', 'leg-2-loaded.o1'],
      amps: 'leg-2-loaded.amps',
    });
    if (!moved) return { ok: false, missing: [] };
    const early =
      moved.shift > openShare * moved.nominal
        ? 'see-saw'
        : moved.loadedVolts <= deadShare * moved.nominal
          ? 'leg-open'
          : moved.amps < onShare * testAmps(sheet)
            ? 'no-load'
            : wentBad(context, moved)
              ? 'see-saw'
              : undefined;
    if (early)
      return answer(early, [
        {
          id: 'expected.legs.moved',
          params: { fall: moved.fall, shift: moved.shift, outFall: moved.outFall, amps: moved.amps },
        },
      ]);
    const [volts, amps] = [readings['ng-loaded.ng'], readings['ng-loaded.neutral']];
    const read = volts !== undefined && amps !== undefined && amps > onShare * testAmps(sheet);
    const believed = read && context.outcomes['step-work'] !== 'no-reference';
    const found = ohms(context, moved, believed ? { volts, amps } : undefined);
    const outcome = poor(found.hot, found.neutral, found.limit)
      ? 'hot-joint'
      : perhaps(found.hot, found.neutral, found.limit)
        ? 'cannot-tell'
        : 'sound';
    return answer(outcome, says(context, moved, found));
  },
};

/** Arithmetic on one heater put on one leg. */
export const stepWorks: readonly WorkDef[] = [stepMoved, step, step2];
