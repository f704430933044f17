import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { readSources } from '../../src/commands/content-input.ts';
import { root } from '../../src/commands/project.ts';
import { worksheetById, worksheets } from '../../src/worksheets/index.ts';
import { commonPractice, mostCommonPractice } from './common-practice.ts';
import { sizes, trace } from './trace.ts';

const rows = trace(readSources());

describe('the trace', () => {
  it('has a line for every worksheet, in the order of the shelf', () => {
    expect(rows.map((row) => row.id)).toEqual(worksheets.map((worksheet) => worksheet.id));
  });

  it.each(rows)('holds $id to an outside source, or says why there is none', (row) => {
    if (row.commonPractice === undefined) expect(row.outsideChecks).toBeGreaterThan(0);
    else expect(row.commonPractice.length).toBeGreaterThan(20);
  });

  it.each(rows)('finds $id within its tolerances, with a source cited', (row) => {
    expect(row.worstOfAllowed).toBeLessThanOrEqual(1);
    expect(Number.isFinite(row.worstDeviation)).toBe(true);
    expect(row.sources.length).toBeGreaterThan(0);
    for (const each of row.fromMemory) expect(row.sources).toContain(each);
  });

  it('lets at most one in ten stand on common practice, and none that has an outside figure', () => {
    const listed = Object.keys(commonPractice);
    expect(listed.length).toBeLessThanOrEqual(mostCommonPractice * worksheets.length);
    for (const id of listed) {
      expect(worksheetById(id).id).toBe(id);
      expect(rows.find((row) => row.id === id)!.outsideChecks, `${id} is held now: take it off`).toBe(0);
    }
  });

  it('lets none that sizes protection, a conductor or string volts stand on common practice', () => {
    const sizing = worksheets.filter(sizes).map((worksheet) => worksheet.id);
    // Known ones of each sort: a rule that saw none would pass all of them.
    expect(sizing).toEqual(expect.arrayContaining(['string-window', 'common-neutral']));
    expect(sizing).not.toContain('leg-angle');
    expect(sizing.filter((id) => commonPractice[id] !== undefined)).toEqual([]);
  });

  it('is printed by the command, for people and for programs', () => {
    const run = (...args: string[]) => {
      const done = spawnSync(process.execPath, ['src/commands/trace.ts', ...args], {
        cwd: root,
        encoding: 'utf8',
      });
      expect(done.stderr).toBe('');
      expect(done.status).toBe(0);
      return done.stdout;
    };
    expect(JSON.parse(run('--json'))).toEqual({ worksheets: rows });
    const table = run();
    for (const { id } of rows) expect(table).toContain(`\n${id}: `.trimStart());
    expect(table).toContain('[from memory]');
  });
});
