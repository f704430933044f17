import { type History, notDone } from './history.ts';
import { costOf, type Price } from './price.ts';
import type { Table } from './table.ts';

/** Above this many states the oracle refuses: about ten three-outcome checks take a second or two. */
export const mostStates = 4_200_000;

/** The best that any order and any stop can do, and what it does after each history. */
export interface Optimum {
  kind: 'optimum';
  /** V*: expected minutes, hazard weighed in, with W for a wrong remedy. */
  value: number;
  states: number;
  /** The check to make, or `notDone` to stop; any history of the table. */
  choice(history: History): number;
}

export type OptimumResult = Optimum | { kind: 'tooMany'; states: number };

/** How many histories a table has: Π (outcomes + 1). */
export const statesOf = (table: Table): number =>
  table.checks.reduce((n, c) => n * (c.outcomes.length + 1), 1);

/**
 * Dynamic program over histories. The order of readings does not matter, so a history is a number in mixed radix
 * (0 = not done). Works on P(h)·V(h), which needs no division:
 * U(h) = min( W (m − largest class), min over checks not done of c·m + Σ U(h + y) ),  m = P(h).
 * A history with one more reading has a higher number: going down, every successor is known already.
 */
export function optimum(table: Table, price: Price): OptimumResult {
  const states = statesOf(table);
  if (states > mostStates) return { kind: 'tooMany', states };
  const { checks, suspects, classOf } = table;
  const count = suspects.length;
  const costs = checks.map((check) => costOf(check, price));
  const stride = checks.map((_, at) => checks.slice(at + 1).reduce((n, c) => n * (c.outcomes.length + 1), 1));
  const value = new Float64Array(states);
  const chosen = new Int8Array(states);
  const digits = new Int32Array(checks.length);
  // One row of weights for each depth of the walk, so that a history costs one product a suspect.
  const rows = Array.from({ length: checks.length + 1 }, () => new Float64Array(count));
  suspects.forEach(({ prior }, at) => {
    rows[0]![at] = prior;
  });
  const mass = new Float64Array(table.remedies.length);

  const settle = (index: number): void => {
    const w = rows[checks.length]!;
    mass.fill(0);
    let all = 0;
    for (let i = 0; i < count; i++) {
      all += w[i]!;
      mass[classOf[i]!]! += w[i]!;
    }
    let most = 0;
    for (const m of mass) most = Math.max(most, m);
    let best = price.wrongMinutes * (all - most);
    let choice = notDone;
    for (let t = 0; t < checks.length; t++) {
      if (digits[t] !== 0) continue;
      let sum = costs[t]! * all;
      for (let y = checks[t]!.outcomes.length; y > 0; y--) sum += value[index + y * stride[t]!]!;
      if (sum < best) {
        best = sum;
        choice = t;
      }
    }
    value[index] = best;
    chosen[index] = choice;
  };

  const walk = (depth: number, index: number): void => {
    if (depth === checks.length) {
      settle(index);
      return;
    }
    const from = rows[depth]!;
    const to = rows[depth + 1]!;
    const { rows: likelihood, outcomes } = checks[depth]!;
    for (let digit = outcomes.length; digit >= 0; digit--) {
      digits[depth] = digit;
      for (let i = 0; i < count; i++) to[i] = digit === 0 ? from[i]! : from[i]! * likelihood[i]![digit - 1]!;
      walk(depth + 1, index + digit * stride[depth]!);
    }
  };
  walk(0, 0);
  const numberOf = (history: History): number => history.reduce((n, y, t) => n + (y + 1) * stride[t]!, 0);
  return { kind: 'optimum', value: value[0]!, states, choice: (history) => chosen[numberOf(history)]! };
}
