import { defineWorksheet, type Plot, type ResultsOf, type TimedReading, type ValuesOf } from '../define.ts';
import { give, refuse } from '../result.ts';
import { say } from '../say.ts';
import { closingAmps, resistorJoules, timeConstantS, timeToVolts, voltsAt } from './capacitor-charge.ts';
import { type ChargeFit, chargedShare, fitCharge } from './charge-fit.ts';
import { greatestWatts, voltsUnderPower } from './plateau.ts';
import { chooseResistor, resistorHeat } from './resistor-choice.ts';

const inputs = {
  sourceVolts: { kind: 'voltage', min: 10, max: 100, from: ['derived.bankVolts'] },
  resistorOhms: { kind: 'resistance', min: 1, max: 1000, from: ['precharge.resistorOhm'] },
  capacitanceF: { kind: 'capacitance', min: 1e-5, max: 1, unit: 'mF', from: ['derived.bankCapacitanceF'] },
  startVolts: { kind: 'voltage', min: 0, max: 100, default: 0 },
  standbyWatts: { kind: 'power', min: 0, max: 1000, default: 0 },
  pathOhms: { kind: 'resistance', min: 0.0005, max: 1, default: 0.01, unit: 'mΩ' },
  ratedWatts: { kind: 'power', min: 1, max: 2000, optional: true, from: ['precharge.ratedW'] },
  pulseJoules: {
    kind: 'energy',
    min: 0.1,
    max: 100_000,
    optional: true,
    unit: 'J',
    from: ['precharge.ratedEnergyJ'],
  },
  readings: { timed: 'voltage' },
} as const;

const outputs = {
  verdict: { verdicts: ['noReadings', 'charged', 'rising', 'load', 'short'], headline: true },
  fiveTauS: { kind: 'time', unit: 's', headline: true },
  tauS: { kind: 'time', unit: 's' },
  t95S: { kind: 'time', unit: 's' },
  peakAmps: { kind: 'current', headline: true },
  peakWatts: { kind: 'power' },
  joules: { kind: 'energy', unit: 'J', headline: true },
  residualVolts: { kind: 'voltage', unit: 'V' },
  closingAmps: { kind: 'current' },
  closingAtPassAmps: { kind: 'current' },
  bareAmps: { kind: 'current' },
  greatestWatts: { kind: 'power' },
  settlesVolts: { kind: 'voltage' },
  leastOhms: { kind: 'resistance' },
  mostOhms: { kind: 'resistance' },
  tries: { kind: 'count' },
  coolPerTryS: { kind: 'time', unit: 's' },
  shortS: { kind: 'time', unit: 's' },
  seenTauS: { kind: 'time', unit: 's' },
  seenVolts: { kind: 'voltage' },
  seenCapacitanceF: { kind: 'capacitance' },
  loadOhms: { kind: 'resistance' },
  loadWatts: { kind: 'power' },
} as const;

type In = ValuesOf<typeof inputs>;
type Out = ResultsOf<typeof outputs>;

/** Where the drawn curve ends, in time constants. */
const drawnTaus = 6;

