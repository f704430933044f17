import type { WorksheetUse } from '../expected/context.ts';
import type { QuantityKind } from '../quantity/kinds.ts';

/** What a rating is of; the words and the direction ("at least", "at most") go with the id. */
export const ratingIds = [
  'volts',
  'amps',
  'standardAmps',
  'breaks',
  'wire',
  'leastOhms',
  'mostOhms',
  'pulse',
  'poles',
] as const;
export type RatingId = (typeof ratingIds)[number];

export interface Rating {
  readonly id: RatingId;
  readonly value: number;
  readonly kind: QuantityKind;
}

/** One line of the parts list. */
export interface Part {
  readonly id: string;
  /** Name of the string that it is for. */
  readonly of?: string;
  /** Pieces, or metres where `inLengths`; missing while a fact is not known. */
  readonly quantity?: number;
  readonly inLengths?: true;
  readonly ratings: readonly Rating[];
  /** Trade size of tubing. */
  readonly trade?: string;
  /** Facts that the sheet owes before this line is whole, by concrete id. */
  readonly missing: readonly string[];
  /** The rest of it is the code's to say, and that code is not carried. */
  readonly codeOpen?: true;
  /** The worksheet that gave the ratings. */
  readonly use?: WorksheetUse;
}

/** A line of the list before the unknown is left out. */
export const rating = (id: RatingId, kind: QuantityKind, value: number | undefined): readonly Rating[] =>
  value === undefined || !Number.isFinite(value) ? [] : [{ id, value, kind }];
