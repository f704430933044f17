import type { QuantityKind } from '../../quantity/kinds.ts';
import type { MessageRef } from '../../quantity/message.ts';
import type { Scale } from '../scale.ts';

/** A zone and where it ends; the last one has no end. */
export type Edge = readonly [zone: string, max: number | null];

interface Rest {
  expected: string;
  nominal?: number;
  why: readonly MessageRef[];
  uses: Readonly<Record<string, number | string>>;
  overRange?: string;
  error?: 'halfWidth';
}

/**
 * A scale from the upper ends of its zones. Where a site's figures make one end pass the next, the zone between
 * shrinks to nothing: the ends never cross.
 */
export function scaleOf(id: string, kind: QuantityKind, edges: readonly Edge[], rest: Rest): Scale {
  let floor: number | null = null;
  const zones = edges.map(([zone, max]) => {
    const min = floor;
    if (max !== null) floor = floor === null ? max : Math.max(floor, max);
    return { id: zone, min, max: max === null ? null : floor };
  });
  return { id, kind, zones, ...rest };
}
