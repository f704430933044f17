import { describe, expect, test } from 'vitest';
import { ternLedge } from '../../src/site/demo.ts';
import { pvCases } from '../support/pv-cases/cases.ts';
import { walkPv } from '../support/pv-cases/walk.ts';

const caseOf = (id: string) => {
  const found = pvCases.find((each) => each.id === id);
  if (!found) throw new Error(`no case ${id}`);
  return found;
};
const walkCase = (id: string, change: Record<string, unknown>) => {
  const { sheet, answers } = caseOf(id);
  return walkPv(sheet, { ...answers, ...change });
};
const outcomeAt = (result: ReturnType<typeof walkPv>, block: string) =>
  result.outcomes.findLast((each) => each.block === block)?.outcome;

describe('a reading near a limit', () => {
  test('is not given to either side: the walk goes on to the start itself', () => {
    // The lower end of the band at 45 °C ± 5 °C is 8 × 41 × (1 − 0.0028 × 25) × 0.95 = 289.8 V.
    const result = walkCase('healthy-the-long-way', { 'volts-still': { p2: '289.8', p1: '289.8' } });
    expect(outcomeAt(result, 'volts-still')).toBe('between');
    expect(outcomeAt(result, 'volts-between')).toBe('whole');
    expect(result.path).toContain('start-watch');
    expect(result.verdict?.causes).toEqual(['nothing-wrong']);
  });

  test('a clamp that shows whole amperes opens nothing: volts decide, and the handle waits for a better clamp', () => {
    const result = walkCase('isolator-pole-open', {
      'clamp-string': '0',
      'v-pole-open': 'mend',
      'open-string--ready': 'done',
      'open-string--amps': '0',
    });
    expect(outcomeAt(result, 'clamp-string')).toBe('undetermined');
    expect(outcomeAt(result, 'across-poles')).toBe('minus-open');
    expect(outcomeAt(result, 'open-string--amps')).toBe('undetermined');
    expect(result.path).not.toContain('open-string--open-pv');
  });

  test('near nothing, with a clamp that cannot tell, ends guarded', () => {
    const result = walkCase('string-open-circuit', { 'clamp-again': '0.1' });
    expect(result.end).toEqual({ result: 'leftGuarded', leaves: 'guarded' });
  });

  test('volts of a reversed string stay reversed down to a tenth of a volt', () => {
    for (const volts of ['-0.5', '-2.0', '0.0', '0.8'])
      expect(
        walkCase('string-reversed-flowing', { flowing: { volts, amps: '-10.93' } }).verdict?.causes,
      ).toEqual(['string-reversed', 'string-shorted']);
  });

  test('polarity too close to call after dark leaves the string open', () => {
    const result = walkCase('string-reversed-opened-in-the-dark', { 'p1-after-dark': '-5.0' });
    expect(result.end).toEqual({ result: 'leftIsolated', leaves: 'isolated' });
    expect(result.verdict?.causes).not.toEqual(['string-reversed']);
  });

  test('insulation too close to call is not called sound', () => {
    const { sheet, answers } = caseOf('insulation-by-array-tester');
    const result = walkPv(sheet, { ...answers, 'tester-ready': 'cant' });
    expect(outcomeAt(result, 'insulation')).toBe('cannot-tell');
    expect(result.end).toEqual({ result: 'referred', leaves: 'isolated' });
  });

  test('a cell temperature too close to the label’s minimum is not called cold', () => {
    const result = walkCase('held-back-cold-cells', {
      cells: { coldest: '5 °C', hottest: '9 °C', highest: '3.34' },
    });
    expect(outcomeAt(result, 'cells')).toBe('near-limit');
    expect(result.path).toContain('v-held-limit');
  });
});

describe('the place of an insulation fault', () => {
  test('is counted in modules from the plus end, with its range', () => {
    const { sheet, answers } = caseOf('insulation-fault-between');
    const readings = answers['pole-ground'] as { voc: string; plus: string; minus: string };
    const plus = Number(readings.plus);
    const minus = Number(readings.minus);
    expect((8 * plus) / (plus - minus)).toBeCloseTo(3, 2);
    expect(outcomeAt(walkPv(sheet, answers), 'insulation')).toBe('leak-between');
  });
});

