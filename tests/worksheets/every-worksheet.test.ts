import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantityKinds } from '../../src/quantity/kinds.ts';
import { checkInputs } from '../../src/worksheets/check-inputs.ts';
import type { AnyWorksheet, Field, Output, Plot } from '../../src/worksheets/define.ts';
import { worksheetById, worksheets } from '../../src/worksheets/index.ts';
import { anyInputs } from './any-inputs.ts';

const outputsOf = (worksheet: AnyWorksheet) => Object.entries(worksheet.outputs as Record<string, Output>);
const inputsOf = (worksheet: AnyWorksheet) => Object.entries(worksheet.inputs as Record<string, Field>);

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('the shelf', () => {
  it('names each worksheet once, in kebab case', () => {
    const ids = worksheets.map((worksheet) => worksheet.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('finds one by id and says which ids there are when asked for another', () => {
    expect(worksheetById('pre-charge').id).toBe('pre-charge');
    expect(() => worksheetById('no-such')).toThrow(/string-window/);
  });
});

describe.each(worksheets.map((worksheet) => ({ id: worksheet.id, worksheet })))('$id', ({ worksheet }) => {
  it('bounds every field, with a default inside the bounds', () => {
    for (const [name, field] of inputsOf(worksheet)) {
      if ('kind' in field) {
        expect(quantityKinds, name).toContain(field.kind);
        expect(field.min, name).toBeLessThan(field.max);
        if (field.default !== undefined) {
          expect(field.default, name).toBeGreaterThanOrEqual(field.min);
          expect(field.default, name).toBeLessThanOrEqual(field.max);
        }
        if (field.min < 0) expect('signed' in field && field.signed, `${name} goes below zero`).toBe(true);
      } else if ('options' in field) {
        expect(field.options, name).toContain(field.default);
      }
    }
  });

  it('gives finite numbers, a known verdict and a drawable plot, or a reason, for anything its fields admit', () => {
    let answers = 0;
    fc.assert(
      fc.property(anyInputs(worksheet), (inputs) => {
        const checked = checkInputs(worksheet, inputs as never);
        expect(checked.ok, JSON.stringify(checked)).toBe(true);
        const result = worksheet.compute(inputs);
        if (!result.ok) {
          expect(result.reason.id).toMatch(new RegExp(`^worksheet\\.${worksheet.id}\\.`));
          expect(numbersIn(result.reason.params).every(Number.isFinite)).toBe(true);
          return;
        }
        answers++;
        for (const [name, output] of outputsOf(worksheet)) {
          const value = result.out[name];
          if ('verdicts' in output) expect(output.verdicts, name).toContain(value);
          else if ('names' in output) expect(Array.isArray(value), name).toBe(true);
          else if (value !== undefined) expect(Number.isFinite(value), `${name} is ${value}`).toBe(true);
        }
        const names = outputsOf(worksheet).map(([name]) => name);
        expect(Object.keys(result.out).filter((name) => !names.includes(name))).toEqual([]);
        const shown = [
          ...worksheet.working(inputs, result.out),
          ...(worksheet.remarks?.(inputs, result.out) ?? []),
        ];
        expect(shown.length).toBeGreaterThan(0);
        expect(numbersIn(shown).every(Number.isFinite)).toBe(true);
        const plot: Plot | undefined = worksheet.plot?.(inputs, result.out);
        if (plot) {
          expect(numbersIn(plot).every(Number.isFinite)).toBe(true);
          expect(plot.x.low).toBeLessThan(plot.x.high);
          expect(plot.y.low).toBeLessThan(plot.y.high);
        }
      }),
      { numRuns: 2000, seed: 4821 },
    );
    // A worksheet that refused everything would pass all of the above.
    expect(answers).toBeGreaterThan(20);
  });

  it('refuses what no field admits, naming the field', () => {
    for (const [name, field] of inputsOf(worksheet)) {
      if (!('kind' in field)) continue;
      const valid = fc.sample(anyInputs(worksheet), { numRuns: 1, seed: 7 })[0]!;
      for (const wrong of [field.min - 1, field.max + 1, Number.NaN, Number.POSITIVE_INFINITY, 'twelve']) {
        const checked = checkInputs(worksheet, { ...valid, [name]: wrong } as never);
        expect(checked.ok, `${name} = ${wrong}`).toBe(false);
        if (!checked.ok) expect(Object.keys(checked.errors)).toEqual([name]);
      }
      const empty = checkInputs(worksheet, { ...valid, [name]: undefined } as never);
      expect(empty.ok, name).toBe(field.optional === true);
    }
  });
});
