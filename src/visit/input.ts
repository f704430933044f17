import type { Grid, Pair } from '../guide/pairing.ts';
import type { MessageRef } from '../quantity/message.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { Entry } from './entries.ts';

/** Time-stamped values as typed: seconds from the start, and what the meter showed. */
export type SeriesText = readonly (readonly [seconds: string | number, text: string])[];

/** A cause that is ruled out and the steps that speak against it, by the titles they are shown under. */
export interface RuledOutShown {
  cause: string;
  by: readonly string[];
}

/** Something a person does to a run. */
export type Input =
  | { type: 'choice'; outcome: string }
  | { type: 'readings'; texts: Readonly<Record<string, string | SeriesText>> }
  /** On from a hold point, a wait or a worksheet. */
  | { type: 'goOn' }
  | { type: 'cant' }
  | { type: 'unsure' }
  | { type: 'stop' }
  /** Tick or untick an item of a hold point or an end. */
  | { type: 'confirm'; item: string; met: boolean }
  | { type: 'correct'; toSeq: number }
  /** "I did not do that": the last deed. */
  | { type: 'undoAct' }
  /** The person was away, or someone else was at the plant: no proof holds. */
  | { type: 'away' }
  /** Time has passed: a proof that has grown too old is written to the log. */
  | { type: 'notice' }
  /** The site sheet as it is now. */
  | { type: 'facts'; sheet: SiteSheet }
  /** Go on by the changed guide. */
  | { type: 'changed' }
  /** The pairing grid as typed, and the pair to try next. */
  | { type: 'pair'; grid: Grid; pair?: Pair }
  | { type: 'note'; text: string }
  /** The end of the visit, with the causes ruled out as the page shows them. */
  | { type: 'close'; ruledOut?: readonly RuledOutShown[] };

/** What is wrong with an input, and the reading or item it concerns. */
export interface InputProblem {
  field?: string;
  message: MessageRef;
}

/**
 * What an input comes to. `entries` are to be written to the log either way: a proof found too old is logged even where
 * the input itself is refused.
 */
export type Answered =
  | { ok: true; entries: readonly Entry[] }
  | { ok: false; problems: readonly InputProblem[]; entries: readonly Entry[] };
