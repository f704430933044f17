import { defineWorksheet, type Plot, type ResultsOf, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { necColdFactor, necColdSteps } from '../tables/nec-690-7.ts';
import { leastInSeries, mostInSeries } from './fitting-count.ts';
import { tempAtVolts, vmpAt, vocAt } from './string-volts.ts';

/** Hot open-circuit volts below start × this leave nothing for haze, age and tolerance. Common practice. */
export const startMargin = 1.1;
/** Cold volts above this share of the maximum are close enough to check every label again. Common practice. */
export const nearMaximumShare = 0.98;

/** No cell in a working array gets hotter. Common practice. */
const hottestCellC = 95;

const inputs = {
  vocVolts: { kind: 'voltage', min: 5, max: 200, from: ['string.vocV'] },
  vmpVolts: { kind: 'voltage', min: 5, max: 200, from: ['string.vmpV'] },
  vocPerC: {
    kind: 'temperatureCoefficient',
    min: -0.006,
    max: -0.0005,
    signed: true,
    from: ['string.vocPerC'],
  },
  vmpPerC: {
    kind: 'temperatureCoefficient',
    min: -0.008,
    max: -0.0005,
    signed: true,
    from: ['string.vmpPerC', 'string.pmaxPerC'],
  },
  modules: { kind: 'count', min: 1, max: 40, from: ['string.modulesInSeries'] },
  recordLowC: { kind: 'temperature', min: -60, max: 25, signed: true, from: ['climate.recordLowC'] },
  hotCellC: { kind: 'temperature', min: 25, max: hottestCellC, default: 70, from: ['derived.hotCellC'] },
  hotMargin: { kind: 'ratio', min: 0, max: 0.1, default: 0.03 },
  startVolts: { kind: 'voltage', min: 10, max: 1000, from: ['tracker.startV'] },
  trackLowVolts: { kind: 'voltage', min: 10, max: 1000, from: ['tracker.trackMinV'] },
  trackHighVolts: { kind: 'voltage', min: 10, max: 1500, from: ['tracker.trackMaxV'] },
  maxVolts: { kind: 'voltage', min: 20, max: 1500, from: ['tracker.maxV'] },
} as const;

const outputs = {
  verdict: {
    verdicts: [
      'ok',
      'nearMaximum',
      'overMaximum',
      'startsNever',
      'startsMarginal',
      'belowTracking',
      'aboveTracking',
    ],
    headline: true,
  },
  vocColdVolts: { kind: 'voltage', headline: true },
  vocColdTableVolts: { kind: 'voltage', headline: true },
  vocHotVolts: { kind: 'voltage', headline: true },
  vmpHotVolts: { kind: 'voltage' },
  vmpHotSafeVolts: { kind: 'voltage', headline: true },
  stopsStartingC: { kind: 'temperature' },
  leastModules: { kind: 'count' },
  mostModules: { kind: 'count' },
  mostModulesTable: { kind: 'count' },
} as const;

type In = ValuesOf<typeof inputs>;
export type StringWindowOut = ResultsOf<typeof outputs>;
type Out = StringWindowOut;

/** Most urgent first: what destroys, then what never works, then what works badly. */
const severity = [
  'overMaximum',
  'startsNever',
  'belowTracking',
  'startsMarginal',
  'nearMaximum',
  'aboveTracking',
] as const;

export type WindowFinding = (typeof severity)[number];

/** Everything that is wrong with a string's place in its tracker's window, most urgent first; empty when it fits. */
export function windowFindings(
  volts: Pick<Out, 'vocColdVolts' | 'vocColdTableVolts' | 'vocHotVolts' | 'vmpHotSafeVolts'> & {
    vmpRatedVolts: number;
  },
  tracker: Pick<In, 'startVolts' | 'trackLowVolts' | 'trackHighVolts' | 'maxVolts'>,
): readonly WindowFinding[] {
  const cold = volts.vocColdVolts ?? 0;
  const hot = volts.vocHotVolts ?? 0;
  const holds: Record<WindowFinding, boolean> = {
    overMaximum: cold > tracker.maxVolts,
    nearMaximum:
      cold <= tracker.maxVolts &&
      (cold > nearMaximumShare * tracker.maxVolts || (volts.vocColdTableVolts ?? 0) > tracker.maxVolts),
    startsNever: hot < tracker.startVolts,
    startsMarginal: hot >= tracker.startVolts && hot < startMargin * tracker.startVolts,
    belowTracking: (volts.vmpHotSafeVolts ?? 0) < tracker.trackLowVolts,
    aboveTracking: volts.vmpRatedVolts > tracker.trackHighVolts,
  };
  return severity.filter((finding) => holds[finding]);
}

/** Cell temperature above which the string cannot start; nothing where no cell gets that hot. */
function stopsStartingAt(given: In): number | undefined {
  const tempC = tempAtVolts(given.modules * given.vocVolts, given.vocPerC, given.startVolts);
  return tempC === undefined || tempC > hottestCellC ? undefined : tempC;
}

const ratedVmp = (given: In): number => given.modules * given.vmpVolts;

export const stringWindow = defineWorksheet({
  id: 'string-window',
  group: 'pv',
  hazards: ['live-metering'],
  inputs,
  outputs,
  compute(given) {
    if (given.vmpVolts >= given.vocVolts) return refuse('worksheet.string-window.vmpAboveVoc');
    if (given.trackLowVolts >= given.trackHighVolts)
      return refuse('worksheet.string-window.windowUpsideDown');
    if (given.startVolts >= given.maxVolts) return refuse('worksheet.string-window.startAboveMaximum');
    if (given.trackHighVolts > given.maxVolts) return refuse('worksheet.string-window.trackingAboveMaximum');
    const vocOne = (tempC: number): number => vocAt(given.vocVolts, given.vocPerC, tempC);
    const vmpHotOne = vmpAt(given.vmpVolts, given.vmpPerC, given.hotCellC);
    const vmpHotSafeOne = vmpHotOne * (1 - given.hotMargin);
    const factor = necColdFactor(given.recordLowC);
    const vocColdTableVolts = factor === undefined ? undefined : given.modules * given.vocVolts * factor;
    const volts = {
      vocColdVolts: given.modules * vocOne(given.recordLowC),
      vocColdTableVolts,
      vocHotVolts: given.modules * vocOne(given.hotCellC),
      vmpHotVolts: given.modules * vmpHotOne,
      vmpHotSafeVolts: given.modules * vmpHotSafeOne,
    };
    return give({
      ...volts,
      verdict: windowFindings({ ...volts, vmpRatedVolts: ratedVmp(given) }, given)[0] ?? ('ok' as const),
      stopsStartingC: stopsStartingAt(given),
      leastModules: Math.max(
        leastInSeries(startMargin * given.startVolts, vocOne(given.hotCellC)),
        leastInSeries(given.trackLowVolts, vmpHotSafeOne),
      ),
      mostModules: mostInSeries(given.maxVolts, vocOne(given.recordLowC)),
      mostModulesTable:
        factor === undefined ? undefined : mostInSeries(given.maxVolts, given.vocVolts * factor),
    });
  },
  working(given, out) {
    const factor = necColdFactor(given.recordLowC);
    return [
      say('vocCold', given, out),
      ...(factor === undefined ? [] : [say('vocColdTable', given, out, { factor })]),
      say('vocHot', given, out),
      say('vmpHot', given, out),
      say('vmpHotSafe', given, out),
      say('mostModules', given, out, { eachVolts: (out.vocColdVolts ?? 0) / given.modules }),
      ...(factor === undefined
        ? []
        : [say('mostModulesTable', given, out, { eachVolts: given.vocVolts * factor })]),
      say('leastModules', given, out, {
        startMargin,
        vocEachVolts: (out.vocHotVolts ?? 0) / given.modules,
        vmpEachVolts: (out.vmpHotSafeVolts ?? 0) / given.modules,
      }),
    ];
  },
  remarks(given, out) {
    const vmpRatedVolts = ratedVmp(given);
    const fits = (out.leastModules ?? 0) <= (out.mostModules ?? 0);
    const ids = [
      ...windowFindings({ ...out, vmpRatedVolts }, given),
      fits ? 'fits' : 'noCountFits',
      ...((out.mostModulesTable ?? out.mostModules) === out.mostModules ? [] : ['methodsPart']),
      ...(out.vocColdTableVolts === undefined ? ['belowTable'] : []),
    ];
    return ids.map((id) => say(`worksheet.string-window.${id}`, given, out, { vmpRatedVolts }));
  },
  plot(given, out): Plot {
    const coldest = Math.min(given.recordLowC, -10);
    const hottest = Math.max(given.hotCellC, 75);
    const steps = Array.from({ length: 41 }, (_, step) => coldest + ((hottest - coldest) * step) / 40);
    const voc = (tempC: number): number => given.modules * vocAt(given.vocVolts, given.vocPerC, tempC);
    const vmp = (tempC: number): number => given.modules * vmpAt(given.vmpVolts, given.vmpPerC, tempC);
    const table = necColdSteps(coldest).map(
      ([tempC, factor]) => [tempC, given.modules * given.vocVolts * factor] as const,
    );
    const top = Math.max(given.maxVolts, out.vocColdVolts!, out.vocColdTableVolts ?? 0);
    const bottom = Math.min(given.trackLowVolts, given.startVolts, vmp(hottest));
    return {
      x: { kind: 'temperature', low: coldest, high: hottest },
      y: {
        kind: 'voltage',
        low: Math.max(0, bottom - 0.1 * (top - bottom)),
        high: top + 0.05 * (top - bottom),
      },
      curves: [
        { id: 'voc', points: steps.map((tempC) => [tempC, voc(tempC)] as const) },
        { id: 'table', points: table },
        { id: 'vmp', points: steps.map((tempC) => [tempC, vmp(tempC)] as const) },
      ],
      levels: [
        { id: 'maximum', axis: 'y', at: given.maxVolts },
        { id: 'trackHigh', axis: 'y', at: given.trackHighVolts },
        { id: 'start', axis: 'y', at: given.startVolts },
        { id: 'trackLow', axis: 'y', at: given.trackLowVolts },
      ],
      marks: [
        { id: 'vocCold', x: given.recordLowC, y: out.vocColdVolts! },
        { id: 'vocHot', x: given.hotCellC, y: out.vocHotVolts! },
        { id: 'vmpHot', x: given.hotCellC, y: out.vmpHotSafeVolts! },
      ],
    };
  },
  sources: [
    { id: 'nec-2020', clause: '690.7(A)(1), Table 690.7(A)' },
    { id: 'iec-61215' },
    { id: 'sandia-2004-3535' },
    { id: 'de-soto-2006' },
    { id: 'common-practice' },
  ],
});
