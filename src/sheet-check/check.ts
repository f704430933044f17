import type { WorksheetUse } from '../expected/context.ts';
import type { QuantityKind } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import type { FactValue } from '../site/fact-paths.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { AnyWorksheet } from '../worksheets/define.ts';

/**
 * One thing to check on a site: a worksheet, the numbers it gets, and the limit that one of its figures has to keep.
 * Checks are data; `run.ts` runs them and `lift.ts` looks for the change that puts a broken one right.
 */

/** What a broken limit means: it can hurt, burn or destroy; something will not work; it gives less than it could. */
export const severities = ['danger', 'fails', 'limits'] as const;
export type Severity = (typeof severities)[number];

/** A figure and what it has to keep to, in inside units. */
export interface Judged {
  readonly amount: number;
  readonly limit: number;
}

/** A worksheet's inputs and results for one site, with the site they are of. */
export interface Worked {
  // biome-ignore lint/suspicious/noExplicitAny: each check knows the fields of its own worksheet
  readonly given: any;
  // biome-ignore lint/suspicious/noExplicitAny: each check knows the results of its own worksheet
  readonly out: any;
  readonly sheet: SiteSheet;
  /** The string it is about; 0 where it is about the whole site. */
  readonly row: number;
}

export interface Check {
  readonly id: string;
  readonly worksheet: AnyWorksheet;
  /** Run once, once for each string, or once for each tracker that a string lands on. */
  readonly of: 'site' | 'string' | 'tracker';
  readonly severity: Severity;
  readonly kind: QuantityKind;
  readonly side: 'atMost' | 'atLeast';
  /** Whether it makes sense on this site at all. Without it, it always does. */
  readonly applies?: (sheet: SiteSheet, row: number) => boolean;
  /** Inputs of this check that the worksheet would not fill by itself. */
  readonly inputs?: (sheet: SiteSheet, row: number) => Readonly<Record<string, number | string>>;
  /** Facts without which there is no judging: fact ids, with `string.` and `tracker.` for the row's own. */
  readonly needs?: readonly string[];
  /** The figure and its limit; a reason where this site's sheet or code does not let it be judged. */
  readonly judge: (worked: Worked) => Judged | Unjudged;
  /** Facts whose change would lift it, the most usual remedy first; ids as in `needs`. */
  readonly lifts: readonly string[];
  /** A check that says the same more strongly: where that one is broken, this one is silent. */
  readonly unless?: string;
}

/** Why a figure could not be held to a limit: a code basis that is not carried, or a fact that no sheet holds. */
export type Unjudged = 'codeBasis' | 'notOnSheet';

/** The smallest change of one fact that lifts a finding and breaks nothing else. */
export interface Lift {
  /** Concrete fact id, such as `strings[0].modulesInSeries`. */
  readonly fact: string;
  readonly from: FactValue;
  readonly to: FactValue;
}

/** Where a check was made: the worksheet with its numbers, and the string or tracker by name. */
interface Place {
  readonly check: string;
  readonly row: number;
  /** Name of the string or tracker; missing for the site as a whole. */
  readonly name?: string;
}

/** A check that was made, broken or kept. */
export interface Finding extends Place, Judged {
  readonly severity: Severity;
  readonly kind: QuantityKind;
  readonly side: Check['side'];
  readonly holds: boolean;
  /** Room left as a share of the limit, negative when it is broken; missing for a limit of zero. */
  readonly margin?: number;
  readonly use: WorksheetUse;
  /** Fields that the sheet does not fill: the worksheet's own starting figures stood in. */
  readonly assumed: readonly string[];
}

/** A check that could not be made. */
export interface NotChecked extends Place {
  readonly worksheet: string;
  readonly why:
    | { readonly kind: 'missing'; readonly facts: readonly string[] }
    | { readonly kind: Unjudged }
    /** A fact lies outside what the worksheet takes. */
    | { readonly kind: 'outside'; readonly fields: readonly string[] }
    | { readonly kind: 'refused'; readonly reason: MessageRef };
}
