import { type Belief, predicted, updated } from './belief.ts';
import { informationBits } from './information.ts';
import { costOf, type Price, stopNow } from './price.ts';
import type { Table } from './table.ts';

/** What a check is worth now. */
export interface Worth {
  /** Index of the check. */
  check: number;
  /** Minutes with the hazard weighed in. */
  cost: number;
  /** Expected information about the remedy. */
  bits: number;
  /** `bits / cost`; 0 when it tells nothing, infinite when it tells something for nothing. */
  bitsPerCost: number;
  /** Expected value of the sample information [min]: how much less is lost by stopping right after it. */
  savedMinutes: number;
  /** `savedMinutes − cost`. */
  netMinutes: number;
}

/** Two values of worth closer than this are the same: rounding must not choose the check. */
const tie = 1e-12;

/** EVSI = L(b) − Σ P(y|b) L(b|y), never negative (Raiffa & Schlaifer 1961). */
export function savedMinutes(table: Table, belief: Belief, check: number, price: Price): number {
  const shares = predicted(table, belief, check);
  const later = shares.reduce(
    (sum, p, outcome) =>
      p > 0 ? sum + p * stopNow(table, updated(table, belief, check, outcome), price).loss : sum,
    0,
  );
  return Math.max(0, stopNow(table, belief, price).loss - later);
}

export function worthOf(table: Table, belief: Belief, check: number, price: Price): Worth {
  const cost = costOf(table.checks[check]!, price);
  const bits = informationBits(table, belief, check);
  const saved = savedMinutes(table, belief, check, price);
  const bitsPerCost = bits <= tie ? 0 : bits / cost;
  return { check, cost, bits, bitsPerCost, savedMinutes: saved, netMinutes: saved - cost };
}

/** What breaks a tie before the id: how many isolations, makings-live or covers the check needs changed first. */
export type Changes = (check: number) => number;

/**
 * The given checks, most bits per minute and hazard first. Ties: lower hazard, fewer changes of state, id. Which
 * checks are given is the business of the safety rules: no worth buys a check that the present state forbids.
 */
export function rankChecks(
  table: Table,
  belief: Belief,
  allowed: readonly number[],
  price: Price,
  changes: Changes = () => 0,
): Worth[] {
  const id = (check: number): string => table.checks[check]!.id;
  const alike = (a: number, b: number): boolean => a === b || Math.abs(a - b) <= tie;
  return allowed
    .map((check) => worthOf(table, belief, check, price))
    .sort((a, b) => {
      if (!alike(a.bitsPerCost, b.bitsPerCost)) return b.bitsPerCost - a.bitsPerCost;
      return (
        table.checks[a.check]!.hazard - table.checks[b.check]!.hazard ||
        changes(a.check) - changes(b.check) ||
        (id(a.check) < id(b.check) ? -1 : 1)
      );
    });
}
