import type { FlatNode } from '../guide/flatten.ts';
import type { GuideEvent, Position } from '../guide/moves.ts';
import type { Grid, PairTry } from '../guide/pairing.ts';
import { type Effect, isAct } from '../safety/effects.ts';
import {
  applyEffect,
  type BeginState,
  type Energy,
  forgetFresh,
  initialEnergy,
  standing,
} from '../safety/energy.ts';
import type { Variant } from '../safety/plant.ts';
import { variantOfSheet } from '../safety/variant-of-sheet.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { Entry, EntryOf } from './entries.ts';
import type { Knowledge } from './knowledge.ts';
import { type ProofTimes, proofsAfter, withoutProofs } from './proof-age.ts';
import { type TrailStep, trailStepOf } from './trail.ts';

/** Something that changed the plant or what is known of it, at one place of the log. */
interface Deed {
  seq: number;
  /** Effects of an answer; or what going back forgets: findings that do not keep, or every proof. */
  does: readonly Effect[] | Forgets;
}

type Forgets = 'fresh' | 'fresh-and-verified' | 'proofs' | 'proofs-and-verified';

/** Where the log has led: everything a run shows is made from this. */
export interface RunState {
  visit: string;
  begin: EntryOf<'begin'>;
  /** The sheet as the log last says it stood. */
  sheet: SiteSheet;
  variant: Variant;
  position: Position;
  /** When the run came to where it stands. */
  arrivedAt: string;
  trail: readonly TrailStep[];
  energy: Energy;
  deeds: readonly Deed[];
  proofs: ProofTimes;
  /** The pairing grid of the run and what was tried of it, the last try last. Going back takes no try away. */
  pairing?: { grid: Grid; tries: readonly PairTry[] };
  /** Items of the present step that were ticked. */
  ticked: ReadonlySet<string>;
  lastSeq: number;
  lastAt: string;
  /** The first answer that no longer fits the guide: the log is kept, the run waits for the person to go on. */
  misfit?: { seq: number };
  closed?: EntryOf<'closed'>;
}

const begins = (state: Pick<RunState, 'begin'>) => state.begin.begins as BeginState;

/** The state at the head of a log. */
export function beginState(know: Knowledge, begin: EntryOf<'begin'>): RunState {
  const variant = variantOfSheet(begin.sheet);
  return {
    visit: begin.visit,
    begin,
    sheet: begin.sheet,
    variant,
    position: know.compiled.begin(),
    arrivedAt: begin.at,
    trail: [],
    energy: initialEnergy(variant, begin.begins as BeginState),
    deeds: [],
    proofs: {},
    ticked: new Set(),
    lastSeq: begin.seq,
    lastAt: begin.at,
  };
}

/** The event that a logged answer was: its outcome as judged then, never judged again. */
function eventOf(node: FlatNode, entry: EntryOf<'answer'>): GuideEvent {
  const { outcome } = entry;
  if (outcome === 'cant' || outcome === 'unsure' || outcome === 'stop') return { type: outcome };
  if (node.edges.some((edge) => edge.when))
    return {
      type: 'readings',
      outcomes: Object.fromEntries((entry.readings ?? []).map((reading) => [reading.id, reading.outcome])),
    };
  return { type: 'outcome', outcome };
}

const sameEffects = (a: readonly Effect[], b: readonly Effect[]) => JSON.stringify(a) === JSON.stringify(b);

/**
 * The state after one more entry. A pure function of state and entry, so that stepping as entries come is the same as
 * replaying the whole log.
 */
export function foldEntry(know: Knowledge, before: RunState, entry: Entry): RunState {
  const state: RunState = { ...before, lastSeq: entry.seq, lastAt: entry.at };
  switch (entry.kind) {
    case 'begin':
    case 'note':
      return state;
    case 'confirm': {
      if (state.misfit || entry.path !== state.position.path) return state;
      const ticked = new Set(state.ticked);
      if (entry.met) ticked.add(entry.item);
      else ticked.delete(entry.item);
      return { ...state, ticked };
    }
    case 'fact': {
      const variant = variantOfSheet(entry.sheet);
      return restood({ ...state, sheet: entry.sheet, variant });
    }
    case 'expiry':
      return withDeed(state, { seq: entry.seq, does: 'proofs' }, entry.at);
    case 'closed':
      return { ...state, closed: entry };
    case 'changed':
      return state.misfit && entry.path === state.position.path
        ? withDeed(
            { ...state, misfit: undefined, arrivedAt: entry.at, ticked: new Set() },
            { seq: entry.seq, does: 'proofs' },
            entry.at,
          )
        : state;
    case 'correct': {
      const index = state.trail.findIndex((step) => step.seq === entry.toSeq);
      if (index < 0 || state.misfit) return state;
      const forgets = forgottenFrom(state, index);
      const back = withDeed(state, { seq: entry.seq, does: forgets }, entry.at);
      return returned(back, entry.toSeq, entry.at);
    }
    case 'undoAct': {
      const deeds = [
        ...state.deeds.filter((deed) => deed.seq !== entry.toSeq),
        { seq: entry.seq, does: 'proofs' as const },
      ];
      const energy = energyOf(begins(state), state.variant, deeds);
      return returned({ ...state, deeds, energy, proofs: {} }, entry.toSeq, entry.at);
    }
    case 'answer':
      return answered(know, state, entry);
  }
}

