import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { cableResistance, dropVolts } from './cable-resistance.ts';
import { usualOhms } from './usual-joints.ts';

/** Resistance of one sound bolted or crimped joint [Ω]. Common practice: up to 0.1 mΩ. */
export const soundJointOhms = usualOhms.joint;
/** A path above this many times what its parts add up to has something wrong in it. Common practice. */
export const highPathTimes = 1.5;

/** Below this a clamp reads mostly its own zero, and a path its meter’s last digit. Common practice. */
export const leastAmps = 1;

export const dcPath = defineWorksheet({
  id: 'dc-path',
  group: 'battery-dc',
  hazards: ['battery-short', 'live-metering'],
  inputs: {
    batteryVolts: { kind: 'voltage', min: 1, max: 100 },
    inverterVolts: { kind: 'voltage', min: 0, max: 100 },
    amps: { kind: 'current', min: -2000, max: 2000, signed: true },
    voltsError: { kind: 'voltage', min: 0, max: 5, default: 0.05 },
    lengthM: { kind: 'length', min: 0.1, max: 50, from: ['batteryCable.lengthM'] },
    areaMm2: { kind: 'wireSize', min: 1, max: 500, from: ['batteryCable.areaMm2'] },
    coating: { options: ['plain', 'tinned'], default: 'plain' },
    conductorC: { kind: 'temperature', min: -40, max: 120, default: 40, signed: true },
    joints: { kind: 'count', min: 0, max: 40, default: 8 },
    devicesOhms: { kind: 'resistance', min: 0, max: 0.02, default: 0.0006, unit: 'mΩ' },
  },
  outputs: {
    verdict: { verdicts: ['sound', 'high', 'wrongSign', 'undetermined'], headline: true },
    lostVolts: { kind: 'voltage', headline: true },
    pathOhms: { kind: 'resistance', headline: true },
    pathLowOhms: { kind: 'resistance' },
    pathHighOhms: { kind: 'resistance' },
    cableOhms: { kind: 'resistance' },
    expectedOhms: { kind: 'resistance', headline: true },
    expectedVolts: { kind: 'voltage' },
    cableVolts: { kind: 'voltage' },
    expectedShare: { kind: 'ratio' },
    excessOhms: { kind: 'resistance' },
    jointShareOhms: { kind: 'resistance' },
    heatWatts: { kind: 'power' },
    excessWatts: { kind: 'power' },
  },
  compute(given) {
    const { batteryVolts, inverterVolts, amps, voltsError, lengthM, joints, devicesOhms } = given;
    if (Math.abs(amps) < leastAmps) return refuse('worksheet.dc-path.noCurrent', { amps, leastAmps });
    const { ohmsPerM } = cableResistance(given.areaMm2, given.conductorC, given.coating);
    const cableOhms = 2 * ohmsPerM * lengthM;
    const expectedOhms = cableOhms + joints * soundJointOhms + devicesOhms;
    const lostVolts = batteryVolts - inverterVolts;
    const pathOhms = lostVolts / amps;
    const errorOhms = voltsError / Math.abs(amps);
    const [pathLowOhms, pathHighOhms] = [pathOhms - errorOhms, pathOhms + errorOhms];
    const limitOhms = highPathTimes * expectedOhms;
    const backwards = pathHighOhms < 0;
    const excessOhms = backwards ? undefined : Math.max(0, pathOhms - expectedOhms);
    return give({
      verdict: backwards
        ? ('wrongSign' as const)
        : pathLowOhms > limitOhms
          ? ('high' as const)
          : pathHighOhms <= limitOhms
            ? ('sound' as const)
            : ('undetermined' as const),
      lostVolts,
      pathOhms: backwards ? undefined : pathOhms,
      pathLowOhms: backwards ? undefined : Math.max(0, pathLowOhms),
      pathHighOhms: backwards ? undefined : pathHighOhms,
      cableOhms,
      expectedOhms,
      expectedVolts: Math.abs(amps) * expectedOhms,
      cableVolts: Math.abs(dropVolts(amps, ohmsPerM, lengthM)),
      expectedShare: (Math.abs(amps) * expectedOhms) / batteryVolts,
      excessOhms,
      jointShareOhms: excessOhms === undefined || joints === 0 ? undefined : excessOhms / joints,
      heatWatts: backwards ? undefined : amps ** 2 * Math.max(0, pathOhms),
      excessWatts: excessOhms === undefined ? undefined : amps ** 2 * excessOhms,
    });
  },
  working(given, out) {
    return [
      say('lost', given, out),
      ...(out.pathOhms === undefined ? [] : [say('path', given, out)]),
      say('cable', given, out, {
        ohmsPerM: (out.cableOhms ?? 0) / (2 * given.lengthM),
        oneWayM: given.lengthM,
      }),
      say('expected', given, out, { jointOhms: soundJointOhms }),
      say('expectedVolts', given, out),
      ...(out.excessOhms === undefined ? [] : [say('excess', given, out), say('heat', given, out)]),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...((out.excessWatts ?? 0) > 20 ? ['hotJoint'] : []),
      ...((out.expectedShare ?? 0) > 0.03 ? ['cableThin'] : []),
    ];
    return ids.map((id) => say(`worksheet.dc-path.${id}`, given, out));
  },
  sources: [
    { id: 'nec-2023', clause: 'Chapter 9 Table 8' },
    { id: 'iec-60228-2004', clause: 'Table 3 (class 5)' },
    { id: 'kuphaldt-dc', clause: 'chapter 2' },
    { id: 'common-practice' },
  ],
});
