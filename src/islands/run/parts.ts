import type { FlatNode } from '../../guide/flatten.ts';

/**
 * The parts of a run that its first readings do not need, each fetched when it is first wanted: a phone in the sun should
 * show the first step soon.
 */
const fetchers = {
  steps: () => import('./part-steps.ts'),
  ends: () => import('./part-ends.ts'),
  pairing: () => import('./part-pairing.ts'),
  series: () => import('./part-series.ts'),
  aside: () => import('./part-aside.ts'),
};
type Parts = { [Name in keyof typeof fetchers]: Awaited<ReturnType<(typeof fetchers)[Name]>> };
export type PartName = keyof Parts;

const held: Partial<Parts> = {};

/** Fetches a part, or gives it when it is here. Rejects when it cannot be had. */
export async function fetchPart<Name extends PartName>(name: Name): Promise<Parts[Name]> {
  const part = held[name] ?? ((await fetchers[name]()) as Parts[Name]);
  held[name] = part;
  return part;
}

/** A part that was fetched before. Throws when it was not. */
export function part<Name extends PartName>(name: Name): Parts[Name] {
  const here = held[name];
  if (!here) throw new Error(`the part "${name}" of a run is wanted before it was fetched`);
  return here;
}

const ofKind: Readonly<Record<string, PartName>> = {
  hold: 'steps',
  wait: 'steps',
  workOut: 'steps',
  pair: 'pairing',
  verdict: 'ends',
  end: 'ends',
};

/** The part that a step's controls are in; `undefined` where they are here from the first. */
export function partOf({ step }: FlatNode): PartName | undefined {
  if (step.kind === 'measure' || step.kind === 'display')
    return Object.values(step.readings).some((reading) => (reading.series ?? 1) > 1) ? 'series' : undefined;
  return ofKind[step.kind];
}
