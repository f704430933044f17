import { describe, expect, it } from 'vitest';
import { nothingRead } from '../../src/suspects/history.ts';
import { nextCheck } from '../../src/suspects/next.ts';
import type { Price } from '../../src/suspects/price.ts';
import { rankChecks } from '../../src/suspects/worth.ts';
import { bareTable, eightBySix, eightBySixPrice as price, sureRows } from './tables.ts';

const table = eightBySix();
const ask = (allows: (id: string) => boolean) =>
  nextCheck(table, nothingRead(table), { price, allows: (check) => allows(table.checks[check]!.id) });

describe('the next check', () => {
  it('is never one that the present state forbids, whatever it is worth', () => {
    expect(ask(() => true)).toMatchObject({ kind: 'check', check: 0, because: 'worth' });
    const next = ask((id) => id !== 'readFaultCode');
    expect(next).toMatchObject({ kind: 'check', check: 1 });
    expect(next.kind === 'check' && next.ranked.map(({ check }) => check)).not.toContain(0);
    expect(ask(() => false)).toMatchObject({ kind: 'stop', because: 'nothingAllowed' });
  });

  it('is none when nothing pays, and the remedy is that of the likeliest class', () => {
    const cheapError: Price = { minutesPerHazard: 1, wrongMinutes: 1 };
    expect(nextCheck(table, nothingRead(table), { price: cheapError })).toEqual({
      kind: 'stop',
      remedy: 0,
      because: 'nothingWorthIt',
    });
  });

  it('is none when what is left differs only in cause and not in remedy', () => {
    const alike = bareTable([0.5, 0.5], [{ rows: sureRows('01') }], ['same', 'same']);
    expect(nextCheck(alike, [-1], { price })).toMatchObject({ kind: 'stop' });
  });

  it('is the first of a pair that is worth something only together', () => {
    // The remedy is told by whether two readings agree: each alone says nothing.
    const pair = bareTable(
      [0.25, 0.25, 0.25, 0.25],
      ['0011', '0101'].map((rows) => ({ rows: sureRows(rows) })),
      ['agree', 'differ', 'differ', 'agree'],
    );
    expect(nextCheck(pair, [-1, -1], { price })).toMatchObject({ kind: 'check', because: 'worthTogether' });
  });

  it('among equals is the less hazardous, then the one with fewer changes of state, then by id', () => {
    const rows = sureRows('01');
    const equals = bareTable(
      [0.5, 0.5],
      [
        { cost: 1, hazard: 2, rows },
        { cost: 3, hazard: 0, rows },
        { cost: 3, hazard: 0, rows },
      ],
    );
    const order = (changes?: (check: number) => number) =>
      rankChecks(equals, [0.5, 0.5], [0, 1, 2], price, changes).map(({ check }) => check);
    expect(order()).toEqual([1, 2, 0]);
    expect(order((check) => (check === 1 ? 1 : 0))).toEqual([2, 1, 0]);
  });

  it('that costs nothing comes first when it tells something and last when it tells nothing', () => {
    const free = bareTable(
      [0.5, 0.5],
      [
        { cost: 0, rows: sureRows('00') },
        { cost: 2, rows: sureRows('01') },
        { cost: 0, rows: sureRows('01') },
      ],
    );
    const ranked = rankChecks(free, [0.5, 0.5], [0, 1, 2], price);
    expect(ranked.map(({ bitsPerCost }) => bitsPerCost)).toEqual([Number.POSITIVE_INFINITY, 0.5, 0]);
  });
});
