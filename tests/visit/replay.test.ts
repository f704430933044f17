import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEffect, initialEnergy } from '../../src/safety/energy.ts';
import type { Input } from '../../src/visit/input.ts';
import { openRun } from '../../src/visit/run.ts';
import { stepView } from '../../src/visit/step.ts';
import { ruledOut, verdictOf } from '../../src/visit/verdict.ts';
import { fixtureGuide, fixtureKnowledge, plainSite } from '../support/fixture-guide.ts';
import { Drive } from './drive.ts';

/** What someone might do next, sensible or not, from two random numbers. */
function something(run: Drive, dice: number, pick: number): { input: Input; afterS: number } {
  const { state, know } = run;
  const view = stepView(know, state);
  const at = <T>(list: readonly T[]): T | undefined => list[pick % Math.max(1, list.length)];
  const afterS = [1, 20, 310, 1000][pick % 4]!;
  const texts = ['0.0', '52.4', '150', '-150', '100', 'OL', 'soon', ''];
  const typed = (series: boolean) =>
    series
      ? ([
          ['0', '52'],
          ['1', at(texts)!],
        ] as const)
      : pick % 3 === 0
        ? at(texts)!
        : pick % 2
          ? '0.0'
          : '52.4';
  const inputs: Input[] = [
    { type: 'choice', outcome: at(view.options) ?? 'done' },
    {
      type: 'readings',
      texts: Object.fromEntries(
        view.readings.map(({ id, reading }) => [id, typed(reading.series !== undefined)]),
      ),
    },
    { type: 'goOn' },
    { type: 'confirm', item: at(view.items)?.id ?? 'x', met: pick % 5 !== 0 },
    { type: 'correct', toSeq: at(state.trail)?.seq ?? 0 },
    { type: 'undoAct' },
    { type: 'cant' },
    { type: 'away' },
    { type: 'note', text: 'seen' },
    { type: 'facts', sheet: { ...plainSite(), altitudeM: pick } },
    { type: 'close' },
  ];
  const likely = [0, 1, 1, 1, 2, 2, 3, 3, 3, 0, 0, 2, 4, 5, 6, 7, 8, 9, 10];
  return { input: inputs[likely[dice % likely.length]!]!, afterS };
}

/** What a careful person would do next. */
function sensible(run: Drive): Input {
  const view = stepView(run.know, run.state);
  const unmet = view.items.find((item) => !item.met && item.by === 'person');
  if (unmet) return { type: 'confirm', item: unmet.id, met: true };
  if (view.readings.length === 0)
    return view.options.length > 0 ? { type: 'choice', outcome: view.options[0]! } : { type: 'goOn' };
  const figure = (scale: string) => (scale === 'fx-dead' ? '0.0' : scale === 'fx-volts' ? '150' : '52.4');
  return {
    type: 'readings',
    texts: Object.fromEntries(view.readings.map(({ id, reading }) => [id, figure(reading.scale)])),
  };
}

const dice = fc.array(fc.tuple(fc.nat(10_000), fc.nat(10_000)), { minLength: 5, maxLength: 60 });

