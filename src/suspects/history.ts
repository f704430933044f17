import type { Table } from './table.ts';

/** What has been read: for each check of the table the index of its outcome, or `notDone`. */
export type History = readonly number[];

export const notDone = -1;

/** One reading by name. */
export interface Reading {
  check: string;
  outcome: string;
}

export type HistoryResult = { kind: 'history'; history: History } | { kind: 'unknown'; reading: Reading };

export const nothingRead = (table: Table): History => table.checks.map(() => notDone);

/**
 * Readings to a history. A check counts once: what was wrong with the first reading may be wrong with the next, so
 * a second reading replaces the first and is never added to it (persistent noise, Golovin, Krause & Ray 2010).
 */
export function historyOf(table: Table, readings: readonly Reading[]): HistoryResult {
  const history = [...nothingRead(table)];
  for (const reading of readings) {
    const at = table.checks.findIndex(({ id }) => id === reading.check);
    const outcome = table.checks[at]?.outcomes.indexOf(reading.outcome) ?? -1;
    if (outcome < 0) return { kind: 'unknown', reading };
    history[at] = outcome;
  }
  return { kind: 'history', history };
}

/** The history with one more reading. */
export const after = (history: History, check: number, outcome: number): History =>
  history.map((was, at) => (at === check ? outcome : was));

/** Indices of the checks not done. */
export const open = (history: History): number[] =>
  history.flatMap((outcome, at) => (outcome === notDone ? [at] : []));
