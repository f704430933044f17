import type { FlatNode } from '../guide/flatten.ts';
import { mayGoBack } from '../guide/going-back.ts';
import { type Bar, barredBy } from '../safety/barred.ts';
import { type Effect, isAct } from '../safety/effects.ts';
import { standing } from '../safety/energy.ts';
import { energyOnReturn, type RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';
import { nodeAt } from './step.ts';
import type { TrailStep } from './trail.ts';

/** Whether a terminal of the trail may be gone back to. */
export type Way =
  | { open: true /** Deeds done since, which stay done. */; since: readonly Effect[] }
  /** Nothing was asked there: decided by the sheet or a worksheet, or a deed, which is undone or reversed instead. */
  | { open: false; why: 'notAsked' }
  /** The plant is no longer as that step needs it, or a finding it leans on does not keep. */
  | {
      open: false;
      why: 'barred';
      bar: Bar | 'other-procedure' | 'stands-otherwise';
      needs: string;
      since: readonly Effect[];
      reversedBy: readonly Effect[];
    }
  | { open: false; why: 'closed' };

/** Deeds that put a deed right; most have one. */
const reversals: readonly ((act: Effect) => Effect | undefined)[] = [
  (act) => ('open' in act ? { close: act.open } : undefined),
  (act) => ('close' in act ? { open: act.close } : undefined),
  (act) => ('lock' in act ? { unlock: act.lock } : undefined),
  (act) => ('tagPlus' in act ? { unlock: act.tagPlus } : undefined),
  (act) => ('unlock' in act ? { lock: act.unlock } : undefined),
  (act) => ('inverter' in act ? { inverter: act.inverter === 'on' ? 'off' : 'on' } : undefined),
  (act) => ('source' in act ? { source: act.source === 'running' ? 'stopped' : 'running' } : undefined),
  (act) => ('loads' in act ? { loads: act.loads === 'on' ? 'off' : 'on' } : undefined),
  (act) => ('resistor' in act ? { resistor: act.resistor === 'on' ? 'off' : 'on' } : undefined),
  (act) => ('plugs' in act ? { plugs: act.plugs === 'parted' ? 'joined' : 'parted' } : undefined),
];

/** The deed that puts this one right; `undefined` where none does. */
export function reversalOf(act: Effect): Effect | undefined {
  for (const reverse of reversals) {
    const deed = reverse(act);
    if (deed) return deed;
  }
  return undefined;
}

/** Steps that ask: the prover walks the way back to these alone. A deed is undone or reversed, never answered again. */
const questionKinds = ['look', 'choose', 'display', 'measure', 'pair'];

const actsFrom = (trail: readonly TrailStep[], index: number): Effect[] =>
  trail.slice(index).flatMap((step) => step.does.filter(isAct));

/** What stands in the way of going back: the same conditions as the prover's walk, in its order. */
function backBar(
  know: Knowledge,
  state: RunState,
  index: number,
  node: FlatNode,
): Bar | 'other-procedure' | 'stands-otherwise' | undefined {
  if (!mayGoBack(nodeAt(know, state.position.path), node)) return 'other-procedure';
  const back = energyOnReturn(state, index);
  if (state.trail[index]?.stood !== standing(back)) return 'stands-otherwise';
  return barredBy(node, back, state.variant);
}

/** Whether the run may go back to the answer at `index` of its trail, to read or correct it. */
export function wayBack(know: Knowledge, state: RunState, index: number): Way {
  const step = state.trail[index];
  if (!step || state.closed) return { open: false, why: 'closed' };
  const node = nodeAt(know, step.path);
  if (step.by || !questionKinds.includes(node.step.kind)) return { open: false, why: 'notAsked' };
  const since = actsFrom(state.trail, index);
  const bar = backBar(know, state, index, node);
  if (!bar) return { open: true, since };
  const reversedBy = since
    .toReversed()
    .map(reversalOf)
    .filter((act) => act !== undefined);
  return { open: false, why: 'barred', bar, needs: node.step.state ?? 'any', since, reversedBy };
}

/**
 * The answer whose deed may be taken back as *I did not do that*: the last one that claims a deed of the hands. Earlier
 * ones come within reach one by one.
 */
export function undoable(state: RunState): TrailStep | undefined {
  if (state.closed || state.misfit) return undefined;
  return state.trail.findLast((step) => step.does.some(isAct));
}

/**
 * Where to prove dead again: the answer at which the tester was first proved for the last proof on the trail, if it may be
 * gone back to.
 */
export function proveAgainAt(know: Knowledge, state: RunState): TrailStep | undefined {
  const dead = state.trail.findLastIndex((step) => step.does.some((each) => 'measuredDead' in each));
  if (dead < 0) return undefined;
  const tester = state.trail.findLastIndex(
    (step, index) => index <= dead && step.does.some((each) => 'testerProved' in each),
  );
  const index = tester < 0 ? dead : tester;
  return wayBack(know, state, index).open ? state.trail[index] : undefined;
}
