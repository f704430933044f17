import type { FlatNode } from '../guide/flatten.ts';
import type { Because, Machine, VerdictStep } from '../guide/vocabulary.ts';
import type { LoggedReading } from './entries.ts';
import type { RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';
import { lastAt, placeOf, type TrailStep } from './trail.ts';

/** A reading or an answer that a verdict rests on, as the log holds it. */
export interface Ground {
  path: string;
  block: string;
  /** The outcome that was taken there; missing when the log has none. */
  outcome?: string;
  readings: readonly LoggedReading[];
  /** The outcome is one of those asked for. */
  holds: boolean;
  /** The log's entry. */
  seq?: number;
}

export interface Verdict {
  path: string;
  block: string;
  causes: readonly string[];
  because: readonly Ground[];
  /** Every ground is borne out by the log. */
  supported: boolean;
}

/** A cause that readings speak against, and which. */
export interface RuledOut {
  cause: string;
  by: readonly Ground[];
}

type VerdictNode = FlatNode & { step: VerdictStep };
const isVerdict = (node: FlatNode): node is VerdictNode => node.step.kind === 'verdict';

function ground(trail: readonly TrailStep[], at: string, because: Because, know: Knowledge) {
  const path = placeOf(at, because.step);
  const node = know.compiled.flat.nodes.get(path);
  const step = lastAt(trail, path);
  return {
    path,
    block: node?.block ?? because.step,
    readings: step?.readings ?? [],
    holds: step !== undefined && because.outcomes.includes(step.outcome),
    ...(step ? { outcome: step.outcome, seq: step.seq } : {}),
  };
}

function verdictAt(know: Knowledge, trail: readonly TrailStep[], node: VerdictNode): Verdict {
  const because = node.step.because.map((each) => ground(trail, node.path, each, know));
  return {
    path: node.path,
    block: node.block,
    causes: node.step.causes,
    because,
    supported: because.every((each) => each.holds),
  };
}

/** The verdict the run stands at or last passed, checked against the log; none before one is reached. */
export function verdictOf(know: Knowledge, state: RunState): Verdict | undefined {
  const { nodes } = know.compiled.flat;
  const here = nodes.get(state.position.path);
  if (here && isVerdict(here)) return verdictAt(know, state.trail, here);
  for (let index = state.trail.length - 1; index >= 0; index--) {
    const node = nodes.get(state.trail[index]!.path);
    if (node && isVerdict(node)) return verdictAt(know, state.trail.slice(0, index), node);
  }
  return undefined;
}

/** An outcome that says which way it went: not one that says a person could not tell. */
const speaks = (each: Ground) =>
  each.outcome !== undefined &&
  !['cant', 'unsure', 'stop', 'undetermined'].includes(each.outcome) &&
  each.readings.every((reading) => reading.outcome !== 'undetermined');

/** The latest answer that speaks for a cause: one that a verdict on it would rest on. */
function lastFor(know: Knowledge, trail: readonly TrailStep[], cause: string): number {
  const verdicts = [...know.compiled.flat.nodes.values()].filter(isVerdict);
  const grounds = verdicts
    .filter((node) => node.step.causes.includes(cause))
    .flatMap((node) => verdictAt(know, trail, node).because);
  return Math.max(-1, ...grounds.filter((each) => each.holds).map((each) => each.seq ?? -1));
}

/**
 * Causes that the log speaks against, by the guide's own lists, and what does. A check that was not made or was too close
 * to call rules nothing out, and neither does one that something answered later speaks against: where readings contradict
 * each other the cause is open again.
 * @param against the guide's lists, where `know` holds the guide without them
 */
export function ruledOut(
  know: Knowledge,
  state: RunState,
  against: NonNullable<Machine['against']> = know.compiled.flat.machine.against ?? {},
): RuledOut[] {
  const named = verdictOf(know, state)?.causes ?? [];
  return Object.entries(against).flatMap(([cause, lists]) => {
    if (named.includes(cause)) return [];
    const since = lastFor(know, state.trail, cause);
    const by = lists
      .map((list) => list.map((each) => ground(state.trail, '', each, know)))
      .filter((list) => list.every((each) => each.holds && speaks(each)))
      .filter((list) => Math.max(...list.map((each) => each.seq ?? -1)) > since);
    return by.length > 0 ? [{ cause, by: distinct(by.flat()) }] : [];
  });
}

const distinct = (grounds: readonly Ground[]) => [
  ...new Map(grounds.map((each) => [each.path, each])).values(),
];