describe('replay', () => {
  test('of the whole log is the same as stepping as entries come', () => {
    fc.assert(
      fc.property(dice, (rolls) => {
        const run = new Drive();
        for (const [what, which] of rolls) {
          const { input, afterS } = something(run, what, which);
          run.give(input, afterS);
          expect(openRun(run.know, run.log)).toEqual(run.state);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('never reaches the step with hands on conductors in a plant that is not proved dead there', () => {
    let reached = 0;
    fc.assert(
      fc.property(dice, (rolls) => {
        const run = new Drive();
        for (const [what, which] of rolls) {
          const random = something(run, what, which);
          const input = what % 6 === 0 ? random.input : sensible(run);
          const afterS = what % 4 === 0 ? random.afterS : 310;
          const before = run.state;
          run.give(input, afterS);
          const touched = run.log.findLast((entry) => entry.kind === 'answer' && entry.path === 'work');
          if (!touched || touched.seq <= before.lastSeq || touched.kind !== 'answer') continue;
          if (touched.outcome !== 'done') continue;
          reached++;
          expect(stepView(run.know, before).barred).toBeUndefined();
        }
      }),
      { numRuns: 150, seed: 2026 },
    );
    expect(reached).toBeGreaterThan(0);
  });

  test('takes the outcomes as they were judged, whatever the bands say now', () => {
    const run = new Drive().choose('quiet').read({ v: '150' });
    const other = { ...run.know, scales: {} };
    expect(openRun(other, run.log).position).toEqual(run.state.position);
  });

  test('folds every deed ever logged into the energy state', () => {
    const run = new Drive().toClosed();
    const folded = run.log
      .flatMap((entry) => (entry.kind === 'answer' ? entry.does : []))
      .reduce(applyEffect, initialEnergy(run.state.variant, 'lockedOut'));
    expect(run.state.energy).toEqual(folded);
  });

  test('refuses a log without its beginning, and one of another guide', () => {
    const run = new Drive();
    expect(() => openRun(run.know, run.log.slice(1))).toThrow('beginning');
    expect(() => openRun(fixtureKnowledge({ ...fixtureGuide, id: 'fx-other' }), run.log)).toThrow('fx-guide');
  });
});

describe('a guide that changed since the visit began', () => {
  const changed = fixtureKnowledge({
    ...fixtureGuide,
    version: 2,
    steps: {
      ...fixtureGuide.steps,
      'unlock-main': {
        kind: 'operate',
        outcomes: { done: { to: 'clear', does: [{ tripExplained: 'main' }, { unlock: 'main' }] } },
      },
    },
  });

  test('is replayed as far as the answers fit, and what was done stays done', () => {
    const run = new Drive().toClosed();
    const opened = openRun(changed, run.log);
    expect(opened.position.path).toBe('unlock-main');
    const misfit = run.log.find((entry) => entry.kind === 'answer' && entry.path === 'unlock-main');
    expect(opened.misfit).toEqual({ seq: misfit?.seq });
    expect(opened.energy.closed).toBe(run.state.energy.closed);
    expect(opened.energy.proved).toBe(0);
  });

  test('goes on only when the person says so, and that too is replayed', () => {
    const run = new Drive().toClosed();
    run.know = changed;
    run.state = openRun(changed, run.log);
    const refused = run.give({ type: 'cant' });
    expect(refused.ok ? '' : refused.problems[0]?.message.id).toBe('run.problem.guideChanged');
    run.take({ type: 'changed' }).take({ type: 'cant' });
    expect(run.path).toBe('left');
    expect(openRun(changed, run.log)).toEqual(run.state);
  });
});

describe('a verdict', () => {
  test('rests on what the log holds', () => {
    const run = new Drive().choose('quiet').read({ v: '60' });
    const verdict = verdictOf(run.know, run.state);
    expect(verdict).toMatchObject({ causes: ['short'], supported: true });
    expect(verdict?.because[0]?.readings[0]?.text).toBe('60');
  });

  test('that the log does not bear out is not acted on', () => {
    const run = new Drive().choose('quiet').read({ v: '60' });
    const position = { ...run.state.position, path: 'verdict-few' };
    run.state = { ...run.state, position };
    expect(verdictOf(run.know, run.state)?.supported).toBe(false);
    const refused = run.give({ type: 'choice', outcome: 'next' });
    expect(refused.ok ? '' : refused.problems[0]?.message.id).toBe('run.problem.unsupported');
  });

  test('rules out causes that readings speak against, and none for a reading too close to call', () => {
    const ok = new Drive().choose('quiet').read({ v: '150' });
    expect(ruledOut(ok.know, ok.state).map((each) => [each.cause, each.by[0]?.readings[0]?.text])).toEqual([
      ['short', '150'],
      ['few', '150'],
      ['old', '150'],
    ]);
    const close = new Drive().choose('quiet').read({ v: '100' });
    expect(ruledOut(close.know, close.state)).toEqual([]);
  });
});
