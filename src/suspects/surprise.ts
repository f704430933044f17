import { weights } from './belief.ts';
import { type History, notDone } from './history.ts';
import { noneOfThese, type Table } from './table.ts';

/** Readings rarer than this share of what a cause leads one to expect do not fit it. */
export const surpriseShare = 0.01;

/** How well the readings so far fit. */
export interface Surprise {
  /** The readings fit no single named cause: take one again, or think of two faults. */
  alarm: boolean;
  /** Index of the check to take again: without it some cause fits best. `notDone` unless there is an alarm. */
  takeAgain: number;
  /** The best fit of a named cause: P(readings | cause) over its expected value under that cause. */
  bestFit: number;
  /** P(readings) over its expected value, over all suspects with their priors. */
  overall: number;
}

const done = (history: History): number[] => history.flatMap((y, check) => (y === notDone ? [] : [check]));

/** P(readings | suspect) / E[P(readings | suspect)]; E is Π Σ P(y)², as readings are independent given the suspect. */
export function fitOf(table: Table, history: History, suspect: number): number {
  return done(history).reduce((fit, check) => {
    const row = table.checks[check]!.rows[suspect]!;
    return (fit * row[history[check]!]!) / row.reduce((sum, p) => sum + p * p, 0);
  }, 1);
}

/** P(readings) / E[P(readings)]: with E[P] = Σ p q Π Σ P(y|i) P(y|j) over pairs of suspects. */
function overallFit(table: Table, history: History): number {
  const { suspects } = table;
  const checks = done(history).map((check) => table.checks[check]!.rows);
  let expected = 0;
  suspects.forEach((a, i) => {
    suspects.forEach((b, j) => {
      expected += checks.reduce(
        (product, rows) => product * rows[i]!.reduce((sum, p, y) => sum + p * rows[j]![y]!, 0),
        a.prior * b.prior,
      );
    });
  });
  return weights(table, history).reduce((a, b) => a + b, 0) / expected;
}

/**
 * Whether to believe any single cause at all. Goes by each cause's own fit and not by its prior: a rare cause that
 * explains every reading is no surprise.
 */
export function surprise(table: Table, history: History): Surprise {
  const named = [...table.suspects.keys()].filter((at) => table.suspects[at]!.id !== noneOfThese);
  const best = (readings: History): number =>
    named.reduce((most, suspect) => Math.max(most, fitOf(table, readings, suspect)), 0);
  const bestFit = best(history);
  const alarm = bestFit < surpriseShare;
  const takeAgain = alarm
    ? done(history)
        .map((check) => ({ check, fit: best(history.map((y, at) => (at === check ? notDone : y))) }))
        .reduce((a, b) => (b.fit > a.fit ? b : a)).check
    : notDone;
  return { alarm, takeAgain, bestFit, overall: overallFit(table, history) };
}
