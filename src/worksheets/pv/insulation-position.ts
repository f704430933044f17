import { defineWorksheet, type ResultsOf, type ValuesOf } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { insulationFrom, minimumInsulationFor } from './insulation.ts';

const inputs = {
  vocVolts: { kind: 'voltage', min: 5, max: 1500 },
  positiveVolts: { kind: 'voltage', min: -1500, max: 1500, signed: true },
  negativeVolts: { kind: 'voltage', min: -1500, max: 1500, signed: true },
  modules: { kind: 'count', min: 1, max: 40, from: ['string.modulesInSeries'] },
  vocRatedVolts: { kind: 'voltage', min: 5, max: 1500, from: ['derived.stringVocRatedV'] },
  meterOhms: { kind: 'resistance', min: 1e4, max: 1e9, default: 1e7, unit: 'MΩ', from: ['meter.inputOhm'] },
  meterShare: { kind: 'ratio', min: 0, max: 0.2, default: 0.01, from: ['meter.dcVolts.ofReading'] },
  meterVolts: { kind: 'voltage', min: 0, max: 10, default: 0.3 },
  lightDrift: { kind: 'ratio', min: 0, max: 0.2, default: 0.01 },
  ownLimitOhms: {
    kind: 'resistance',
    min: 1000,
    max: 1e8,
    optional: true,
    unit: 'kΩ',
    from: ['inverter.insulationLimitOhm'],
  },
} as const;

const outputs = {
  verdict: { verdicts: ['sound', 'leak', 'cannotTell'], headline: true },
  place: { verdicts: ['none', 'positiveLead', 'negativeLead', 'between'], headline: true },
  isoLowOhms: { kind: 'resistance', headline: true },
  isoHighOhms: { kind: 'resistance', headline: true },
  isoOhms: { kind: 'resistance' },
  modulesFromPositive: { kind: 'count', decimals: 1 },
  modulesLow: { kind: 'count', decimals: 1 },
  modulesHigh: { kind: 'count', decimals: 1 },
  leastOhms: { kind: 'resistance' },
  testVolts: { kind: 'voltage' },
  alikeBelowOhms: { kind: 'resistance' },
  alikeAboveOhms: { kind: 'resistance' },
} as const;

type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

/** A reading's share of Voc below which no place is named: a far, weak leak and the meter's own path look alike. */
const placeShare = 0.5;

export const insulationPosition = defineWorksheet({
  id: 'insulation-position',
  group: 'pv',
  hazards: ['pv-arc', 'live-metering'],
  inputs,
  outputs,
  compute(given) {
    const { vocVolts, positiveVolts, negativeVolts, meterShare, meterVolts, lightDrift, modules } = given;
    const found = insulationFrom({
      vocVolts,
      positiveVolts,
      negativeVolts,
      meterOhms: given.meterOhms,
      modules,
      poleErrorVolts: meterShare * Math.max(Math.abs(positiveVolts), Math.abs(negativeVolts)) + meterVolts,
      vocErrorVolts: (meterShare + lightDrift) * vocVolts + meterVolts,
    });
    if (!found.ok) return found;
    const { isoOhms, modulesFromPositive: at, alikeBelowOhms, alikeAboveOhms } = found.out;
    const minimum = minimumInsulationFor(given.vocRatedVolts);
    const leastOhms = Math.max(minimum.leastOhms, given.ownLimitOhms ?? 0);
    const shows =
      Math.abs(positiveVolts) + Math.abs(negativeVolts) >= placeShare * vocVolts && at !== undefined;
    return give({
      verdict:
        isoOhms.low >= leastOhms
          ? ('sound' as const)
          : isoOhms.high !== undefined && isoOhms.high < leastOhms
            ? ('leak' as const)
            : ('cannotTell' as const),
      place: shows ? placeOf(at.value, modules) : ('none' as const),
      isoOhms: isoOhms.value,
      isoLowOhms: isoOhms.low,
      isoHighOhms: isoOhms.high,
      modulesFromPositive: shows ? at.value : undefined,
      modulesLow: shows ? at.low : undefined,
      modulesHigh: shows ? at.high : undefined,
      leastOhms,
      testVolts: minimum.testVolts,
      alikeBelowOhms,
      alikeAboveOhms,
    });
  },
  working(given, out) {
    const sumVolts = Math.abs(given.positiveVolts) + Math.abs(given.negativeVolts);
    const absolute = { a: Math.abs(given.positiveVolts), c: Math.abs(given.negativeVolts), sumVolts };
    return [
      say('sum', given, absolute),
      ...(sumVolts > 0 ? [say('iso', given, out, absolute)] : []),
      ...(out.isoHighOhms === undefined ? [say('rangeOpen', out)] : [say('range', out)]),
      ...(out.modulesFromPositive === undefined ? [] : [say('place', given, out, absolute)]),
      say('least', given, out, { testBasisVolts: 1.25 * given.vocRatedVolts }),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(out.place === 'none' ? [] : [out.place]),
      ...((out.isoLowOhms ?? 0) === 0 ? ['couldBeDeadShort'] : []),
      'twoFaults',
    ];
    return ids.map((id) => say(`worksheet.insulation-position.${id}`, given, out));
  },
  sources: [
    { id: 'kuphaldt-dc', clause: 'chapters 6 and 8' },
    { id: 'iec-62446-1-2016', clause: '6.7' },
    { id: 'common-practice' },
  ],
});

function placeOf(modulesFromPositive: number, modules: In['modules']): Exclude<Out['place'], 'none'> {
  if (modulesFromPositive < 0.5) return 'positiveLead';
  return modulesFromPositive > modules - 0.5 ? 'negativeLead' : 'between';
}