function answered(know: Knowledge, state: RunState, entry: EntryOf<'answer'>): RunState {
  const node = know.compiled.flat.nodes.get(entry.path);
  const here = !state.misfit && node !== undefined && entry.path === state.position.path;
  const move = here ? know.compiled.next(state.position, eventOf(node, entry)) : undefined;
  if (!move || move.edge.outcome !== entry.outcome || !sameEffects(move.edge.does, entry.does)) {
    // The answer was given to another version of the guide. What the hands did then was done all the same.
    const acts = entry.does.filter(isAct);
    const misfit = state.misfit ?? { seq: entry.seq };
    return withDeed({ ...state, misfit }, { seq: entry.seq, does: acts }, entry.at);
  }
  return withDeed(
    {
      ...withTry(state, entry),
      position: move.to,
      arrivedAt: entry.at,
      trail: [...state.trail, trailStepOf(entry, standing(state.energy))],
      ticked: new Set(),
    },
    { seq: entry.seq, does: entry.does },
    entry.at,
  );
}

/** A pair chosen is a try begun; the answer of the step that says what came of it ends it. */
function withTry(state: RunState, { pairing, tried, outcome }: EntryOf<'answer'>): RunState {
  const tries = state.pairing?.tries ?? [];
  if (pairing) {
    const { pair, ...grid } = pairing;
    const open = tries.filter((each) => each.result !== undefined);
    return { ...state, pairing: { grid, tries: pair ? [...open, pair] : open } };
  }
  const last = tries.at(-1);
  if (!tried || !state.pairing || last?.inverter !== tried.inverter || last.pack !== tried.pack) return state;
  const known = { ...last, result: outcome, waitedS: tried.waitedS };
  return { ...state, pairing: { ...state.pairing, tries: [...tries.slice(0, -1), known] } };
}

function withDeed(state: RunState, deed: Deed, at: string): RunState {
  if (deed.does.length === 0) return state;
  const energy = energyAfter(state.energy, state.variant, deed);
  const does = typeof deed.does === 'string' ? [] : deed.does;
  const proofs = proofsAfter(state.proofs, does, Date.parse(at), energy);
  return { ...state, energy, proofs, deeds: [...state.deeds, deed] };
}

function energyAfter(energy: Energy, variant: Variant, { does }: Deed): Energy {
  if (typeof does !== 'string') return does.reduce(applyEffect, energy);
  const left = does.startsWith('proofs') ? withoutProofs(energy, variant) : forgetFresh(energy);
  return does.endsWith('verified') && left.verify === 'passed' ? { ...left, verify: 'owed' } : left;
}

function energyOf(from: BeginState, variant: Variant, deeds: readonly Deed[]): Energy {
  return deeds.reduce((energy, deed) => energyAfter(energy, variant, deed), initialEnergy(variant, from));
}

/**
 * What going back before an answer forgets: findings that do not keep; every proof where an answer that one rests on is
 * cut off; and that the system was shown to work, where that is cut off.
 */
function forgottenFrom(state: RunState, index: number): Forgets {
  const cut = state.trail.slice(index).flatMap((step) => step.does);
  const proof = cut.some((effect) => 'measuredDead' in effect || 'testerProved' in effect);
  const verified = cut.some((effect) => 'verified' in effect);
  return `${proof ? 'proofs' : 'fresh'}${verified ? '-and-verified' : ''}`;
}

/** The energy state that going back before an answer of the trail would leave. */
export const energyOnReturn = (state: RunState, index: number): Energy =>
  energyAfter(state.energy, state.variant, { seq: 0, does: forgottenFrom(state, index) });

/** The state on another kind of plant: the energy state, and where things stood at each answer, made anew from the deeds. */
function restood(state: RunState): RunState {
  let energy = initialEnergy(state.variant, begins(state));
  let done = 0;
  const upTo = (seq: number) => {
    for (; (state.deeds[done]?.seq ?? seq) < seq; done++)
      energy = energyAfter(energy, state.variant, state.deeds[done]!);
  };
  const trail = state.trail.map((step) => {
    upTo(step.seq);
    return { ...step, stood: standing(energy) };
  });
  upTo(Number.POSITIVE_INFINITY);
  return { ...state, trail, energy };
}

/** Back before an answer: the trail is cut there. What was done and the counts of loops stay. */
function returned(state: RunState, toSeq: number, at: string): RunState {
  const index = state.trail.findIndex((step) => step.seq === toSeq);
  const step = state.trail[index];
  if (!step || state.misfit) return state;
  return {
    ...state,
    position: { ...state.position, path: step.path },
    trail: state.trail.slice(0, index),
    arrivedAt: at,
    ticked: new Set(),
  };
}
