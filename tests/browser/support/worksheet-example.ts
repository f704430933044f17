import fc from 'fast-check';
import { toQuery } from '../../../src/islands/worksheet/link.ts';
import { emptyForm, fieldsOf, textOf } from '../../../src/islands/worksheet/typed.ts';
import { checkInputs } from '../../../src/worksheets/check-inputs.ts';
import type { AnyWorksheet, Output } from '../../../src/worksheets/define.ts';
import { anyInputs } from '../../worksheets/any-inputs.ts';

type Inputs = Parameters<AnyWorksheet['compute']>[0];

/** Whether a worksheet has something to show for these inputs: a result, and its curve where it has one. */
function shows(worksheet: AnyWorksheet, inputs: Record<string, unknown>): boolean {
  const checked = checkInputs(worksheet, inputs as Parameters<typeof checkInputs>[1]);
  if (!checked.ok) return false;
  const result = worksheet.compute(checked.inputs as Inputs);
  if (!result.ok) return false;
  const headline = Object.entries(worksheet.outputs as Record<string, Output>).find(
    ([, output]) => output.headline,
  )?.[0];
  if (headline !== undefined && result.out[headline] === undefined) return false;
  return !worksheet.plot || worksheet.plot(checked.inputs as Inputs, result.out) !== undefined;
}

/**
 * The query of a link that gives a worksheet numbers it has a result for: the first of a fixed row of drawn ones. Throws
 * where none of them has.
 */
export function exampleQuery(worksheet: AnyWorksheet): string {
  const found = fc
    .sample(anyInputs(worksheet), { numRuns: 2000, seed: 11 })
    .find((inputs) => shows(worksheet, inputs));
  if (!found) throw new Error(`no drawn numbers give ${worksheet.id} a result`);
  const typed = emptyForm(worksheet, 'metric');
  const texts = Object.fromEntries(
    fieldsOf(worksheet).flatMap(([name, field]) => {
      const value = found[name];
      return typeof value === 'number' || typeof value === 'string'
        ? [[name, textOf(field, value, 'metric')]]
        : [];
    }),
  );
  return toQuery(worksheet, { ...typed, texts: { ...typed.texts, ...texts } });
}
