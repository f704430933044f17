import { describe, expect, it } from 'vitest';
import type { WorksheetUse } from '../../src/expected/context.ts';
import { works } from '../../src/expected/index.ts';
import { worksheetQuery } from '../../src/islands/worksheet/address.ts';
import { fromQuery } from '../../src/islands/worksheet/link.ts';
import { emptyForm, readForm } from '../../src/islands/worksheet/typed.ts';
import type { UnitSystem } from '../../src/quantity/kinds.ts';
import { sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { checkInputs } from '../../src/worksheets/check-inputs.ts';
import { worksheetById } from '../../src/worksheets/index.ts';
import { pvCases } from '../support/pv-cases/cases.ts';
import { walkPv } from '../support/pv-cases/walk.ts';

/** The worksheet's headline verdict, opened at the address that a run gives. */
async function opened(use: WorksheetUse, units: UnitSystem) {
  const worksheet = worksheetById(use.worksheet);
  const link = fromQuery(worksheet, await worksheetQuery(use, units));
  if (!link) throw new Error('the form opens empty');
  const form = emptyForm(worksheet, link.units);
  const read = readForm(worksheet, {
    units: link.units,
    texts: { ...form.texts, ...link.texts },
    rows: { ...form.rows, ...link.rows },
  });
  if (!read.ok) throw new Error(JSON.stringify({ worksheet: use.worksheet, read }));
  const result = worksheet.compute(read.inputs);
  return result.ok ? (result.out as Readonly<Record<string, unknown>>) : { refused: result.reason.id };
}

/** The same from the very numbers that decided in the run. */
function decidedBy({ worksheet: id, inputs, rows = {} }: WorksheetUse) {
  const worksheet = worksheetById(id);
  const timed = Object.entries(rows).map(
    ([name, values]) => [name, values.map(([tS, value]) => ({ tS, value }))] as const,
  );
  const checked = checkInputs(worksheet, { ...inputs, ...Object.fromEntries(timed) });
  if (!checked.ok) throw new Error(JSON.stringify({ worksheet: id, errors: checked.errors }));
  const result = worksheet.compute(checked.inputs);
  return result.ok ? (result.out as Readonly<Record<string, unknown>>) : { refused: result.reason.id };
}

async function sameIn(use: WorksheetUse, units: UnitSystem): Promise<void> {
  const there = await opened(use, units);
  for (const [name, value] of Object.entries(decidedBy(use)))
    if (typeof value === 'number') expect((there[name] as number) / value || 1, name).toBeCloseTo(1, 3);
    else expect(there[name], name).toBe(value);
}

describe('a worksheet opened from a run', () => {
  it.each(['metric', 'us'] as const)('shows what decided there, in %s units', async (units) => {
    const seen = new Set<string>();
    for (const { sheet, answers } of pvCases)
      for (const { block, work } of walkPv(sheet, answers).outcomes) {
        if (work?.worksheet === undefined) continue;
        seen.add(block);
        await sameIn({ worksheet: work.worksheet, inputs: work.inputs ?? {} }, units);
      }
    expect([...seen].sort()).toEqual(expect.arrayContaining(['insulation', 'window']));
  });

  it('takes the timed readings of a pre-charge along', async () => {
    const rise = [[0.5, 33.6], [1, 46], [2, 52.2], [4, 53.2]] as const; // biome-ignore format: one row
    for (const sheet of [sallowCreek, ternLedge]) {
      const result = works['pre-charge-fit']!.work({
        sheet,
        readings: { 'sides.s1': 53.2, 'sides.s2': 0.1 },
        series: { 'rise.s2': rise },
        outcomes: {},
      });
      if (!result.ok || !result.use) throw new Error('nothing was worked out');
      await sameIn(result.use, 'us');
      expect((await opened(result.use, 'metric')).verdict).not.toBe('noReadings');
    }
  });

  it('is offered only where that worksheet holds the arithmetic', () => {
    const between = ['pv-flow-between', 'pv-start-between', 'pv-sun-between'];
    for (const id of between) {
      const result = works[id]!.work({
        sheet: sallowCreek,
        stringId: 'East',
        readings: Object.fromEntries(
          ['flowing', 'start-watch', 'full-sun'].flatMap((at) => [
            [`${at}.volts`, 250],
            [`${at}.amps`, 0.4],
          ]),
        ),
        outcomes: {},
      });
      expect(result).toMatchObject({ ok: true });
      expect(result).not.toHaveProperty('use');
    }
    for (const { sheet, answers } of pvCases)
      for (const { work } of walkPv(sheet, answers).outcomes)
        if (work?.worksheet) expect(Object.keys(work.inputs ?? {}).length).toBeGreaterThan(0);
  });
});
