/**
 * Readings near the edge of a class. Either likelihoods are made by simulating the reading *through the meter* and
 * classes are then hard, or the weights below are used; never both.
 */

/** Where a class of readings lies; the ends in the reading's unit, `high` above `low`. */
export interface ReadingClass {
  low: number;
  high: number;
}

/** Error function to about 1e-15: the approximations in common use are good to 1e-7 only. */
function erf(x: number): number {
  const z = Math.abs(x);
  if (z > 6) return Math.sign(x);
  // erf z = 2/√π · e^(−z²) · Σ 2ⁿ z^(2n+1) / (2n+1)!!  (A&S 7.1.6): all terms positive, no cancellation.
  let term = z;
  let sum = z;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= (2 * z * z) / (2 * n + 1);
    sum += term;
  }
  return Math.sign(x) * (2 / Math.sqrt(Math.PI)) * Math.exp(-z * z) * sum;
}

/** The normal distribution function Φ. */
export const normalBelow = (z: number): number => (1 + erf(z / Math.SQRT2)) / 2;

/** Probability that the true value lies in the class, for a reading with standard uncertainty `u` above 0 (JCGM 106:2012, 7.2). */
export const probabilityIn = ({ low, high }: ReadingClass, reading: number, u: number): number =>
  normalBelow((high - reading) / u) - normalBelow((low - reading) / u);

export type Conformity = 'accepted' | 'rejected' | 'undetermined';

/** Against a least value with a guard band on both sides of it (ILAC-G8:09/2019); between the two nothing is decided. */
export function conformsAbove(least: number, reading: number, guardBand: number): Conformity {
  if (reading >= least + guardBand) return 'accepted';
  return reading < least - guardBand ? 'rejected' : 'undetermined';
}

/**
 * Likelihood of a reading that may fall in any of the classes: Σ (w/W)·P(class | suspect), W the width of the class.
 * Weighing P by w alone would favour wide classes.
 */
export const softLikelihood = (
  classes: readonly ReadingClass[],
  row: readonly number[],
  reading: number,
  u: number,
): number =>
  classes.reduce(
    (sum, one, at) => sum + (probabilityIn(one, reading, u) / (one.high - one.low)) * row[at]!,
    0,
  );

/** Whether a band is wide enough for the meter: at least four expanded uncertainties U. */
export const wideEnough = (bandWidth: number, expanded: number): boolean => bandWidth >= 4 * expanded;
