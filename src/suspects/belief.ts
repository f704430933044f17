import { type History, notDone } from './history.ts';
import type { Table } from './table.ts';

/**
 * How likely each suspect is, in the order of the table; adds up to 1. One fault at a time, readings independent
 * given the cause (Bayes; "simple Bayes" in Breese & Heckerman 1996).
 */
export type Belief = readonly number[];

/** P(suspect and all readings so far): the posterior before it is brought to 1. */
export function weights(table: Table, history: History): number[] {
  return table.suspects.map(({ prior }, suspect) =>
    history.reduce(
      (w, outcome, check) => (outcome === notDone ? w : w * table.checks[check]!.rows[suspect]![outcome]!),
      prior,
    ),
  );
}

/**
 * Brought to 1. When the readings are impossible under every suspect (only without a floor) the result is flat:
 * nothing is known then.
 */
export function normalised(list: readonly number[]): number[] {
  const sum = list.reduce((a, b) => a + b, 0);
  return sum > 0 ? list.map((w) => w / sum) : list.map(() => 1 / list.length);
}

export const posterior = (table: Table, history: History): Belief => normalised(weights(table, history));

/** P(outcome) of a check under a belief. */
export function predicted(table: Table, belief: Belief, check: number): number[] {
  const { rows, outcomes } = table.checks[check]!;
  return outcomes.map((_, outcome) =>
    belief.reduce((sum, p, suspect) => sum + p * rows[suspect]![outcome]!, 0),
  );
}

/** The belief once the check gives this outcome. */
export const updated = (table: Table, belief: Belief, check: number, outcome: number): Belief =>
  normalised(belief.map((p, suspect) => p * table.checks[check]!.rows[suspect]![outcome]!));

/** The belief in each repair class, in the order of `table.remedies`. */
export function byRemedy(table: Table, belief: Belief): number[] {
  const sums = table.remedies.map(() => 0);
  belief.forEach((p, suspect) => {
    sums[table.classOf[suspect]!]! += p;
  });
  return sums;
}

/** Index of the largest; the first of equals, so that the same readings always give the same answer. */
export const largest = (list: readonly number[]): number => list.indexOf(Math.max(...list));
