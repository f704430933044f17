import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byRemedy, normalised, posterior, predicted, updated } from '../../src/suspects/belief.ts';
import { bracket } from '../../src/suspects/bracket.ts';
import { enginePolicy } from '../../src/suspects/efficiency.ts';
import { after, notDone, nothingRead, open } from '../../src/suspects/history.ts';
import { entropyBits, informationBits } from '../../src/suspects/information.ts';
import { knapsackBound } from '../../src/suspects/knapsack-bound.ts';
import { bayesLimit } from '../../src/suspects/limit.ts';
import { optimum } from '../../src/suspects/optimum.ts';
import { performance } from '../../src/suspects/policy.ts';
import { usualPrice as price, stopNow } from '../../src/suspects/price.ts';
import type { Table } from '../../src/suspects/table.ts';
import { savedMinutes } from '../../src/suspects/worth.ts';
import { listed } from './policies.ts';
import { anyTable, anyTableRead } from './tables.ts';

const close = (list: readonly number[], digits = 10) => list.map((x) => expect.closeTo(x, digits));
const value = (table: Table): number => {
  const found = optimum(table, price);
  return found.kind === 'optimum' ? found.value : Number.NaN;
};
const prior = (table: Table) => table.suspects.map((s) => s.prior);

describe('beliefs', () => {
  it('do not depend on the order of the readings', () => {
    fc.assert(
      fc.property(anyTableRead, fc.boolean(), ({ table, history }, backwards) => {
        const done = [...history.keys()].filter((check) => history[check] !== notDone);
        if (backwards) done.reverse();
        const step = done.reduce<readonly number[]>(
          (b, check) => updated(table, b, check, history[check]!),
          normalised(prior(table)),
        );
        expect(step).toEqual(close(posterior(table, history)));
      }),
    );
  });

  it('do not change by a reading that every suspect gives alike, nor by the scale of a likelihood', () => {
    fc.assert(
      fc.property(
        anyTableRead,
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        ({ table, history }, scale) => {
          const flat = table.suspects.map(() => [0.25 * scale, 0.75 * scale]);
          const check = { id: 'flat', minutes: 1, hazard: 0, outcomes: ['a', 'b'], rows: flat };
          const more = { ...table, checks: [...table.checks, check] };
          expect(posterior(more, [...history, 1])).toEqual(close(posterior(table, history)));
          const scaled = {
            ...table,
            checks: table.checks.map((c) => ({ ...c, rows: c.rows.map((row) => row.map((p) => p * scale)) })),
          };
          expect(posterior(scaled, history)).toEqual(close(posterior(table, history)));
        },
      ),
    );
  });

  it('are on average what they were: Σ P(y) b(· | y) = b', () => {
    fc.assert(
      fc.property(anyTableRead, ({ table, history }) => {
        const b = posterior(table, history);
        for (const check of open(history)) {
          const shares = predicted(table, b, check);
          const mean = b.map((_, i) =>
            shares.reduce((sum, p, y) => sum + p * updated(table, b, check, y)[i]!, 0),
          );
          expect(mean).toEqual(close(b));
        }
      }),
    );
  });
});

describe('worth', () => {
  it('is never negative, and information is the entropy it takes away', () => {
    fc.assert(
      fc.property(anyTableRead, ({ table, history }) => {
        const b = posterior(table, history);
        for (const check of open(history)) {
          const bits = informationBits(table, b, check);
          expect(bits).toBeGreaterThanOrEqual(0);
          expect(savedMinutes(table, b, check, price)).toBeGreaterThanOrEqual(0);
          const later = predicted(table, b, check).reduce(
            (sum, p, y) => sum + p * entropyBits(byRemedy(table, updated(table, b, check, y))),
            0,
          );
          expect(bits).toBeCloseTo(entropyBits(byRemedy(table, b)) - later, 10);
        }
      }),
    );
  });
});

describe('the optimum', () => {
  it('is not above stopping, any order or the engine, and is what its own choices reach', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const found = optimum(table, price);
        if (found.kind !== 'optimum') throw new Error('too many');
        expect(found.value).toBeLessThanOrEqual(stopNow(table, prior(table), price).loss + 1e-9);
        for (const policy of [enginePolicy(table, price), listed(() => false)]) {
          const reached = performance(table, policy, price);
          expect(found.value).toBeLessThanOrEqual(reached.total + 1e-9);
          expect(reached.accuracy).toBeLessThanOrEqual(bayesLimit(table).accuracy + 1e-12);
        }
        expect(performance(table, found.choice, price).total).toBeCloseTo(found.value, 8);
      }),
    );
  });

  it('never rises by one more check', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        expect(value(table)).toBeLessThanOrEqual(value({ ...table, checks: table.checks.slice(1) }) + 1e-9);
      }),
    );
  });

  it('lies in the bracket, however early the search is broken off, and above the knapsack bound', () => {
    fc.assert(
      fc.property(anyTable, fc.constantFrom(1, 20, 300, 100_000), (table, mostNodes) => {
        const { lower, upper } = bracket(table, price, { mostNodes, gap: 0 });
        const v = value(table);
        expect(lower).toBeLessThanOrEqual(v + 1e-9);
        expect(upper).toBeGreaterThanOrEqual(v - 1e-9);
        if (mostNodes > 1000) expect(upper - lower).toBeLessThan(1e-6);
      }),
    );
    fc.assert(
      fc.property(anyTable, (table) => {
        expect(knapsackBound(table, price)).toBeLessThanOrEqual(value(table) + 1e-9);
      }),
      { numRuns: 20 },
    );
  });

  it('after a reading is that of the table with the posterior for prior', () => {
    fc.assert(
      fc.property(anyTable, (table) => {
        const found = optimum(table, price);
        if (found.kind !== 'optimum') throw new Error('too many');
        const start = found.choice(nothingRead(table));
        if (start === notDone) return;
        const check = table.checks[start]!;
        const b = prior(table);
        const later = predicted(table, b, start).reduce((sum, p, y) => {
          const next = posterior(table, after(nothingRead(table), start, y));
          const rest = {
            ...table,
            suspects: table.suspects.map((s, i) => ({ ...s, prior: next[i]! })),
            checks: table.checks.filter((c) => c !== check),
          };
          return sum + p * value(rest);
        }, check.minutes + check.hazard);
        expect(later).toBeCloseTo(found.value, 8);
      }),
    );
  });
});
