import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { legFacts, topologies } from './topology.ts';

/** Share of a breaker's rating that a load of three hours and more may take. NEC 210.20(A), 215.3. */
export const continuousShare = 0.8;

export interface LegLimits {
  /** Continuous power of all units together [W], after heat and height. */
  ratedWatts: number;
  /** What one leg of them gives [W]; half when the label does not say, the whole where the legs are in step. */
  legWatts: number;
  /** What the output breaker lets one leg carry for good [W]; infinite without a breaker. */
  breakerWatts: number;
}

/** The most a site gives for good with its legs evenly loaded [W], and what sets it. */
export function evenTotal({ ratedWatts, legWatts, breakerWatts }: LegLimits, legs: 1 | 2) {
  const each = [
    ['inverterTotal', ratedWatts],
    ['inverterLeg', legs * legWatts],
    ['breaker', legs * breakerWatts],
  ] as const;
  // The first of equals: an inverter whose legs are half of it each is limited by the whole.
  const [by, watts] = each.reduce((least, next) => (next[1] < least[1] ? next : least));
  return { by, watts };
}

export const legLimit = defineWorksheet({
  id: 'leg-limit',
  group: 'ac',
  hazards: ['ac-shock', 'live-metering'],
  inputs: {
    topology: { options: topologies, default: 'opposed-120-240', from: ['inverter.topology'] },
    ratedWatts: { kind: 'power', min: 100, max: 200_000, from: ['derived.ratedWatts'] },
    legLimitWatts: {
      kind: 'power',
      min: 50,
      max: 200_000,
      optional: true,
      from: ['derived.legLimitWatts'],
    },
    leftShare: { kind: 'ratio', min: 0.1, max: 1, default: 1 },
    breakerAmps: { kind: 'current', min: 5, max: 1000, optional: true },
    breakerKind: { options: ['standard', 'full'], default: 'standard' },
    watts1: { kind: 'power', min: 0, max: 100_000, default: 0 },
    watts2: { kind: 'power', min: 0, max: 100_000, default: 0 },
    wattsAcross: { kind: 'power', min: 0, max: 100_000, default: 0 },
  },
  outputs: {
    verdict: { verdicts: ['within', 'legOver', 'breakerOver', 'totalOver'], headline: true },
    mostWatts: { kind: 'power', headline: true },
    limitedBy: { verdicts: ['inverterTotal', 'inverterLeg', 'breaker'], headline: true },
    legLimitEachWatts: { kind: 'power' },
    breakerLegWatts: { kind: 'power' },
    leg1Watts: { kind: 'power' },
    leg2Watts: { kind: 'power' },
    totalWatts: { kind: 'power' },
    fullerAmps: { kind: 'current' },
    spareWatts: { kind: 'power' },
    moveWatts: { kind: 'power' },
    unevenShare: { kind: 'ratio' },
  },
  compute(given) {
    const { angle, legVolts } = legFacts[given.topology];
    if (angle === undefined && given.watts2 > 0) return refuse('worksheet.leg-limit.oneLeg');
    if ((angle === undefined || angle === 0) && given.wattsAcross > 0)
      return refuse('worksheet.leg-limit.nothingAcross');
    const legs = angle === undefined ? 1 : 2;
    // In step both legs are one to the inverter; only the breaker's poles tell them apart.
    const canBeUneven = legs === 2 && angle !== 0;
    const ratedWatts = given.ratedWatts * given.leftShare;
    const byLabel = given.legLimitWatts ?? given.ratedWatts / (angle === undefined || angle === 0 ? 1 : 2);
    const legWatts = byLabel * given.leftShare;
    const share = given.breakerKind === 'full' ? 1 : continuousShare;
    const breakerWatts =
      given.breakerAmps === undefined ? Number.POSITIVE_INFINITY : given.breakerAmps * share * legVolts;
    const most = evenTotal({ ratedWatts, legWatts, breakerWatts }, legs);
    const leg1Watts = given.watts1 + given.wattsAcross / 2;
    const leg2Watts = given.watts2 + given.wattsAcross / 2;
    const fuller = Math.max(leg1Watts, leg2Watts);
    const totalWatts = leg1Watts + leg2Watts;
    const verdict =
      fuller > breakerWatts
        ? ('breakerOver' as const)
        : fuller > legWatts
          ? ('legOver' as const)
          : totalWatts > ratedWatts
            ? ('totalOver' as const)
            : ('within' as const);
    return give({
      verdict,
      mostWatts: most.watts,
      limitedBy: most.by,
      legLimitEachWatts: legWatts,
      breakerLegWatts: Number.isFinite(breakerWatts) ? breakerWatts : undefined,
      leg1Watts,
      leg2Watts: legs === 1 ? undefined : leg2Watts,
      totalWatts,
      fullerAmps: fuller / legVolts,
      spareWatts: Math.max(0, Math.min(legWatts, breakerWatts) - fuller),
      moveWatts: !canBeUneven ? undefined : Math.abs(leg1Watts - leg2Watts) / 2,
      unevenShare:
        !canBeUneven || totalWatts === 0 ? undefined : Math.abs(leg1Watts - leg2Watts) / totalWatts,
    });
  },
  working(given, out) {
    const { legVolts } = legFacts[given.topology];
    const shared = { legVolts, share: given.breakerKind === 'full' ? 1 : continuousShare };
    return [
      say('rated', given, out, { leftWatts: given.ratedWatts * given.leftShare }),
      say('leg', given, out),
      ...(out.breakerLegWatts === undefined ? [] : [say('breaker', given, out, shared)]),
      say('fuller', given, out, shared, { fullerWatts: out.fullerAmps! * legVolts }),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(out.limitedBy === 'breaker' ? ['breakerLimits'] : []),
      ...((out.unevenShare ?? 0) > 0.3 ? ['uneven'] : []),
      ...(given.breakerAmps === undefined ? ['noBreaker'] : []),
      ...(given.legLimitWatts === undefined && out.moveWatts !== undefined ? ['halfTaken'] : []),
    ];
    return ids.map((id) => say(`worksheet.leg-limit.${id}`, given, out));
  },
  sources: [{ id: 'nec-2023', clause: '210.20(A), 215.3' }, { id: 'common-practice' }],
});
