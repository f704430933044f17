import { describe, expect, test } from 'vitest';
import { plantNow } from '../../src/visit/ending.ts';
import { openRun, startNeeds } from '../../src/visit/run.ts';
import { stepView } from '../../src/visit/step.ts';
import { fixtureKnowledge, plainSite } from '../support/fixture-guide.ts';
import { Drive } from './drive.ts';

const messages = (result: ReturnType<Drive['give']>) =>
  result.ok ? [] : result.problems.map((problem) => [problem.field, problem.message.id]);

describe('a run', () => {
  test('goes from its first step to a close, and the log says all of it', () => {
    const run = new Drive().toClosed();
    expect(run.path).toBe('rise');
    run.take({
      type: 'readings',
      texts: {
        s2: [
          ['0', '52.0'],
          ['2,5', '52.3'],
        ],
      },
    });
    expect(run.path).toBe('fixed');
    expect(messages(run.give({ type: 'close' }))).toEqual([['owner-told', 'run.problem.itemUnmet']]);
    run.take({ type: 'confirm', item: 'owner-told', met: true }).take({ type: 'close' });
    expect(run.state.closed?.result).toBe('done');
    expect(run.log.map((entry) => entry.seq)).toEqual(run.log.map((_, index) => index));
    expect(messages(run.give({ type: 'choice', outcome: 'quiet' }))).toEqual([
      [undefined, 'run.problem.closed'],
    ]);
  });

  test('lets the sheet answer what it knows, and says so', () => {
    const run = new Drive().choose('quiet');
    expect(run.path).toBe('volts');
    expect(run.state.trail.at(-1)).toMatchObject({ block: 'source', outcome: 'none', by: 'sheet' });
  });

  test('keeps the text, the value, the meter, the band and what it was made from', () => {
    const run = new Drive().choose('quiet').read({ v: '0,15 kV' });
    expect(run.state.trail.at(-1)?.readings[0]).toMatchObject({
      id: 'v',
      text: '0,15 kV',
      value: 150,
      unit: 'kV',
      outcome: 'ok',
      scale: { id: 'fx-volts', expected: 'ok', uses: { 'inverter.busCapacitanceF': 0.02 } },
    });
  });

  test('calls a reading undetermined when its uncertainty reaches over a limit', () => {
    const run = new Drive().choose('quiet').read({ v: '100' });
    expect(run.state.trail.at(-1)?.readings[0]).toMatchObject({
      outcome: 'undetermined',
      between: ['low', 'ok'],
    });
    expect(run.path).toBe('work-out');
  });

  test('shows the worksheet that decides, and goes on by it', () => {
    const run = new Drive().choose('quiet').read({ v: '100' });
    expect(stepView(run.know, run.state).work).toMatchObject({
      outcome: 'few',
      use: { worksheet: 'fx', inputs: { volts: 100 } },
    });
    run.take({ type: 'goOn' });
    expect(run.path).toBe('verdict-few');
    expect(run.state.trail.at(-1)).toMatchObject({ by: 'worksheet', outcome: 'few' });
  });

  test('judges a reading without its sign on its magnitude, and a signed one with it', () => {
    const signed = new Drive().choose('quiet').read({ v: '-150' });
    expect(signed.state.trail.at(-1)?.outcome).toBe('reversed');
    const run = new Drive().choose('quiet').read({ v: '150' }).meet('named').take({ type: 'goOn' }, 301);
    run.read({ known: '-52.4' });
    expect(run.state.trail.at(-1)?.outcome).toBe('live');
  });

  test('never leaves a bounded loop unbounded, whatever is gone back to', () => {
    const run = new Drive().choose('quiet').read({ v: '300' }).read({ v: '300' });
    const first = run.state.trail[0]!;
    run.take({ type: 'correct', toSeq: first.seq }).choose('quiet').read({ v: '300' });
    expect(run.path).toBe('unresolved');
  });

  test('offers "cannot", "not sure" and "stop" at every step before an end', () => {
    for (const type of ['cant', 'unsure', 'stop'] as const) {
      const run = new Drive().toReady().take({ type });
      expect(run.path).toBe(type === 'stop' ? 'stopped' : 'left');
      expect(messages(run.give({ type }))).toEqual([[undefined, 'run.problem.atEnd']]);
    }
  });
});

