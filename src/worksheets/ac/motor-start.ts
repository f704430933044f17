import { cableResistance } from '../battery-dc/cable-resistance.ts';
import { defineWorksheet, type Plot } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { codeLetters, codeLetterVa } from '../tables/nec-430-7-b.ts';
import { lagDegrees, magnitude, over, type Phasor, phasor, plus, times } from './phasor.ts';
import { legFacts, topologies } from './topology.ts';

/** Watts of the mechanical horsepower that code letters count in. */
const wattsPerHp = 745.69987;
/** Share of its rated volts that a motor should still have while it starts. NEC 695.7 holds fire pumps to it. */
export const leastStartShare = 0.85;

/** Amps a motor draws with its rotor held, at rated volts: from its plate, or from the high end of its code letter. */
export function lockedAmpsOf(
  volts: number,
  plateAmps: number | undefined,
  letter: string,
  ratedWatts: number | undefined,
): { from: number; to: number } | 'noData' | 'noUpperEnd' {
  if (plateAmps !== undefined) return { from: plateAmps, to: plateAmps };
  const va = codeLetterVa(letter);
  if (!va || ratedWatts === undefined) return 'noData';
  if (va.to === undefined) return 'noUpperEnd';
  const hp = ratedWatts / wattsPerHp;
  return { from: (va.from * hp) / volts, to: (va.to * hp) / volts };
}

export interface Start {
  sourceVolts: number;
  /** Rated volts and the amps held at them: together the motor's impedance while it stands still. */
  motorVolts: number;
  lockedAmps: number;
  powerFactor: number;
  /** Out and back [Ω]. */
  loopOhms: number;
}

/** Volts at a motor and the amps it really draws in its first moment, from a stiff source through a run. */
export function startOf(start: Start): { volts: number; amps: number } {
  const motor = phasor(start.motorVolts / start.lockedAmps, lagDegrees(start.powerFactor));
  const whole: Phasor = plus(motor, [start.loopOhms, 0]);
  const current = over([start.sourceVolts, 0], whole);
  return { volts: magnitude(times(current, motor)), amps: magnitude(current) };
}

