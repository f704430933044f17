import { describe, expect, test } from 'vitest';
import pvNoStart from '../../machines/pv-no-start.ts';
import { againstOf } from '../../src/islands/run/against.ts';
import { pvCases } from '../support/pv-cases/cases.ts';
import { walkPv } from '../support/pv-cases/walk.ts';

/** Handle on, no current, nothing on the screen: up to the volts on both sides of the isolator. */
const dead = pvCases.find(({ id }) => id === 'string-reversed-blocked')!;
const sound = pvCases.find(({ id }) => id === 'a-probe-that-touched-no-ground')!;

function ruledOut({ sheet, answers }: typeof dead, more: Record<string, unknown> = {}) {
  const { problems, ruledOut: list, end } = walkPv(sheet, { ...answers, ...more });
  expect(problems).toEqual([]);
  return { end: end?.result, causes: list.map(({ cause }) => cause), list };
}

describe('the list of what was ruled out in the PV guide', () => {
  test.each([
    ['volts on the inverter side alone', { 'volts-still': { p1: '0.4', p2: '318' } }],
    [
      'volts on the array side alone, and none across a pole',
      { 'volts-still': { p1: '318', p2: '1' }, 'across-poles': { plus: '0.3', minus: '0.2' } },
    ],
    [
      'volts on the array side alone, and a few across each pole',
      { 'volts-still': { p1: '318', p2: '1' }, 'across-poles': { plus: '3.0', minus: '3.0' } },
    ],
    [
      'a current that was there first, and no volts beyond the isolator after it',
      {
        'clamp-string': '2.0',
        flowing: { volts: '250', amps: '0.0' },
        'volts-still': { p1: '318', p2: '1' },
        'across-poles': { plus: '0.3', minus: '0.2' },
      },
    ],
  ])('does not hold an open isolator after %s', (_, more) => {
    const repeated = Object.fromEntries(
      Object.entries(more).map(([step, answer]) => [step, step === 'flowing' ? answer : [answer, answer]]),
    );
    const { end, causes } = ruledOut(dead, {
      ...repeated,
      ...('clamp-string' in more ? { 'clamp-string': '2.0' } : {}),
    });
    expect(end).toBe('unresolved');
    expect(causes).not.toContain('isolator-open');
  });

  test('does not hold an open isolator where the sides read plus and minus, or nothing', () => {
    const crossed = { p1: '318', p2: '-318' };
    const referred = { 'volts-still': [crossed, crossed], 'v-crossed-at-isolator': 'refer' };
    expect(ruledOut(dead, referred).causes).not.toContain('isolator-open');
    const open = pvCases.find(({ id }) => id === 'string-open-circuit')!;
    expect(ruledOut(open).causes).not.toContain('isolator-open');
  });

  test('holds what the readings do speak against, with the steps that do', () => {
    const { end, list } = ruledOut(sound);
    expect(end).toBe('unresolved');
    expect(list.find(({ cause }) => cause === 'isolator-open')?.by).toEqual(['volts-still']);
    expect(list.find(({ cause }) => cause === 'held-back')?.by).toEqual(['load-before', 'load-after']);
    expect(list.find(({ cause }) => cause === 'string-reversed')?.by).toEqual([
      'volts-still',
      'terminals',
      'p1-open',
    ]);
    // Not one of these was looked at in that walk.
    const causes = list.map(({ cause }) => cause);
    for (const cause of [
      'high-resistance-joint',
      'insulation-fault',
      'unequal-strings',
      'tracker-input-failed',
    ])
      expect(causes).not.toContain(cause);
  });

  test('never holds the cause that a case has, not even where no verdict protects it', () => {
    let looked = 0;
    for (const { id, sheet, answers, causes } of pvCases) {
      const { outcomes } = walkPv(sheet, answers);
      const last = new Map(outcomes.map(({ block, outcome }) => [block, outcome]));
      for (const cause of causes?.length === 1 ? causes : []) {
        for (const list of pvNoStart.against[cause] ?? []) {
          const holds = list.every(({ step, outcomes: some }) => some.includes(last.get(step) ?? ''));
          expect(holds, `${id}: ${JSON.stringify(list)}`).toBe(false);
          looked += 1;
        }
      }
    }
    expect(looked).toBeGreaterThan(50);
  });

  test('has a list for every fault that a verdict names', () => {
    const named = Object.values(pvNoStart.steps).flatMap((step) =>
      step.kind === 'verdict' ? step.causes : [],
    );
    expect([...new Set(named)].filter((cause) => !pvNoStart.against[cause])).toEqual(['nothing-wrong']);
  });

  test('is the same where a browser fetches it', async () => {
    expect(await againstOf('pv-no-start')).toEqual(pvNoStart.against);
    expect(await againstOf('isolate')).toEqual({});
  });
});
