import { type LegAngle, legAngle, legAngleOf } from '../../worksheets/ac/leg-angle.ts';
import { neutralCurrent } from '../../worksheets/ac/neutral-current.ts';
import type { ExpectContext, WorkDef } from '../context.ts';
import {
  apartVolts,
  bandShare,
  changeU,
  deadShare,
  legLimitAmps,
  legsCosine,
  nominalLeg,
  sumLimitAmps,
  voltsError,
  voltsU,
} from './site.ts';

/** One leg with this much more than the other is shared out badly, once the fuller one is half full. Common practice. */
const unevenShare = 0.3;
const halfFull = 0.5;

interface Legs {
  v12: number;
  v1: number;
  v2: number;
}

function legsAt({ readings }: ExpectContext, block: string): Legs | undefined {
  const [v12, v1, v2] = [readings[`${block}.v12`], readings[`${block}.v1`], readings[`${block}.v2`]];
  return v12 === undefined || v1 === undefined || v2 === undefined ? undefined : { v12, v1, v2 };
}

/** The angle that this site's legs should have. */
function builtAngle({ sheet }: ExpectContext): LegAngle['kind'] {
  const cosine = legsCosine(sheet) ?? -1;
  return cosine > 0.9 ? 'inPhase' : cosine < -0.9 ? 'opposed' : 'third';
}

/** The three readings on the leg-angle worksheet, and what it says of them. */
function angleOf(context: ExpectContext, legs: Legs) {
  const { sheet } = context;
  const ofReading = sheet.meter.acVolts.ofReading ?? 0.015;
  const inputs = { ...legs, ofReading, countsVolts: voltsError(sheet, 0) };
  const result = legAngle.compute(inputs);
  const found = legAngleOf({ ...legs, error: (volts) => voltsError(sheet, volts) });
  const says = result.ok ? (legAngle.remarks?.(inputs, result.out) ?? []) : [result.reason];
  return { inputs, found, says };
}

const isBuilt = (kind: LegAngle['kind'], built: LegAngle['kind']) => kind === built || kind === 'cannotTell';

/** The legs at the panel, as the house uses them. None of them reads clearly high. */
const legsFound: WorkDef = {
  id: 'legs-found',
  answers: ['see-saw', 'wrong-angle', 'leg-dead', 'both-low', 'one-low', 'in-band', 'do-not-close'],
  work(context) {
    const legs = legsAt(context, 'panel-legs');
    if (!legs) return { ok: false, missing: [] };
    const { sheet } = context;
    const nominal = nominalLeg(sheet);
    const { inputs, found, says } = angleOf(context, legs);
    const [lower, higher] = [Math.min(legs.v1, legs.v2), Math.max(legs.v1, legs.v2)];
    const least = (1 - bandShare) * nominal;
    const low = (volts: number) => volts + voltsU(sheet, volts) < least;
    const high = higher + voltsU(sheet, higher) > (1 + bandShare) * nominal;
    // Further apart than the meter and a fair feeder explain, about the middle: a see-saw in the making.
    const apart = higher - lower > 2 * apartVolts + changeU(sheet, higher - lower, 2);
    const opposite = apart && higher > nominal && lower < nominal;
    const outcome =
      lower <= deadShare * nominal
        ? 'leg-dead'
        : found.kind === 'doNotClose'
          ? 'do-not-close'
          : !isBuilt(found.kind, builtAngle(context)) || found.kind === 'between'
            ? 'wrong-angle'
            : high || opposite
              ? 'see-saw'
              : low(legs.v1) && low(legs.v2)
                ? 'both-low'
                : low(lower) || lower < least
                  ? 'one-low'
                  : 'in-band';
    return {
      ok: true,
      outcome,
      use: { worksheet: 'leg-angle', inputs },
      says: [{ id: 'expected.legs.found', params: { ...legs, apart: higher - lower } }, ...says],
    };
  },
};

/** The unit's own output with nothing on it. */
const legsOutput: WorkDef = {
  id: 'legs-output',
  answers: [
    'as-built',
    'in-phase',
    'third',
    'leg-dead',
    'uneven',
    'both-off',
    'not-as-sheet',
    'do-not-close',
  ],
  work(context) {
    const legs = legsAt(context, 'out-legs');
    if (!legs) return { ok: false, missing: [] };
    const { sheet } = context;
    const nominal = nominalLeg(sheet);
    const built = builtAngle(context);
    const { inputs, found, says } = angleOf(context, legs);
    const [lower, higher] = [Math.min(legs.v1, legs.v2), Math.max(legs.v1, legs.v2)];
    const uneven = higher - lower > apartVolts + changeU(sheet, higher - lower, 2);
    const off = (volts: number) =>
      volts + voltsU(sheet, volts) < (1 - bandShare) * nominal ||
      volts - voltsU(sheet, volts) > (1 + bandShare) * nominal;
    const outcome =
      lower <= deadShare * nominal
        ? higher <= deadShare * nominal
          ? 'both-off'
          : 'leg-dead'
        : found.kind === 'doNotClose' || found.kind === 'between'
          ? 'do-not-close'
          : !isBuilt(found.kind, built)
            ? built !== 'opposed'
              ? 'not-as-sheet'
              : found.kind === 'inPhase'
                ? 'in-phase'
                : 'third'
            : uneven
              ? 'uneven'
              : off(lower) || off(higher)
                ? 'both-off'
                : 'as-built';
    return {
      ok: true,
      outcome,
      use: { worksheet: 'leg-angle', inputs },
      says: [{ id: 'expected.legs.output', params: { ...legs, nominal } }, ...says],
    };
  },
};

