import { cableResistance } from '../battery-dc/cable-resistance.ts';
import { defineWorksheet } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';

/** Current in a ground conductor that is still nothing [A]: filters and cable capacitance leak this much. Common practice. */
const leastAmps = 0.02;
/** A reading this many times its own error is one. Common practice. */
const clear = 3;
/** Less than this share of what a second bond would send is more likely a leak, or a path through earth. Common practice. */
const bondShare = 0.5;

/** Current that a second bond sends home by the ground conductor, beside the neutral: I·Rn ÷ (Rn + Re) [A]. */
export const groundShare = (amps: number, neutralOhms: number, groundOhms: number): number =>
  (amps * neutralOhms) / (neutralOhms + groundOhms);

export const bondCurrents = defineWorksheet({
  id: 'bond-currents',
  group: 'ac',
  hazards: ['ac-shock', 'live-metering'],
  inputs: {
    loadAmps: { kind: 'current', min: 0.1, max: 400 },
    groundAmps: { kind: 'current', min: 0, max: 400 },
    lengthM: { kind: 'length', min: 0.5, max: 2000, from: ['outputFeeder.lengthM'] },
    neutralMm2: { kind: 'wireSize', min: 0.5, max: 500, from: ['outputFeeder.areaMm2'] },
    groundMm2: { kind: 'wireSize', min: 0.5, max: 500 },
    conductorC: { kind: 'temperature', min: -40, max: 120, default: 30, signed: true },
    jointOhms: { kind: 'resistance', min: 0, max: 100, default: 0, unit: 'mΩ' },
    ofReading: { kind: 'ratio', min: 0, max: 0.2, default: 0.02, from: ['meter.acClamp.ofReading'] },
    zeroAmps: { kind: 'current', min: 0, max: 10, default: 0.05 },
  },
  outputs: {
    verdict: { verdicts: ['oneBond', 'secondBond', 'someCurrent', 'cannotTell'], headline: true },
    expectedAmps: { kind: 'current', headline: true },
    errorAmps: { kind: 'current' },
    neutralOhms: { kind: 'resistance' },
    groundOhms: { kind: 'resistance' },
    share: { kind: 'ratio' },
    neutralAmps: { kind: 'current' },
    seenOhms: { kind: 'resistance' },
    neutralVolts: { kind: 'voltage' },
    sharedVolts: { kind: 'voltage' },
    needAmps: { kind: 'current' },
  },
  compute(given) {
    const { loadAmps, groundAmps, lengthM, conductorC } = given;
    const errorAmps = given.ofReading * groundAmps + given.zeroAmps;
    if (groundAmps - errorAmps > loadAmps)
      return refuse('worksheet.bond-currents.moreThanLoad', { groundAmps, loadAmps });
    const ohms = (areaMm2: number) => cableResistance(areaMm2, conductorC).ohmsPerM * lengthM;
    const neutralOhms = ohms(given.neutralMm2) + given.jointOhms;
    const groundOhms = ohms(given.groundMm2);
    const expectedAmps = groundShare(loadAmps, neutralOhms, groundOhms);
    const floor = Math.max(leastAmps, errorAmps);
    const flows = groundAmps > floor;
    const verdict = flows
      ? groundAmps + errorAmps >= bondShare * expectedAmps
        ? ('secondBond' as const)
        : ('someCurrent' as const)
      : expectedAmps > clear * floor
        ? ('oneBond' as const)
        : ('cannotTell' as const);
    const neutralAmps = Math.max(0, loadAmps - groundAmps);
    return give({
      verdict,
      expectedAmps,
      errorAmps,
      neutralOhms,
      groundOhms,
      share: expectedAmps / loadAmps,
      neutralAmps,
      seenOhms: flows ? (neutralAmps * neutralOhms) / groundAmps : undefined,
      neutralVolts: loadAmps * neutralOhms,
      sharedVolts: (loadAmps * neutralOhms * groundOhms) / (neutralOhms + groundOhms),
      needAmps:
        verdict === 'cannotTell' ? (clear * floor * (neutralOhms + groundOhms)) / neutralOhms : undefined,
    });
  },
  working(given, out) {
    const r = (areaMm2: number) => cableResistance(areaMm2, given.conductorC).ohmsPerM;
    return [
      say('neutral', given, out, { ohmsPerM: r(given.neutralMm2) }),
      say('ground', given, out, { ohmsPerM: r(given.groundMm2) }),
      say('expected', given, out),
      say('error', given, out),
      ...(out.seenOhms === undefined ? [] : [say('seen', given, out)]),
    ];
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(out.verdict === 'secondBond' || out.verdict === 'someCurrent' ? ['findIt'] : []),
      ...(out.verdict === 'oneBond' ? ['bothStates'] : []),
      'volts',
    ];
    return ids.map((id) => say(`worksheet.bond-currents.${id}`, given, out));
  },
  sources: [
    { id: 'kuphaldt-dc', clause: 'current dividers' },
    { id: 'nec-250-6' },
    { id: 'nec-2023', clause: 'Chapter 9 Table 8' },
    { id: 'common-practice' },
  ],
});