export const motorStart = defineWorksheet({
  id: 'motor-start',
  group: 'ac',
  hazards: ['ac-shock', 'live-metering'],
  inputs: {
    topology: { options: topologies, default: 'opposed-120-240', from: ['inverter.topology'] },
    connection: { options: ['leg', 'across'], default: 'across' },
    motorVolts: { kind: 'voltage', min: 100, max: 260 },
    lockedAmps: { kind: 'current', min: 0.5, max: 500, optional: true },
    letter: { options: ['none', ...codeLetters], default: 'none' },
    ratedWatts: { kind: 'power', min: 20, max: 20_000, optional: true, unit: 'hp' },
    startFactor: { kind: 'ratio', min: 0.2, max: 1, default: 0.6 },
    sourceVolts: { kind: 'voltage', min: 90, max: 260 },
    lengthM: { kind: 'length', min: 0, max: 2000, default: 20, from: ['outputFeeder.lengthM'] },
    areaMm2: { kind: 'wireSize', min: 0.5, max: 500, from: ['outputFeeder.areaMm2'] },
    conductorC: { kind: 'temperature', min: -40, max: 120, default: 40, signed: true },
    surgeVa: {
      kind: 'apparentPower',
      min: 100,
      max: 500_000,
      optional: true,
      from: ['derived.surgeWatts'],
    },
    runningVa: { kind: 'apparentPower', min: 0, max: 100_000, default: 0 },
    efficiency: { kind: 'ratio', min: 0.5, max: 1, default: 0.9, from: ['inverter.efficiency'] },
    batteryVolts: { kind: 'voltage', min: 10, max: 100, default: 44, from: ['inverter.dcMinV'] },
  },
  outputs: {
    verdict: { verdicts: ['starts', 'overSurge', 'dips', 'both', 'surgeUnknown'], headline: true },
    startVa: { kind: 'apparentPower', headline: true },
    motorShare: { kind: 'ratio', headline: true },
    lockedAtMost: { kind: 'current' },
    lockedAtLeast: { kind: 'current' },
    loopOhms: { kind: 'resistance' },
    startVolts: { kind: 'voltage' },
    startAmps: { kind: 'current' },
    torqueShare: { kind: 'ratio' },
    roomVa: { kind: 'apparentPower' },
    askedVa: { kind: 'apparentPower' },
    batteryAmps: { kind: 'current' },
    longestM: { kind: 'length' },
  },
  compute(given) {
    const { angle } = legFacts[given.topology];
    const twoLegs = angle === 180 || angle === 120;
    if (given.connection === 'across' && !twoLegs) return refuse('worksheet.motor-start.nothingAcross');
    const locked = lockedAmpsOf(given.motorVolts, given.lockedAmps, given.letter, given.ratedWatts);
    if (typeof locked === 'string') return refuse(`worksheet.motor-start.${locked}`);
    const loopOhmsAt = (oneWayM: number) =>
      2 * cableResistance(given.areaMm2, given.conductorC).ohmsPerM * oneWayM;
    const at = (oneWayM: number) =>
      startOf({
        sourceVolts: given.sourceVolts,
        motorVolts: given.motorVolts,
        lockedAmps: locked.to,
        powerFactor: given.startFactor,
        loopOhms: loopOhmsAt(oneWayM),
      });
    const now = at(given.lengthM);
    const motorShare = now.volts / given.motorVolts;
    const startVa = given.sourceVolts * now.amps;
    // A load on one leg has that leg's half of the surge alone, and so has each leg of one across both.
    const onOneLeg = given.connection === 'leg' && twoLegs;
    const roomVa = given.surgeVa === undefined ? undefined : onOneLeg ? given.surgeVa / 2 : given.surgeVa;
    const askedVa = startVa + given.runningVa;
    const overSurge = roomVa !== undefined && askedVa > roomVa;
    const dips = motorShare < leastStartShare;
    const motorWatts = now.volts * now.amps * given.startFactor + now.amps ** 2 * loopOhmsAt(given.lengthM);
    return give({
      verdict: overSurge
        ? dips
          ? ('both' as const)
          : ('overSurge' as const)
        : dips
          ? ('dips' as const)
          : roomVa === undefined
            ? ('surgeUnknown' as const)
            : ('starts' as const),
      startVa,
      motorShare,
      lockedAtMost: locked.to,
      lockedAtLeast: locked.from === locked.to ? undefined : locked.from,
      loopOhms: loopOhmsAt(given.lengthM),
      startVolts: now.volts,
      startAmps: now.amps,
      torqueShare: motorShare ** 2,
      roomVa,
      askedVa,
      batteryAmps: (motorWatts + given.runningVa) / (given.efficiency * given.batteryVolts),
      longestM: longest(given.sourceVolts / given.motorVolts, (m) => at(m).volts / given.motorVolts),
    });
  },
  working(given, out) {
    const va = codeLetterVa(given.letter);
    return [
      ...(given.lockedAmps !== undefined
        ? [say('plate', given, out)]
        : [
            say('letter', given, out, {
              vaPerHp: va?.to ?? 0,
              horsepower: (given.ratedWatts ?? 0) / wattsPerHp,
            }),
          ]),
      say('loop', given, out, { ohmsPerM: cableResistance(given.areaMm2, given.conductorC).ohmsPerM }),
      say('volts', given, out, { motorOhms: given.motorVolts / out.lockedAtMost! }),
      say('torque', given, out),
      say('va', given, out),
      say('battery', given, out),
    ];
  },
  plot(given, out) {
    const most = Math.max(10, 2 * given.lengthM, out.longestM ? 1.3 * out.longestM : 0);
    const highM = Math.min(2000, most);
    const points = Array.from({ length: 41 }, (_, step): [number, number] => {
      const m = (highM * step) / 40;
      const { volts } = startOf({
        sourceVolts: given.sourceVolts,
        motorVolts: given.motorVolts,
        lockedAmps: out.lockedAtMost!,
        powerFactor: given.startFactor,
        loopOhms: 2 * cableResistance(given.areaMm2, given.conductorC).ohmsPerM * m,
      });
      return [m, volts];
    });
    const top = Math.max(given.sourceVolts, given.motorVolts) * 1.05;
    return {
      x: { kind: 'length', low: 0, high: Math.max(highM, 1.01 * given.lengthM) },
      y: { kind: 'voltage', unit: 'V', low: 0, high: top },
      curves: [{ id: 'start', points }],
      levels: [{ id: 'least', axis: 'y', at: leastStartShare * given.motorVolts }],
      marks: [{ id: 'here', x: given.lengthM, y: out.startVolts! }],
    } satisfies Plot;
  },
  remarks(given, out) {
    const ids = [
      out.verdict,
      ...(given.lockedAmps === undefined ? ['fromLetter'] : []),
      ...(out.verdict === 'dips' || out.verdict === 'both'
        ? [out.longestM === undefined ? 'sourceLow' : 'shorter']
        : []),
      ...(out.roomVa !== undefined && out.roomVa < given.surgeVa! ? ['oneLegHasHalf'] : []),
      ...(out.verdict === 'starts' ? [] : ['softStart']),
      'voltAmps',
    ];
    return ids.map((id) => say(`worksheet.motor-start.${id}`, given, out));
  },
  sources: [
    { id: 'nec-430-7-b', clause: 'Table 430.7(B)' },
    { id: 'nec-695-7' },
    { id: 'nec-2023', clause: 'Chapter 9 Table 8' },
    { id: 'kuphaldt-ac', clause: 'series impedances' },
    { id: 'common-practice' },
  ],
});

/** Longest run that leaves the motor its least share [m]; nothing where the source is too low by itself. */
function longest(shareAtSource: number, shareAt: (oneWayM: number) => number): number | undefined {
  if (shareAtSource < leastStartShare) return undefined;
  let [low, high] = [0, 2000];
  if (shareAt(high) >= leastStartShare) return high;
  for (let turn = 0; turn < 50; turn++) {
    const middle = (low + high) / 2;
    if (shareAt(middle) >= leastStartShare) low = middle;
    else high = middle;
  }
  return low;
}
