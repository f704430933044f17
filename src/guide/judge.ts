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
  /** The zone that "over range" (OL) falls in. */
  overRange?: string;
}

/** A judged reading. */
export type Judgement = { outcome: string } | { outcome: 'undetermined'; between: [string, string] };

/**
 * Judges a reading against a scale. A reading whose own uncertainty reaches over a limit is `undetermined`: it is never
 * silently given to either side.
 * @param value the reading, in the scale's inside unit; `'overRange'` when the meter showed OL
 * @param expandedU the meter's expanded uncertainty (about 95 %), same unit, 0 or more
 */
export function judge(value: number | 'overRange', expandedU: number, scale: Scale): Judgement {
  if (value === 'overRange') return { outcome: scale.overRange ?? scale.zones.at(-1)!.id };
  const at = (x: number) =>
    scale.zones.find((zone) => zone.max === null || x <= zone.max) ?? scale.zones.at(-1)!;
  const low = at(value - expandedU);
  const high = at(value + expandedU);
  return low === high ? { outcome: low.id } : { outcome: 'undetermined', between: [low.id, high.id] };
}

/** True when a row's pattern fits these outcomes. */
export function rowFits(
  when: Readonly<Record<string, string | readonly string[]>>,
  outcomes: Readonly<Record<string, string>>,
): boolean {
  return Object.entries(when).every(([reading, zones]) => {
    const got = outcomes[reading];
    return got !== undefined && (typeof zones === 'string' ? zones === got : zones.includes(got));
  });
}
