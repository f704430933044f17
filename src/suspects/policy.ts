import { byRemedy, largest, normalised, weights } from './belief.ts';
import { after, type History, notDone, nothingRead } from './history.ts';
import { costOf, type Price } from './price.ts';
import type { Table } from './table.ts';

/** Which check comes after this history; `notDone` to stop and name the likeliest remedy. */
export type Policy = (history: History) => number;

/** What a policy is expected to spend and achieve from the start. */
export interface Performance {
  /** cost + W · (1 − accuracy) [min]: what the optimum makes least. */
  total: number;
  /** Minutes with hazard weighed in. */
  cost: number;
  minutes: number;
  hazard: number;
  checks: number;
  /** Share of cases that end in the right remedy. */
  accuracy: number;
}

type Parts = Omit<Performance, 'total'>;

/**
 * Exact performance: every reachable history once, no sampling. `policy` chooses, the remedy is named by what
 * `believed` says, and `truth` decides how often each outcome comes; they have the same suspects, checks and outcomes.
 */
export function performance(
  truth: Table,
  policy: Policy,
  price: Price,
  believed: Table = truth,
): Performance {
  const seen = new Map<string, Parts>();

  const from = (history: History, left: number): Parts => {
    const key = history.join();
    const known = seen.get(key);
    if (known) return known;
    const w = weights(truth, history);
    const check = left === 0 ? notDone : policy(history);
    const parts: Parts = { cost: 0, minutes: 0, hazard: 0, checks: 0, accuracy: 0 };
    if (check === notDone) {
      parts.accuracy = byRemedy(truth, w)[
        largest(byRemedy(believed, normalised(weights(believed, history))))
      ]!;
    } else {
      const mass = w.reduce((a, b) => a + b, 0);
      const made = truth.checks[check]!;
      parts.cost = mass * costOf(made, price);
      parts.minutes = mass * made.minutes;
      parts.hazard = mass * made.hazard;
      parts.checks = mass;
      if (mass > 0) {
        made.outcomes.forEach((_, outcome) => {
          const more = from(after(history, check, outcome), left - 1);
          for (const part of Object.keys(parts) as (keyof Parts)[]) parts[part] += more[part];
        });
      }
    }
    seen.set(key, parts);
    return parts;
  };

  const parts = from(nothingRead(truth), truth.checks.length);
  return { ...parts, total: parts.cost + price.wrongMinutes * (1 - parts.accuracy) };
}
