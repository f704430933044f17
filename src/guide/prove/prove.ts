import { allVariants, type Variant } from '../../safety/plant.ts';
import { rules } from '../../safety/rules/index.ts';
import { type Flat, flatten } from '../flatten.ts';
import type { Machine } from '../vocabulary.ts';
import { Earlier } from './earlier.ts';
import { type Breach, explore, type Limits } from './explore.ts';
import { unsupportedVerdicts } from './verdicts.ts';

/** What the proof of one machine came to. */
export interface Proof {
  machine: string;
  states: number;
  breaches: Breach[];
  /** Steps that no plant variant reaches. */
  unreached: string[];
  /** Effects that change nothing wherever they are reached, as `path outcome index`. */
  idle: Set<string>;
}

/** Breaches that show on the graph itself. */
function graphBreaches(flat: Flat): Breach[] {
  const found = rules.flatMap((rule) => {
    const broken = rule.onGraph?.(flat);
    return broken
      ? [{ rule: rule.id, reason: broken.reason, machine: flat.machine.id, step: broken.path, path: [] }]
      : [];
  });
  return [...found, ...unsupportedVerdicts(flat)];
}

/** Variants that can do the same things: they differ only in ratings and daylight, which no event depends on. */
function alike(variants: readonly Variant[]): Variant[][] {
  const groups = new Map<string, Variant[]>();
  for (const variant of variants) {
    const key = `${variant.source} ${variant.packs} ${variant.inverters}`;
    groups.set(key, [...(groups.get(key) ?? []), variant]);
  }
  return [...groups.values()];
}

const all: Limits = { breaches: 40, statesAfterBreach: Number.POSITIVE_INFINITY };
/** How far a proof goes on once it has found a breach. */
export type Until =
  | 'all'
  /** Enough to know that a mutant is caught, and by which rules near the first breach. */
  | 'first'
  /** The whole of the first plant with a breach: by which rules at all. */
  | 'plant';

const limitsOf: Readonly<Record<Until, Limits>> = {
  all,
  first: { breaches: 12, statesAfterBreach: 2000 },
  plant: { breaches: 200, statesAfterBreach: Number.POSITIVE_INFINITY },
};

/**
 * Proves a guide or procedure over plant variants.
 */
export function prove(
  machine: Machine,
  procedures: Readonly<Record<string, Machine>>,
  variants: readonly Variant[] = allVariants(),
  until: Until = 'all',
): Proof {
  const flat = flatten(machine, procedures);
  const breaches = graphBreaches(flat);
  const earlier = new Earlier(flat);
  const reached = new Set<string>();
  const effective = new Set<string>();
  let states = 0;
  for (const group of alike(variants)) {
    if (until !== 'all' && breaches.length > 0) break;
    const found = explore(flat, group, earlier.restart(), limitsOf[until]);
    states += found.states;
    breaches.push(...found.breaches);
    for (const path of found.reached) reached.add(path);
    for (const mark of found.effective) effective.add(mark);
  }
  const idle = new Set<string>();
  for (const node of flat.nodes.values())
    for (const edge of node.edges)
      edge.does.forEach((_, i) => {
        const mark = `${node.path} ${edge.outcome} ${i}`;
        if (!effective.has(mark)) idle.add(mark);
      });
  const unreached = [...flat.nodes.keys()].filter((path) => !reached.has(path) && path !== flat.stop);
  return { machine: machine.id, states, breaches, unreached, idle };
}
