import { prefill, worksheetFact } from '../expected/prefill.ts';
import type { FactValue } from '../site/fact-paths.ts';
import { getFact } from '../site/facts.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { checkInputs, isRows, isTimed } from '../worksheets/check-inputs.ts';
import type { AnyWorksheet, Field } from '../worksheets/define.ts';
import type { NotChecked, Worked } from './check.ts';

export type Figures =
  | { readonly ok: true; readonly worked: Worked; readonly assumed: readonly string[] }
  | { readonly ok: false; readonly why: NotChecked['why'] };

/** The fact's concrete id for the string of that row: `string.vocV` → `strings[1].vocV`. */
export function concreteFact(sheet: SiteSheet, row: number, id: string): string {
  const [, list, key] = /^(string|tracker)\.(.+)$/.exec(id) ?? [];
  if (list === 'string') return `strings[${row}].${key}`;
  if (list !== 'tracker') return id;
  return `trackers[${sheet.trackers.findIndex(({ name }) => name === sheet.strings[row]?.tracker)}].${key}`;
}

/** The value of a fact by its concrete id; `null` while it is not known. */
export const factValue = (sheet: SiteSheet, id: string): FactValue => getFact(sheet, id);

/** What was worked out for a sheet: many checks ask the same worksheet for the same numbers. */
const known = new WeakMap<SiteSheet, Map<string, Figures>>();

/** As `workOut`, remembered for as long as the sheet is held. */
export function figures(
  worksheet: AnyWorksheet,
  sheet: SiteSheet,
  row: number,
  over: Readonly<Record<string, number | string>> = {},
  needs: readonly string[] = [],
): Figures {
  const ofSheet = known.get(sheet) ?? new Map<string, Figures>();
  known.set(sheet, ofSheet);
  const open = needs.map((id) => concreteFact(sheet, row, id)).filter((id) => factValue(sheet, id) === null);
  // What a check needs for itself changes what the worksheet says only by being unknown.
  const key = JSON.stringify([worksheet.id, row, over, open]);
  const found = ofSheet.get(key) ?? workOut(worksheet, sheet, row, over, open);
  ofSheet.set(key, found);
  return found;
}

/**
 * Works a worksheet out for a site: filled from the sheet, then from `over`, then from its own starting figures. What
 * is missing or does not fit is named, and nothing is worked out without it.
 */
function workOut(
  worksheet: AnyWorksheet,
  sheet: SiteSheet,
  row: number,
  over: Readonly<Record<string, number | string>>,
  open: readonly string[],
): Figures {
  const fields = Object.entries(worksheet.inputs as Record<string, Field>);
  const filled = { ...prefill(worksheet, sheet, row), ...over };
  const required = fields.flatMap(([name, field]) => {
    if (isTimed(field) || isRows(field) || filled[name] !== undefined) return [];
    if (('optional' in field && field.optional) || field.default !== undefined) return [];
    return (field.from ?? []).filter((id) => !id.startsWith('derived.')).slice(0, 1);
  });
  const facts = [...new Set([...open, ...required.map((id) => concreteFact(sheet, row, id))])];
  // A fact beyond the worksheet's bounds must not give way to a starting figure.
  const outside = fields.flatMap(([name, field]) => {
    const ids = 'from' in field ? (field.from ?? []) : [];
    const there = ids.some((id) => worksheetFact(sheet, row, id) !== undefined);
    return there && filled[name] === undefined ? [name] : [];
  });
  if (outside.length > 0) return { ok: false, why: { kind: 'outside', fields: outside } };
  if (facts.length > 0) return { ok: false, why: { kind: 'missing', facts } };
  const defaults = fields.flatMap(([name, field]) =>
    'default' in field && field.default !== undefined && filled[name] === undefined
      ? [[name, field.default] as const]
      : [],
  );
  const checked = checkInputs(worksheet, { ...Object.fromEntries(defaults), ...filled });
  if (!checked.ok) return { ok: false, why: { kind: 'outside', fields: Object.keys(checked.errors) } };
  const result = worksheet.compute(checked.inputs);
  if (!result.ok) return { ok: false, why: { kind: 'refused', reason: result.reason } };
  return {
    ok: true,
    worked: { given: checked.inputs, out: result.out, sheet, row },
    assumed: defaults.map(([name]) => name),
  };
}

/** The inputs as a link to the worksheet carries them. */
export function usedInputs({ given }: Worked): Readonly<Record<string, number | string>> {
  return Object.fromEntries(
    Object.entries(given as Record<string, unknown>).filter(
      (pair): pair is [string, number | string] => typeof pair[1] === 'number' || typeof pair[1] === 'string',
    ),
  );
}
