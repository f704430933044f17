import type { Case } from './loop.ts';
import type { Result } from './score.ts';

/** Share of verdicts that are right, and how. `right` counts a class of same readings; `top1` gives it one guess. */
export interface Rates {
  cases: number;
  exactHits: number;
  classHits: number;
  /** Mean number of causes where a class was named. */
  meanClassSize: number | null;
  right: number;
  top1: number;
}

/** Counts by result, and what was said, of the cases of one cause. */
export interface CauseTally extends Rates {
  results: Partial<Record<Result, number>>;
  said: Record<string, number>;
}

export interface LoopTally {
  noNoise: Rates;
  withNoise: Rates;
  /** By cause, without noise. */
  byCause: Record<string, CauseTally>;
  byCauseWithNoise: Record<string, CauseTally>;
  healthyRuns: number;
  healthyCondemned: number;
  unsafeActs: number;
  /** Which acts, and how many times. */
  unsafe: Record<string, number>;
  stuck: Record<string, number>;
  /** To the verdict, over faulty plants, without noise. */
  meanMinutes: number | null;
}

const count = (texts: readonly string[]): Record<string, number> => {
  const counts: Record<string, number> = {};
  for (const text of texts) counts[text] = (counts[text] ?? 0) + 1;
  return Object.fromEntries(Object.entries(counts).toSorted(([, a], [, b]) => b - a));
};

const mean = (list: readonly number[]): number | null =>
  list.length === 0 ? null : list.reduce((sum, each) => sum + each, 0) / list.length;

function ratesOf(cases: readonly Case[]): Rates {
  const scored = cases.flatMap(({ scored: each }) => (each ? [each] : []));
  const inClass = scored.filter(({ result }) => result === 'class');
  const exactHits = scored.filter(({ result }) => result === 'exact').length;
  const share = (sum: number) => (scored.length === 0 ? 0 : sum / scored.length);
  return {
    cases: scored.length,
    exactHits,
    classHits: inClass.length,
    meanClassSize: mean(inClass.map(({ size }) => size)),
    right: share(exactHits + inClass.length),
    top1: share(exactHits + inClass.reduce((sum, { size }) => sum + 1 / size, 0)),
  };
}

function byCause(cases: readonly Case[]): Record<string, CauseTally> {
  const causes = [...new Set(cases.flatMap(({ cause }) => cause ?? []))];
  return Object.fromEntries(
    causes.map((cause) => {
      const own = cases.filter((each) => each.cause === cause);
      const scored = own.flatMap(({ scored: each }) => (each ? [each] : []));
      return [
        cause,
        {
          ...ratesOf(own),
          results: count(scored.map(({ result }) => result)),
          said: count(scored.map(({ said }) => said)),
        },
      ];
    }),
  );
}

/** Sums up a loop. */
export function tally(cases: readonly Case[]): LoopTally {
  const [quiet, noisy] = [cases.filter(({ noise }) => !noise), cases.filter(({ noise }) => noise)];
  const healthy = cases.filter(({ cause }) => cause === undefined);
  const acts = cases.flatMap(({ visited, cause }) =>
    visited.unsafe.map(({ what, block }) => `${what} at ${block}, ${cause ?? 'in good order'}`),
  );
  return {
    noNoise: ratesOf(quiet),
    withNoise: ratesOf(noisy),
    byCause: byCause(quiet),
    byCauseWithNoise: byCause(noisy),
    healthyRuns: healthy.length,
    healthyCondemned: healthy.filter(({ condemned }) => condemned).length,
    unsafeActs: acts.length,
    unsafe: count(acts),
    stuck: count(cases.flatMap(({ visited }) => visited.stuck ?? [])),
    meanMinutes: mean(quiet.flatMap(({ cause, visited }) => (cause ? [visited.minutes] : []))),
  };
}
