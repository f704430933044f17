import type { Flat, FlatEdge } from './flatten.ts';
import { rowFits } from './judge.ts';

/** What a person's answer comes to, once judged. Numbers never reach the machine. */
export type GuideEvent =
  | { type: 'outcome'; outcome: string }
  | { type: 'readings'; outcomes: Readonly<Record<string, string>> }
  | { type: 'cant' }
  | { type: 'unsure' }
  | { type: 'stop' };

/** Where a run stands: the step's path and how often each bounded loop was taken. */
export interface Position {
  path: string;
  counters: Readonly<Record<string, number>>;
}

/** How a guide moves: all that a run needs of it. */
export interface Moves {
  flat: Flat;
  begin(): Position;
  /** The position after an event; `undefined` when the step does not take that event. */
  next(from: Position, event: GuideEvent): { to: Position; edge: FlatEdge } | undefined;
}

/** Whether an edge takes an event. Of several that do, the first is taken. */
export function takes({ outcome, when }: Pick<FlatEdge, 'outcome' | 'when'>, event: GuideEvent): boolean {
  if (event.type === 'outcome') return !when && outcome === event.outcome;
  if (event.type === 'readings') return when !== undefined && rowFits(when, event.outcomes);
  return outcome === event.type;
}

/**
 * The moves of a flat guide straight from its edges. A phone runs a guide on these: they are a fraction of the size of the
 * library that runs the compiled machine, and a test holds the two to the same move at every step of every guide.
 */
export function movesOf(flat: Flat): Moves {
  return {
    flat,
    begin: () => ({ path: flat.start, counters: {} }),
    next({ path, counters }, event) {
      const edge = flat.nodes.get(path)?.edges.find((each) => takes(each, event));
      if (!edge) return undefined;
      if (!edge.limit) return { to: { path: edge.to, counters }, edge };
      const { counter, max, otherwise } = edge.limit;
      const taken = counters[counter] ?? 0;
      if (taken >= max) return { to: { path: otherwise, counters }, edge };
      return { to: { path: edge.to, counters: { ...counters, [counter]: taken + 1 } }, edge };
    },
  };
}
