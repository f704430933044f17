import { cableResistance } from '../battery-dc/cable-resistance.ts';
import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { type LegReadings, threeWire } from './three-wire.ts';
import { legFacts, topologies } from './topology.ts';

/** Service volts may stand this far from nominal: ANSI C84.1, range A. */
const bandShare = 0.05;
/** From here up a 120 V load is being destroyed. Common practice: a tenth over. */
const harmShare = 0.1;

export const legVolts = defineWorksheet({
  id: 'leg-volts',
  group: 'ac',
  hazards: ['neutral-open', 'ac-shock'],
  inputs: {
    topology: { options: topologies, default: 'opposed-120-240', from: ['inverter.topology'] },
    sourceVolts: { kind: 'voltage', min: 90, max: 260, default: 120 },
    watts1: { kind: 'power', min: 0, max: 20_000, default: 1000 },
    factor1: { kind: 'ratio', min: 0.1, max: 1, default: 1 },
    watts2: { kind: 'power', min: 0, max: 20_000, default: 100 },
    factor2: { kind: 'ratio', min: 0.1, max: 1, default: 1 },
    wattsAcross: { kind: 'power', min: 0, max: 20_000, default: 0 },
    lengthM: { kind: 'length', min: 0, max: 2000, default: 20, from: ['outputFeeder.lengthM'] },
    areaMm2: { kind: 'wireSize', min: 1, max: 500, default: 10, from: ['outputFeeder.areaMm2'] },
    conductorC: { kind: 'temperature', min: -40, max: 120, default: 40, signed: true },
    joint1Ohms: { kind: 'resistance', min: 0, max: 100, default: 0 },
    joint2Ohms: { kind: 'resistance', min: 0, max: 100, default: 0 },
    neutral: { options: ['sound', 'resistive', 'open'], default: 'sound' },
    neutralJointOhms: { kind: 'resistance', min: 0, max: 10_000, default: 1 },
  },
  outputs: {
    verdict: { verdicts: ['inBand', 'outOfBand', 'destroys'], headline: true },
    v1: { kind: 'voltage', headline: true },
    v2: { kind: 'voltage', headline: true },
    v12: { kind: 'voltage' },
    sumVolts: { kind: 'voltage' },
    neutralVolts: { kind: 'voltage' },
    i1: { kind: 'current' },
    i2: { kind: 'current' },
    neutralAmps: { kind: 'current' },
    conductorOhms: { kind: 'resistance' },
    neutralOhms: { kind: 'resistance' },
    jointWatts: { kind: 'power' },
    v1Sound: { kind: 'voltage' },
    v2Sound: { kind: 'voltage' },
  },
  compute(given) {
    const { angle } = legFacts[given.topology];
    const single = angle === undefined;
    if (single && given.watts2 > 0) return refuse('worksheet.leg-volts.oneLeg');
    const nominal = legFacts[given.topology].legVolts;
    const conductorOhms = cableResistance(given.areaMm2, given.conductorC).ohmsPerM * given.lengthM;
    const joint = { sound: 0, resistive: given.neutralJointOhms, open: undefined }[given.neutral];
    const neutralOhms = joint === undefined ? undefined : conductorOhms + joint;
    const acrossVolts = Math.max(nominal, 2 * nominal * Math.sin((((angle ?? 0) / 2) * Math.PI) / 180));
    const read = (ohms: number | undefined): LegReadings =>
      threeWire({
        legVolts: given.sourceVolts,
        angle: angle ?? 0,
        hot1Ohms: conductorOhms + given.joint1Ohms,
        hot2Ohms: conductorOhms + given.joint2Ohms,
        neutralOhms: ohms,
        load1: { watts: given.watts1, powerFactor: given.factor1, volts: nominal },
        load2: { watts: given.watts2, powerFactor: given.factor2, volts: nominal },
        across: { watts: given.wattsAcross, powerFactor: 1, volts: acrossVolts },
      });
    const now = read(neutralOhms);
    const sound = read(conductorOhms);
    const legs = single ? [now.v1] : [now.v1, now.v2];
    const verdict = legs.some((volts) => volts > (1 + harmShare) * nominal)
      ? ('destroys' as const)
      : legs.every((volts) => Math.abs(volts / nominal - 1) <= bandShare)
        ? ('inBand' as const)
        : ('outOfBand' as const);
    return give({
      verdict,
      v1: now.v1,
      v2: single ? undefined : now.v2,
      v12: single ? undefined : now.v12,
      sumVolts: single ? undefined : now.v1 + now.v2,
      neutralVolts: now.neutralVolts,
      i1: now.i1,
      i2: single ? undefined : now.i2,
      neutralAmps: now.neutralAmps,
      conductorOhms,
      neutralOhms,
      jointWatts: joint === undefined ? undefined : now.neutralAmps ** 2 * joint,
      v1Sound: sound.v1,
      v2Sound: single ? undefined : sound.v2,
    });
  },
  working(given, out) {
    return [
      say('conductor', given, out, { ohmsPerM: cableResistance(given.areaMm2, given.conductorC).ohmsPerM }),
      say('amps1', given, out),
      ...(out.neutralOhms === undefined
        ? [say(out.v12 === undefined ? 'noWayBack' : 'neutralOpen', given, out)]
        : [say('neutralVolts', given, out)]),
      ...(out.v2 === undefined ? [] : [say('legs', given, out)]),
    ];
  },
  remarks(given, out) {
    const { angle } = legFacts[given.topology];
    const ids = [
      out.verdict === 'destroys' ? 'destroys' : out.verdict === 'outOfBand' ? 'outOfBand' : 'inBand',
      ...(given.neutral === 'open' && angle !== undefined && given.watts1 + given.watts2 === 0
        ? ['nothingShows']
        : []),
      ...(given.neutral === 'open' && (given.factor1 < 1 || given.factor2 < 1) && angle === 180
        ? ['unlikeFactors']
        : []),
      ...((out.jointWatts ?? 0) > 5 ? ['hotJoint'] : []),
      ...(angle === 0 ? ['commonSum'] : []),
      ...(given.neutral === 'sound' && (out.v2 ?? 0) > given.sourceVolts + 0.05 ? ['soundRise'] : []),
    ];
    return ids.map((id) => say(`worksheet.leg-volts.${id}`, given, out));
  },
  sources: [
    { id: 'nec-2023', clause: 'Chapter 9 Table 8' },
    { id: 'ansi-c84-1' },
    { id: 'kuphaldt-ac', clause: 'split-phase power systems' },
    { id: 'common-practice' },
  ],
});