describe('what cannot be done', () => {
  test.each([
    ['first-look', 'leave-as-found'],
    ['someone-knows', 'leave-as-found'],
    ['clamp-string', 'leave-as-found'],
    ['volts-still', 'leave-as-found'],
    ['ready-string', 'leave-as-found'],
  ])('at %s ends with the plant as it was', (block, end) => {
    for (const way of ['cant', 'unsure']) {
      const result = walkCase('healthy-the-long-way', { [block]: way });
      expect(result.path.at(-1)).toBe(end);
      expect(result.end?.leaves).toBe('untouched');
    }
  });

  test.each(['screen', 'events', 'battery-screen', 'charge-permit', 'load-on', 'settings', 'cell-temp'])(
    'at %s takes another way and still finds the verdict',
    (block) => {
      const result = walkCase('healthy-the-long-way', {
        [block]: 'cant',
        'ready-battery': 'done',
        'battery-at-inverter': '52.7',
        awake: 'steady',
      });
      expect(result.verdict?.causes).toEqual(['nothing-wrong']);
    },
  );

  test.each(['p1-open', 'poles-both', 'pole-ground'])('at %s leaves the string locked open', (block) => {
    const result = walkCase('insulation-fault-between', { [block]: 'unsure' });
    expect(result.end?.leaves).toBe('isolated');
  });

  test.each(['plug-clamp', 'roof-people', 'run-dead', 'mend', 'join-plugs'])(
    'at %s leaves everything isolated',
    (block) => {
      expect(walkCase('high-resistance-joint', { [block]: 'cant' }).end?.leaves).toBe('isolated');
    },
  );

  test('smoke or a smell ends the run at any step with nothing more to do', () => {
    for (const block of ['first-look', 'alarm-ready', 'pole-ground', 'mend']) {
      const result = walkCase('insulation-fault-between', { [block]: 'stop' });
      expect(result.path.at(-1)).toBe('get-away');
      expect(result.end).toEqual({ result: 'leftGuarded', leaves: 'guarded' });
    }
  });
});

describe('a repair that did not help', () => {
  test('is tested three times at most and then opened again', () => {
    const result = walkCase('high-resistance-joint', {
      'retest-start': { volts: '310', watts: '0' },
      'open-string--amps': '0.02',
    });
    expect(result.outcomes.filter((each) => each.block === 'retest-start')).toHaveLength(3);
    expect(result.path.at(-1)).toBe('unresolved-open');
    expect(result.end).toEqual({ result: 'unresolved', leaves: 'isolated' });
  });

  test('stays open when the string is still wrong before it is closed', () => {
    const wrong = { voc: '-308.0', plus: '-1.0', minus: '1.0' };
    const result = walkCase('high-resistance-joint', { 'retest-ground': wrong });
    expect(result.end).toEqual({ result: 'unresolved', leaves: 'isolated' });
    expect(result.path).not.toContain('restore--ready');
  });

  test('stays open when it still leaks', () => {
    const { answers } = caseOf('insulation-fault-between');
    const result = walkCase('insulation-fault-between', { 'retest-ground': answers['pole-ground'] });
    expect(result.end).toEqual({ result: 'unresolved', leaves: 'isolated' });
  });
});

describe('another site', () => {
  const tern = {
    'first-look': 'quiet',
    'someone-knows': 'done',
    events: 'none',
    symptom: 'no-volts',
    light: 'bright',
    screen: '0',
    'isolator-handle': 'on',
    'ready-string': 'done',
    'clamp-string': '0,02',
    'cell-temp': '45',
  };

  test('with its own string, in metric units and with a comma, comes to its own verdict', () => {
    // 5 × 37.5 V × (1 − 0.003 × 20) = 176.3 V.
    const result = walkPv(ternLedge, {
      ...tern,
      'volts-still': { p2: '1,2 V', p1: '176,3 V' },
      'across-poles': { plus: '0,1', minus: '174,0' },
      'v-pole-open': 'refer',
    });
    expect(result.verdict?.causes).toEqual(['isolator-open']);
    expect(result.outcomes.find((each) => each.block === 'volts-still')?.outcome).toBe('open-pole');
  });

  test('with one tracker is not asked for another', () => {
    const result = walkPv(ternLedge, {
      ...tern,
      'volts-still': { p2: '0', p1: '0,1' },
      'clamp-again': '0,00',
      'fuse-fitted': 'none',
      'array-clamp': '0,01',
      'v-open-circuit': 'refer',
    });
    expect(result.path).not.toContain('cross-strings');
    expect(result.verdict?.causes).toEqual(['string-open-circuit']);
  });
});

describe('a sound plant', () => {
  test('in the dark is not condemned', () => {
    const result = walkCase('healthy-working', { symptom: 'no-volts', light: 'dark' });
    expect(result.verdict).toBeNull();
    expect(result.path.at(-1)).toBe('come-back-in-light');
  });

  test('volts that nobody holds up are looked into, and not called held back', () => {
    // Charge is permitted and a load moves nothing: more modules than the sheet says would stand as high.
    const result = walkCase('healthy-the-long-way', {
      'start-watch': { volts: '300.2', amps: '1.20' },
    });
    expect(outcomeAt(result, 'what-stands')).toBe('not-explained');
    expect(result.path).toContain('over-meter');
    expect(result.verdict).toBeNull();
  });

  test('somebody else’s lock ends the run', () => {
    const result = walkCase('isolator-off', { 'isolator-handle': 'someone-elses-lock' });
    expect(result.end).toEqual({ result: 'referred', leaves: 'untouched' });
  });
});
