/**
 * The least likelihood given to any outcome: the share of readings that a slip of the operator or the meter makes
 * wrong. Without it a single slip would clear the guilty part for ever. Common practice; from memory.
 */
export const lowestLikelihood = 0.005;

/** Pseudo-count for each outcome (Jeffreys 1946 for two outcomes), so that an outcome never seen is not impossible. */
export const pseudoCount = 0.5;

/**
 * Raises each entry to at least `floor` and scales the others so that the row still adds up to 1. A row that is
 * above the floor everywhere comes back as it was. A floor above 1/length gives the flat row.
 */
export function withFloor(row: readonly number[], floor: number): readonly number[] {
  if (row.every((p) => p >= floor)) return row;
  if (floor * row.length >= 1) return row.map(() => 1 / row.length);
  const low = new Set<number>();
  for (;;) {
    const rest = row.reduce((sum, p, at) => (low.has(at) ? sum : sum + p), 0);
    const scale = (1 - floor * low.size) / rest;
    const sunk = row.findIndex((p, at) => !low.has(at) && p * scale < floor);
    if (sunk < 0) return row.map((p, at) => (low.has(at) ? floor : p * scale));
    low.add(sunk);
  }
}

/** P(outcome) from how often each was seen in simulation: (n + a) / (N + a·K), a = `pseudoCount`. */
export function rowFromCounts(counts: readonly number[]): number[] {
  const all = counts.reduce((a, b) => a + b, 0) + pseudoCount * counts.length;
  return counts.map((n) => (n + pseudoCount) / all);
}

/** Standard error of a share `p` seen in `runs` simulations: √(p(1−p)/N). */
export const standardError = (p: number, runs: number): number => Math.sqrt((p * (1 - p)) / runs);

/**
 * Upper 95 % limit for the share of an outcome not seen once in `runs`: the "rule of three", 3/N
 * (Hanley & Lippman-Hand, JAMA 249, 1983).
 */
export const neverSeenAtMost = (runs: number): number => Math.min(1, 3 / runs);
