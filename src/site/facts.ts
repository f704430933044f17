import type * as z from 'zod/mini';
import type { NumberField } from './field.ts';
import { numberFields } from './field.ts';
import { type SiteSheet, sheetSchema } from './sheet.ts';

/**
 * One fact of the sheet. Its id is its path, with `[]` for each row of a list: `inverter.busCapacitanceF`,
 * `strings[].vocV`. A *concrete* id names one row: `strings[0].vocV`.
 */
export interface Fact {
  id: string;
  /** Id of its label in `src/words`. */
  labelId: string;
  /** May be left as "I don't know". */
  unknownAllowed: boolean;
  answer: FactAnswer;
}

/** What kind of answer a fact takes. */
export type FactAnswer =
  | ({ type: 'number' } & NumberField)
  | { type: 'choice'; choices: readonly (string | number)[] }
  | { type: 'yesNo' }
  | { type: 'text' };

/** A value that a fact can hold. */
export type FactValue = string | number | boolean | null;

/** Not asked of a person: they describe the record, not the install. */
const recordFields = ['format', 'version', 'id', 'invented'];

/** Every fact of the sheet in its order there, read off the schema, so that the two cannot differ. */
export const facts: readonly Fact[] = walk(sheetSchema, '');

const byId = new Map(facts.map((fact) => [fact.id, fact]));

/** Which facts may stay unknown, by id. */
export const unknownAllowed: Readonly<Record<string, boolean>> = Object.fromEntries(
  facts.map((fact) => [fact.id, fact.unknownAllowed]),
);

/** The fact of an id, concrete or not. Throws for an id that is none: an author's slip, not a user's. */
export function factOf(id: string): Fact {
  const fact = byId.get(genericId(id));
  if (!fact) throw new Error(`no fact "${id}" on the site sheet`);
  return fact;
}

export const isFactId = (id: string): boolean =>
  byId.has(genericId(id)) || id === 'strings' || id === 'trackers';

/** `strings[2].vocV` becomes `strings[].vocV`. */
export const genericId = (id: string): string => id.replace(/\[\d+\]/g, '[]');

/** The concrete ids that `id` stands for on this sheet: one for each row of its list. */
export function concreteIds(sheet: SiteSheet, id: string): string[] {
  const list = /^(\w+)\[\]/.exec(id)?.[1];
  if (list === undefined) return [id];
  const rows = readPath(sheet, list);
  return Array.isArray(rows) ? rows.map((_, row) => id.replace('[]', `[${row}]`)) : [];
}

/** The value of one concrete fact; `null` when it is not known or its row does not exist. */
export function getFact(sheet: SiteSheet, id: string): FactValue {
  factOf(id);
  const value = readPath(sheet, id);
  return value === undefined ? null : (value as FactValue);
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
    return concreteIds(sheet, id).filter((each) => getFact(sheet, each) === null);
  });
  return [...new Set(missing)];
}

/** A copy of the sheet with one concrete fact changed; the sheet given stays as it is. Check it before keeping it. */
export function setFact(sheet: SiteSheet, id: string, value: FactValue): SiteSheet {
  factOf(id);
  return replaced(sheet, pathKeys(id), value, id) as SiteSheet;
}

/** Copies only what lies on the way to the value: parts that two rows share stay apart. */
function replaced(part: unknown, [key, ...rest]: string[], value: FactValue, id: string): unknown {
  if (key === undefined) return value;
  if (typeof part !== 'object' || part === null || !Object.hasOwn(part, key)) {
    throw new Error(`no row for "${id}" on this sheet`);
  }
  const next = replaced((part as Record<string, unknown>)[key], rest, value, id);
  return Array.isArray(part) ? part.with(Number(key), next) : { ...part, [key]: next };
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

function readPath(sheet: SiteSheet, id: string): unknown {
  return pathKeys(id).reduce<unknown>(
    (part, key) => (part as Record<string, unknown> | undefined)?.[key],
    sheet,
  );
}

type Shape = Record<string, z.ZodMiniType>;

function walk(schema: z.ZodMiniType, id: string): Fact[] {
  const def = schema._zod.def as unknown as { type: string; shape: Shape; element: z.ZodMiniType };
  if (def.type === 'object') {
    return Object.entries(def.shape).flatMap(([key, part]) =>
      recordFields.includes(key) && id === '' ? [] : walk(part, id === '' ? key : `${id}.${key}`),
    );
  }
  return def.type === 'array' ? walk(def.element, `${id}[]`) : [leaf(schema, id)];
}

function leaf(schema: z.ZodMiniType, id: string): Fact {
  const outer = schema._zod.def as unknown as { type: string; innerType: z.ZodMiniType };
  const unknown = outer.type === 'nullable';
  const inner = unknown ? outer.innerType : schema;
  return { id, labelId: `site.fact.${id}`, unknownAllowed: unknown, answer: answerOf(inner, id) };
}

function answerOf(schema: z.ZodMiniType, id: string): FactAnswer {
  const def = schema._zod.def as unknown as {
    type: string;
    entries: Record<string, string>;
    values: number[];
  };
  const field = numberFields.get(schema);
  if (field) return { type: 'number', ...field };
  if (def.type === 'enum') return { type: 'choice', choices: Object.values(def.entries) };
  if (def.type === 'literal') return { type: 'choice', choices: def.values };
  if (def.type === 'boolean') return { type: 'yesNo' };
  if (def.type === 'string') return { type: 'text' };
  throw new Error(`the site sheet holds "${id}" in a way that no form can ask for`);
}
