import { defineWorksheet, type Plot, type ResultsOf, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { type FuseRule, faultAmps, fuseRules, leastStringFuse, needsFuse } from './fuse-need.ts';
import { editionOf } from './string-amps.ts';
import { groupAmps, joined, moduleCurve, type StringGroup } from './unequal.ts';

/** Nearer to Voc and Isc than this no module's best point lies. Common practice. */
const mostRatio = { volts: 0.99, amps: 0.995 };
/** On or under the straight line from Isc to Voc there is no curve that bulges outwards. */
const leastSum = 1.02;
/** Losing more than this by joining is worth a tracker of its own. Common practice. */
const smallLossShare = 0.02;
/** Amps pushed backwards that count as such: a share of Isc. */
const backShare = 0.01;

const inputs = {
  vocVolts: { kind: 'voltage', min: 5, max: 200, from: ['string.vocV'] },
  vmpVolts: { kind: 'voltage', min: 5, max: 200, from: ['string.vmpV'] },
  iscAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.iscA'] },
  impAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.impA'] },
  modules: { kind: 'count', min: 1, max: 40, from: ['string.modulesInSeries'] },
  strings: { kind: 'count', min: 1, max: 12, default: 2, from: ['string.parallel'] },
  otherModules: { kind: 'count', min: 1, max: 40, optional: true },
  otherStrings: { kind: 'count', min: 0, max: 12, default: 0 },
  basis: {
    options: ['nec-2023', 'nec-2020', 'nec-2017', 'iec', 'other'],
    default: 'nec-2023',
    from: ['derived.fuseBasis'],
  },
  seriesFuseAmps: { kind: 'current', min: 1, max: 100, optional: true },
  conductorAmps: { kind: 'current', min: 1, max: 400, optional: true },
  backfeedAmps: { kind: 'current', min: 0, max: 200, default: 0 },
} as const;

const outputs = {
  fuses: { verdicts: ['needed', 'notNeeded', 'noFuseFits', 'notChecked'], headline: true },
  match: { verdicts: ['equal', 'smallLoss', 'loss', 'oneString'], headline: true },
  faultAmps: { kind: 'current', headline: true },
  bearsAmps: { kind: 'current' },
  leastFuseAmps: { kind: 'current' },
  mostFuseAmps: { kind: 'current' },
  lossShare: { kind: 'ratio', headline: true },
  lossWatts: { kind: 'power' },
  bestVolts: { kind: 'voltage' },
  bestWatts: { kind: 'power' },
  openVolts: { kind: 'voltage' },
  backAmps: { kind: 'current', headline: true },
  coldRiskVolts: { kind: 'voltage' },
} as const;

type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

function groupsOf({ modules, strings, otherModules, otherStrings }: In): readonly StringGroup[] {
  const others = otherStrings === 0 ? [] : [{ modules: otherModules ?? modules, strings: otherStrings }];
  return [{ modules, strings }, ...others];
}

const ruleOf = (basis: In['basis']): FuseRule | undefined =>
  basis === 'iec' ? 'iec' : basis === 'other' ? undefined : 'nec';

export const parallelStrings = defineWorksheet({
  id: 'parallel-strings',
  group: 'pv',
  hazards: ['pv-arc', 'pv-live-in-light'],
  inputs,
  outputs,
  compute(given) {
    const voltsRatio = given.vmpVolts / given.vocVolts;
    const ampsRatio = given.impAmps / given.iscAmps;
    if (voltsRatio > mostRatio.volts) return refuse('worksheet.parallel-strings.noVoltsRatio');
    if (ampsRatio > mostRatio.amps) return refuse('worksheet.parallel-strings.noAmpsRatio');
    if (voltsRatio + ampsRatio < leastSum) return refuse('worksheet.parallel-strings.noCurve');
    const groups = groupsOf(given);
    const count = groups.reduce((sum, group) => sum + group.strings, 0);
    const shortest = Math.min(...groups.map((group) => group.modules));
    const longest = Math.max(...groups.map((group) => group.modules));
    const { openVolts, bestVolts, bestWatts, apartWatts } = joined(given, groups);
    const lost = 1 - bestWatts / apartWatts;
    // The search for the best point leaves a hair of its own.
    const lossShare = lost < 1e-6 ? 0 : lost;
    const back = -moduleCurve(given)(openVolts / shortest);
    const backAmps = back < 1e-6 ? 0 : back;
    const rule = ruleOf(given.basis);
    const edition = given.basis === 'iec' ? undefined : editionOf(given.basis);
    const { seriesFuseAmps, conductorAmps, iscAmps } = given;
    const fault = rule && faultAmps(rule, iscAmps, count, given.backfeedAmps);
    const bears =
      rule && seriesFuseAmps !== undefined
        ? Math.min(fuseRules[rule].moduleFactor * seriesFuseAmps, conductorAmps ?? Number.POSITIVE_INFINITY)
        : undefined;
    const leastFuseAmps = edition && leastStringFuse(iscAmps, edition);
    return give({
      fuses: fusesOf(given, { rule, fault, count, leastFuseAmps }),
      match:
        count === 1
          ? ('oneString' as const)
          : shortest === longest
            ? ('equal' as const)
            : lossShare > smallLossShare
              ? ('loss' as const)
              : ('smallLoss' as const),
      faultAmps: fault,
      bearsAmps: bears,
      leastFuseAmps,
      mostFuseAmps: seriesFuseAmps,
      lossShare,
      lossWatts: lossShare * apartWatts,
      bestVolts,
      bestWatts,
      openVolts,
      backAmps,
      coldRiskVolts: longest * given.vocVolts,
    });
  },
  working(given, out) {
    const groups = groupsOf(given);
    const count = groups.reduce((sum, group) => sum + group.strings, 0);
    const rule = ruleOf(given.basis);
    const apartWatts = (out.bestWatts ?? 0) + (out.lossWatts ?? 0);
    return [
      ...(rule && out.faultAmps !== undefined
        ? [say('fault', given, out, { others: count - 1, factor: fuseRules[rule].stringFactor })]
        : []),
      ...(rule && out.bearsAmps !== undefined && given.seriesFuseAmps !== undefined
        ? [say('bears', given, out, { factor: fuseRules[rule].moduleFactor })]
        : []),
      ...(out.leastFuseAmps === undefined
        ? []
        : [say('fuse', given, out, { ratedAmps: 1.5625 * given.iscAmps })]),
      say('open', given, out),
      say('back', given, out),
      say('loss', given, out, { apartWatts }),
    ];
  },
  remarks(given, out) {
    const count = groupsOf(given).reduce((sum, group) => sum + group.strings, 0);
    const rule = ruleOf(given.basis);
    const fuses =
      out.fuses === 'notChecked' ? (rule === undefined ? 'codeNotCarried' : 'seriesFuseUnknown') : out.fuses;
    const ids = [
      fuses,
      ...(out.fuses === 'needed' && given.basis === 'iec' ? ['iecSize'] : []),
      out.match,
      ...((out.backAmps ?? 0) > backShare * given.iscAmps ? ['backwards'] : []),
      ...(rule && given.conductorAmps === undefined && count > 1 ? ['conductorUnknown'] : []),
      ...(count > 1 ? ['holderIsNoSwitch'] : []),
      ...(given.basis === 'other' ? [] : [given.basis]),
    ];
    return ids.map((id) => say(`worksheet.parallel-strings.${id}`, given, out, { count }));
  },
  plot(given, out): Plot {
    const groups = groupsOf(given);
    const longest = Math.max(...groups.map((group) => group.modules));
    const high = longest * given.vocVolts;
    const total = groups.reduce((sum, group) => sum + group.strings, 0) * given.iscAmps;
    const low = -Math.max(
      0.1 * total,
      1.2 * (out.backAmps ?? 0) * Math.max(...groups.map((each) => each.strings)),
    );
    const steps = Array.from({ length: 121 }, (_, step) => (high * step) / 120);
    const module = moduleCurve(given);
    const curve = (id: string, parts: readonly StringGroup[]) => ({
      id,
      points: steps
        .map((volts) => [volts, groupAmps(module, parts, volts)] as const)
        .filter(([, amps]) => amps >= low),
    });
    return {
      x: { kind: 'voltage', low: 0, high },
      y: { kind: 'current', low, high: 1.05 * total },
      curves: [
        curve('together', groups),
        ...(groups.length > 1 ? [curve('first', groups.slice(0, 1)), curve('others', groups.slice(1))] : []),
      ],
      levels: [{ id: 'zero', axis: 'y', at: 0 }],
      marks: [
        { id: 'best', x: out.bestVolts!, y: out.bestWatts! / out.bestVolts! },
        { id: 'open', x: Math.min(high, out.openVolts!), y: 0 },
      ],
    };
  },
  sources: [
    { id: 'nec-2020', clause: '690.9(A), 690.9(B), 240.6(A)' },
    { id: 'iec-60364-7-712', clause: '712.431' },
    { id: 'rauschenbach-1980' },
    { id: 'common-practice' },
  ],
});

function fusesOf(
  given: In,
  found: {
    rule: FuseRule | undefined;
    fault: number | undefined;
    count: number;
    leastFuseAmps: number | undefined;
  },
): Out['fuses'] {
  const { rule, fault, count, leastFuseAmps } = found;
  const { seriesFuseAmps, conductorAmps } = given;
  if (rule === undefined || fault === undefined) return 'notChecked';
  if (count === 1 && given.backfeedAmps === 0) return 'notNeeded';
  if (seriesFuseAmps === undefined) return 'notChecked';
  if (!needsFuse(rule, fault, count, { seriesFuseAmps, conductorAmps })) return 'notNeeded';
  return leastFuseAmps !== undefined && leastFuseAmps > seriesFuseAmps ? 'noFuseFits' : 'needed';
}
