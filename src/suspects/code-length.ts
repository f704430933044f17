import { entropyBits } from './information.ts';

/**
 * The least number of noiseless checks with `outcomes` outcomes each that name one of the suspects, on average:
 * the Huffman code (Proc. IRE 40, 1952). Never below H/log2 outcomes (Shannon 1948). `outcomes` is 2 or more.
 */
export function leastChecks(prior: readonly number[], outcomes: number): number {
  const list = prior.filter((p) => p > 0);
  while (list.length > 1 && (list.length - 1) % (outcomes - 1) !== 0) list.push(0);
  let sum = 0;
  while (list.length > 1) {
    list.sort((a, b) => b - a);
    const merged = list.splice(-outcomes).reduce((a, b) => a + b, 0);
    sum += merged;
    list.push(merged);
  }
  return sum;
}

/** Capacity [bit] of a check that is wrong with probability `error`, evenly over the other outcomes. */
export const symmetricCapacity = (outcomes: number, error: number): number =>
  Math.log2(outcomes) - entropyBits([error, 1 - error]) - error * Math.log2(outcomes - 1);

/**
 * Most bits a check can ever tell, over all priors: Arimoto and Blahut (IEEE Trans. IT 18, 1972). The iteration's
 * own upper limit is returned, so that the result is never too small; within `tolerance` of the true one.
 */
export function capacityBits(rows: readonly (readonly number[])[], tolerance = 1e-9): number {
  let q = rows.map(() => 1 / rows.length);
  for (let round = 0; ; round++) {
    const y = rows[0]!.map((_, at) => rows.reduce((sum, row, i) => sum + q[i]! * row[at]!, 0));
    const bits = rows.map((row) => row.reduce((s, p, at) => (p > 0 ? s + p * Math.log2(p / y[at]!) : s), 0));
    const upper = Math.max(...bits);
    const grown = bits.map((b, i) => q[i]! * 2 ** b);
    const all = grown.reduce((a, b) => a + b, 0);
    if (upper - Math.log2(all) < tolerance || round > 100_000) return upper;
    q = grown.map((g) => g / all);
  }
}
