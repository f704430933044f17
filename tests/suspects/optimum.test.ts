import { describe, expect, it } from 'vitest';
import { bracket } from '../../src/suspects/bracket.ts';
import { efficiency, enginePolicy } from '../../src/suspects/efficiency.ts';
import { after, notDone, nothingRead } from '../../src/suspects/history.ts';
import { knapsackBound } from '../../src/suspects/knapsack-bound.ts';
import { type Optimum, optimum } from '../../src/suspects/optimum.ts';
import { type Policy, performance } from '../../src/suspects/policy.ts';
import type { Price } from '../../src/suspects/price.ts';
import { withPriorsTimes } from '../../src/suspects/prior.ts';
import type { Table } from '../../src/suspects/table.ts';
import { greedy, listed, sure, twoSteps, worthless } from './policies.ts';
import { bareTable, eightBySix, eightBySixPrice as price, sureRows } from './tables.ts';

function optimumOf(table: Table, at: Price): Optimum {
  const found = optimum(table, at);
  if (found.kind !== 'optimum') throw new Error(`${found.states} states`);
  return found;
}

const table = eightBySix();
const found = optimumOf(table, price);

describe('the optimum of the eight by six', () => {
  it('is 36.330: cost 15.815, 3.234 checks, right in 77.2 %', () => {
    expect(found.states).toBe(1728);
    expect(found.value).toBeCloseTo(36.3299, 4);
    const reached = performance(table, found.choice, price);
    expect(reached.total).toBeCloseTo(found.value, 10);
    expect(reached.cost).toBeCloseTo(15.8154, 4);
    expect(reached.checks).toBeCloseTo(3.2342, 4);
    expect(reached.accuracy).toBeCloseTo(0.7721, 4);
    expect(reached.cost).toBeCloseTo(reached.minutes + reached.hazard, 10);
  });

  it('reads the fault code first, then the battery or the settings', () => {
    const name = (check: number) => table.checks[check]?.id;
    const start = nothingRead(table);
    expect(name(found.choice(start))).toBe('readFaultCode');
    expect([0, 1, 2].map((y) => name(found.choice(after(start, 0, y))))).toEqual([
      'battTermV',
      'readParams',
      'readParams',
    ]);
  });

  it('is what the bracket closes in on', () => {
    const { lower, upper } = bracket(table, price, { gap: 0.001 });
    expect(lower).toBeLessThanOrEqual(found.value + 1e-9);
    expect(upper).toBeGreaterThanOrEqual(found.value - 1e-9);
    expect((upper - lower) / upper).toBeLessThanOrEqual(0.001);
  });

  it('is bounded from below by what the checks can carry', () => {
    const bound = knapsackBound(table, price);
    expect(bound).toBeLessThanOrEqual(15.83);
    expect(bound).toBeGreaterThan(15.7);
  });
});

const { bitsPerCost, savedPerCost, net, bits } = {
  bits: (w: { bits: number }) => w.bits,
  bitsPerCost: (w: { bitsPerCost: number }) => w.bitsPerCost,
  net: (w: { netMinutes: number }) => w.netMinutes,
  savedPerCost: (w: { savedMinutes: number; cost: number }) => w.savedMinutes / w.cost,
};
const all: Policy = listed(() => false);

