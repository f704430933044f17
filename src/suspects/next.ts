import { type Belief, posterior, predicted, updated } from './belief.ts';
import { type History, open } from './history.ts';
import { costOf, type Price, stopNow } from './price.ts';
import type { Table } from './table.ts';
import { type Changes, rankChecks, savedMinutes, type Worth } from './worth.ts';

/** What to do next. */
export type Next =
  | { kind: 'check'; check: number; ranked: readonly Worth[]; because: 'worth' | 'worthTogether' }
  | { kind: 'stop'; remedy: number; because: 'nothingWorthIt' | 'nothingAllowed' };

export interface NextInput {
  price: Price;
  /** Whether the safety rules let the check be made in the present state. All, unless told. */
  allows?: (check: number) => boolean;
  changes?: Changes;
}

/**
 * Minutes saved by the best pair that starts with `first`: two checks may be worth something only together
 * (Jensen et al. 2001, partial two-step look-ahead).
 */
export function savedByPair(
  table: Table,
  belief: Belief,
  first: number,
  then: readonly number[],
  price: Price,
): number {
  const later = predicted(table, belief, first).reduce((sum, p, outcome) => {
    if (p <= 0) return sum;
    const next = updated(table, belief, first, outcome);
    const gains = then.map(
      (check) => savedMinutes(table, next, check, price) - costOf(table.checks[check]!, price),
    );
    return sum + p * (stopNow(table, next, price).loss - Math.max(0, ...gains));
  }, 0);
  return stopNow(table, belief, price).loss - later;
}

/**
 * The stop rule goes by value, not by how sure one is: go on while some allowed check, or some pair of them, saves
 * more than it costs; then take the one with the most bits per minute and hazard (a pair: the best first of a pair).
 */
export function nextFor(table: Table, belief: Belief, toDo: readonly number[], input: NextInput): Next {
  const { price, allows = () => true, changes } = input;
  const { remedy } = stopNow(table, belief, price);
  const allowed = toDo.filter(allows);
  if (allowed.length === 0) {
    return { kind: 'stop', remedy, because: toDo.length > 0 ? 'nothingAllowed' : 'nothingWorthIt' };
  }
  const ranked = rankChecks(table, belief, allowed, price, changes);
  if (ranked.some(({ netMinutes }) => netMinutes > 0)) {
    return { kind: 'check', check: ranked[0]!.check, ranked, because: 'worth' };
  }
  const pairs = ranked.map(({ check, cost }) => ({
    check,
    net:
      savedByPair(
        table,
        belief,
        check,
        allowed.filter((other) => other !== check),
        price,
      ) - cost,
  }));
  const best = pairs.reduce((a, b) => (b.net > a.net ? b : a));
  return best.net > 0
    ? { kind: 'check', check: best.check, ranked, because: 'worthTogether' }
    : { kind: 'stop', remedy, because: 'nothingWorthIt' };
}

export const nextCheck = (table: Table, history: History, input: NextInput): Next =>
  nextFor(table, posterior(table, history), open(history), input);