/** Both ends of the feeder at one moment, under the load that dims the house. */
const legsSag: WorkDef = {
  id: 'legs-sag',
  answers: ['source', 'feeder', 'uneven', 'recovered', 'cannot-tell'],
  work(context) {
    const { sheet, readings } = context;
    const block = readings['both-ends.d1'] === undefined ? 'line-ends' : 'both-ends';
    const [d1, o1] = [readings[`${block}.d1`], readings[`${block}.o1`]];
    if (d1 === undefined || o1 === undefined) return { ok: false, missing: [] };
    const d2 = readings[`${block}.d2`] ?? d1;
    const o2 = readings[`${block}.o2`] ?? o1;
    const nominal = nominalLeg(sheet);
    const least = (1 - bandShare) * nominal;
    const drop = (o1 + o2 - d1 - d2) / 2;
    const sag = nominal - (o1 + o2) / 2;
    const u = changeU(sheet, drop, 2);
    const apart = Math.abs(o1 - o2) > apartVolts + changeU(sheet, o1 - o2, 2);
    const inBand = Math.min(d1, d2) >= least;
    const outcome = apart
      ? 'uneven'
      : inBand
        ? 'recovered'
        : o1 <= least && o2 <= least && sag > drop
          ? 'source'
          : drop - u > sag
            ? 'feeder'
            : Math.min(d1, d2) <= deadShare * nominal
              ? 'feeder'
              : 'cannot-tell';
    const params = { panel: (d1 + d2) / 2, output: (o1 + o2) / 2, drop, sag, nominal };
    return {
      ok: true,
      outcome,
      use: { worksheet: 'leg-volts', inputs: {} },
      says: [{ id: 'expected.legs.sag', params }],
    };
  },
};

/** Of the panel's dip at a start, what has to be the output's own for the source to be its reason; the rest is the feeder's. */
const sourceShare = 0.5;

/** The lowest volts of one start at the panel, and of the same start at the output, leg by leg. */
const legsStartSag: WorkDef = {
  id: 'legs-start-sag',
  answers: ['source', 'feeder'],
  work({ sheet, readings }) {
    const places =
      readings['line-start.min'] === undefined
        ? ([
            ['panel-legs.v1', 'dip-watch.min-1', 'start-sag.min-1'],
            ['panel-legs.v2', 'dip-watch.min-2', 'start-sag.min-2'],
          ] as const)
        : ([['panel-line.v1', 'line-dip.min', 'line-start.min']] as const);
    const legs = places.flatMap(([before, atPanel, atOutput]) => {
      const [panel, output] = [readings[atPanel], readings[atOutput]];
      const stood = readings[before] ?? nominalLeg(sheet);
      return panel === undefined || output === undefined
        ? []
        : [{ panel: stood - panel, output: stood - output }];
    });
    if (legs.length < places.length) return { ok: false, missing: [] };
    // The leg whose dip is deepest at the panel is the one that was seen.
    const { panel, output } = legs.reduce((deepest, leg) => (leg.panel > deepest.panel ? leg : deepest));
    return {
      ok: true,
      outcome: output >= sourceShare * panel ? 'source' : 'feeder',
      use: { worksheet: 'leg-volts', inputs: {} },
      says: [{ id: 'expected.legs.start', params: { panel, output } }],
    };
  },
};

/** The amps of both legs, read at one of the places that ask for them. */
function shareOf({ sheet, readings }: ExpectContext, block: string) {
  const [i1, i2] = [readings[`${block}.i1`], readings[`${block}.i2`]];
  if (i1 === undefined || i2 === undefined) return undefined;
  const limit = legLimitAmps(sheet);
  const more = Math.max(i1, i2);
  const share = more === 0 ? 0 : Math.abs(i1 - i2) / more;
  const inputs = { topology: sheet.inverter.topology, amps1: i1, factor1: 1, amps2: i2, factor2: 1 };
  const result = neutralCurrent.compute({ ...inputs, ratedAmps: undefined });
  const neutral = result.ok ? (result.out.neutralAmps ?? 0) : 0;
  const sumLimit = sumLimitAmps(sheet);
  const params = { i1, i2, share, limit, neutral, sum: i1 + i2, sumLimit };
  const outcome =
    i1 + i2 > sumLimit
      ? 'sum-over'
      : more < halfFull * limit
        ? 'light'
        : share > unevenShare
          ? 'uneven'
          : 'even';
  return {
    ok: true,
    outcome,
    use: { worksheet: 'neutral-current', inputs },
    says: [{ id: 'expected.legs.share', params }],
  } as const;
}

/** How the house is shared out over the legs, what both come to, and what its neutral then carries. */
const shareAt = (id: string, block: string): WorkDef => ({
  id,
  answers: ['sum-over', 'uneven', 'even', 'light'],
  work: (context) => shareOf(context, block) ?? { ok: false, missing: [] },
});

/** One line, too close to a limit of its band: which limit. */
const lineBetween: WorkDef = {
  id: 'legs-line-between',
  answers: ['low-side', 'high-side'],
  work(context) {
    const volts = context.readings['panel-line.v1'];
    if (volts === undefined) return { ok: false, missing: [] };
    const nominal = nominalLeg(context.sheet);
    return {
      ok: true,
      outcome: volts > nominal ? 'high-side' : 'low-side',
      use: { worksheet: 'leg-volts', inputs: {} },
      says: [{ id: 'expected.legs.lineBetween', params: { volts, nominal } }],
    };
  },
};

/** What readings of the house as it is come to. */
export const foundWorks: readonly WorkDef[] = [
  legsFound,
  legsOutput,
  legsSag,
  legsStartSag,
  shareAt('legs-share', 'leg-clamps'),
  shareAt('legs-share-house', 'house-amps'),
  shareAt('legs-share-again', 'retest-peak'),
  lineBetween,
];
