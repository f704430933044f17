import { byRemedy } from './belief.ts';
import { capacityBits } from './code-length.ts';
import { entropyBits } from './information.ts';
import { costOf, type Price } from './price.ts';
import type { Table } from './table.ts';

/** Cheapest mixture of checks, each at most once, that can carry so many bits; infinite when all cannot. */
export function cheapestBits(checks: readonly { cost: number; capacity: number }[], bits: number): number {
  let left = bits;
  let sum = 0;
  for (const { cost, capacity } of [...checks].sort((a, b) => a.cost * b.capacity - b.cost * a.capacity)) {
    if (left <= 0) break;
    if (capacity <= 0) continue;
    const used = Math.min(1, left / capacity);
    sum += cost * used;
    left -= capacity * used;
  }
  return left > 1e-12 ? Number.POSITIVE_INFINITY : sum;
}

/** Bits that must be carried to end with at most this share of errors (Fano 1961), over `classes` remedies. */
export function bitsForError(priorBits: number, error: number, classes: number): number {
  const rest = classes > 2 ? error * Math.log2(classes - 1) : 0;
  return Math.max(0, priorBits - entropyBits([error, 1 - error]) - rest);
}

/** Steps of the error in which the least of the bound is sought; each step is bounded from its cheaper end. */
const steps = 2000;

/**
 * A lower bound of V*: min over the final error e of W·e + the cheapest checks that carry what Fano asks for. Loose,
 * but with no search. The bits fall as e grows up to (n−1)/n, so within a step the cost is that of the upper end and
 * W·e that of the lower: never above the true least.
 */
export function knapsackBound(table: Table, price: Price): number {
  const prior = byRemedy(
    table,
    table.suspects.map((s) => s.prior),
  );
  const checks = table.checks.map((check) => ({
    cost: costOf(check, price),
    capacity: capacityBits(check.rows),
  }));
  const bits = entropyBits(prior);
  const most = 1 - 1 / prior.length;
  let least = price.wrongMinutes * most;
  for (let at = 0; at < steps; at++) {
    const [low, high] = [(most * at) / steps, (most * (at + 1)) / steps];
    least = Math.min(
      least,
      price.wrongMinutes * low + cheapestBits(checks, bitsForError(bits, high, prior.length)),
    );
  }
  return least;
}
