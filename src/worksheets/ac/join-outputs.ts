import { defineWorksheet, type Plot } from '../define.ts';
import { give } from '../result.ts';
import { say } from '../say.ts';
import { legAngleOf } from './leg-angle.ts';
import { legFacts, topologies } from './topology.ts';

/** Volts between like legs up to which two outputs may be joined, and how long they must stay there. Common practice. */
export const joinVolts = 5;
export const joinSeconds = 60;
/** Each output must stand this near its nominal volts first. Common practice: a tenth. */
const bandShare = 0.1;
/** Two outputs that are off differ by nothing too. */
const aliveShare = 0.5;

/** Volts between two equal outputs at an angle: 2·V·sin(θ ÷ 2). */
export const apartVolts = (volts: number, degrees: number): number =>
  2 * volts * Math.sin((degrees * Math.PI) / 360);

export const joinOutputs = defineWorksheet({
  id: 'join-outputs',
  group: 'ac',
  hazards: ['ac-backfeed', 'ac-shock', 'live-metering'],
  inputs: {
    topology: { options: topologies, default: 'opposed-120-240', from: ['inverter.topology'] },
    volts1: { kind: 'voltage', min: 0, max: 400 },
    volts2: { kind: 'voltage', min: 0, max: 400 },
    highVolts: { kind: 'voltage', min: 0, max: 600 },
    lowVolts: { kind: 'voltage', min: 0, max: 600 },
    otherLegVolts: { kind: 'voltage', min: 0, max: 600, optional: true },
    heldS: { kind: 'time', min: 0, max: 3600, default: 0 },
    locked: { options: ['yes', 'no'], default: 'no' },
    ofReading: { kind: 'ratio', min: 0, max: 0.1, default: 0.01, from: ['meter.acVolts.ofReading'] },
    countsVolts: { kind: 'voltage', min: 0, max: 10, default: 0.3 },
    rated1Watts: { kind: 'power', min: 100, max: 100_000, optional: true, from: ['inverter.ratedW'] },
    rated2Watts: { kind: 'power', min: 100, max: 100_000, optional: true, from: ['inverter.ratedW'] },
    unevenShare: { kind: 'ratio', min: 0, max: 0.5, default: 0.1 },
  },
  outputs: {
    verdict: {
      verdicts: [
        'join',
        'off',
        'outOfBand',
        'doNotClose',
        'breathing',
        'apart',
        'otherLegApart',
        'otherLegUnread',
        'notLocked',
        'tooSoon',
      ],
      headline: true,
    },
    angle: { kind: 'count', decimals: 0, headline: true },
    angleHigh: { kind: 'count', decimals: 0 },
    mostApartVolts: { kind: 'voltage' },
    swingVolts: { kind: 'voltage' },
    errorVolts: { kind: 'voltage' },
    thirdVolts: { kind: 'voltage' },
    oppositeVolts: { kind: 'voltage' },
    togetherWatts: { kind: 'power' },
    aloneWatts: { kind: 'power' },
  },
  compute(given) {
    const { volts1, volts2 } = given;
    const nominal = legFacts[given.topology].legVolts;
    const twoLegs = legFacts[given.topology].angle !== undefined;
    const error = (volts: number) => given.ofReading * volts + given.countsVolts;
    const high = Math.max(given.highVolts, given.lowVolts);
    const low = Math.min(given.highVolts, given.lowVolts);
    const off = Math.min(volts1, volts2) < aliveShare * nominal;
    const found = off ? undefined : legAngleOf({ v1: volts1, v2: volts2, v12: high, error });
    const angles = found && 'best' in found ? found : undefined;
    // The meter's own error counts against joining.
    const isApart = (volts: number) => volts + error(volts) > joinVolts;
    const swingVolts = high - low;
    const inBand = (volts: number) => Math.abs(volts / nominal - 1) <= bandShare;
    const verdict = off
      ? ('off' as const)
      : !inBand(volts1) || !inBand(volts2)
        ? ('outOfBand' as const)
        : !angles
          ? ('doNotClose' as const)
          : swingVolts > joinVolts
            ? ('breathing' as const)
            : isApart(high)
              ? ('apart' as const)
              : twoLegs && given.otherLegVolts === undefined
                ? ('otherLegUnread' as const)
                : twoLegs && isApart(given.otherLegVolts!)
                  ? ('otherLegApart' as const)
                  : given.locked === 'no'
                    ? ('notLocked' as const)
                    : given.heldS < joinSeconds
                      ? ('tooSoon' as const)
                      : ('join' as const);
    const ratings = [given.rated1Watts, given.rated2Watts].filter((watts) => watts !== undefined);
    const smaller = ratings.length === 2 ? Math.min(...ratings) : undefined;
    return give({
      verdict,
      angle: angles?.best,
      angleHigh: angles?.high,
      mostApartVolts: high,
      swingVolts,
      errorVolts: error(high),
      thirdVolts: Math.sqrt(volts1 ** 2 + volts2 ** 2 + volts1 * volts2),
      oppositeVolts: volts1 + volts2,
      // Each is meant to carry half; the one that takes more reaches its rating first.
      togetherWatts: smaller === undefined ? undefined : (2 * smaller) / (1 + given.unevenShare),
      aloneWatts: smaller,
    });
  },
  working(given, out) {
    return [
      say('alike', given, out),
      say('third', given, out),
      say('opposite', given, out),
      ...(out.angle === undefined ? [] : [say('angle', given, out)]),
      ...(out.togetherWatts === undefined ? [] : [say('together', given, out)]),
    ];
  },
  plot(given, out) {
    if (out.verdict === 'off' || out.angle === undefined) return undefined;
    const mean = (given.volts1 + given.volts2) / 2;
    return {
      x: { kind: 'count', low: 0, high: 180 },
      y: { kind: 'voltage', unit: 'V', low: 0, high: 2.1 * mean },
      curves: [
        {
          id: 'apart',
          points: Array.from({ length: 37 }, (_, step): [number, number] => [
            5 * step,
            apartVolts(mean, 5 * step),
          ]),
        },
      ],
      levels: [{ id: 'limit', axis: 'y', at: joinVolts }],
      marks: [{ id: 'read', x: out.angle, y: out.mostApartVolts! }],
    } satisfies Plot;
  },
  remarks(given, out) {
    const near = (wanted: number) => out.angle !== undefined && Math.abs(out.angle - wanted) < 20;
    const ids = [
      out.verdict,
      ...(out.verdict === 'apart' && near(180) ? ['legsCrossed'] : []),
      ...(out.verdict === 'apart' && near(120) ? ['roleThird'] : []),
      ...(out.verdict === 'join' ? ['likeToLike'] : ['leaveOpen']),
      ...(out.aloneWatts === undefined ? [] : ['oneLost']),
    ];
    return ids.map((id) => say(`worksheet.join-outputs.${id}`, given, out));
  },
  sources: [
    { id: 'kuphaldt-ac', clause: 'phasor sums' },
    { id: 'sync-check', clause: 'volts across open contacts by angle' },
    { id: 'common-practice' },
  ],
});
