import { describe, expect, test } from 'vitest';
import { compile } from '../../src/guide/compile.ts';
import { flatten } from '../../src/guide/flatten.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import { answer } from '../../src/visit/answer.ts';
import { type Entry, entrySchema } from '../../src/visit/entries.ts';
import type { Input } from '../../src/visit/input.ts';
import type { Knowledge } from '../../src/visit/knowledge.ts';
import { readableLog } from '../../src/visit/readable.ts';
import { advance, beginVisit, openRun } from '../../src/visit/run.ts';
import { stepView } from '../../src/visit/step.ts';
import { visitMessages } from '../../src/words/en/visit.ts';
import { linkKnowledge } from '../support/link-cases/walk.ts';

const end = { kind: 'end', result: 'unresolved', leaves: ['untouched'] } as const;
const bound = { counter: 'pairs', max: 36, otherwise: 'none-left' } as const;
/** The grid alone, with what is said of a try. */
const machine: Machine = {
  id: 'pairs-only',
  kind: 'guide',
  version: 1,
  begins: ['asFound'],
  start: 'pairs',
  escape: 'none-left',
  stop: 'none-left',
  steps: {
    pairs: {
      kind: 'pair',
      result: 'said',
      outcomes: {
        'at-inverter': { to: 'wait', limit: bound },
        'at-pack': { to: 'wait', limit: bound },
        'all-tried': 'none-left',
      },
    },
    wait: { kind: 'wait', wait: 'link-settle', outcomes: { done: 'said' } },
    said: { kind: 'choose', outcomes: { live: 'up', nothing: 'pairs' } },
    up: end,
    'none-left': end,
  },
};
const know: Knowledge = { ...linkKnowledge, compiled: compile(flatten(machine, {})) };
const grid = {
  inverter: ['A', 'B'],
  pack: ['X', 'Y'],
  found: { inverter: 'A', pack: 'X' },
  named: {},
};

function run() {
  let nowMs = Date.parse('2030-01-01T08:00:00Z');
  const begun = beginVisit(know, { visit: 'pairs-000001', sheet: sallowCreek }, nowMs);
  const log: Entry[] = [...begun.entries];
  let state = begun.state;
  return {
    log,
    get state() {
      return state;
    },
    get view() {
      return stepView(know, state);
    },
    give(input: Input, afterS = 5) {
      nowMs += afterS * 1000;
      const answered = answer(know, state, input, nowMs);
      log.push(...answered.entries);
      state = advance(know, state, answered.entries);
      return answered.ok ? [] : answered.problems.map(({ field, message }) => [field, message.id]);
    },
  };
}

const tryNext = (visit: ReturnType<typeof run>, said: string) => {
  const [pair] = visit.view.pairing?.grid ? visit.view.pairing.next : [{ inverter: 'B', pack: 'X' }];
  expect(visit.give({ type: 'pair', grid, pair })).toEqual([]);
  expect(visit.give({ type: 'goOn' }, 75)).toEqual([]);
  expect(visit.give({ type: 'choice', outcome: said }, 20)).toEqual([]);
};

describe('a run of a pairing grid', () => {
  test('keeps each try in the log with what came of it and how long it was given; replay brings back the same', () => {
    const visit = run();
    tryNext(visit, 'nothing');
    tryNext(visit, 'nothing');
    expect(visit.state.pairing?.tries).toEqual([
      { inverter: 'B', pack: 'X', result: 'nothing', waitedS: 95 },
      { inverter: 'A', pack: 'Y', result: 'nothing', waitedS: 95 },
    ]);
    for (const entry of visit.log) expect(entrySchema.safeParse(entry).success).toBe(true);
    expect(openRun(know, JSON.parse(JSON.stringify(visit.log)))).toEqual(visit.state);
    const lines = readableLog(visit.log).flatMap(({ details }) =>
      details.map(({ id, params = {} }) => visitMessages[id]!(params)),
    );
    expect(lines.join('\n')).toContain('inverter “A”, pack “Y”, given 95 s');
  });

  test('comes to an end when every pair was tried, and only then offers that answer', () => {
    const visit = run();
    expect(visit.view.options).toEqual([]);
    for (let tries = 0; tries < 4; tries++) tryNext(visit, 'nothing');
    expect(visit.view.pairing?.next).toEqual([]);
    expect(visit.view.options).toEqual(['all-tried']);
    expect(visit.give({ type: 'choice', outcome: 'all-tried' })).toEqual([]);
    expect(visit.state.position.path).toBe('none-left');
  });

  test('takes no pair that was tried, none of other options, and no grid that is wrong', () => {
    const visit = run();
    const ask = (pair: { inverter: string; pack: string } | undefined, other = grid) =>
      visit.give({ type: 'pair', grid: other, ...(pair ? { pair } : {}) });
    expect(ask(undefined)).toEqual([['pair', 'run.problem.pair.noPair']]);
    expect(ask({ inverter: 'C', pack: 'X' })).toEqual([['pair', 'run.problem.pair.strange']]);
    expect(ask({ inverter: 'B', pack: 'X' }, { ...grid, pack: [] })).toEqual([
      ['pack', 'run.problem.pair.noOptions'],
    ]);
    tryNext(visit, 'nothing');
    expect(ask({ inverter: 'B', pack: 'X' })).toEqual([['pair', 'run.problem.pair.tried']]);
  });

  test('lets a result be corrected, and forgets no try by going back', () => {
    const visit = run();
    tryNext(visit, 'nothing');
    const said = visit.state.trail.find(({ block }) => block === 'said')!;
    expect(visit.give({ type: 'correct', toSeq: said.seq })).toEqual([]);
    expect(visit.give({ type: 'choice', outcome: 'live' })).toEqual([]);
    expect(visit.state.pairing?.tries).toMatchObject([{ inverter: 'B', pack: 'X', result: 'live' }]);
    expect(visit.state.position.path).toBe('up');
  });
});