export const preCharge = defineWorksheet({
  id: 'pre-charge',
  group: 'battery-dc',
  hazards: ['battery-short', 'live-metering'],
  inputs,
  outputs,
  compute(given) {
    const { sourceVolts, resistorOhms, capacitanceF, startVolts, pathOhms, standbyWatts } = given;
    if (startVolts >= sourceVolts)
      return refuse('worksheet.pre-charge.alreadyCharged', { startVolts, sourceVolts });
    const seen = readingsSeen(given);
    if (seen && !seen.ok) return seen;
    const tauS = timeConstantS(given);
    const residualVolts = sourceVolts - voltsAt(given, 5 * tauS);
    const choice = chooseResistor(given);
    const heat =
      given.ratedWatts === undefined
        ? undefined
        : resistorHeat(given, resistorOhms, given.ratedWatts, given.pulseJoules);
    return give({
      verdict: verdictOf(seen?.out),
      tauS,
      fiveTauS: 5 * tauS,
      t95S: timeToVolts(given, chargedShare * sourceVolts) ?? 0,
      peakAmps: (sourceVolts - startVolts) / resistorOhms,
      peakWatts: (sourceVolts - startVolts) ** 2 / resistorOhms,
      joules: resistorJoules({ sourceVolts, resistorOhms, capacitanceF, startVolts }),
      residualVolts,
      closingAmps: closingAmps(residualVolts, pathOhms),
      closingAtPassAmps: closingAmps((1 - chargedShare) * sourceVolts, pathOhms),
      bareAmps: closingAmps(sourceVolts - startVolts, pathOhms),
      greatestWatts: greatestWatts(sourceVolts, resistorOhms),
      settlesVolts: standbyWatts > 0 ? voltsUnderPower(sourceVolts, resistorOhms, standbyWatts) : undefined,
      leastOhms: choice.ok ? choice.out.leastOhms : undefined,
      mostOhms: choice.ok ? choice.out.mostOhms : undefined,
      tries: heat?.ok ? heat.out.tries : undefined,
      coolPerTryS: heat?.ok ? heat.out.coolPerTryS : undefined,
      shortS: heat?.ok ? heat.out.shortS : undefined,
      ...seenResults(seen?.out),
    });
  },
  working(given, out) {
    return [
      say('tau', given, out),
      say('fiveTau', given, out),
      say('peakAmps', given, out),
      say('peakWatts', given, out),
      say('joules', given, out),
      say('residual', given, out),
      say('closing', given, out),
      say('greatest', given, out),
      ...(out.settlesVolts === undefined ? [] : [say('settles', given, out)]),
      ...(out.loadOhms === undefined ? [] : [say('loadOhms', given, out), say('loadWatts', given, out)]),
    ];
  },
  remarks(given, out) {
    const ids = [
      ...(out.verdict === 'noReadings' ? [] : [out.verdict]),
      ...(given.standbyWatts > 0 && out.settlesVolts === undefined ? ['neverSettles'] : []),
      ...(out.settlesVolts !== undefined && out.settlesVolts < chargedShare * given.sourceVolts
        ? ['stopsShort']
        : []),
      ...(out.mostOhms === undefined
        ? ['noResistorFits']
        : given.resistorOhms < out.leastOhms!
          ? ['resistorLow']
          : given.resistorOhms > out.mostOhms
            ? ['resistorHigh']
            : []),
      ...(out.tries === 0 ? ['resistorTooSmall'] : []),
      ...(out.shortS === undefined ? [] : ['shortLimit']),
      'passIsNotAll',
    ];
    return ids.map((id) => say(`worksheet.pre-charge.${id}`, given, out));
  },
  plot(given, out): Plot {
    const lastReadingS = Math.max(0, ...given.readings.map((reading) => reading.tS));
    const endS = Math.max(drawnTaus * (out.tauS ?? 1), 1.05 * lastReadingS);
    const times = Array.from({ length: 61 }, (_, step) => (endS * step) / 60);
    return {
      x: { kind: 'time', unit: 's', low: 0, high: endS },
      y: { kind: 'voltage', low: 0, high: 1.08 * given.sourceVolts },
      curves: [
        { id: 'expected', points: times.map((tS) => [tS, voltsAt(given, tS)] as const) },
        ...(out.seenTauS !== undefined
          ? [{ id: 'fitted', points: times.map((tS) => [tS, fittedVolts(given, out, tS)] as const) }]
          : []),
      ],
      levels: [
        { id: 'source', axis: 'y', at: given.sourceVolts },
        { id: 'pass', axis: 'y', at: chargedShare * given.sourceVolts },
        { id: 'fiveTau', axis: 'x', at: out.fiveTauS ?? 0 },
      ],
      marks: given.readings.map(({ tS, value }) => ({ id: 'reading', x: tS, y: value })),
    };
  },
  sources: [
    { id: 'kuphaldt-dc', clause: 'chapter 16' },
    { id: 'army-mm0704', clause: 'universal time constant chart' },
    { id: 'iec-60063', clause: 'E12' },
    { id: 'common-practice' },
  ],
});

function readingsSeen(given: In) {
  if (given.readings.length === 0) return undefined;
  const readings = given.readings.map(({ tS, value }: TimedReading) => ({ tS, volts: value }));
  return fitCharge({ ...given, readings });
}

function verdictOf(fit: ChargeFit | undefined): Out['verdict'] {
  if (!fit) return 'noReadings';
  return fit.plateau.kind === 'none' ? 'charged' : fit.plateau.kind;
}

const seenKeys = ['seenTauS', 'seenCapacitanceF', 'seenVolts', 'loadOhms', 'loadWatts'] as const;

function seenResults(fit: ChargeFit | undefined): Pick<Out, (typeof seenKeys)[number]> {
  const plateau = fit && 'ohms' in fit.plateau ? fit.plateau : undefined;
  return {
    // Without a lower end the rise was over before the first reading: no time constant was seen.
    seenTauS: fit?.tauS.low === undefined ? undefined : fit.tauS.value,
    seenCapacitanceF: fit?.tauS.low === undefined ? undefined : fit.capacitanceF.value,
    seenVolts: fit?.vInfVolts.value,
    loadOhms: plateau?.ohms,
    loadWatts: plateau?.watts,
  };
}

function fittedVolts(given: In, out: Out, tS: number): number {
  const end = out.seenVolts ?? given.sourceVolts;
  return end + (given.startVolts - end) * Math.exp(-tS / (out.seenTauS ?? 1));
}
