import * as z from 'zod/mini';
import type { QuantityKind } from '../quantity/kinds.ts';

/** What a form and a message need to know of one number on the sheet, beside its schema. */
export interface NumberField {
  kind: QuantityKind;
  /** Unit its label names, where the usual one of its kind does not suit. */
  unit?: string;
  /** Smallest and largest value that can be meant, in the kind's inside unit. */
  min: number;
  max: number;
}

/** Facts about the sheet's number schemas, kept beside them so that a range stands in one place. */
export const numberFields = z.registry<NumberField>();

/** A number of a kind within the range in which it can be meant; never NaN or infinite. */
export function quantity(kind: QuantityKind, min: number, max: number, unit?: string) {
  const schema =
    kind === 'count' ? z.int().check(z.gte(min), z.lte(max)) : z.number().check(z.gte(min), z.lte(max));
  numberFields.add(schema, unit === undefined ? { kind, min, max } : { kind, min, max, unit });
  return schema;
}

/**
 * A fact that may stay unknown: guides either do without it, take the safe side, or ask for it when they need it. A sheet
 * kept before the fact was asked for does not hold it, and so does not know it.
 */
export const orUnknown = <T extends z.ZodMiniType>(schema: T) => z._default(z.nullable(schema), null);

/** A short line a person types: no control characters, never blank. */
export const shortText = (longest: number) =>
  z.string().check(z.maxLength(longest), z.regex(/^[^\p{Cc}]*[^\p{Cc}\s][^\p{Cc}]*$/u));
