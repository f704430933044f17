import { defineWorksheet, type Plot, type ResultsOf, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { ambientFactor } from '../tables/nec-310-15.ts';
import type { AmpacityColumn } from '../tables/nec-310-16.ts';
import { ratingAtLeast } from '../tables/standard-ratings.ts';
import { codeAmps, conductorRules, editionOf, largestDevice, smallestSizes } from './string-amps.ts';

const inputs = {
  iscAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.iscA'] },
  strings: { kind: 'count', min: 1, max: 12, default: 1, from: ['string.parallel'] },
  basis: {
    options: ['nec-2023', 'nec-2020', 'nec-2017', 'other'],
    default: 'nec-2023',
    from: ['derived.necBasis'],
  },
  areaMm2: { kind: 'wireSize', min: 1, max: 260, from: ['string.areaMm2'] },
  metal: { options: ['copper', 'aluminium'], default: 'copper' },
  insulation: { options: ['c60', 'c75', 'c90'], default: 'c90' },
  termination: { options: ['c60', 'c75', 'c90'], default: 'c75' },
  ambientC: { kind: 'temperature', min: -20, max: 90, default: 45, signed: true },
  conductors: { kind: 'count', min: 2, max: 60, default: 2 },
  device: { options: ['fitted', 'none'], default: 'fitted' },
  deviceAmps: { kind: 'current', min: 1, max: 400, optional: true },
  seriesFuseAmps: { kind: 'current', min: 1, max: 100, optional: true },
  usableAmps: { kind: 'current', min: 0.1, max: 200, optional: true, from: ['tracker.usableA'] },
  shortCircuitAmps: {
    kind: 'current',
    min: 0.1,
    max: 300,
    optional: true,
    from: ['tracker.shortCircuitMaxA'],
  },
} as const;

const outputs = {
  verdict: {
    verdicts: [
      'fits',
      'tooSmall',
      'tooHot',
      'notProtected',
      'deviceTooSmall',
      'deviceOverModule',
      'overTracker',
      'notChecked',
    ],
    headline: true,
  },
  totalIscAmps: { kind: 'current' },
  maximumAmps: { kind: 'current', headline: true },
  ratedAmps: { kind: 'current', headline: true },
  plainAmps: { kind: 'current' },
  correctedAmps: { kind: 'current' },
  smallestMm2: { kind: 'wireSize', headline: true },
  plainMm2: { kind: 'wireSize' },
  correctedMm2: { kind: 'wireSize' },
  leastDeviceAmps: { kind: 'current', headline: true },
  mostDeviceAmps: { kind: 'current' },
} as const;

type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

const columnOf = (choice: In['insulation']): AmpacityColumn => Number(choice.slice(1)) as AmpacityColumn;

const placeOf = (given: In) => ({
  metal: given.metal,
  insulation: columnOf(given.insulation),
  termination: columnOf(given.termination),
  ambientC: given.ambientC,
  conductors: given.conductors,
});

export const stringCurrent = defineWorksheet({
  id: 'string-current',
  group: 'pv',
  hazards: ['pv-arc', 'pv-live-in-light'],
  inputs,
  outputs,
  compute(given) {
    const amps = codeAmps(given.iscAmps, given.strings);
    const edition = editionOf(given.basis);
    const shared = { totalIscAmps: amps.iscAmps, maximumAmps: amps.maximumAmps, ratedAmps: amps.ratedAmps };
    const overTracker = given.shortCircuitAmps !== undefined && amps.maximumAmps > given.shortCircuitAmps;
    if (edition === undefined) {
      // The tracker's own limit stands under any code; the rest is the code's to say.
      return give({
        ...blank,
        verdict: overTracker ? ('overTracker' as const) : ('notChecked' as const),
        totalIscAmps: amps.iscAmps,
      });
    }
    const place = placeOf(given);
    const fitted = given.device === 'fitted';
    const leastDeviceAmps = fitted ? ratingAtLeast(amps.ratedAmps, edition, 'fuse') : undefined;
    const deviceAmps = given.deviceAmps ?? leastDeviceAmps;
    const sizes = smallestSizes(
      amps,
      place,
      fitted && deviceAmps !== undefined ? { amps: deviceAmps, edition } : undefined,
    );
    const rules = conductorRules(amps, { ...place, areaMm2: given.areaMm2 });
    const tooHot = ambientFactor(given.ambientC, place.insulation) === undefined;
    if (!rules && !tooHot) return refuse('worksheet.string-current.noRow', { areaMm2: given.areaMm2 });
    const mostDeviceAmps =
      rules && fitted ? largestDevice(rules.ampacity, given.areaMm2, given.metal, edition) : undefined;
    const holds: readonly (readonly [Out['verdict'], boolean])[] = [
      ['overTracker', overTracker],
      ['tooHot', tooHot],
      ['tooSmall', rules !== undefined && !(rules.meetsPlain && rules.meetsCorrected)],
      ['deviceTooSmall', fitted && (deviceAmps ?? 0) < amps.ratedAmps - 1e-9],
      ['deviceOverModule', fitted && (deviceAmps ?? 0) > (given.seriesFuseAmps ?? Number.POSITIVE_INFINITY)],
      ['notProtected', fitted && (deviceAmps ?? 0) > (mostDeviceAmps ?? 0)],
    ];
    return give({
      ...shared,
      verdict: holds.find(([, wrong]) => wrong)?.[0] ?? ('fits' as const),
      plainAmps: rules?.plainAmps,
      correctedAmps: rules?.ampacity.correctedAmps,
      smallestMm2: sizes.protectedMm2,
      plainMm2: sizes.plainMm2,
      correctedMm2: sizes.correctedMm2,
      leastDeviceAmps,
      mostDeviceAmps,
    });
  },
  working(given, out) {
    const total = say('total', given, out);
    const edition = editionOf(given.basis);
    if (edition === undefined || out.maximumAmps === undefined) return [total];
    const place = placeOf(given);
    const rules = conductorRules(codeAmps(given.iscAmps, given.strings), {
      ...place,
      areaMm2: given.areaMm2,
    });
    return [
      total,
      say('maximum', given, out),
      say('rated', given, out),
      ...(rules
        ? [
            say('plain', given, out, { insulationAmps: rules.ampacity.tableAmps }, rules.ampacity),
            say('corrected', given, out, rules.ampacity),
          ]
        : []),
      ...(out.smallestMm2 === undefined || out.plainMm2 === undefined || out.correctedMm2 === undefined
        ? []
        : [say('smallest', given, out)]),
      ...(out.leastDeviceAmps === undefined ? [] : [say('device', given, out)]),
    ];
  },
  remarks(given, out) {
    const fitted = given.device === 'fitted';
    const known = out.maximumAmps !== undefined;
    const deviceAmps = given.deviceAmps ?? out.leastDeviceAmps ?? 0;
    const ids = [
      out.verdict,
      ...(known && fitted && given.seriesFuseAmps === undefined ? ['seriesFuseUnknown'] : []),
      ...(known && !fitted ? ['noDevice'] : []),
      ...((out.totalIscAmps ?? 0) > (given.usableAmps ?? Number.POSITIVE_INFINITY) ? ['clips'] : []),
      ...(given.shortCircuitAmps === undefined ? ['trackerUnknown'] : []),
      ...(known ? ['bothRules'] : []),
      ...(given.basis === 'other' ? [] : [given.basis]),
    ];
    const needed = out.verdict === 'tooSmall' && out.smallestMm2 === undefined ? ['noSize'] : [];
    const smaller = out.verdict === 'tooSmall' && out.smallestMm2 !== undefined ? ['nextSize'] : [];
    return [...ids, ...needed, ...smaller].map((id) =>
      say(`worksheet.string-current.${id}`, given, out, {
        deviceAmps,
        trackerAmps: 1.25 * (out.totalIscAmps ?? 0),
      }),
    );
  },
  plot(given, out): Plot | undefined {
    if (out.maximumAmps === undefined) return undefined;
    const place = placeOf(given);
    const amps = codeAmps(given.iscAmps, given.strings);
    const [low, high] = [20, 85];
    const steps = Array.from({ length: (high - low) * 2 + 1 }, (_, step) => low + step / 2);
    const corrected = steps.flatMap((ambientC) => {
      const rules = conductorRules(amps, { ...place, ambientC, areaMm2: given.areaMm2 });
      return rules ? [[ambientC, rules.ampacity.correctedAmps] as const] : [];
    });
    if (corrected.length < 2) return undefined;
    const top = Math.max(out.ratedAmps!, ...corrected.map(([, each]) => each));
    return {
      x: { kind: 'temperature', low, high },
      y: { kind: 'current', low: 0, high: 1.1 * top },
      curves: [{ id: 'corrected', points: corrected }],
      levels: [
        { id: 'maximum', axis: 'y', at: out.maximumAmps },
        ...(out.plainAmps === undefined ? [] : [{ id: 'plain', axis: 'y' as const, at: out.plainAmps }]),
        { id: 'rated', axis: 'y', at: out.ratedAmps! },
      ],
      marks:
        out.correctedAmps === undefined || given.ambientC < low || given.ambientC > high
          ? []
          : [{ id: 'here', x: given.ambientC, y: out.correctedAmps }],
    };
  },
  sources: [
    { id: 'nec-2020', clause: '690.8(A)(1), 690.8(B), 690.9(B)' },
    {
      id: 'nec-2023',
      clause: 'Table 310.16, Table 310.15(B)(1)(1), Table 310.15(C)(1), 110.14(C), 240.4, 240.6(A)',
    },
    { id: 'nec-2017', clause: 'the same rules under their older numbers' },
    { id: 'nec-240-4-d-aluminium', clause: '240.4(D), aluminium rows' },
    { id: 'common-practice' },
  ],
});

/** What is left open where no code basis is carried. */
const blank = {
  maximumAmps: undefined,
  ratedAmps: undefined,
  plainAmps: undefined,
  correctedAmps: undefined,
  smallestMm2: undefined,
  plainMm2: undefined,
  correctedMm2: undefined,
  leastDeviceAmps: undefined,
  mostDeviceAmps: undefined,
};
