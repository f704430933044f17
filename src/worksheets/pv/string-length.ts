import { defineWorksheet, type Plot } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { bestSplit, countLimits, endsOf } from './string-limits.ts';
import { startMargin } from './string-window.ts';

/** Code caps on the volts of a PV circuit in or on a dwelling. NEC 690.7. */
export const dwellingCapVolts = 600;
/** Longest string worth drawing. */
const mostDrawn = 40;

export const stringLength = defineWorksheet({
  id: 'string-length',
  group: 'pv',
  hazards: ['live-metering'],
  inputs: {
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
    iscAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.iscA'] },
    impAmps: { kind: 'current', min: 0.1, max: 30, from: ['string.impA'] },
    recordLowC: { kind: 'temperature', min: -60, max: 25, signed: true, from: ['climate.recordLowC'] },
    hotCellC: { kind: 'temperature', min: 25, max: 95, default: 70, from: ['derived.hotCellC'] },
    hotMargin: { kind: 'ratio', min: 0, max: 0.1, default: 0.03 },
    startVolts: { kind: 'voltage', min: 10, max: 1000, from: ['tracker.startV'] },
    trackLowVolts: { kind: 'voltage', min: 10, max: 1000, from: ['tracker.trackMinV'] },
    trackHighVolts: { kind: 'voltage', min: 10, max: 1500, from: ['tracker.trackMaxV'] },
    maxVolts: { kind: 'voltage', min: 20, max: 1500, from: ['tracker.maxV'] },
    place: {
      options: ['dwelling', 'elsewhere', 'otherCode'],
      default: 'dwelling',
      from: ['derived.pvPlace'],
    },
    usableAmps: { kind: 'current', min: 0.1, max: 200, optional: true, from: ['tracker.usableA'] },
    shortCircuitAmps: {
      kind: 'current',
      min: 0.1,
      max: 300,
      optional: true,
      from: ['tracker.shortCircuitMaxA'],
    },
    modules: { kind: 'count', min: 1, max: 200, optional: true },
  },
  outputs: {
    verdict: { verdicts: ['fits', 'tableSaysFewer', 'none'], headline: true },
    least: { kind: 'count', headline: true },
    most: { kind: 'count', headline: true },
    mostTable: { kind: 'count', headline: true },
    leastToStart: { kind: 'count' },
    leastToTrack: { kind: 'count' },
    mostTracking: { kind: 'count' },
    capVolts: { kind: 'voltage' },
    vocColdEach: { kind: 'voltage' },
    vocColdTableEach: { kind: 'voltage' },
    vocHotEach: { kind: 'voltage' },
    vmpHotEach: { kind: 'voltage' },
    mostStrings: { kind: 'count' },
    length: { kind: 'count' },
    strings: { kind: 'count' },
    leftOver: { kind: 'count' },
  },
  compute(given) {
    const { trackLowVolts, trackHighVolts, maxVolts, startVolts, usableAmps, shortCircuitAmps } = given;
    if (given.vmpVolts >= given.vocVolts) return refuse('worksheet.string-length.vmpAboveVoc');
    if (given.impAmps >= given.iscAmps) return refuse('worksheet.string-length.impAboveIsc');
    if (trackLowVolts >= trackHighVolts) return refuse('worksheet.string-length.windowUpsideDown');
    if (startVolts >= maxVolts) return refuse('worksheet.string-length.startAboveMaximum');
    if (trackHighVolts > maxVolts) return refuse('worksheet.string-length.trackingAboveMaximum');
    const capVolts = given.place === 'dwelling' ? Math.min(maxVolts, dwellingCapVolts) : maxVolts;
    const nec = given.place !== 'otherCode';
    const all = endsOf(given);
    const ends = nec ? all : { ...all, vocColdTableEach: undefined };
    const limits = countLimits(ends, given.vmpVolts, {
      startVolts: startMargin * startVolts,
      trackLowVolts,
      trackHighVolts,
      maxVolts: capVolts,
    });
    const least = Math.max(1, limits.leastToStart, limits.leastToTrack);
    const most = Math.min(limits.most, limits.mostTable ?? limits.most);
    // Over the short-circuit rating an input is destroyed; over its usable amps it only leaves power unused.
    const mostStrings =
      shortCircuitAmps === undefined
        ? undefined
        : Math.floor(shortCircuitAmps / (1.25 * given.iscAmps) + 1e-9);
    const usedStrings = usableAmps === undefined ? undefined : Math.floor(usableAmps / given.impAmps + 1e-9);
    const stringLimit = Math.min(mostStrings ?? Number.POSITIVE_INFINITY, Math.max(1, usedStrings ?? 1));
    const split =
      given.modules === undefined ? undefined : bestSplit(given.modules, least, most, stringLimit);
    return give({
      verdict:
        least > limits.most
          ? ('none' as const)
          : most < limits.most
            ? ('tableSaysFewer' as const)
            : ('fits' as const),
      least,
      most: limits.most,
      mostTable: limits.mostTable,
      leastToStart: limits.leastToStart,
      leastToTrack: limits.leastToTrack,
      mostTracking: limits.mostTracking,
      capVolts,
      ...ends,
      vocColdTableEach: ends.vocColdTableEach,
      mostStrings,
      length: split?.length,
      strings: split?.strings,
      leftOver: split?.leftOver,
    });
  },
  working(given, out) {
    return [
      say('vocCold', given, out),
      ...(out.vocColdTableEach === undefined
        ? []
        : [say('vocColdTable', given, out, { factor: out.vocColdTableEach / given.vocVolts })]),
      say('most', given, out),
      ...(out.mostTable === undefined ? [] : [say('mostTable', given, out)]),
      say('vocHot', given, out),
      say('leastToStart', given, out, { startMargin }),
      say('vmpHot', given, out),
      say('leastToTrack', given, out),
      ...(out.mostStrings === undefined ? [] : [say('mostStrings', given, out)]),
      ...(out.strings === undefined ? [] : [say('split', given, out)]),
    ];
  },
  remarks(given, out) {
    const capped = (out.capVolts ?? 0) < given.maxVolts;
    const [least, most, tracking] = [out.least ?? 0, out.most ?? 0, out.mostTracking ?? 0];
    const ids: string[] = [
      fitRemark(out),
      ...(out.verdict === 'none' || least === 1
        ? []
        : [(out.leastToTrack ?? 0) >= (out.leastToStart ?? 0) ? 'trackingAsks' : 'startAsks']),
      ...(capped ? ['capped'] : []),
      ...(given.place === 'otherCode' ? ['notChecked'] : out.mostTable === undefined ? ['belowTable'] : []),
      ...(least <= most && tracking < most ? ['aboveTracking'] : []),
      ...(out.mostStrings === 0 ? ['oneStringTooMuch'] : []),
      ...(given.modules === undefined ? [] : [splitRemark(given.modules, out)]),
    ];
    return ids.map((id) => say(`worksheet.string-length.${id}`, given, out, { startMargin }));
  },
  plot(given, out): Plot {
    const top = Math.min(mostDrawn, Math.max((out.most ?? 0) + 2, (out.least ?? 0) + 1, 3));
    const line = (each: number) => [[0, 0] as const, [top, top * each] as const];
    return {
      x: { kind: 'count', low: 0, high: top },
      y: { kind: 'voltage', low: 0, high: top * Math.max(out.vocColdEach!, out.vocColdTableEach ?? 0) },
      curves: [
        { id: 'vocCold', points: line(out.vocColdEach!) },
        ...(out.vocColdTableEach === undefined
          ? []
          : [{ id: 'vocColdTable', points: line(out.vocColdTableEach) }]),
        { id: 'vocHot', points: line(out.vocHotEach!) },
        { id: 'vmpHot', points: line(out.vmpHotEach!) },
      ],
      levels: [
        { id: 'maximum', axis: 'y', at: out.capVolts! },
        { id: 'start', axis: 'y', at: startMargin * given.startVolts },
        { id: 'trackLow', axis: 'y', at: given.trackLowVolts },
      ],
      marks: [
        ...((out.most ?? 0) > 0 ? [{ id: 'most', x: out.most!, y: out.most! * out.vocColdEach! }] : []),
        { id: 'least', x: out.least!, y: out.least! * out.vmpHotEach! },
      ].filter(({ x }) => x <= top),
    };
  },
  sources: [
    { id: 'nec-2020', clause: '690.7, Table 690.7(A), 690.8(A)' },
    { id: 'iec-61215' },
    { id: 'de-soto-2006' },
    { id: 'common-practice' },
  ],
});

function fitRemark({ verdict, least = 0, most = 0, mostTable = most }: FitOut): string {
  if (verdict === 'tableSaysFewer' && least > mostTable) return 'tableLeavesNone';
  return verdict === 'fits' && least === most ? 'fitsOne' : verdict;
}

interface FitOut {
  readonly verdict: string;
  readonly least?: number;
  readonly most?: number;
  readonly mostTable?: number;
}

function splitRemark(modules: number, out: { strings?: number; leftOver?: number }): string {
  if (out.strings === undefined) return 'noSplit';
  if (out.leftOver === 0) return out.strings === 1 ? 'oneString' : 'split';
  return out.leftOver !== undefined && out.leftOver < modules ? 'splitLeft' : 'noSplit';
}
