import type { UnitSystem } from '../../quantity/kinds.ts';
import { isChoice, isRows, isTimed } from '../../worksheets/check-inputs.ts';
import type { AnyWorksheet, Field } from '../../worksheets/define.ts';
import { fieldsOf, isBlank, type Typed, type TypedRow } from './typed.ts';

/** Longer than anything a person types in a box, and what a link from elsewhere may not go beyond. */
const longestText = 60;
const mostReadings = 20;

/** The cells of a row in the order they stand in a link; nothing for a field that has no rows. */
const cellsOf = (field: Field): readonly string[] | undefined =>
  isTimed(field) ? ['at', 'value'] : isRows(field) ? Object.keys(field.rows) : undefined;
/** What parts cells and rows in a link cannot stand within one. */
const bare = (cell: string | undefined): string => (cell ?? '').replace(/[~;]/g, ' ');

/** The query of an address that carries what is typed, in words of the form so that a person can read it. */
export function toQuery(worksheet: AnyWorksheet, typed: Typed): string {
  const query = new URLSearchParams({ units: typed.units });
  for (const [name, field] of fieldsOf(worksheet)) {
    const cells = cellsOf(field);
    if (cells) {
      const rows = (typed.rows[name] ?? []).filter((row) => !isBlank(row));
      if (rows.length > 0)
        query.set(name, rows.map((row) => cells.map((cell) => bare(row[cell])).join('~')).join(';'));
    } else if ((typed.texts[name] ?? '').trim() !== '') {
      query.set(name, typed.texts[name]!.trim());
    }
  }
  return query.toString();
}

/** What a link carries. Anything that is no field, no answer or too long is left out. Nothing without a known field. */
export function fromQuery(worksheet: AnyWorksheet, query: string): Typed | undefined {
  const given = new URLSearchParams(query);
  const texts: Record<string, string> = {};
  const rows: Record<string, readonly TypedRow[]> = {};
  for (const [name, field] of fieldsOf(worksheet)) {
    const text = given.get(name)?.trim();
    if (text === undefined || text === '') continue;
    const cells = cellsOf(field);
    if (cells) {
      rows[name] = text
        .split(';')
        .slice(0, isRows(field) ? field.mostRows : mostReadings)
        .map((row) => {
          const parts = row.split('~');
          return Object.fromEntries(cells.map((cell, at) => [cell, (parts[at] ?? '').slice(0, longestText)]));
        });
    } else if (isChoice(field) ? field.options.includes(text) : text.length <= longestText) {
      texts[name] = text;
    }
  }
  if (Object.keys(texts).length + Object.keys(rows).length === 0) return undefined;
  const units: UnitSystem = given.get('units') === 'us' ? 'us' : 'metric';
  return { units, texts, rows };
}
