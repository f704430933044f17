import type { QuantityKind } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';

/** A stretch of the number line with a meaning of its own. `null` is the end of the line. */
export interface ScaleZone {
  id: string;
  min: number | null;
  max: number | null;
}

/** What a meter may show at one place on this site, and what each stretch of it means. */
export interface Scale {
  id: string;
  kind: QuantityKind;
  /** Ascending, each one's `max` the next one's `min`. */
  zones: readonly ScaleZone[];
  /** The zone a sound plant reads in. */
  expected: string;
  /** The one figure a sound plant would show, where there is one. */
  nominal?: number;
  /** Where the limits come from, with this site's numbers. */
  why: readonly MessageRef[];
  /** Sheet facts and earlier readings the limits were made from. */
  uses: Readonly<Record<string, number | string>>;
  /**
   * What is added to a reading before it is judged: the expanded uncertainty (unless said), or the half-width of the
   * interval that the instrument's specification promises. Nothing lies outside the second, so a band that safety hangs on
   * may be judged by it where the first, drawn from a model of that interval, reaches beyond what is possible.
   */
  error?: 'halfWidth';
  /** The zone that "over range" (OL) falls in. */
  overRange?: string;
}
