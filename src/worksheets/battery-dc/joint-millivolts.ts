import { defineWorksheet } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { usualOhms } from './usual-joints.ts';

/** A joint this many times its twin, or its own first reading, wants looking at. ANSI/NETA: 50 % over the lowest of like ones. */
const highTimes = 1.5;
/** Heat in a spot the size of a lug that makes it too hot to hold [W]. Common practice. */
const hotWatts = 5;
/** Heat that destroys a lug and what it sits on [W]. Common practice. */
const burningWatts = 20;
/** A meter error above this share of the resistance leaves too little to judge by. */
const coarseShare = 0.25;

/** No bolted joint of a battery path is better than this; a reading below it is no reading [Ω]. */
const leastOhms = 1e-6;

/** Resistance of one joint [Ω] from the volts across it and the amps through it. */
export const jointOhms = (volts: number, amps: number): number => volts / amps;
/** Heat that a resistance gives off [W]. */
export const jointWatts = (ohms: number, amps: number): number => amps ** 2 * ohms;
/** The most that a joint may have beside its like [Ω]. */
export const limitBeside = (lowestOhms: number): number => highTimes * lowestOhms;

/** Is this lug, fuse, switch or breaker sound, and how hot does it run? */
export const jointMillivolts = defineWorksheet({
  id: 'joint-millivolts',
  group: 'battery-dc',
  hazards: ['battery-short', 'live-metering', 'hot-surface'],
  inputs: {
    part: { options: ['joint', 'fuse', 'switch', 'breaker'], default: 'joint' },
    volts: { kind: 'voltage', min: 0, max: 5, unit: 'mV' },
    amps: { kind: 'current', min: 1, max: 2000 },
    voltsError: { kind: 'voltage', min: 0, max: 0.05, default: 0.0002, unit: 'mV' },
    twinVolts: { kind: 'voltage', min: 0, max: 5, optional: true, unit: 'mV' },
    firstOhms: { kind: 'resistance', min: 1e-6, max: 0.1, optional: true, unit: 'mΩ' },
    fullAmps: {
      kind: 'current',
      min: 1,
      max: 2000,
      optional: true,
      from: ['derived.mainDeviceA', 'mainSwitch.ratedA'],
    },
  },
  outputs: {
    verdict: { verdicts: ['sound', 'high', 'undetermined'], headline: true },
    ohms: { kind: 'resistance', headline: true },
    lowOhms: { kind: 'resistance' },
    highOhms: { kind: 'resistance' },
    limitOhms: { kind: 'resistance', headline: true },
    heatWatts: { kind: 'power', headline: true },
    fullVolts: { kind: 'voltage' },
    fullWatts: { kind: 'power' },
    twinOhms: { kind: 'resistance' },
    timesTwin: { kind: 'count', decimals: 1 },
    timesFirst: { kind: 'count', decimals: 1 },
  },
  compute(given) {
    const { volts, amps, voltsError, twinVolts, firstOhms, fullAmps } = given;
    const ohms = jointOhms(volts, amps);
    const errorOhms = jointOhms(voltsError, amps);
    const [lowOhms, highOhms] = [Math.max(0, ohms - errorOhms), ohms + errorOhms];
    const twinOhms = twinVolts === undefined ? undefined : jointOhms(twinVolts, amps);
    // A twin inside the meter's own error compares with nothing.
    const twin = twinOhms !== undefined && twinOhms > Math.max(errorOhms, leastOhms) ? twinOhms : undefined;
    const beside = [twin, firstOhms].filter((each) => each !== undefined);
    const limitOhms = beside.length > 0 ? limitBeside(Math.min(...beside)) : usualOhms[given.part];
    return give({
      verdict:
        lowOhms > limitOhms
          ? ('high' as const)
          : highOhms <= limitOhms
            ? ('sound' as const)
            : ('undetermined' as const),
      ohms,
      lowOhms,
      highOhms,
      limitOhms,
      heatWatts: jointWatts(ohms, amps),
      fullVolts: fullAmps === undefined ? undefined : ohms * fullAmps,
      fullWatts: fullAmps === undefined ? undefined : jointWatts(ohms, fullAmps),
      twinOhms,
      timesTwin: twin === undefined ? undefined : ohms / twin,
      timesFirst: firstOhms === undefined ? undefined : ohms / firstOhms,
    });
  },
  working(given, out) {
    return [
      say('ohms', given, out),
      say('error', given, out, { errorOhms: jointOhms(given.voltsError, given.amps) }),
      say('heat', given, out),
      ...(out.timesTwin === undefined ? [] : [say('twin', given, out)]),
      ...(out.fullWatts === undefined ? [] : [say('full', given, out)]),
    ];
  },
  remarks(given, out) {
    const hottest = Math.max(out.heatWatts ?? 0, out.fullWatts ?? 0);
    const beside = out.timesTwin !== undefined || given.firstOhms !== undefined;
    const ids = [
      ...((out.ohms ?? 0) < leastOhms ? ['nothing'] : []),
      out.verdict,
      ...((out.heatWatts ?? 0) >= burningWatts
        ? ['burning']
        : hottest >= burningWatts
          ? ['wouldBurn']
          : hottest >= hotWatts
            ? ['hot']
            : []),
      ...((out.timesTwin ?? 1) * highTimes < 1 ? ['twinWorse'] : []),
      ...(beside ? [] : ['noTwin']),
      ...(given.voltsError > coarseShare * given.volts ? ['coarse'] : []),
      'onTheMetal',
    ];
    return ids.map((id) => say(`worksheet.joint-millivolts.${id}`, { hottestWatts: hottest }, given, out));
  },
  plot(given, out) {
    const ohms = out.ohms ?? 0;
    if (ohms === 0) return undefined;
    const high = 1.25 * Math.max(given.amps, given.fullAmps ?? 0);
    const amps = Array.from({ length: 41 }, (_, at) => (high * at) / 40);
    return {
      x: { kind: 'current', low: 0, high },
      y: { kind: 'power', low: 0, high: jointWatts(Math.max(ohms, out.limitOhms ?? 0), high) },
      curves: [
        { id: 'this', points: amps.map((each) => [each, jointWatts(ohms, each)] as const) },
        { id: 'limit', points: amps.map((each) => [each, jointWatts(out.limitOhms ?? 0, each)] as const) },
      ],
      levels: [],
      marks: [{ id: 'now', x: given.amps, y: jointWatts(ohms, given.amps) }],
    };
  },
  sources: [
    { id: 'kuphaldt-dc', clause: 'chapter 2' },
    { id: 'neta-connections' },
    { id: 'common-practice' },
  ],
});
