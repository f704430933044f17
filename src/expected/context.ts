import type { QuantityKind } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { Scale } from './scale.ts';

/** What an expectation may be made from: the sheet, the string the run is about, and what was read and answered so far. */
export interface ExpectContext {
  sheet: SiteSheet;
  /** The PV string the run is about, by its id on the sheet. */
  stringId?: string;
  /** Latest accepted readings, inside units, by `block.reading` (for example `string-volts.p1`). */
  readings: Readonly<Record<string, number>>;
  /** Time-stamped values of readings taken as a series, by `block.reading`: seconds from the start, and the value. */
  series?: Readonly<Record<string, readonly (readonly [seconds: number, value: number])[]>>;
  /** Latest outcomes by block. */
  outcomes: Readonly<Record<string, string>>;
}

/** Facts the sheet still owes, by fact id (`src/site/facts.ts`). */
export interface Missing {
  ok: false;
  missing: readonly string[];
}

/** A family of expected bands: its zones are fixed, their limits come from the site. */
export interface ScaleDef {
  id: string;
  kind: QuantityKind;
  zones: readonly string[];
  build(context: ExpectContext): { ok: true; scale: Scale } | Missing;
}

/** A worksheet and the numbers of this site that it was given. */
export interface WorksheetUse {
  worksheet: string;
  /** By field, inside units. */
  inputs: Readonly<Record<string, number | string>>;
  /** Values over time, by field: seconds from the start, and the value. They stand in the log as readings, not as inputs. */
  rows?: Readonly<Record<string, readonly (readonly [seconds: number, value: number])[]>>;
}

/** Arithmetic that decides a step. */
export interface WorkDef {
  id: string;
  answers: readonly string[];
  work(context: ExpectContext):
    | {
        ok: true;
        outcome: string;
        /** Missing where no worksheet holds this arithmetic: readings weighed against each other. */
        use?: WorksheetUse;
        says: readonly MessageRef[];
      }
    | Missing;
}

/** A wait. */
export interface WaitDef {
  id: string;
  /** Seconds; where the sheet does not know the label's figure, the longest in common use. */
  seconds(context: ExpectContext): number;
}
