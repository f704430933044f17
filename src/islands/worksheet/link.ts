import type { UnitSystem } from '../../quantity/kinds.ts';
import { isChoice, isTimed } from '../../worksheets/check-inputs.ts';
import type { AnyWorksheet } from '../../worksheets/define.ts';
import { fieldsOf, type Typed, type TypedRow } from './typed.ts';

/** Longer than anything a person types in a box, and what a link from elsewhere may not go beyond. */
const longestText = 60;
const mostRows = 20;

/** The query of an address that carries what is typed, in words of the form so that a person can read it. */
export function toQuery(worksheet: AnyWorksheet, typed: Typed): string {
  const query = new URLSearchParams({ units: typed.units });
  for (const [name, field] of fieldsOf(worksheet)) {
    if (isTimed(field)) {
      const rows = (typed.rows[name] ?? []).filter(
        ({ at, value }) => at.trim() !== '' || value.trim() !== '',
      );
      if (rows.length > 0) query.set(name, rows.map(({ at, value }) => `${at}~${value}`).join(';'));
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
    if (isTimed(field)) {
      rows[name] = text
        .split(';')
        .slice(0, mostRows)
        .map((row) => {
          const [at = '', value = ''] = row.split('~');
          return { at: at.slice(0, longestText), value: value.slice(0, longestText) };
        });
    } else if (isChoice(field) ? field.options.includes(text) : text.length <= longestText) {
      texts[name] = text;
    }
  }
  if (Object.keys(texts).length + Object.keys(rows).length === 0) return undefined;
  const units: UnitSystem = given.get('units') === 'us' ? 'us' : 'metric';
  return { units, texts, rows };
}
