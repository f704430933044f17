import { allVariants, type Variant } from '../../safety/plant.ts';
import { rules } from '../../safety/rules/index.ts';
import { type Flat, flatten } from '../flatten.ts';
import type { Machine } from '../vocabulary.ts';
import { type Breach, earlierQuestions, explore } from './explore.ts';
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

/**
 * Proves a guide or procedure over plant variants.
 * @param until `first` stops after the first variant with a breach (enough to know that a mutant is caught)
 */
export function prove(
  machine: Machine,
  procedures: Readonly<Record<string, Machine>>,
  variants: readonly Variant[] = allVariants(),
  until: 'all' | 'first' = 'all',
): Proof {
  const flat = flatten(machine, procedures);
  const breaches = graphBreaches(flat);
  const earlier = earlierQuestions(flat);
  const reached = new Set<string>();
  const effective = new Set<string>();
  let states = 0;
  for (const variant of variants) {
    if (until === 'first' && breaches.length > 0) break;
    const found = explore(flat, variant, earlier);
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
  return {
    machine: machine.id,
    states,
    breaches,
    unreached: [...flat.nodes.keys()].filter((path) => !reached.has(path) && path !== flat.stop),
    idle,
  };
}
