import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { posterior } from '../../src/suspects/belief.ts';
import {
  lowestLikelihood,
  neverSeenAtMost,
  rowFromCounts,
  standardError,
  withFloor,
} from '../../src/suspects/likelihood.ts';
import { handOver, suspectsFrom } from '../../src/suspects/prior.ts';
import { standings } from '../../src/suspects/standing.ts';
import { surprise } from '../../src/suspects/surprise.ts';
import { defineTable, noneOfThese, type TableInput } from '../../src/suspects/table.ts';

const input: TableInput = {
  suspects: suspectsFrom([
    { id: 'fuse', remedy: 'fuse', howOften: 'common' },
    { id: 'lug', remedy: 'lug', howOften: 'occasional' },
    { id: 'board', remedy: 'board', howOften: 'rare' },
  ]),
  checks: ['across', 'drop', 'code', 'heat'].map((id) => ({
    id,
    minutes: 2,
    hazard: 1,
    outcomes: ['no', 'yes'],
    rows: {
      fuse: id === 'across' ? [0, 1] : [1, 0],
      lug: id === 'drop' || id === 'heat' ? [0, 1] : [1, 0],
      board: id === 'code' ? [0, 1] : [1, 0],
    },
  })),
};

const made = defineTable(input);
if (made.kind !== 'table') throw new Error(JSON.stringify(made.problems));
const { table } = made;
const shareOf = (history: number[]) =>
  Object.fromEntries(posterior(table, history).map((p, at) => [table.suspects[at]!.id, p]));

describe('a table', () => {
  it('weighs common, occasional and rare as 6 : 3 : 1 and always has "none of these"', () => {
    expect(table.suspects.map(({ id, prior }) => [id, prior * 11])).toEqual([
      ['fuse', expect.closeTo(6)],
      ['lug', expect.closeTo(3)],
      ['board', expect.closeTo(1)],
      [noneOfThese, expect.closeTo(1)],
    ]);
    expect(table.suspects.at(-1)!.remedy).toBe(handOver);
    expect(table.checks[0]!.rows.at(-1)).toEqual([0.5, 0.5]);
  });

  it('is refused without "none of these", with a row that is none, a sum that is not 1, an id twice', () => {
    const problems = (changed: Partial<TableInput>) => {
      const result = defineTable({ ...input, ...changed });
      return result.kind === 'refused' ? result.problems.map(({ problem }) => problem) : [];
    };
    expect(problems({})).toEqual([]);
    expect(problems({ suspects: [{ id: 'fuse', remedy: 'fuse', prior: 1 }] })).toEqual(['noNoneOfThese']);
    expect(problems({ suspects: input.suspects.slice(1) })).toEqual(['priorsSum']);
    expect(problems({ checks: [input.checks[0]!, input.checks[0]!] })).toEqual(['sameId']);
    const rows = { ...input.checks[0]!.rows, fuse: [Number.NaN, 1] };
    expect(problems({ checks: [{ ...input.checks[0]!, rows }] })).toEqual(['row']);
    expect(problems({ checks: [{ ...input.checks[0]!, minutes: Number.NaN }] })).toEqual(['cost']);
  });

  it('forgives one slip: the other readings bring back what a wrong one had cleared', () => {
    expect(shareOf([-1, 0, -1, -1]).lug).toBeLessThan(0.01);
    expect(shareOf([0, 0, 0, 1]).lug).toBeGreaterThan(0.1);
  });
});

describe('likelihoods', () => {
  it('are floored and still add up to 1, and a row above the floor is left as it is', () => {
    const row = fc
      .array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 6 })
      .filter((list) => list.some((p) => p > 0.01))
      .map((list) => list.map((p) => p / list.reduce((a, b) => a + b)));
    fc.assert(
      fc.property(row, fc.double({ min: 0, max: 0.1, noNaN: true }), (list, floor) => {
        const floored = withFloor(list, floor);
        expect(floored.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
        for (const p of floored) expect(p).toBeGreaterThanOrEqual(floor - 1e-15);
        if (list.every((p) => p >= floor)) expect(floored).toEqual(list);
      }),
    );
    expect(withFloor([1, 0], lowestLikelihood)).toEqual([0.995, 0.005]);
  });

  it('from counts are never 0, and say how sure they are', () => {
    expect(rowFromCounts([0, 500])).toEqual([0.5 / 501, 500.5 / 501]);
    expect([500, 2000, 5000].map((n) => standardError(0.5, n).toFixed(4))).toEqual([
      '0.0224',
      '0.0112',
      '0.0071',
    ]);
    expect(neverSeenAtMost(500)).toBe(0.006);
  });
});

describe('surprise', () => {
  it('is silent while a cause fits, a rare one too', () => {
    expect(surprise(table, [-1, -1, -1, -1]).alarm).toBe(false);
    expect(surprise(table, [1, 0, 0, 0]).alarm).toBe(false);
    expect(surprise(table, [0, 0, 1, 0]).alarm).toBe(false);
  });

  it('speaks when the readings fit no single cause, and names the one to take again', () => {
    const found = surprise(table, [1, 1, 0, 1]);
    expect(found.alarm).toBe(true);
    expect(table.checks[found.takeAgain]!.id).toBe('across');
    expect(surprise(table, [-1, 1, 0, 1]).alarm).toBe(false);
    expect(found.overall).toBeLessThan(1);
  });

  it('then "none of these" leads', () => {
    const [first] = standings(table, [1, 1, 1, 0]);
    expect(table.suspects[first!.suspect]!.id).toBe(noneOfThese);
  });
});

describe('standings', () => {
  it('say what ruled each suspect out, and keep every one in the list', () => {
    const list = standings(table, [1, 0, -1, 0]);
    expect(list.map(({ suspect }) => table.suspects[suspect]!.id)).toHaveLength(4);
    expect(table.suspects[list[0]!.suspect]!.id).toBe('fuse');
    const lug = list.find(({ suspect }) => table.suspects[suspect]!.id === 'lug')!;
    expect(lug.ruledOut).toBe(true);
    expect(lug.against.map(({ check }) => table.checks[check]!.id).sort()).toEqual([
      'across',
      'drop',
      'heat',
    ]);
    expect(list.find(({ suspect }) => table.suspects[suspect]!.id === noneOfThese)!.ruledOut).toBe(false);
  });
});
