import { describe, expect, it } from 'vitest';
import { proceduresById } from '../../machines/index.ts';
import { scales, waits, works } from '../../src/expected/index.ts';
import { compile } from '../../src/guide/compile.ts';
import { flatten } from '../../src/guide/flatten.ts';
import { questions } from '../../src/guide/questions.ts';
import { judgeOn, understand } from '../../src/guide/reading.ts';
import { sallowCreek } from '../../src/site/demo.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { answersSchema, walk } from '../../src/visit/walk.ts';
import { sayExpected } from '../support/say-expected.ts';

type Spec = SiteSheet['meter']['dcClamp'];
const withClamp = (dcClamp: Spec): SiteSheet => ({
  ...sallowCreek,
  meter: { ...sallowCreek.meter, dcClamp },
});
/** 2 % and 5 counts: what the demo's clamp and many others may be off. */
const ordinary = sallowCreek;
const unknown = withClamp({ ofReading: null, counts: null });

function read(text: string, sheet: SiteSheet, id = 'pv-zero'): string {
  const built = scales[id]!.build({ sheet, stringId: sheet.strings[0]!.name, readings: {}, outcomes: {} });
  const signed = id === 'pv-string-clamp';
  const typed = understand(text, { point: 'P1-I', scale: id, mode: 'dcClamp', signed }, 'current', sheet);
  if (!built.ok || !typed.ok) throw new Error('not read');
  return judgeOn(typed.reading, built.scale).outcome;
}

const why = (sheet: SiteSheet, id = 'pv-zero') => sayExpected(scales[id]!, sheet);

describe('no current in a PV conductor, 0.5 A at most with all that the clamp may be off', () => {
  it.each([
    // 2 % and 5 counts of 0.1 A are 0.5 A at 0.0: nothing to spare, and nothing beyond.
    ['0.0 A', ordinary, 'zero'],
    ['-0.0', ordinary, 'zero'],
    ['0.1 A', ordinary, 'undetermined'],
    ['0.9 A', ordinary, 'undetermined'],
    ['1.1 A', ordinary, 'flows'],
    // 0.44 + 0.0088 + 0.05 = 0.4988 A; 0.45 + 0.009 + 0.05 = 0.509 A.
    ['0.44', ordinary, 'zero'],
    ['0.45', ordinary, 'undetermined'],
    // A clamp that shows whole amperes cannot tell half of one.
    ['0', ordinary, 'undetermined'],
    // 3 % and 10 counts are taken: 1 A at 0.0, 0.1 A at 0.00.
    ['0.0 A', unknown, 'undetermined'],
    ['0.00', unknown, 'zero'],
    ['0.38', unknown, 'zero'],
    ['0.39', unknown, 'undetermined'],
    ['OL', ordinary, 'flows'],
  ])('%s', (text, sheet, outcome) => {
    expect(read(text, sheet)).toBe(outcome);
  });

  it('is never easier with a clamp that the sheet does not know', () => {
    for (const text of ['0', '0.0', '0.00', '0.1', '0.3', '0.42', '0.45', '1.2'])
      if (read(text, unknown) === 'zero') expect(read(text, ordinary)).toBe('zero');
  });

  it('is not the same as no current in a battery cable: 2 A', () => {
    expect(read('1.4', ordinary, 'battery-zero')).toBe('zero');
    expect(read('1.5', ordinary, 'battery-zero')).toBe('undetermined');
    expect(read('0.9', unknown, 'battery-zero')).toBe('zero');
  });

  it('is the same before a handle and round a string that is only looked at', () => {
    const kinds = new Set<string>();
    for (const sheet of [ordinary, unknown, withClamp({ ofReading: 0.05, counts: 60 })])
      for (const sign of ['', '-'])
        for (const text of [
          '0',
          '0.0',
          '0.00',
          '0.1',
          '0.38',
          '0.39',
          '0.44',
          '0.45',
          '0.9',
          '1.1',
          '9.42',
        ]) {
          const handle = read(text, sheet);
          const string = read(`${sign}${text}`, sheet, 'pv-string-clamp');
          kinds.add(string);
          expect(string === 'backward' ? 'flows' : string).toBe(handle);
        }
    expect([...kinds].sort()).toEqual(['backward', 'flows', 'undetermined', 'zero']);
    expect(why(ordinary, 'pv-string-clamp')).toContain('no current at 0.0 A or less');
    expect(why(unknown, 'pv-string-clamp')).toContain('cannot show no current here, not even at 0.0');
  });

  it('says before the reading what this clamp must show, or that it cannot show it', () => {
    expect(why(ordinary)).toContain('no current at 0.0 A or less, with hundredths at 0.44 A or less');
    expect(why(unknown)).toContain('cannot show no current here, not even at 0.0');
    expect(why(withClamp({ ofReading: 0.05, counts: 60 }))).toContain('use a better one');
    expect(why(unknown, 'battery-zero')).toContain('no current at 0.9 A or less');
  });
});

describe('opening a string by a clamp that shows 0.0 A', () => {
  const go = (sheet: SiteSheet, answers: Record<string, unknown>) =>
    walk(
      {
        compiled: compile(flatten(proceduresById['open-string']!, proceduresById)),
        scales,
        works,
        waits,
        questions,
      },
      sheet,
      answersSchema.parse({ subject: 'East', answers }),
    );
  const toEnd = {
    ready: 'done',
    'stop-unit': 'done',
    settle: 'done',
    'open-pv': 'done',
    'lock-pv': 'locked',
  };

  it('opens it with an ordinary clamp', () => {
    expect(go(ordinary, { ...toEnd, amps: '0.0 A' }).path.at(-1)).toBe('open');
  });

  it('says of a coarse clamp that it cannot show it, never that current flows', () => {
    const { path, end } = go(unknown, { ...toEnd, amps: '0.0 A', finer: 'no-finer' });
    expect(path.at(-1)).toBe('not-shown');
    expect(path).not.toContain('still-flows');
    expect(path).not.toContain('open-pv');
    expect(end?.result).toBe('leftGuarded');
  });

  it('stops the unit before a small number is put down to the clamp', () => {
    const { path } = go(ordinary, { ...toEnd, amps: ['0.6 A', '0.0 A'] });
    expect(path).toEqual(['ready', 'amps', 'stop-unit', 'settle', 'amps', 'open-pv', 'lock-pv', 'open']);
  });

  it('gives up after two finer tries', () => {
    const { path } = go(unknown, { ...toEnd, amps: '0.0 A', finer: 'again' });
    expect(path.filter((step) => step === 'finer')).toHaveLength(3);
    expect(path.at(-1)).toBe('not-shown');
  });
});
