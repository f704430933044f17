import type { ExpectContext, WorksheetUse } from '../expected/context.ts';
import type { Scale } from '../expected/scale.ts';
import type { FlatNode } from '../guide/flatten.ts';
import { type Grid, type Pair, type PairTry, standingPair, untried } from '../guide/pairing.ts';
import { bandFor } from '../guide/reading.ts';
import type { HoldItem, Reading } from '../guide/vocabulary.ts';
import type { MessageRef } from '../quantity/message.ts';
import { type Bar, barredBy } from '../safety/barred.ts';
import { missingFacts } from '../site/fact-paths.ts';
import type { RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';
import { contextOf, lastAt, placeOf } from './trail.ts';

/** A reading that the present step asks for. */
export interface ReadingAsked {
  id: string;
  reading: Reading;
  kind: Scale['kind'];
  /** The band on this site; missing while facts are. */
  scale?: Scale;
}

export interface ItemAsked {
  id: string;
  met: boolean;
  /** Met by a recorded reading (which one), or by its own confirmation. */
  by: 'reading' | 'person';
}

/** What arithmetic decides here, and the worksheet that holds it, where one does. */
export interface WorkShown {
  outcome: string;
  use?: WorksheetUse;
  says: readonly MessageRef[];
}

/** The pairing grid of a step, as far as it is known. */
export interface PairingShown {
  grid?: Grid;
  tries: readonly PairTry[];
  /** How the two sides stand now. */
  now?: Pair;
  /** Pairs not tried yet, the one suggested first. */
  next: readonly Pair[];
}

/** The step a run stands at, and what it takes to go on. */
export interface StepView {
  node: FlatNode;
  /** Outcomes a person may choose: none where a reading, the sheet, a worksheet or items decide. */
  options: readonly string[];
  readings: readonly ReadingAsked[];
  items: readonly ItemAsked[];
  /** Facts of the sheet to ask for in place before the step can be judged. */
  missing: readonly string[];
  /** The sheet's own answer. */
  decided?: string;
  work?: WorkShown;
  pairing?: PairingShown;
  /** When the wait is over. */
  waitEndsMs?: number;
  waitSeconds?: number;
  /** The plant is not as the step needs it, or a finding it leans on is missing: only the ways out are open. */
  barred?: Bar;
}

const wayOuts = ['cant', 'unsure', 'stop'];

/** The node at a place. A place that is not there is a fault of this program, not of a log. */
export function nodeAt(know: Knowledge, path: string): FlatNode {
  const node = know.compiled.flat.nodes.get(path);
  if (!node) throw new Error(`no step at ${path}`);
  return node;
}

/** The context of a run as it stands. */
export const runContext = (state: RunState): ExpectContext =>
  contextOf(state.sheet, state.begin.subject, state.trail);

/** The present step. */
export function stepView(know: Knowledge, state: RunState): StepView {
  const node = nodeAt(know, state.position.path);
  const { step } = node;
  const context = runContext(state);
  const own = [...new Set(node.edges.map((edge) => edge.outcome))].filter((each) => !wayOuts.includes(each));
  const bar = barredBy(node, state.energy, state.variant);
  const view: StepView = {
    node,
    options: [],
    readings: [],
    items: [],
    missing: [],
    ...(bar ? { barred: bar } : {}),
  };
  const wanted = [...(know.compiled.flat.machine.facts ?? []), ...(step.facts ?? [])];
  const missing = missingFor(state, wanted);
  switch (step.kind) {
    case 'measure':
    case 'display': {
      const readings = Object.entries(step.readings).map(([id, reading]) => {
        const band = bandFor(reading, know.scales, context);
        if (!band.ok) missing.push(...band.missing);
        const kind = know.scales[reading.scale]!.kind;
        return band.ok ? { id, reading, kind, scale: band.scale } : { id, reading, kind };
      });
      return { ...view, readings, missing: unique(missing) };
    }
    case 'hold':
    case 'end':
      return { ...view, items: itemsOf(state, node, step.items ?? []), missing: unique(missing) };
    case 'sheet': {
      const decided = know.questions[step.ask ?? '']?.decide(context);
      return decided !== undefined && own.includes(decided)
        ? { ...view, decided, missing: unique(missing) }
        : { ...view, options: own, missing: unique(missing) };
    }
    case 'pair': {
      const { grid, tries = [] } = state.pairing ?? {};
      const next = grid ? untried(grid, tries) : [];
      const pairing = { tries, next, ...(grid ? { grid, now: standingPair(grid, tries) } : {}) };
      return {
        ...view,
        pairing,
        options: grid && next.length === 0 ? ['all-tried'] : [],
        missing: unique(missing),
      };
    }
    case 'workOut': {
      const work = know.works[step.ask ?? ''];
      if (!work) throw new Error(`there is no work ${step.ask}`);
      const result = work.work(context);
      if (!result.ok) return { ...view, missing: unique([...missing, ...result.missing]) };
      const { outcome, use, says } = result;
      return { ...view, work: { outcome, says, ...(use ? { use } : {}) }, missing: unique(missing) };
    }
    case 'wait': {
      const waitSeconds = know.waits[step.wait ?? '']?.seconds(context);
      if (waitSeconds === undefined) throw new Error(`there is no wait ${step.wait}`);
      const waitEndsMs = Date.parse(state.arrivedAt) + waitSeconds * 1000;
      return { ...view, options: own, waitSeconds, waitEndsMs, missing: unique(missing) };
    }
    default:
      return { ...view, options: own, missing: unique(missing) };
  }
}

const unique = (ids: readonly string[]) => [...new Set(ids)];

/** Facts not known, of the string and the tracker the run is about where the list has several. */
function missingFor(state: RunState, ids: readonly string[]): string[] {
  const { strings, trackers } = state.sheet;
  const string = strings.findIndex((each) => each.name === state.begin.subject);
  const tracker = trackers.findIndex((each) => each.name === strings[string]?.tracker);
  return missingFacts(state.sheet, ids).filter((id) => {
    const [, list, row] = /^(strings|trackers)\[(\d+)\]/.exec(id) ?? [];
    const ours = list === 'strings' ? string : tracker;
    return list === undefined || ours < 0 || Number(row) === ours;
  });
}

/** The items of a hold point or an end, each met or not. */
function itemsOf(state: RunState, node: FlatNode, items: readonly HoldItem[]): ItemAsked[] {
  return items.map(({ id, reading }) => {
    if (!reading) return { id, met: state.ticked.has(id), by: 'person' };
    const step = lastAt(state.trail, placeOf(node.path, reading.step));
    const outcome = step?.readings.find((each) => each.id === reading.reading)?.outcome;
    return { id, met: outcome !== undefined && reading.zones.includes(outcome), by: 'reading' };
  });
}
