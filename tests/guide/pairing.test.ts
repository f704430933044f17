import { describe, expect, test } from 'vitest';
import {
  type Grid,
  gridProblem,
  mostOptions,
  type PairTry,
  readOptions,
  sideOf,
  standingPair,
  untried,
} from '../../src/guide/pairing.ts';

const grid: Grid = {
  inverter: ['Lead', 'Lithium A', 'Lithium B'],
  pack: ['Mode 1', 'Mode 2'],
  found: { inverter: 'Lead', pack: 'Mode 1' },
  named: {},
};
const names = (each: Grid, tries: readonly PairTry[] = []) =>
  untried(each, tries).map(({ inverter, pack }) => `${inverter}/${pack}`);
const failed = (inverter: string, pack: string): PairTry => ({
  inverter,
  pack,
  result: 'nothing',
  waitedS: 60,
});

describe('the order of a pairing grid', () => {
  test('has every pair once, the one that is down last of those at the same pack option', () => {
    expect(names(grid)).toHaveLength(6);
    expect(new Set(names(grid)).size).toBe(6);
    expect(names(grid).at(-1)).toBe('Lead/Mode 1');
  });

  test('keeps the pack as it is while that is as likely: each change there powers the packs down', () => {
    expect(names(grid).slice(0, 2)).toEqual(['Lithium A/Mode 1', 'Lithium B/Mode 1']);
    const later = names(grid, [failed('Lithium A', 'Mode 2')]);
    expect(later[0]).toBe('Lead/Mode 2');
  });

  test('begins with what the papers name, then with names that share a word', () => {
    expect(names({ ...grid, named: { inverter: 'Lithium B', pack: 'Mode 2' } })[0]).toBe('Lithium B/Mode 2');
    const shared = { ...grid, pack: ['Mode 1', 'Lithium'] };
    expect(names(shared)[0]).toBe('Lithium A/Lithium');
  });

  test('tries the pair as found when the papers name it: a pack reads its switches only when it wakes', () => {
    expect(names({ ...grid, named: grid.found })[0]).toBe('Lead/Mode 1');
  });

  test('ends: every pair tried leaves none, whatever was typed', () => {
    const wide: Grid = {
      inverter: Array.from({ length: mostOptions }, (_, i) => `I${i}`),
      pack: Array.from({ length: mostOptions }, (_, i) => `P${i}`),
      found: { inverter: 'I0', pack: 'P0' },
      named: {},
    };
    const tries: PairTry[] = [];
    for (let next = untried(wide, tries)[0]; next; next = untried(wide, tries)[0])
      tries.push({ ...next, result: 'nothing', waitedS: 60 });
    expect(tries).toHaveLength(36);
  });

  test('offers a pair again that was set and never looked at', () => {
    expect(names(grid, [{ inverter: 'Lithium A', pack: 'Mode 1' }])).toContain('Lithium A/Mode 1');
  });
});

describe('what a pair changes', () => {
  test('the inverter alone, or the packs as well', () => {
    const now = standingPair(grid, []);
    expect(sideOf(now, { inverter: 'Lithium A', pack: 'Mode 1' })).toBe('at-inverter');
    expect(sideOf(now, { inverter: 'Lithium A', pack: 'Mode 2' })).toBe('at-pack');
    // Nothing changes but the power-up.
    expect(sideOf(now, now)).toBe('at-pack');
    expect(standingPair(grid, [failed('Lithium B', 'Mode 2')])).toMatchObject({ pack: 'Mode 2' });
  });
});

describe('options as typed', () => {
  test('are trimmed, none empty, none twice', () => {
    expect(readOptions(' Lithium  A \n\nLead; Lead;')).toEqual(['Lithium A', 'Lead']);
  });

  test.each([
    [{ inverter: [] }, 'inverter', 'noOptions'],
    [{ pack: ['1', '2', '3', '4', '5', '6', '7'] }, 'pack', 'manyOptions'],
    [{ pack: ['x'.repeat(61)] }, 'pack', 'longOption'],
    [{ found: { inverter: 'Other', pack: 'Mode 1' } }, 'found-inverter', 'notFound'],
    [{ named: { pack: 'Mode 9' } }, 'named-pack', 'notNamed'],
  ])('%j is refused at its field', (change, field, problem) => {
    expect(gridProblem({ ...grid, ...change })).toEqual({ field, problem });
  });
});