describe('bad input', () => {
  test('says which reading is wrong and keeps the run where it was', () => {
    const run = new Drive().choose('quiet').read({ v: '150' }).meet('named').take({ type: 'goOn' }, 301);
    run.read({ known: '52.4' });
    const before = run.log.length;
    const typed = { pair: '1.2.3', 'plus-earth': '', 'minus-earth': '0.0', 'pair-ac': '-0.1' };
    expect(messages(run.give({ type: 'readings', texts: typed }))).toEqual([
      ['pair', 'quantity.twoSeparators'],
      ['plus-earth', 'quantity.empty'],
      ['pair-ac', 'quantity.negative'],
    ]);
    expect([run.path, run.log.length]).toEqual(['prove/dead', before]);
  });

  test('refuses a choice, a reading or an item that is not there', () => {
    const run = new Drive();
    expect(messages(run.give({ type: 'choice', outcome: 'maybe' }))).toEqual([
      [undefined, 'run.problem.noSuchChoice'],
    ]);
    run.choose('quiet');
    expect(messages(run.give({ type: 'readings', texts: { w: '1' } }))).toEqual([
      [undefined, 'run.problem.noSuchReading'],
    ]);
    expect(messages(run.give({ type: 'choice', outcome: 'ok' }))).toEqual([
      [undefined, 'run.problem.noSuchChoice'],
    ]);
    expect(messages(run.give({ type: 'confirm', item: 'x', met: true }))).toEqual([
      [undefined, 'run.problem.noSuchItem'],
    ]);
    expect(messages(run.give({ type: 'goOn' }))).toEqual([[undefined, 'run.problem.answerFirst']]);
  });

  test('refuses a series that is too short, out of order or without its times', () => {
    const run = new Drive().toClosed();
    const give = (s2: string | [string, string][]) => messages(run.give({ type: 'readings', texts: { s2 } }));
    expect(give('52')).toEqual([['s2', 'run.problem.wantsSeries']]);
    expect(give([['0', '52']])).toEqual([['s2', 'run.problem.seriesShort']]);
    expect(
      give([
        ['2', '52'],
        ['1', '52'],
      ]),
    ).toEqual([['s2', 'run.problem.seriesOrder']]);
    expect(
      give([
        ['soon', '52'],
        ['1', '52'],
      ]),
    ).toEqual([['s2', 'run.problem.seriesTime']]);
    expect(
      give([
        ['0', 'fifty'],
        ['1', '52'],
      ]),
    ).toEqual([['s2', 'quantity.notANumber']]);
  });
});

describe('facts of the site', () => {
  test('are asked for by name, and nothing is judged without them', () => {
    const sheet = plainSite();
    sheet.inverter.busCapacitanceF = null;
    expect(startNeeds(fixtureKnowledge(), sheet).facts).toEqual(['inverter.busCapacitanceF']);
    const run = new Drive(fixtureKnowledge(), sheet);
    expect(messages(run.give({ type: 'choice', outcome: 'quiet' }))).toEqual([
      [undefined, 'run.problem.missingFacts'],
    ]);
    run.take({ type: 'facts', sheet: plainSite() }).choose('quiet');
    expect(stepView(run.know, run.state).missing).toEqual([]);
    expect(run.log.find((entry) => entry.kind === 'fact')?.changes).toEqual([
      { id: 'inverter.busCapacitanceF', from: null, to: 0.02 },
    ]);
  });

  test('that change later flag the answers judged on the old sheet and judge none again', async () => {
    const { staleAnswers } = await import('../../src/visit/stale.ts');
    const run = new Drive().choose('quiet').read({ v: '150' });
    const changed = plainSite();
    changed.inverter.busCapacitanceF = 0.09;
    run.take({ type: 'facts', sheet: changed });
    expect([...staleAnswers(run.know, run.state)]).toEqual([run.state.trail.at(-1)!.seq]);
    expect(run.state.trail.at(-1)?.outcome).toBe('ok');
    const other = plainSite();
    other.name = 'Renamed';
    const still = new Drive().choose('quiet').read({ v: '150' }).take({ type: 'facts', sheet: other });
    expect(staleAnswers(still.know, still.state).size).toBe(0);
  });
});

describe('a wait', () => {
  test('is counted from the log, so that a reload does not shorten it', () => {
    const run = new Drive().choose('quiet').read({ v: '150' }).meet('named');
    expect(messages(run.give({ type: 'goOn' }, 200))).toEqual([[undefined, 'run.problem.waitNotOver']]);
    run.state = openRun(run.know, run.log);
    expect(messages(run.give({ type: 'goOn' }, 99))).toEqual([[undefined, 'run.problem.waitNotOver']]);
    run.take({ type: 'goOn' }, 2);
    expect(run.path).toBe('prove/tester-before');
  });
});

describe('a hold point', () => {
  test('goes on only when every item is met, ticks from before do not count', () => {
    const run = new Drive().toReady();
    expect(messages(run.give({ type: 'goOn' }))).toEqual([['nobody-near', 'run.problem.itemUnmet']]);
    expect(messages(run.give({ type: 'confirm', item: 'shown-dead', met: true }))).toEqual([
      ['shown-dead', 'run.problem.itemByReading'],
    ]);
    run.take({ type: 'confirm', item: 'nobody-near', met: true });
    run.take({ type: 'confirm', item: 'nobody-near', met: false });
    expect(messages(run.give({ type: 'goOn' }))).toEqual([['nobody-near', 'run.problem.itemUnmet']]);
    run.take({ type: 'confirm', item: 'nobody-near', met: true });
    const tester = run.state.trail.find((step) => step.path === 'prove/tester-before')!;
    run.take({ type: 'correct', toSeq: tester.seq });
    run.read({ known: '52.4' });
    run.read({ pair: '0.0', 'plus-earth': '0.0', 'minus-earth': '0.0', 'pair-ac': '0.0' });
    run.read({ known: '52.4' });
    expect(messages(run.give({ type: 'goOn' }))).toEqual([['nobody-near', 'run.problem.itemUnmet']]);
  });

  test('keeps its ticks over a reload', () => {
    const run = new Drive().toReady().take({ type: 'confirm', item: 'nobody-near', met: true });
    expect([...openRun(run.know, run.log).ticked]).toEqual(['nobody-near']);
  });
});

describe('an end', () => {
  test('is shown by what the plant really is', () => {
    const run = new Drive().take({ type: 'cant' });
    expect(run.path).toBe('left');
    run.take({ type: 'confirm', item: 'owner-told', met: true }).take({ type: 'close' });
    expect(run.state.closed).toMatchObject({ result: 'leftIsolated', leaves: 'isolated' });
    expect(plantNow(run.state).heldOpen).toContain('main');
  });
});
