import type { FlatEdge, FlatNode } from '../guide/flatten.ts';
import { isAct } from '../safety/effects.ts';
import { applyEffect } from '../safety/energy.ts';
import { rules } from '../safety/rules/index.ts';
import type { RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';

/**
 * The safety rule that a deed of the hands would break in the plant as it really is; `undefined` when none. On the paths
 * that a guide lays out the prover has shown that there is none: this guards what comes after going back, or after a
 * proof has grown old.
 */
export function ruleBroken(
  know: Knowledge,
  state: Pick<RunState, 'energy' | 'variant'>,
  node: FlatNode,
  edge: FlatEdge,
): string | undefined {
  let before = state.energy;
  for (const effect of edge.does) {
    if (isAct(effect))
      for (const rule of rules) {
        const { variant } = state;
        const reason = rule.onDeed?.({ node, edge, effect, before, variant, graph: know.compiled.flat });
        if (reason !== undefined) return rule.id;
      }
    before = applyEffect(before, effect);
  }
  return undefined;
}

/** The safety rule that doing this step at all would break in the plant as it really is. */
export function ruleBrokenOnArrival(
  know: Knowledge,
  { energy, variant }: Pick<RunState, 'energy' | 'variant'>,
  node: FlatNode,
): string | undefined {
  const graph = know.compiled.flat;
  return rules.find((rule) => rule.onArrival?.({ node, energy, variant, graph }) !== undefined)?.id;
}
