import { byRemedy, posterior } from '../../src/suspects/belief.ts';
import { type History, notDone, open } from '../../src/suspects/history.ts';
import { savedByPair } from '../../src/suspects/next.ts';
import type { Policy } from '../../src/suspects/policy.ts';
import { costOf, type Price, stopNow } from '../../src/suspects/price.ts';
import type { Table } from '../../src/suspects/table.ts';
import { type Worth, worthOf } from '../../src/suspects/worth.ts';

type Stop = (history: History, worths: readonly Worth[]) => boolean;

const first = <T>(list: readonly T[], of: (item: T) => number): T =>
  list.reduce((a, b) => (of(b) > of(a) + 1e-12 ? b : a));

/** The largest `of` first, until `stop`. */
export const greedy =
  (table: Table, price: Price, of: (worth: Worth) => number, stop: Stop): Policy =>
  (history) => {
    const belief = posterior(table, history);
    const worths = open(history).map((check) => worthOf(table, belief, check, price));
    return worths.length === 0 || stop(history, worths) ? notDone : first(worths, of).check;
  };

export const worthless: Stop = (_, worths) => worths.every(({ netMinutes }) => netMinutes <= 0);

export const sure =
  (table: Table, share: number): Stop =>
  (history) =>
    Math.max(...byRemedy(table, posterior(table, history))) >= share - 1e-12;

export const listed =
  (stop: Stop): Policy =>
  (history) =>
    open(history).length === 0 || stop(history, []) ? notDone : open(history)[0]!;

/** The best first of two steps, each step free to stop. */
export const twoSteps =
  (table: Table, price: Price): Policy =>
  (history) => {
    const belief = posterior(table, history);
    const left = open(history);
    if (left.length === 0 || stopNow(table, belief, price).loss === 0) return notDone;
    const tries = left.map((check) => ({
      check,
      net:
        savedByPair(
          table,
          belief,
          check,
          left.filter((other) => other !== check),
          price,
        ) - costOf(table.checks[check]!, price),
    }));
    const best = first(tries, ({ net }) => net);
    return best.net > 0 ? best.check : notDone;
  };
