import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bestBeforeCalling,
  bestByElimination,
  clusterOrder,
  expectedCost,
  expectedCostOf,
  greedyOrder,
  ratioOrder,
} from '../../src/suspects/repair-order.ts';

const p = [0.4, 0.3, 0.2, 0.1];
const cost = [20, 4, 12, 2];

function orders(items: readonly number[]): number[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((first) =>
    orders(items.filter((item) => item !== first)).map((rest) => [first, ...rest]),
  );
}

const every = orders([0, 1, 2, 3]);

describe('actions by p/c', () => {
  it('go 2, 4, 1, 3 and cost 19.8, the least of all 24 orders; the worst costs 30', () => {
    expect(ratioOrder(p, cost)).toEqual([1, 3, 0, 2]);
    expect(expectedCost(p, cost, [1, 3, 0, 2])).toBeCloseTo(19.8, 12);
    const all = every.map((order) => expectedCost(p, cost, order));
    expect(Math.min(...all)).toBeCloseTo(19.8, 12);
    expect(Math.max(...all)).toBeCloseTo(30, 12);
  });

  it('beat going by share (26.2) and by cost (20.8)', () => {
    expect(expectedCost(p, cost, [0, 1, 2, 3])).toBeCloseTo(26.2, 12);
    expect(expectedCost(p, cost, [3, 1, 2, 0])).toBeCloseTo(20.8, 12);
  });

  it('keep their order when each repair has a cost of its own: 20.9 more, whatever the order', () => {
    const repairs = [15, 3, 10, 120].reduce((sum, repair, at) => sum + repair * p[at]!, 0);
    expect(repairs).toBeCloseTo(20.9, 12);
    expect(expectedCost(p, cost, ratioOrder(p, cost)) + repairs).toBeCloseTo(40.7, 12);
  });

  it('leave the dear suspect for last when the last is accepted unchecked: 12.6 against 17.4', () => {
    expect(expectedCost(p, cost, ratioOrder(p, cost).slice(0, 3))).toBeCloseTo(17.4, 12);
    const best = bestByElimination(p, cost);
    expect(best.order).toEqual([1, 3, 2]);
    expect(best.cost).toBeCloseTo(12.6, 12);
    expect(best.cost).toBeCloseTo(Math.min(...every.map((o) => expectedCost(p, cost, o.slice(0, 3)))), 12);
  });

  it.each([
    [8, 0, 8],
    [15, 2, 14.4],
    [30, 4, 19.8],
  ])('with a call at %d: check %d first, %d in all, as an exhaustive search finds', (call, k, total) => {
    const best = bestBeforeCalling(p, cost, call);
    expect(best.order).toHaveLength(k);
    expect(best.cost).toBeCloseTo(total, 12);
    const exhaustive = every.flatMap((order) =>
      [0, 1, 2, 3, 4].map((n) => {
        const part = order.slice(0, n);
        return expectedCost(p, cost, part) + (n === 4 ? 0 : call * part.reduce((left, a) => left - p[a]!, 1));
      }),
    );
    expect(best.cost).toBeCloseTo(Math.min(...exhaustive), 12);
  });

  it('with a call at 30 pass the resting place of 23.4 at two and three checks', () => {
    const at = (k: number) => {
      const part = ratioOrder(p, cost).slice(0, k);
      return expectedCost(p, cost, part) + 30 * part.reduce((left, a) => left - p[a]!, 1);
    };
    expect(at(2)).toBeCloseTo(23.4, 12);
    expect(at(3)).toBeCloseTo(23.4, 12);
  });

  it('is the best of all orders, for any shares and costs', () => {
    const numbers = fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(numbers, numbers, (raw, costs) => {
        const shares = raw.map((r) => r / raw.reduce((a, b) => a + b));
        const least = Math.min(...every.map((order) => expectedCost(shares, costs, order)));
        expect(expectedCost(shares, costs, ratioOrder(shares, costs))).toBeLessThanOrEqual(least + 1e-12);
        const left = Math.min(...every.map((order) => expectedCost(shares, costs, order.slice(0, 3))));
        expect(bestByElimination(shares, costs).cost).toBeCloseTo(left, 10);
      }),
    );
  });
});

describe('one action for several causes', () => {
  it('greedy costs 4.2 where 3.8 is possible', () => {
    const shares = [0.25, 0.2, 0.25, 0.3];
    const actions = [
      { fixes: [0, 1], cost: 4 },
      { fixes: [3], cost: 1 },
      { fixes: [2, 3], cost: 2 },
    ];
    expect(greedyOrder(shares, actions)).toEqual([1, 2, 0]);
    expect(expectedCostOf(shares, actions, [1, 2, 0])).toBeCloseTo(4.2, 12);
    expect(expectedCostOf(shares, actions, [2, 0])).toBeCloseTo(3.8, 12);
    expect(Math.min(...orders([0, 1, 2]).map((o) => expectedCostOf(shares, actions, o)))).toBeCloseTo(
      3.8,
      12,
    );
  });
});

describe('actions behind one isolation', () => {
  it('count the opening: outside first is 13.0, inside first 14.4', () => {
    const shares = [0.3, 0.4, 0.3];
    const costs = [4, 2, 2];
    const found = clusterOrder(shares, costs, [
      { entryCost: 10, actions: [1, 2] },
      { entryCost: 0, actions: [0] },
    ]);
    expect(found.order).toEqual([0, 1, 2]);
    expect(found.cost).toBeCloseTo(13, 12);
    expect(expectedCost(shares, [4, 12, 2], [1, 2, 0])).toBeCloseTo(14.4, 12);
  });
});