describe('policies on the eight by six', () => {
  it.each<[string, Policy, number, number, number, number, number]>([
    ['optimum', found.choice, 36.33, 15.815, 3.234, 0.772, 1],
    ['engine', enginePolicy(table, price), 36.33, 15.815, 3.234, 0.772, 1],
    ['bits/cost', greedy(table, price, bitsPerCost, worthless), 36.33, 15.815, 3.234, 0.772, 1],
    ['net', greedy(table, price, net, worthless), 36.551, 15.988, 3.113, 0.772, 0.994],
    ['two steps', twoSteps(table, price), 37.042, 16.444, 3.229, 0.771, 0.981],
    ['saved/cost', greedy(table, price, savedPerCost, worthless), 37.273, 16.366, 3.385, 0.768, 0.975],
    ['bits', greedy(table, price, bits, worthless), 43.457, 25.392, 2.803, 0.799, 0.836],
    ['to .80', greedy(table, price, bitsPerCost, sure(table, 0.8)), 50.66, 33.0, 4.59, 0.804, 0.717],
    ['to .90', greedy(table, price, bitsPerCost, sure(table, 0.9)), 53.54, 36.4, 4.88, 0.81, 0.679],
    ['to .95', greedy(table, price, bitsPerCost, sure(table, 0.95)), 58.01, 41.0, 5.12, 0.811, 0.626],
    ['listed to .90', listed(sure(table, 0.9)), 58.376, 41.343, 5.021, 0.811, 0.622],
    ['all six', all, 67.855, 51, 6, 0.8127, 0.535],
    ['act at once', () => notDone, 70.2, 0, 0, 0.22, 0.518],
  ])('%s', (_, policy, total, cost, checks, accuracy, eta) => {
    const { performance: reached, least, exact } = efficiency(table, policy, price);
    expect(exact).toBe(true);
    expect(Math.abs(reached.total - total)).toBeLessThan(0.0052);
    expect(Math.abs(reached.cost - cost)).toBeLessThan(0.052);
    expect(Math.abs(reached.checks - checks)).toBeLessThan(0.0052);
    expect(Math.abs(reached.accuracy - accuracy)).toBeLessThan(0.00052);
    expect(Math.abs(least - eta)).toBeLessThan(0.00052);
  });

  type Maker = (believed: Table) => Policy;
  const byNet: Maker = (believed) => greedy(believed, price, net, worthless);
  const byEngine: Maker = (believed) => enginePolicy(believed, price);
  const even = (at: number): number => 1 / table.suspects[at]!.prior;
  const twiceFirst = (at: number): number => (at % 2 ? 0.5 : 2);
  const halfFirst = (at: number): number => (at % 2 ? 2 : 0.5);

  it.each([
    ['net, every cause as likely', byNet, even, 0.952],
    ['net, priors off by 2', byNet, twiceFirst, 0.681],
    ['engine, every cause as likely', byEngine, even, 0.938],
    ['engine, priors off by 2', byEngine, twiceFirst, 0.961],
    ['engine, priors off by 2 the other way', byEngine, halfFirst, 0.882],
  ])('%s', (_, maker, factor, eta) => {
    const believed = { ...table, suspects: withPriorsTimes(table.suspects, factor) };
    expect(efficiency(table, maker(believed), price, undefined, believed).least).toBeCloseTo(eta, 3);
  });
});

describe('greedy is not the optimum', () => {
  const p = [0.4, 0.05, 0.4, 0.1, 0.05];
  const tests: [string, number][] = [
    ['10101', 3],
    ['11101', 2],
    ['01001', 5],
    ['01111', 2],
  ];
  const five = bareTable(
    p,
    tests.map(([rows, cost]) => ({ cost, rows: sureRows(rows) })),
  );
  // So dear that no error pays: then what is left is the cost of telling all five apart.
  const noError: Price = { minutesPerHazard: 0, wrongMinutes: 1e6 };
  const policy = greedy(five, noError, bitsPerCost, sure(five, 1));

  it('costs 6.95 where 6.00 is possible, with the same first two checks', () => {
    const best = optimumOf(five, noError);
    expect(best.value).toBeCloseTo(6, 6);
    const reached = performance(five, policy, noError);
    expect(reached.accuracy).toBeCloseTo(1, 12);
    expect(reached.cost).toBeCloseTo(6.95, 6);
    expect(best.value / reached.cost).toBeCloseTo(0.863, 3);
    expect(policy(nothingRead(five))).toBe(3);
    expect(best.choice(nothingRead(five))).toBe(3);
  });
});
