import { expect, test } from 'vitest';
import { readableLog } from '../../src/visit/readable.ts';
import { visitMessages } from '../../src/words/en/visit.ts';
import { plainSite } from '../support/fixture-guide.ts';
import { Drive } from './drive.ts';

const said = (run: Drive) =>
  readableLog(run.log).map((line) =>
    [line.message, ...line.details].map(({ id, params }) =>
      visitMessages[id]!(params ?? {}).replaceAll('\u00a0', ' '),
    ),
  );

test('every kind of line reads as a sentence', () => {
  const run = new Drive().toClosed().take({ type: 'note', text: 'Lid was off.' }).take({ type: 'undoAct' });
  run.take({ type: 'away' }).take({ type: 'facts', sheet: { ...plainSite(), altitudeM: 900 } });
  run.take({ type: 'cant' }).take({ type: 'confirm', item: 'owner-told', met: true }).take({ type: 'close' });
  const lines = said(run).flat();
  expect(lines.filter((text) => /undefined|NaN|\[object/.test(text))).toEqual([]);
  expect(lines).toContain('Note: Lid was off.');
  expect(lines.some((text) => text.startsWith('Closed. Left isolated'))).toBe(true);
});

test('a reading says what was typed, what was understood, and the band', () => {
  const run = new Drive().choose('quiet').read({ v: '-150' });
  const line = said(run).at(-1)!;
  expect(line[1]).toMatch(/^v: typed “-150”, read as −150 V ± 1\.2 V: reversed\. Expected 100 V to 200 V\.$/);
});

test('answers gone back over are struck out, and stay', () => {
  const run = new Drive().choose('quiet').read({ v: '150' });
  const reading = run.state.trail.at(-1)!;
  run.take({ type: 'correct', toSeq: reading.seq }).read({ v: '160' });
  const answers = readableLog(run.log).filter((line) => line.details.length > 0);
  expect(answers.map((line) => line.isVoid)).toEqual([true, false]);
});
