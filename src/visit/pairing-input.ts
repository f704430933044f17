import { gridProblem, sideOf, standingPair } from '../guide/pairing.ts';
import type { EntryOf } from './entries.ts';
import type { RunState } from './fold.ts';
import type { Input, InputProblem } from './input.ts';
import type { Knowledge } from './knowledge.ts';
import { nodeAt, type StepView } from './step.ts';
import { placeOf } from './trail.ts';

type PairInput = Extract<Input, { type: 'pair' }>;
type Answer = EntryOf<'answer'>;
type Handed =
  | { ok: true; outcome: string; pairing: NonNullable<Answer['pairing']> }
  | { ok: false; problem: InputProblem };

/** What a grid and a pair handed in come to: the outcome that the pair leads to, and what the log keeps of it. */
export function pairingOf({ pairing: shown }: StepView, { grid, pair }: PairInput): Handed {
  const refuse = (id: string, field?: string): Handed => ({
    ok: false,
    problem: { ...(field === undefined ? {} : { field }), message: { id: `run.problem.pair.${id}` } },
  });
  if (!shown) return refuse('noGrid');
  const wrong = gridProblem(grid);
  if (wrong) return refuse(wrong.problem, wrong.field);
  if (!pair) return refuse('noPair', 'pair');
  if (!grid.inverter.includes(pair.inverter) || !grid.pack.includes(pair.pack))
    return refuse('strange', 'pair');
  const tried = shown.tries.some(
    (each) => each.result !== undefined && each.inverter === pair.inverter && each.pack === pair.pack,
  );
  if (tried) return refuse('tried', 'pair');
  const { inverter, pack, found, named } = grid;
  return {
    ok: true,
    outcome: sideOf(standingPair(grid, shown.tries), pair),
    pairing: { inverter: [...inverter], pack: [...pack], found, named, pair },
  };
}

/**
 * The pair whose result is answered at the present step, and how long it was given: from when the wait before it began.
 * Nothing where the step says nothing of a try.
 */
export function triedHere(know: Knowledge, state: RunState, nowMs: number): Answer['tried'] {
  const here = state.position.path;
  const last = state.pairing?.tries.at(-1);
  const chosen = state.trail.findLast(({ path }) => {
    const { step } = nodeAt(know, path);
    return step.kind === 'pair' && placeOf(path, step.result) === here;
  });
  if (!last || !chosen) return undefined;
  const after = state.trail.slice(state.trail.indexOf(chosen) + 1);
  const wait = after.findLastIndex(({ path }) => nodeAt(know, path).step.kind === 'wait');
  const from = wait > 0 ? after[wait - 1]! : chosen;
  const { inverter, pack } = last;
  return { inverter, pack, waitedS: Math.max(0, Math.round((nowMs - Date.parse(from.at)) / 1000)) };
}
