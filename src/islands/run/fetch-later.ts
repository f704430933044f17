import type { FlatNode } from '../../guide/flatten.ts';

/**
 * The part of a run that its first readings do not need, fetched when first wanted: a phone in the sun should show the
 * first step soon.
 */
type Later = typeof import('./later.ts');

let held: Later | undefined;

/** The later part, once it is here. */
export const later = (): Later | undefined => held;

export async function fetchLater(): Promise<Later> {
  held ??= await import('./later.ts');
  return held;
}

const kinds = ['hold', 'wait', 'pair', 'workOut', 'verdict', 'end'];

/** True for a step whose controls are in the later part. */
export function isLater({ step }: FlatNode): boolean {
  if (step.kind === 'measure' || step.kind === 'display')
    return Object.values(step.readings).some((reading) => (reading.series ?? 1) > 1);
  return kinds.includes(step.kind);
}
