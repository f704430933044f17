import { give, type Result, refuse } from '../result.ts';
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

/** Inverter banks of this class run to some tens of mF; several in parallel stay below this. */
const largestBankF = 0.3;
/** How far above the source a settled bus may read: two meters, or one moved between two places. */
const aboveSourceShare = 1.03;
const gridSteps = 400;

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
  const timeError = (input.timeErrorS ?? 0.3) / Math.sqrt(3);
  const rough = search(
    input,
    readings.map(() => voltsError ** -2),
  ).best;
  const slopeAt = (tS: number): number =>
    ((rough.vInf - (input.startVolts ?? 0)) / rough.tauS) * Math.exp(-tS / rough.tauS);
  const weights = readings.map(({ tS }) => 1 / (voltsError ** 2 + (slopeAt(tS) * timeError) ** 2));
  const { best, likely, settledAtOnce } = search(input, weights);

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
    // The first slope is V/(R·C) whatever hangs across the bank, so a load does not spoil this.
    capacitanceF: estimate((fit) => bankF(input, fit), 0, settledAtOnce),
    rmseVolts: Math.sqrt(
      readings.reduce((sum, { tS, volts }) => sum + (curveAt(input, best, tS) - volts) ** 2, 0) /
        readings.length,
    ),
    plateau: judgePlateau(input, vInfVolts),
  });
}

interface Found {
  readonly best: Candidate;
  readonly likely: readonly Candidate[];
  /** The shortest τ searched fits as well as any: nothing of the rise was seen. */
  readonly settledAtOnce: boolean;
}

/** All τ from "over before the first reading" to the slowest this resistor and bank can be. */
function search(input: ChargeFitInput, weights: readonly number[]): Found {
  const times = input.readings.map((reading) => reading.tS).filter((tS) => tS > 0);
  const shortestS = Math.min(...times) / 40;
  const longestS = Math.max(
    2 * shortestS,
    aboveSourceShare * input.resistorOhms * (input.largestF ?? largestBankF),
  );
  const tauAt = (step: number): number => shortestS * (longestS / shortestS) ** (step / gridSteps);
  const grid = Array.from({ length: gridSteps + 1 }, (_, step) => bestAtTau(input, weights, tauAt(step)));
  const bestStep = grid.reduce((best, fit, step) => (fit.chi2 < grid[best]!.chi2 ? step : best), 0);
  const around = [tauAt(Math.max(0, bestStep - 1)), tauAt(Math.min(gridSteps, bestStep + 1))] as const;
  const best = refine(input, weights, ...around);

  // Two-sigma likelihood interval, widened when the misfit itself says the errors are larger than stated.
  const allowed = best.chi2 + 4 * Math.max(1, best.chi2 / input.readings.length);
  const inside = grid.filter((fit) => fit.chi2 <= allowed);
  // The interval may be finer than the grid: look for its ends beside the best fit too.
  const edges = around.map((end) => edgeBetween(input, weights, best.tauS, end, allowed));
  return { best, likely: [best, ...edges, ...inside], settledAtOnce: inside.includes(grid[0]!) };
}

/** The last τ on the way from `from` to `to` that still fits. */
function edgeBetween(
  input: ChargeFitInput,
  weights: readonly number[],
  from: number,
  to: number,
  allowed: number,
): Candidate {
  let [inside, outside] = [from, to];
  for (let turn = 0; turn < 30; turn++) {
    const middle = Math.sqrt(inside * outside);
    if (bestAtTau(input, weights, middle).chi2 <= allowed) inside = middle;
    else outside = middle;
  }
  return bestAtTau(input, weights, inside);
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

interface Candidate {
  readonly tauS: number;
  readonly vInf: number;
  /** Sum of squared misfits, each over its own variance. */
  readonly chi2: number;
}

const bankF = (input: ChargeFitInput, fit: { tauS: number; vInf: number }): number =>
  fit.vInf > 0 ? (fit.tauS * input.sourceVolts) / (input.resistorOhms * fit.vInf) : 0;

const curveAt = (input: ChargeFitInput, fit: { tauS: number; vInf: number }, tS: number): number =>
  fit.vInf + ((input.startVolts ?? 0) - fit.vInf) * Math.exp(-tS / fit.tauS);

/** With τ given, v − v0·e = v∞·(1 − e) is a straight line through the origin; v∞ is then kept to what can be. */
function bestAtTau(input: ChargeFitInput, weights: readonly number[], tauS: number): Candidate {
  const { readings, sourceVolts, resistorOhms, startVolts: v0 = 0 } = input;
  const mostVolts = aboveSourceShare * sourceVolts;
  const leastVolts = (tauS * sourceVolts) / (resistorOhms * (input.largestF ?? largestBankF));
  let xx = 0;
  let xy = 0;
  readings.forEach(({ tS, volts }, at) => {
    const left = Math.exp(-tS / tauS);
    xx += weights[at]! * (1 - left) ** 2;
    xy += weights[at]! * (1 - left) * (volts - v0 * left);
  });
  const vInf = Math.min(mostVolts, Math.max(leastVolts, xx > 0 ? xy / xx : v0));
  const chi2 = readings.reduce(
    (sum, { tS, volts }, at) => sum + weights[at]! * (curveAt(input, { tauS, vInf }, tS) - volts) ** 2,
    0,
  );
  return { tauS, vInf, chi2 };
}

function refine(input: ChargeFitInput, weights: readonly number[], fromS: number, toS: number): Candidate {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [Math.log(fromS), Math.log(toS)];
  for (let turn = 0; turn < 60; turn++) {
    const a = high - golden * (high - low);
    const b = low + golden * (high - low);
    if (bestAtTau(input, weights, Math.exp(a)).chi2 < bestAtTau(input, weights, Math.exp(b)).chi2) high = b;
    else low = a;
  }
  return bestAtTau(input, weights, Math.exp((low + high) / 2));
}

function refuseReadings({
  readings,
  sourceVolts,
  resistorOhms,
}: ChargeFitInput): ReturnType<typeof refuse> | undefined {
  if (!(sourceVolts > 0)) return refuse('worksheet.pre-charge.noSource');
  if (!(resistorOhms > 0)) return refuse('worksheet.pre-charge.noResistor');
  if (readings.some(({ tS, volts }) => !Number.isFinite(tS) || !Number.isFinite(volts) || tS < 0)) {
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
