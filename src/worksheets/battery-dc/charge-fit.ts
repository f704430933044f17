import { give, type Result, refuse } from '../result.ts';
import { aboveSourceShare, bankF, type Candidate, curveAt, search } from './charge-search.ts';
import { plateauLoadOhms, plateauWatts } from './plateau.ts';

/** Bus volts read at a time after the resistor went in. */
export interface TimedReading {
  readonly tS: number;
  readonly volts: number;
}

export interface ChargeFitInput {
  readonly readings: readonly TimedReading[];
  readonly sourceVolts: number;
  readonly resistorOhms: number;
  /** Bus volts when the resistor went in [V]. */
  readonly startVolts?: number;
  /** Half-width of one reading: meter error and the digit written down [V], > 0. */
  readonly readingErrorVolts?: number;
  /** Half-width of one time: a thumb on a stopwatch [s], >= 0. */
  readonly timeErrorS?: number;
  /** The largest bank it could be [F]; without it a bus held at zero could pass for an endless bank. */
  readonly largestF?: number;
}

/** An estimate and the values the readings cannot tell it from. No `low`: it was over before the first reading. */
export interface Estimate {
  readonly value: number;
  readonly low?: number;
  readonly high: number;
}

/**
 * What the bus did. `none`: it rose to the source. `load`, `short`: it stopped short of it, held there by
 * something that draws. `rising`: the readings end too early to tell.
 */
export type Plateau =
  | { readonly kind: 'none' }
  | { readonly kind: 'rising' }
  | { readonly kind: 'load' | 'short'; readonly ohms: number; readonly watts: number };

export interface ChargeFit {
  readonly tauS: Estimate;
  readonly vInfVolts: Estimate;
  /** From the first slope, so that a load across the bank does not spoil it [F]. */
  readonly capacitanceF: Estimate;
  readonly rmseVolts: number;
  readonly plateau: Plateau;
}

/** A thing across the bus that passes more than a bank at standby ever could. Common practice. */
export const shortBelowOhms = 5;
/** Share of the source's volts that counts as charged. Common practice: the switch may close on 95 %. */
export const chargedShare = 0.95;

/** A thumb on a stopwatch, a glance at a meter [s]. */
const usualTimeErrorS = 0.3;
/** No hand and no meter reads a rising voltage sooner than this after the start [s]. */
const leastTimeS = 0.01;

/**
 * Fits v(t) = v∞ + (v0 − v∞)·e^(−t/τ) to the readings by weighted least squares: a search over τ, and for each
 * τ the v∞ that fits best and that the circuit allows. A first fit without weights gives the slope at each
 * reading, and so what an error in its time is worth in volts. The range given for a value holds every fit
 * whose misfit the readings' own error can explain.
 */
export function fitCharge(input: ChargeFitInput): Result<ChargeFit> {
  const refusal = refuseReadings(input);
  if (refusal) return refusal;
  const { readings } = input;
  const voltsError = (input.readingErrorVolts ?? 0.1) / Math.sqrt(3);
  const timeError = (input.timeErrorS ?? usualTimeErrorS) / Math.sqrt(3);
  const rough = search(
    input,
    readings.map(() => voltsError ** -2),
  ).best;
  const slopeAt = (tS: number): number =>
    ((rough.vInf - (input.startVolts ?? 0)) / rough.tauS) * Math.exp(-tS / rough.tauS);
  const weights = readings.map(({ tS }) => 1 / (voltsError ** 2 + (slopeAt(tS) * timeError) ** 2));
  const { best, allowed, ...straight } = search(input, weights);
  // A stopwatch started late or early shifts every time alike, which no weight on single readings covers.
  const shiftS = input.timeErrorS ?? usualTimeErrorS;
  const shifted = [-shiftS, shiftS].map((byS) =>
    search(
      {
        ...input,
        readings: readings.map(({ tS, volts }) => ({
          tS: tS === 0 ? 0 : Math.max(leastTimeS, tS + byS),
          volts,
        })),
      },
      weights,
    ),
  );
  const likely = [straight, ...shifted].flatMap((found) => found.likely).filter((fit) => fit.chi2 <= allowed);
  const settledAtOnce =
    straight.settledAtOnce || shifted.some((found) => found.settledAtOnce && found.best.chi2 <= allowed);

  const estimate = (of: (fit: Candidate) => number, slack: number, openLow: boolean): Estimate => ({
    value: of(best),
    ...(openLow ? {} : { low: Math.min(...likely.map(of)) - slack }),
    high: Math.max(...likely.map(of)) + slack,
  });
  const meanVoltsError = 2 / Math.sqrt(weights.reduce((sum, weight) => sum + weight, 0));
  const vInfVolts = estimate((fit) => fit.vInf, meanVoltsError, false);
  return give({
    tauS: estimate((fit) => fit.tauS, 0, settledAtOnce),
    vInfVolts,
    capacitanceF: estimate((fit) => bankF(input, fit), 0, settledAtOnce),
    rmseVolts: Math.sqrt(
      readings.reduce((sum, { tS, volts }) => sum + (curveAt(input, best, tS) - volts) ** 2, 0) /
        readings.length,
    ),
    plateau: judgePlateau(input, vInfVolts),
  });
}

function judgePlateau(input: ChargeFitInput, vInf: Estimate): Plateau {
  const passVolts = chargedShare * input.sourceVolts;
  const last = input.readings[input.readings.length - 1]!.volts;
  if (last >= passVolts) return { kind: 'none' };
  if (vInf.high >= passVolts) return { kind: 'rising' };
  const volts = Math.max(0, vInf.value);
  const ohms = plateauLoadOhms(input.sourceVolts, input.resistorOhms, volts) ?? 0;
  const watts = plateauWatts(input.sourceVolts, input.resistorOhms, volts);
  return { kind: ohms < shortBelowOhms ? 'short' : 'load', ohms, watts };
}

function refuseReadings({
  readings,
  sourceVolts,
  resistorOhms,
}: ChargeFitInput): ReturnType<typeof refuse> | undefined {
  if (!(sourceVolts > 0)) return refuse('worksheet.pre-charge.noSource');
  if (!(resistorOhms > 0)) return refuse('worksheet.pre-charge.noResistor');
  const readable = ({ tS, volts }: TimedReading): boolean =>
    Number.isFinite(tS) && Number.isFinite(volts) && (tS === 0 || tS >= leastTimeS);
  if (!readings.every(readable)) {
    return refuse('worksheet.pre-charge.badReading');
  }
  if (readings.filter((reading) => reading.tS > 0).length < 2)
    return refuse('worksheet.pre-charge.tooFewReadings');
  if (readings.some((reading, at) => at > 0 && reading.tS <= readings[at - 1]!.tS)) {
    return refuse('worksheet.pre-charge.timesNotRising');
  }
  // A diode drop below zero is a reversed battery or lead, not a charge.
  const negative = readings.find((reading) => reading.volts < -0.3);
  if (negative) return refuse('worksheet.pre-charge.negativeVolts', { volts: negative.volts });
  const above = readings.find((reading) => reading.volts > aboveSourceShare * sourceVolts);
  if (above) return refuse('worksheet.pre-charge.aboveSource', { volts: above.volts, sourceVolts });
  return undefined;
}
