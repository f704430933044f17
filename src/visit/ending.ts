import type { EndResult, EndStep, Leaves } from '../guide/vocabulary.ts';
import { fitted, hasDevice } from '../safety/energy.ts';
import type { Device } from '../safety/plant.ts';
import { leftAs } from '../safety/states.ts';
import type { RunState } from './fold.ts';
import type { ItemAsked } from './step.ts';

/** How the plant stands: what is shown when a run is left, ended or printed. */
export interface PlantNow {
  /** Open and held by a lock or a tag. */
  heldOpen: readonly Device[];
  /** Open, not held. */
  openNotHeld: readonly Device[];
  closed: readonly Device[];
  inverterOn: boolean;
  loadsOn: boolean;
  resistorOn: boolean;
  danger: boolean;
}

/** How a run may be closed at the end it has come to. */
export interface Ending {
  result: EndResult;
  /** What the plant is left like, from the real energy state; missing when it is like none the end allows. */
  leaves?: Leaves;
  items: readonly ItemAsked[];
  /** Every item is met and the plant is as the end says. */
  mayClose: boolean;
}

export function plantNow({ energy, variant }: Pick<RunState, 'energy' | 'variant'>): PlantNow {
  const list = fitted(variant);
  const open = list.filter((device) => !hasDevice(energy.closed, device));
  return {
    heldOpen: open.filter((device) => hasDevice(energy.held, device)),
    openNotHeld: open.filter((device) => !hasDevice(energy.held, device)),
    closed: list.filter((device) => hasDevice(energy.closed, device)),
    inverterOn: energy.inverterOn,
    loadsOn: energy.loadsOn,
    resistorOn: energy.resistorOn,
    danger: energy.danger,
  };
}

/**
 * The end the run stands at. Guarded is not read off the energy state: isolating was barred or could not be done, and the
 * end's own items are what makes it safe to walk away.
 */
export function endingOf(state: RunState, step: EndStep, items: readonly ItemAsked[]): Ending {
  const left: readonly Leaves[] = leftAs(state.energy, state.variant);
  const leaves =
    step.leaves.find((each) => left.includes(each)) ??
    (step.leaves.includes('guarded') ? 'guarded' : undefined);
  const mayClose = leaves !== undefined && items.every((item) => item.met);
  return { result: step.result, items, mayClose, ...(leaves ? { leaves } : {}) };
}
