import { describe, expect, test } from 'vitest';
import { hasDevice } from '../../src/safety/energy.ts';
import { provedDead } from '../../src/safety/states.ts';
import { proveAgainAt, undoable, wayBack } from '../../src/visit/returning.ts';
import { stepView } from '../../src/visit/step.ts';
import { Drive } from './drive.ts';

const ids = (result: ReturnType<Drive['give']>) =>
  result.ok ? [] : result.problems.map((problem) => problem.message.id);
const barred = (run: Drive) => stepView(run.know, run.state).barred;
const indexOf = (run: Drive, path: string) => run.state.trail.findIndex((step) => step.path === path);

describe('going back', () => {
  test('after the battery is closed, nothing leads back to the step that touches its conductors', () => {
    const run = new Drive().toClosed();
    for (const [index, step] of run.state.trail.entries()) {
      const way = wayBack(run.know, run.state, index);
      if (step.path === 'work' || step.path === 'ready')
        expect(way).toEqual({ open: false, why: 'notAsked' });
      const node = run.know.compiled.flat.nodes.get(step.path)!;
      if (node.step.state && node.step.kind === 'measure')
        expect(way).toMatchObject({
          open: false,
          why: 'barred',
          reversedBy: [{ open: 'main' }, { lock: 'main' }],
        });
    }
    const sides = run.state.trail[indexOf(run, 'sides')]!;
    expect(ids(run.give({ type: 'correct', toSeq: sides.seq }))).toEqual(['run.problem.back.barred']);
    expect(run.path).toBe('rise');
  });

  test('to a question asked before a handle moved is barred until it is moved back', () => {
    const run = new Drive().toClosed();
    const way = wayBack(run.know, run.state, indexOf(run, 'volts'));
    expect(way).toMatchObject({ open: false, why: 'barred', bar: 'stands-otherwise' });
    const volts = run.state.trail[indexOf(run, 'volts')]!;
    expect(ids(run.give({ type: 'correct', toSeq: volts.seq }))).toEqual(['run.problem.back.barred']);
    expect(run.path).toBe('rise');
    expect(hasDevice(run.state.energy.closed, 'main')).toBe(true);
  });

  test('over a proof voids it, and never leads into the middle of one', () => {
    const run = new Drive().toReady();
    expect(provedDead(run.state.energy, 'invDC')).toBe(true);
    expect(wayBack(run.know, run.state, indexOf(run, 'prove/dead'))).toMatchObject({
      open: false,
      bar: 'other-procedure',
    });
    const again = proveAgainAt(run.know, run.state)!;
    run.take({ type: 'correct', toSeq: again.seq });
    expect(provedDead(run.state.energy, 'invDC')).toBe(false);
  });

  test('over findings that do not keep makes them be shown again, and leaves a finished proof', () => {
    const run = new Drive().toReady().meet('nobody-near').choose('done').read({ s1: '52.4', s2: '52.3' });
    expect(run.state.energy.bothSides).toBe('alike');
    run.take({ type: 'correct', toSeq: run.state.trail[indexOf(run, 'sides')]!.seq });
    expect(run.state.energy.bothSides).toBe('unread');
    expect(provedDead(run.state.energy, 'invDC')).toBe(true);
  });

  test('to where the tester was proved gives the whole proof again', () => {
    const run = new Drive().toReady();
    const again = proveAgainAt(run.know, run.state)!;
    expect(again.path).toBe('prove/tester-before');
    run.take({ type: 'correct', toSeq: again.seq }).read({ known: '52.4' });
    run
      .read({ pair: '0.0', 'plus-earth': '0.0', 'minus-earth': '0.0', 'pair-ac': '0.0' })
      .read({ known: '52.4' });
    expect(provedDead(run.state.energy, 'invDC')).toBe(true);
  });
});

describe('"I did not do that"', () => {
  test('takes back the last deed alone and voids every proof', () => {
    const run = new Drive().toClosed();
    expect(undoable(run.state)?.path).toBe('close-main');
    run.take({ type: 'undoAct' });
    expect(run.path).toBe('close-main');
    expect(hasDevice(run.state.energy.closed, 'main')).toBe(false);
    expect(run.state.energy.bothSides).toBe('unread');
    // Both sides have to be read again before it may be closed: the deed is barred until then.
    expect(barred(run)).toBe('sides-not-read');
    expect(ids(run.give({ type: 'choice', outcome: 'done' }))).toEqual(['run.bar.sides-not-read']);
  });

  test('is refused where no deed stands', () => {
    expect(ids(new Drive().give({ type: 'undoAct' }))).toEqual(['run.problem.nothingToUndo']);
  });
});

describe('a proof', () => {
  test('is void after fifteen minutes, which the log says, and the work waits for a new one', () => {
    const run = new Drive().toReady().meet('nobody-near');
    expect(run.path).toBe('work');
    const refused = run.give({ type: 'choice', outcome: 'done' }, 16 * 60);
    expect(ids(refused)).toEqual(['run.bar.state']);
    expect(run.log.at(-1)).toMatchObject({ kind: 'expiry', reason: 'age' });
    expect(barred(run)).toBe('state');
    expect(proveAgainAt(run.know, run.state)?.path).toBe('prove/tester-before');
    expect(run.log.filter((entry) => entry.kind === 'expiry')).toHaveLength(1);
  });

  test('holds for just under fifteen minutes', () => {
    const run = new Drive().toReady().meet('nobody-near');
    run.take({ type: 'choice', outcome: 'done' }, 14 * 60);
    expect(run.path).toBe('sides');
  });

  test('is void when the person was away, and when the clock was set back', () => {
    const away = new Drive().toReady().take({ type: 'away' });
    expect(barred(away)).toBe('state');
    const clock = new Drive().toReady();
    clock.give({ type: 'confirm', item: 'nobody-near', met: true }, -3600);
    expect(clock.log.at(-1)).toMatchObject({ kind: 'expiry', reason: 'clock' });
    expect(clock.log.at(-1)!.at >= clock.log.at(-2)!.at).toBe(true);
  });
});
