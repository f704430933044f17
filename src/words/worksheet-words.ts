/**
 * The words of one worksheet, in any language. Keys are the ids of its definition in `src/worksheets`.
 * A gap in a sentence reads `{name:kind}` or `{name:kind:unit}`: the number of that name, shown as that kind of
 * quantity in the reader's units; `{name:plain}` is a bare number, `{name:plain:1}` one
 * with that many decimals.
 */
export interface WorksheetWords {
  readonly inputs: Readonly<Record<string, InputWords>>;
  readonly outputs: Readonly<Record<string, OutputWords>>;
  readonly working: Readonly<Record<string, WorkingWords>>;
  /** Remarks on a result and reasons for having none, by the last part of their id. */
  readonly says: Readonly<Record<string, string>>;
  readonly plot?: PlotWords;
  /** What the worksheet does not take into account. */
  readonly leavesOut: readonly string[];
  /** What people type when they look for it. */
  readonly search: readonly string[];
}

export interface InputWords {
  readonly label: string;
  /** The letter that stands for it in the formulas. */
  readonly symbol?: string;
  /** Where to find it, how to measure it. */
  readonly hint?: string;
  /** Why it must lie within its bounds; follows "Between x and y." Not for choices. */
  readonly limit?: string;
  readonly options?: Readonly<Record<string, string>>;
  /** Of a list: the words of each column. */
  readonly columns?: Readonly<Record<string, InputWords>>;
}

export interface OutputWords {
  readonly label: string;
  readonly verdicts?: Readonly<Record<string, string>>;
}

export interface WorkingWords {
  readonly what: string;
  readonly formula: string;
  /** The formula with numbers in it. */
  readonly numbers: string;
  readonly result: string;
}

export interface PlotWords {
  readonly title: string;
  readonly x: string;
  readonly y: string;
  /** Labels of curves, levels and marks. */
  readonly lines: Readonly<Record<string, string>>;
}
