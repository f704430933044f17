import type * as z from 'zod/mini';
import { type FactValue, genericId, pathKeys, valueAt } from './fact-paths.ts';
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

/** The value of one concrete fact; `null` when it is not known or its row does not exist. */
export function getFact(sheet: SiteSheet, id: string): FactValue {
  factOf(id);
  const value = valueAt(sheet, id);
  return value === undefined ? null : (value as FactValue);
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

type Shape = Record<string, z.ZodMiniType>;

function walk(schema: z.ZodMiniType, id: string): Fact[] {
  const def = schema._zod.def as unknown as { type: string; shape: Shape; element: z.ZodMiniType };
  if (def.type === 'object') {
    return Object.entries(def.shape).flatMap(([key, part]) =>
      recordFields.includes(key) && id === '' ? [] : walk(part, id === '' ? key : `${id}.${key}`),
    );
  }
  // A part of the sheet that older sheets have not.
  const inner = (def as unknown as { innerType?: z.ZodMiniType }).innerType;
  if (def.type === 'default' && inner?._zod.def.type === 'object') return walk(inner, id);
  return def.type === 'array' ? walk(def.element, `${id}[]`) : [leaf(schema, id)];
}

function leaf(schema: z.ZodMiniType, id: string): Fact {
  const inside = (part: z.ZodMiniType) =>
    part._zod.def as unknown as { type: string; innerType: z.ZodMiniType };
  // `orUnknown` is a nullable within a default.
  const unknown = inside(schema).type === 'default';
  const inner = unknown ? inside(inside(schema).innerType).innerType : schema;
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
