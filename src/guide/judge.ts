import type { Scale } from '../expected/scale.ts';

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
