import { describe, expect, test } from 'vitest';
import type { Machine } from '../../src/guide/vocabulary.ts';
import { attemptsIn, attemptsOf } from '../../src/visit/attempts.ts';
import { cardOf } from '../../src/visit/card.ts';
import { importVisits } from '../../src/visit/exchange.ts';
import { readableLog } from '../../src/visit/readable.ts';
import { exportVisits } from '../../src/visit/visit-file.ts';
import { visitMessages } from '../../src/words/en/visit.ts';
import { fixtureGuide, fixtureKnowledge } from '../support/fixture-guide.ts';
import { pvCases } from '../support/pv-cases/cases.ts';
import { walkPv } from '../support/pv-cases/walk.ts';
import { Drive } from './drive.ts';

/** Low volts have a cause and a remedy; the same volts, read again, show whether it cured. */
const guide: Machine = {
  ...fixtureGuide,
  against: {},
  steps: {
    ...fixtureGuide.steps,
    volts: {
      ...fixtureGuide.steps['volts']!,
      outcomes: { low: 'found', reversed: 'left', ok: 'left', high: 'left', undetermined: 'left' },
    } as never,
    found: {
      kind: 'verdict',
      causes: ['short'],
      because: [{ step: 'volts', outcomes: ['low'] }],
      outcomes: { mend: 'again', leave: 'left' },
    },
    again: {
      kind: 'display',
      readings: { v: { point: 'display', scale: 'fx-volts', mode: 'display', signed: true } },
      retest: { cured: ['ok'], failed: ['low'] },
      outcomes: {
        ok: 'unresolved',
        low: 'unresolved',
        high: 'unresolved',
        reversed: 'left',
        undetermined: 'unresolved',
      },
    },
  },
};
const toRetest = () => new Drive(fixtureKnowledge(guide)).choose('quiet').read({ v: '60' }).choose('mend');
const said = (run: Drive) =>
  readableLog(run.log).flatMap((line) =>
    [line.message, ...line.details].map(({ id, params }) => visitMessages[id]!(params ?? {})),
  );

describe('what was tried', () => {
  test('and did not cure is said on the record, at its end and on the list', () => {
    const run = toRetest().read({ v: '61' }).take({ type: 'close' });
    expect(attemptsIn(run.log)).toEqual([
      { block: 'found', title: 'found', causes: ['short'], result: 'failed' },
    ]);
    expect(said(run)).toContain('Re-test failed: what was tried did not cure.');
    expect(said(run).slice(-2)).toEqual([
      expect.stringContaining('Closed. Not resolved'),
      'Tried: found. The re-test failed: it did not cure.',
    ]);
    expect(cardOf(run.log)).toMatchObject({ result: 'unresolved', notCured: ['found'] });
  });

  test('and cured is never said to have failed', () => {
    const run = toRetest().read({ v: '150' }).take({ type: 'close' });
    expect(said(run).at(-1)).toBe('Tried: found. The re-test passed.');
    expect(cardOf(run.log).notCured).toBeUndefined();
  });

  test('with no re-test that could tell is called neither', () => {
    const run = toRetest().read({ v: '100' }).take({ type: 'close' });
    expect(said(run).at(-1)).toBe('Found: found. No re-test has shown a cure.');
  });

  test('follows the answers that stand: a re-test gone back over counts no more', () => {
    const run = toRetest().read({ v: '61' });
    const wrong = run.state.trail.at(-1)!;
    run.take({ type: 'correct', toSeq: wrong.seq });
    expect(attemptsIn(run.log)[0]?.result).toBeUndefined();
    run.read({ v: '150' });
    expect(attemptsIn(run.log)).toEqual(attemptsOf(run.state.trail));
    expect(attemptsIn(run.log)[0]?.result).toBe('cured');
  });

  test('and what was ruled out stand on the record of a visit that was closed', () => {
    const ruledOut = [{ cause: 'A short', by: ['Volts', 'Amps'] }];
    const run = toRetest().read({ v: '61' }).take({ type: 'close', ruledOut });
    expect(said(run).at(-1)).toBe('Ruled out: A short, by Volts; Amps.');
    const read = importVisits(exportVisits([run.log]));
    expect(read.ok && read.logs[0]).toEqual(run.log);
  });

  test('comes through a file', () => {
    const run = toRetest().read({ v: '61' }).take({ type: 'close' });
    const read = importVisits(exportVisits([run.log]));
    expect(read.ok && attemptsIn(read.logs[0]!)).toEqual(attemptsIn(run.log));
  });
});

describe('the PV guide', () => {
  const joint = pvCases.find(({ id }) => id === 'high-resistance-joint')!;
  const openAgain = {
    'open-string--ready': ['done', 'done'],
    'open-string--amps': ['0.02', '0.02'],
    'open-string--open-pv': ['done', 'done'],
    'open-string--lock-pv': ['locked', 'locked'],
  };

  test.each([
    ['drags the string down as before', { volts: '150', watts: '300' }, 'unresolved', 'failed'],
    ['runs', joint.answers['retest-start'], 'fixed', 'cured'],
  ])('a repaired joint whose re-test %s', (_, retest, end, result) => {
    const walked = walkPv(joint.sheet, { ...joint.answers, ...openAgain, 'retest-start': retest });
    expect(walked.end?.result).toBe(end);
    expect(walked.tried).toEqual([{ block: 'v-joint', causes: ['high-resistance-joint'], retest: result }]);
  });

  test('says of every case that ends fixed that a re-test passed, and of no other', () => {
    for (const { id, sheet, answers, end } of pvCases) {
      const last = walkPv(sheet, answers).tried.at(-1)?.retest;
      if (end === 'fixed') expect(last, id).toBe('cured');
      if (end === 'unresolved') expect(last ?? 'failed', id).toBe('failed');
    }
    const back = pvCases.find(({ id }) => id === 'arc-lockout-comes-back')!;
    expect(walkPv(back.sheet, back.answers).tried).toMatchObject([{ retest: 'failed' }]);
  });
});
