import { describe, expect, test } from 'vitest';
import { answersSchema, walk } from '../../src/visit/walk.ts';
import { fixtureKnowledge, plainSite } from '../support/fixture-guide.ts';
import { Drive } from './drive.ts';

const zeros = { pair: '0.0', 'plus-earth': '0,0 V', 'minus-earth': '0.0', 'pair-ac': '0.0' };
const whole = {
  symptom: 'quiet',
  volts: { v: '150' },
  named: 'done',
  'fx-prove--tester-before': '52.4',
  'fx-prove--dead': zeros,
  'fx-prove--tester-after': { known: '52.4 V' },
  ready: 'done',
  work: 'done',
  sides: { s1: '52.40', s2: '52.30' },
  tidy: { 'tools-out': true, 'covers-on': true, 'people-told': true },
  'unlock-main': 'done',
  clear: 'done',
  'close-main': 'done',
  rise: {
    s2: [
      [0, '52.0'],
      ['2.5', 52.3],
    ],
  },
};
const go = (answers: Record<string, unknown>) =>
  walk(fixtureKnowledge(), plainSite(), answersSchema.parse({ answers }));

describe('a walk', () => {
  test('goes the way the browser’s run goes with the same readings', () => {
    const result = go(whole);
    const run = new Drive().toClosed();
    run.take({
      type: 'readings',
      texts: {
        s2: [
          ['0', '52.0'],
          ['2.5', '52.3'],
        ],
      },
    });
    expect(result.problems).toEqual([]);
    expect(result.path).toEqual([...run.state.trail.map((step) => step.block), 'fixed']);
    expect(result.outcomes.map((each) => each.outcome)).toEqual(run.state.trail.map((step) => step.outcome));
    expect(result.end).toEqual({ result: 'done', leaves: 'guarded' });
  });

  test('says the hazards shown, in order, each with its step', () => {
    const { warnings } = go(whole);
    expect(warnings[0]).toEqual({ block: 'fx-prove--tester-before', hazard: 'live-metering' });
    expect(warnings.map((each) => each.block)).toEqual([
      'fx-prove--tester-before',
      'fx-prove--dead',
      'fx-prove--tester-after',
      'work',
      'sides',
      'close-main',
      'rise',
    ]);
  });

  test('stops where the answers end and says what the step asks for', () => {
    const { named, ...less } = whole;
    expect(named).toBe('done');
    expect(go(less).needs).toEqual({ step: 'named', kind: 'hold', items: ['named'] });
    expect(go({}).needs).toEqual({ step: 'symptom', kind: 'choose', options: ['quiet', 'other'] });
    expect(go({ symptom: 'quiet' }).needs).toEqual({ step: 'volts', kind: 'display', readings: ['v'] });
  });

  test('gives the verdict, what it rests on, and what is ruled out', () => {
    const short = go({ symptom: 'quiet', volts: '60' });
    expect(short.verdict).toEqual({
      causes: ['short'],
      because: [{ block: 'volts', outcome: 'low', readings: ['v 60'] }],
    });
    expect(short.ruledOut).toEqual([
      { cause: 'few', by: ['volts'] },
      { cause: 'old', by: ['volts'] },
    ]);
  });

  test('takes a list as the answers of a step come to again', () => {
    const result = go({ symptom: 'quiet', volts: ['300', '300', '150'] });
    expect(result.outcomes.slice(-3).map((each) => each.outcome)).toEqual(['high', 'high', 'ok']);
    expect(go({ symptom: 'quiet', volts: ['300'] }).needs?.step).toBe('volts');
  });

  test('says which answer is refused, and does not go on', () => {
    const result = go({ ...whole, 'fx-prove--dead': { ...zeros, pair: 'nothing' } });
    expect(result.problems).toMatchObject([
      { block: 'fx-prove--dead', field: 'pair', message: { id: 'quantity.notANumber' } },
    ]);
    expect(result.path.at(-1)).toBe('fx-prove--dead');
    expect(go({ ...whole, tidy: { 'tools-out': true, 'covers-on': false } }).problems).toMatchObject([
      { block: 'tidy', field: 'covers-on' },
      { block: 'tidy', field: 'people-told' },
    ]);
    expect(go({ symptom: 'loud' }).problems[0]?.message.id).toBe('run.problem.noSuchChoice');
  });

  test('refuses answers to steps that the guide has not', () => {
    expect(go({ symptm: 'quiet' }).problems[0]?.message).toEqual({
      id: 'walk.unknownBlocks',
      params: { blocks: 'symptm' },
    });
  });

  test('ticks a hold only for "done", "all" or its own items by name', () => {
    for (const text of ['no', 'yes', '', 'named'])
      expect(go({ ...whole, named: text }).problems).toMatchObject([
        { block: 'named', message: { id: 'walk.holdText' } },
      ]);
    expect(go({ ...whole, named: 'all' }).problems).toEqual([]);
    expect(go({ ...whole, named: { nobody: true } }).problems).toMatchObject([
      { block: 'named', message: { id: 'walk.unknownItems', params: { items: 'nobody' } } },
    ]);
    expect(go({ ...whole, tidy: { 'tools-out': 'yes', 'covers-on': true } }).problems).toMatchObject([
      { block: 'tidy', message: { id: 'walk.unknownItems', params: { items: 'tools-out' } } },
    ]);
  });

  test('refuses readings that the step has not', () => {
    expect(go({ ...whole, volts: { v: '150', w: '3' } }).problems).toMatchObject([
      { block: 'volts', message: { id: 'walk.unknownReadings', params: { readings: 'w' } } },
    ]);
  });

  test('says which answers it never came to', () => {
    expect(go(whole).unusedAnswers).toEqual([]);
    const { named, ...less } = whole;
    expect(named).toBe('done');
    expect(go(less).unusedAnswers).toContain('fx-prove--tester-before');
    expect(go({ symptom: 'quiet', volts: ['300', '150', '150', '150'] }).unusedAnswers).toEqual([
      'volts #3',
      'volts #4',
    ]);
  });

  test('says when the sheet answered otherwise than the file', () => {
    // The plain site has no second source, or one: whichever it is, the other answer is not what was taken.
    const decided = go(whole).outcomes.find(({ by }) => by === 'sheet')!;
    const other = decided.outcome === 'none' ? 'fitted' : 'none';
    expect(go({ ...whole, [decided.block]: decided.outcome }).unusedAnswers).toEqual([]);
    expect(go({ ...whole, [decided.block]: other }).unusedAnswers).toEqual([decided.block]);
  });

  test('closes an end once, with its items', () => {
    const end = { ...whole, fixed: 'done' };
    const result = go(end);
    expect(result.problems).toEqual([]);
    expect(result.path.filter((step) => step === 'fixed')).toHaveLength(1);
    expect(go({ ...end, fixed: 'maybe' }).problems[0]?.message.id).toBe('walk.holdText');
  });

  test('gives the hazards of a step once, however often it is come to', () => {
    const { warnings } = go(whole);
    const keys = warnings.map(({ block, hazard }) => `${block} ${hazard}`);
    expect(keys).toEqual([...new Set(keys)]);
  });

  test('is the same each time', () => {
    expect(go(whole)).toEqual(go(whole));
  });
});
