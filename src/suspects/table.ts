import { lowestLikelihood, withFloor } from './likelihood.ts';

/** The id of the suspect that stands for every cause the table does not know. It is in every table. */
export const noneOfThese = 'noneOfThese';

/** One thing that can be wrong. */
export interface Suspect {
  id: string;
  /** What would be done about it. Suspects with one remedy form a repair class and need not be told apart. */
  remedy: string;
  /** Share before any reading, 0 to 1; the shares of a table add up to 1. */
  prior: number;
}

/** One thing that can be looked at or measured, once in each state of the plant. */
export interface Check {
  id: string;
  /** Working time [min], 0 or more. */
  minutes: number;
  /** Hazard points, 0 or more. They order the checks that are allowed; they never make one allowed. */
  hazard: number;
  /** At least two, each with its own id. */
  outcomes: readonly string[];
  /** `rows[suspect][outcome]` is P(outcome | suspect); each row adds up to 1 and has no entry below the floor. */
  rows: readonly (readonly number[])[];
}

/** What the engine reasons with. Made by `defineTable` only. */
export interface Table {
  suspects: readonly Suspect[];
  checks: readonly Check[];
  /** The repair class of each suspect, as an index into `remedies`. */
  classOf: readonly number[];
  remedies: readonly string[];
}

/** What `defineTable` takes: each check names its rows by suspect. `noneOfThese` may be left out: its row is flat. */
export interface TableInput {
  suspects: readonly Suspect[];
  checks: readonly (Omit<Check, 'rows'> & { rows: Readonly<Record<string, readonly number[]>> })[];
  /** The least likelihood of any outcome; `lowestLikelihood` unless told, 0 for none. */
  floor?: number;
}

export type TableProblem =
  | { problem: 'noSuspects' }
  | { problem: 'noNoneOfThese' }
  | { problem: 'sameId'; id: string }
  | { problem: 'prior'; suspect: string }
  | { problem: 'priorsSum'; sum: number }
  | { problem: 'cost'; check: string }
  | { problem: 'fewOutcomes'; check: string }
  | { problem: 'row'; check: string; suspect: string };

export type TableResult = { kind: 'table'; table: Table } | { kind: 'refused'; problems: TableProblem[] };

/** How far a sum of shares may be from 1: what writing six decimals loses over some tens of entries. */
const sumTolerance = 1e-6;

const isShare = (p: number): boolean => p >= 0 && p <= 1;
const isCost = (c: number): boolean => c >= 0 && Number.isFinite(c);
const sumOf = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

function twice(ids: readonly string[]): string[] {
  return ids.filter((id, at) => ids.indexOf(id) !== at);
}

const isRow = (row: readonly number[] | undefined, outcomes: number): row is readonly number[] =>
  row !== undefined &&
  row.length === outcomes &&
  row.every(isShare) &&
  Math.abs(sumOf(row) - 1) <= sumTolerance;

function problemsOf({ suspects, checks }: TableInput): TableProblem[] {
  const problems: TableProblem[] = [];
  if (suspects.length === 0) problems.push({ problem: 'noSuspects' });
  if (!suspects.some(({ id, prior }) => id === noneOfThese && prior > 0)) {
    problems.push({ problem: 'noNoneOfThese' });
  }
  for (const id of twice([...suspects.map((s) => s.id), ...checks.map((c) => c.id)])) {
    problems.push({ problem: 'sameId', id });
  }
  for (const { id, prior } of suspects) if (!isShare(prior)) problems.push({ problem: 'prior', suspect: id });
  const sum = sumOf(suspects.map(({ prior }) => prior));
  if (!(Math.abs(sum - 1) <= sumTolerance)) problems.push({ problem: 'priorsSum', sum });
  for (const check of checks) {
    if (!isCost(check.minutes) || !isCost(check.hazard)) problems.push({ problem: 'cost', check: check.id });
    if (check.outcomes.length < 2) problems.push({ problem: 'fewOutcomes', check: check.id });
    for (const id of twice(check.outcomes)) problems.push({ problem: 'sameId', id });
    for (const { id } of suspects) {
      if (id === noneOfThese && check.rows[id] === undefined) continue;
      if (!isRow(check.rows[id], check.outcomes.length)) {
        problems.push({ problem: 'row', check: check.id, suspect: id });
      }
    }
  }
  return problems;
}

/** Checks a table and applies the floor. A table without a possible "none of these" is refused. */
export function defineTable(input: TableInput): TableResult {
  const problems = problemsOf(input);
  if (problems.length > 0) return { kind: 'refused', problems };
  const floor = input.floor ?? lowestLikelihood;
  const remedies = [...new Set(input.suspects.map(({ remedy }) => remedy))];
  const checks = input.checks.map((check) => {
    const flat = check.outcomes.map(() => 1 / check.outcomes.length);
    const rows = input.suspects.map(({ id }) => withFloor(check.rows[id] ?? flat, floor));
    return { ...check, rows };
  });
  const classOf = input.suspects.map(({ remedy }) => remedies.indexOf(remedy));
  return { kind: 'table', table: { suspects: input.suspects, checks, classOf, remedies } };
}
