import { byRemedy } from './belief.ts';
import { entropyBits } from './information.ts';
import type { Table } from './table.ts';

/** What all checks together can tell: no guide and no engine on this table does better. */
export interface Limit {
  /** Bayes limit: share of cases in which the likeliest remedy after every check is the right one. */
  accuracy: number;
  /** The right one is among the two likeliest. */
  topTwo: number;
  /** Entropy of the remedy left after every check, on average [bit]. */
  residualBits: number;
  /** How many vectors of readings there are. */
  vectors: number;
}

/** Enumerates every vector of readings: exact, for up to some millions of them. */
export function bayesLimit(table: Table): Limit {
  const limit: Limit = { accuracy: 0, topTwo: 0, residualBits: 0, vectors: 0 };
  const walk = (depth: number, w: readonly number[]): void => {
    const check = table.checks[depth];
    if (check) {
      for (let y = 0; y < check.outcomes.length; y++) {
        walk(
          depth + 1,
          w.map((p, suspect) => p * check.rows[suspect]![y]!),
        );
      }
      return;
    }
    const mass = byRemedy(table, w).sort((a, b) => b - a);
    const all = mass.reduce((a, b) => a + b, 0);
    limit.accuracy += mass[0]!;
    limit.topTwo += mass[0]! + (mass[1] ?? 0);
    if (all > 0) limit.residualBits += all * entropyBits(mass.map((m) => m / all));
    limit.vectors += 1;
  };
  walk(
    0,
    table.suspects.map(({ prior }) => prior),
  );
  return limit;
}

/**
 * How alike two suspects are to all checks together: Π over checks of Σ √(P Q), the Bhattacharyya coefficient
 * (Bull. Calcutta Math. Soc. 35, 1943). 1: nothing splits them; 0: one reading surely does. Above about 0.8 the
 * pair needs one remedy for both or another check; that limit is common practice of this project.
 */
export const likeness = (table: Table, a: number, b: number): number =>
  table.checks.reduce(
    (product, { rows }) => product * rows[a]!.reduce((sum, p, y) => sum + Math.sqrt(p * rows[b]![y]!), 0),
    1,
  );
