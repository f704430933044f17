/** The readings of a pre-charge and the circuit they were taken on; see `charge-fit.ts` for the fields. */
export interface SearchInput {
  readonly readings: readonly { readonly tS: number; readonly volts: number }[];
  readonly sourceVolts: number;
  readonly resistorOhms: number;
  readonly startVolts?: number;
  readonly largestF?: number;
}

/** Inverter banks of this class run to some tens of mF; several in parallel stay below this. */
const largestBankF = 0.3;
/** How far above the source a settled bus may read: two meters, or one moved between two places. */
export const aboveSourceShare = 1.03;
const gridSteps = 400;

/** One curve v(t) = v∞ + (v0 − v∞)·e^(−t/τ) and how badly it misses the readings. */
export interface Candidate {
  readonly tauS: number;
  readonly vInf: number;
  /** Sum of squared misfits, each over its own variance. */
  readonly chi2: number;
}

/** The bank a curve implies: its first slope is V/(R·C) whatever hangs across the bank [F]. */
export const bankF = (input: SearchInput, fit: { tauS: number; vInf: number }): number =>
  fit.vInf > 0 ? (fit.tauS * input.sourceVolts) / (input.resistorOhms * fit.vInf) : 0;

/** Volts of a curve at a time [V]. */
export const curveAt = (input: SearchInput, fit: { tauS: number; vInf: number }, tS: number): number =>
  fit.vInf + ((input.startVolts ?? 0) - fit.vInf) * Math.exp(-tS / fit.tauS);

/** With τ given, v − v0·e = v∞·(1 − e) is a straight line through the origin; v∞ is then kept to what can be. */
function bestAtTau(input: SearchInput, weights: readonly number[], tauS: number): Candidate {
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

function refine(input: SearchInput, weights: readonly number[], fromS: number, toS: number): Candidate {
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

export interface Found {
  readonly best: Candidate;
  /** Every candidate whose extra misfit the readings’ own error can explain. */
  readonly likely: readonly Candidate[];
  /** The largest misfit that still counts as likely. */
  readonly allowed: number;
  /** The shortest τ searched fits as well as any: nothing of the rise was seen. */
  readonly settledAtOnce: boolean;
}

/** All τ from "over before the first reading" to the slowest this resistor and bank can be. */
export function search(input: SearchInput, weights: readonly number[]): Found {
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
  return { best, likely: [best, ...edges, ...inside], allowed, settledAtOnce: inside.includes(grid[0]!) };
}

/** The last τ on the way from `from` to `to` that still fits. */
function edgeBetween(
  input: SearchInput,
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
