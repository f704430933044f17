import type { SiteSheet } from './sheet.ts';

/**
 * Finding facts on a sheet by their ids, without the schema: what a page needs that only runs a guide.
 * `src/site/facts.ts` says what each fact is.
 */

/** A value that a fact can hold. */
export type FactValue = string | number | boolean | null;

/** `strings[2].vocV` becomes `strings[].vocV`. */
export const genericId = (id: string): string => id.replace(/\[\d+\]/g, '[]');

/** The concrete ids that `id` stands for on this sheet: one for each row of its list. */
export function concreteIds(sheet: object, id: string): string[] {
  const list = /^(\w+)\[\]/.exec(id)?.[1];
  if (list === undefined) return [id];
  const rows = valueAt(sheet, list);
  return Array.isArray(rows) ? rows.map((_, row) => id.replace('[]', `[${row}]`)) : [];
}

/**
 * The concrete ids among `ids` that this sheet does not know. A list that is wanted and has no row is named
 * itself (`strings`): a row is entered on the site's own page, not in place.
 */
export function missingFacts(sheet: SiteSheet, ids: readonly string[]): string[] {
  const missing = ids.flatMap((id) => {
    const list = /^(strings|trackers)(\[\])?/.exec(id)?.[1] as 'strings' | 'trackers' | undefined;
    if (list !== undefined && sheet[list].length === 0) return [list];
    if (id === list) return [];
    return concreteIds(sheet, id).filter((each) => (valueAt(sheet, each) ?? null) === null);
  });
  return [...new Set(missing)];
}

/** `strings[2].vocV` as the keys to follow. */
export const pathKeys = (id: string): string[] => id.replace(/\[(\d+)\]/g, '.$1').split('.');

/** The concrete id of a path of keys, as a validator reports one. */
export const idOfPath = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (id, key) =>
      typeof key === 'number' ? `${id}[${key}]` : id === '' ? String(key) : `${id}.${String(key)}`,
    '',
  );

/** What stands at a concrete id; `undefined` where its row does not exist. */
export function valueAt(sheet: object, id: string): unknown {
  return pathKeys(id).reduce<unknown>(
    (part, key) => (part as Record<string, unknown> | undefined | null)?.[key],
    sheet,
  );
}
