import type { QuantityKind } from '../quantity/kinds.ts';
import type { Result } from './result.ts';
import type { Said } from './say.ts';

/**
 * What a worksheet is. One object holds schema, formula, working, sources, limits and plot; the form, the page,
 * the print, the tests and the use inside a guide's step are derived from it. Its words stand under the same ids
 * in `src/words/<language>/worksheets/<id>.ts`, its explanation in `content/<language>/worksheets/<id>.mdx`.
 */

/** What the person is busy with; the shelf is ordered by it. */
export const worksheetGroups = ['pv', 'battery-dc', 'ac', 'heat'] as const;
export type WorksheetGroup = (typeof worksheetGroups)[number];

/** A number the person types or the site sheet gives. Bounds are inclusive; the words say why they stand where they do. */
export interface NumberField {
  readonly kind: QuantityKind;
  readonly min: number;
  readonly max: number;
  /** What the form starts with when the site sheet has nothing. */
  readonly default?: number;
  /** May be left empty; then `compute` gets no value for it. */
  readonly optional?: true;
  /** A number below zero means something: the form offers a sign key. */
  readonly signed?: true;
  /** Unit of a bare number and of the value shown back, where the kind's usual one is not the trade's here. */
  readonly unit?: string;
  /** Fact ids of the site sheet that may fill it, the first known one wins. */
  readonly from?: readonly string[];
}

/** One of a few named things. */
export interface ChoiceField {
  readonly options: readonly string[];
  readonly default: string;
  readonly from?: readonly string[];
}

/** Readings taken at noted times, one a row. May be left empty. */
export interface TimedReadingsField {
  readonly timed: QuantityKind;
  readonly signed?: true;
}

/** A few words of the person's own, such as the name of a circuit. */
export interface TextColumn {
  readonly text: true;
  /** Characters at most. */
  readonly most: number;
}

/** A list of like things, one a row. Rows left blank count for nothing; none at all is an empty list. */
export interface RowsField {
  readonly rows: Readonly<Record<string, NumberField | TextColumn>>;
  readonly mostRows: number;
}

export type Field = NumberField | ChoiceField | TimedReadingsField | RowsField;
export type Fields = Readonly<Record<string, Field>>;

/** A reading and when it was taken [s]. */
export interface TimedReading {
  readonly tS: number;
  readonly value: number;
}

type ColumnValue<C> = C extends TextColumn
  ? string
  : C extends { optional: true }
    ? number | undefined
    : number;

export type FieldValue<F extends Field> = F extends TimedReadingsField
  ? readonly TimedReading[]
  : F extends RowsField
    ? readonly { readonly [K in keyof F['rows']]: ColumnValue<F['rows'][K]> }[]
    : F extends ChoiceField
      ? F['options'][number]
      : F extends { optional: true }
        ? number | undefined
        : number;

/** The inputs that `compute` gets: every field in its inside unit and within its bounds. */
export type ValuesOf<F extends Fields> = { readonly [K in keyof F]: FieldValue<F[K]> };

/** A result: a number of a kind, one of a few named verdicts, or some of the names that the person typed. */
export type Output =
  | {
      readonly kind: QuantityKind;
      readonly unit?: string;
      /** A count that may lie between two whole ones is shown with this many decimals. */
      readonly decimals?: number;
      readonly headline?: true;
    }
  | { readonly verdicts: readonly string[]; readonly headline?: true }
  | { readonly names: true; readonly headline?: true };
export type Outputs = Readonly<Record<string, Output>>;

/** A number is left out where it has no meaning for these inputs, never NaN. */
export type ResultsOf<O extends Outputs> = {
  readonly [K in keyof O]: O[K] extends { verdicts: readonly (infer V)[] }
    ? V
    : O[K] extends { names: true }
      ? readonly string[]
      : number | undefined;
};

export interface SourceRef {
  /** Entry of `content/<language>/sources.yaml`. */
  readonly id: string;
  /** Table, clause, page; a citation, the same in every language. */
  readonly clause?: string;
}

export interface PlotAxis {
  readonly kind: QuantityKind;
  readonly unit?: string;
  readonly low: number;
  readonly high: number;
}

/** Curves in inside units. Every id has a label in the words. */
export interface Plot {
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly curves: readonly {
    readonly id: string;
    readonly points: readonly (readonly [number, number])[];
  }[];
  /** Straight lines at a limit. */
  readonly levels: readonly { readonly id: string; readonly axis: 'x' | 'y'; readonly at: number }[];
  /** Readings and results to mark. */
  readonly marks: readonly { readonly id: string; readonly x: number; readonly y: number }[];
}

export interface Worksheet<F extends Fields = Fields, O extends Outputs = Outputs> {
  readonly id: string;
  readonly group: WorksheetGroup;
  readonly inputs: F;
  readonly outputs: O;
  readonly compute: (inputs: ValuesOf<F>) => Result<ResultsOf<O>>;
  /** The working, line by line: words under each id give formula, the same with numbers, and result. */
  readonly working: (inputs: ValuesOf<F>, out: ResultsOf<O>) => readonly Said[];
  readonly plot?: (inputs: ValuesOf<F>, out: ResultsOf<O>) => Plot | undefined;
  /** Remarks on this result, most important first: what to do or mind with these numbers. */
  readonly remarks?: (inputs: ValuesOf<F>, out: ResultsOf<O>) => readonly Said[];
  readonly sources: readonly SourceRef[];
  /** Hazard statements (`src/words`) of taking these readings or acting on the result, the most severe first. */
  readonly hazards: readonly string[];
}

/** Any worksheet, its own types forgotten: what the shell, the tests and a guide's step handle. */
// biome-ignore lint/suspicious/noExplicitAny: a list of differently typed worksheets needs one type that all of them fit
export type AnyWorksheet = Worksheet<any, any>;

/** Keeps the literal types of the fields and results, so that `compute` is checked against them. */
export function defineWorksheet<const F extends Fields, const O extends Outputs>(
  definition: Worksheet<F, O>,
): Worksheet<F, O> {
  return definition;
}
