import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'walk-'));

function walk(guide: string, file: object, ...more: string[]) {
  const answers = join(folder, 'answers.json');
  writeFileSync(answers, JSON.stringify(file));
  const args = [
    'src/commands/walk.ts',
    '--guide',
    guide,
    '--site',
    'demo-sallow-creek',
    '--answers',
    answers,
  ];
  const { status, stdout, stderr } = spawnSync(process.execPath, [...args, ...more], { encoding: 'utf8' });
  return { status, stdout, stderr };
}

const toRise = {
  ready: 'done',
  packs: 'all-on',
  s1: '53.2',
  sides: { s1: '53.2', s2: '0.1' },
  unlock: 'done',
  'clip-on': 'done',
  'resistor-on': 'done',
};
const rise = {
  s2: [
    [0.5, '33.6'],
    [1, '46.0'],
    [2, '52.2'],
    [4, '53.2'],
  ],
};

describe('the walk command', () => {
  test('gives the figures of a worksheet in the JSON of its step', () => {
    const { status, stdout } = walk('pre-charge', { answers: { ...toRise, rise } }, '--json');
    expect(status).toBe(0);
    const { outcomes } = JSON.parse(stdout);
    const fit = outcomes.find(({ block }: { block: string }) => block === 'fit-charged');
    expect(fit.work).toMatchObject({
      worksheet: 'pre-charge',
      inputs: { sourceVolts: 53.2, startVolts: 0.1 },
    });
    const seen = fit.work.says.find(({ id }: { id: string }) => id === 'expected.preCharge.tauSeen');
    expect(seen.params.seenTauS).toBeGreaterThan(0.3);
    expect(seen.params.seenTauS).toBeLessThan(0.8);
  });

  test('tells by its status an answer refused (1) from a file that is wrong or not used up (2)', () => {
    expect(walk('pre-charge', { answers: toRise }).status).toBe(0);
    expect(walk('pre-charge', { answers: { ...toRise, s1: 'nothing' } }).status).toBe(1);
    const unused = walk('pre-charge', { answers: { ...toRise, 'close-main': 'done' } });
    expect(unused.status).toBe(2);
    expect(unused.stdout).toContain('not used: the answer to close-main');
    expect(walk('pre-charge', { answers: { ...toRise, packs: 'half-on' } }).status).toBe(2);
    expect(walk('pre-charge', { answers: { ...toRise, ready: 'no' } }).status).toBe(2);
  });

  test('prints what a file holds and never obeys it', () => {
    const esc = String.fromCharCode(27);
    const { stdout } = walk('pre-charge', {
      answers: { ...toRise, s1: `${esc}[31m53.2${String.fromCharCode(0x9b)}` },
    });
    expect(stdout).not.toContain(esc);
    expect(stdout).not.toContain(String.fromCharCode(0x9b));
    const wrong = walk(`${esc}[2J`, { answers: {} });
    expect(wrong.status).toBe(2);
    expect(wrong.stderr).not.toContain(esc);
  });
});
