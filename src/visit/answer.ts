import type { GuideEvent } from '../guide/moves.ts';
import { endingOf } from './ending.ts';
import type { Asked, Body, Entry, EntryOf, LoggedReading } from './entries.ts';
import { foldEntry, type RunState } from './fold.ts';
import type { Answered, Input, InputProblem } from './input.ts';
import type { Knowledge } from './knowledge.ts';
import { longestNote } from './log-limits.ts';
import { pairingOf, triedHere } from './pairing-input.ts';
import { proofEndsMs } from './proof-age.ts';
import { undoable, wayBack } from './returning.ts';
import { sheetChanges } from './sheet-changes.ts';
import { nodeAt, type StepView, stepView } from './step.ts';
import { readTyped } from './typed-readings.ts';
import { verdictOf } from './verdict.ts';

/** How far back the clock may jump before it is no longer trusted with the age of a proof. */
const clockSlackMs = 60_000;

/** Most steps the sheet may answer in a row: more would be a guide that goes in a circle. */
const mostAutomatic = 60;

/** A log being added to, with the state it leads to. */
export interface Draft {
  state: RunState;
  entries: Entry[];
  askedOf?: AskedOf;
}

/** What the page shows of a step and of one of its outcomes, to be kept with an answer. */
export type AskedOf = (block: string, outcome: string | undefined) => Asked | undefined;

/** Adds an entry; times never run backwards in a log. */
export function write(know: Knowledge, draft: Draft, body: Body, nowMs: number): void {
  const { visit, lastSeq, lastAt } = draft.state;
  const at = new Date(Math.max(nowMs, Date.parse(lastAt))).toISOString();
  const entry = { ...body, visit, seq: lastSeq + 1, at } as Entry;
  draft.state = foldEntry(know, draft.state, entry);
  draft.entries.push(entry);
}

/** Logs that a proof has grown too old, or that the clock was set back, when it is so. */
export function noticeExpiry(know: Knowledge, draft: Draft, nowMs: number): void {
  const ends = proofEndsMs(draft.state.proofs);
  if (ends === undefined || draft.state.closed) return;
  const clock = nowMs < Date.parse(draft.state.lastAt) - clockSlackMs;
  if (clock || nowMs >= ends) write(know, draft, { kind: 'expiry', reason: clock ? 'clock' : 'age' }, nowMs);
}

/** Answers the steps that the sheet decides. */
export function answerFromSheet(know: Knowledge, draft: Draft, nowMs: number): void {
  for (let count = 0; count < mostAutomatic; count++) {
    if (draft.state.misfit || draft.state.closed) return;
    // Only a question to the sheet is looked at: what another step needs may not be here yet.
    if (nodeAt(know, draft.state.position.path).step.kind !== 'sheet') return;
    const view = stepView(know, draft.state);
    if (view.decided === undefined || view.barred || view.missing.length > 0) return;
    take(know, draft, view, { type: 'outcome', outcome: view.decided }, nowMs, { by: 'sheet' });
  }
  throw new Error(`${know.compiled.flat.machine.id}: the sheet answers in a circle`);
}

interface Told {
  by?: 'sheet' | 'worksheet';
  readings?: LoggedReading[];
  items?: string[];
  inputs?: Record<string, number | string>;
  pairing?: EntryOf<'answer'>['pairing'];
  tried?: EntryOf<'answer'>['tried'];
}

/** Takes an outcome at the present step; false when the guide has no way for it. */
function take(
  know: Knowledge,
  draft: Draft,
  view: StepView,
  event: GuideEvent,
  nowMs: number,
  told: Told = {},
): boolean {
  const move = know.compiled.next(draft.state.position, event);
  if (!move) return false;
  const { path, block } = view.node;
  const { outcome, does } = move.edge;
  const body: Body = {
    kind: 'answer',
    path,
    block,
    outcome,
    does: [...does],
    ...told,
    ...foundBy(view.node.step, outcome),
  };
  write(know, draft, { ...body, ...shown(draft, block, outcome) }, nowMs);
  return true;
}

/** What the log says of a verdict and of a re-test, so that it reads the same without the guide. */
function foundBy(
  step: StepView['node']['step'],
  outcome: string,
): { found?: string[]; retest?: 'cured' | 'failed' } {
  if (step.kind === 'verdict') return { found: [...step.causes] };
  if (step.retest?.cured?.includes(outcome)) return { retest: 'cured' };
  return step.retest?.failed?.includes(outcome) ? { retest: 'failed' } : {};
}

function shown({ askedOf }: Draft, block: string, outcome?: string): { asked?: Asked } {
  const asked = askedOf?.(block, outcome);
  return asked ? { asked } : {};
}

/**
 * What an input comes to: the entries to write, or what is wrong with it. Nothing is changed here; the caller writes the
 * entries first and folds them after.
 * @param nowMs the time, milliseconds since 1970
 * @param askedOf what the page shows, kept with the answers
 */
export function answer(
  know: Knowledge,
  state: RunState,
  input: Input,
  nowMs: number,
  askedOf?: AskedOf,
): Answered {
  const draft: Draft = { state, entries: [], ...(askedOf ? { askedOf } : {}) };
  noticeExpiry(know, draft, nowMs);
  const problems = apply(know, draft, input, nowMs);
  if (problems.length > 0) return { ok: false, problems, entries: draft.entries };
  answerFromSheet(know, draft, nowMs);
  return { ok: true, entries: draft.entries };
}

const problem = (id: string, params?: Record<string, string | number>): InputProblem[] => [
  { message: params ? { id, params } : { id } },
];

function apply(know: Knowledge, draft: Draft, input: Input, nowMs: number): InputProblem[] {
  const { state } = draft;
  const put = (body: Body): InputProblem[] => {
    write(know, draft, body, nowMs);
    return [];
  };
  if (input.type === 'note') {
    const text = input.text.trim();
    if (text === '') return problem('run.problem.emptyNote');
    if (text.length > longestNote) return problem('run.problem.longNote', { longest: longestNote });
    return put({ kind: 'note', text });
  }
  if (input.type === 'notice') return [];
  if (state.closed) return problem('run.problem.closed');
  switch (input.type) {
    case 'facts': {
      const changes = sheetChanges(state.sheet, input.sheet);
      return changes.length === 0 ? [] : put({ kind: 'fact', changes, sheet: input.sheet });
    }
    case 'away':
      return put({ kind: 'expiry', reason: 'person' });
    case 'changed': {
      if (!state.misfit) return [];
      const { version } = know.compiled.flat.machine;
      return put({ kind: 'changed', guideVersion: version, path: state.position.path });
    }
    case 'undoAct': {
      const step = undoable(state);
      return step ? put({ kind: 'undoAct', toSeq: step.seq }) : problem('run.problem.nothingToUndo');
    }
    default:
      if (state.misfit) return problem('run.problem.guideChanged');
      return applyToStep(know, draft, input, nowMs);
  }
}

type StepInput = Exclude<Input, { type: 'note' | 'notice' | 'facts' | 'away' | 'changed' | 'undoAct' }>;

function applyToStep(know: Knowledge, draft: Draft, input: StepInput, nowMs: number): InputProblem[] {
  const { state } = draft;
  if (input.type === 'correct') {
    const index = state.trail.findIndex((step) => step.seq === input.toSeq);
    const way = wayBack(know, state, index);
    if (way.open) write(know, draft, { kind: 'correct', toSeq: input.toSeq }, nowMs);
    return way.open ? [] : problem(`run.problem.back.${way.why}`);
  }
  const view = stepView(know, state);
  const { step, path, block } = view.node;
  const isEnd = step.kind === 'end';
  if (input.type === 'cant' || input.type === 'unsure' || input.type === 'stop') {
    if (isEnd) return problem('run.problem.atEnd');
    return take(know, draft, view, { type: input.type }, nowMs) ? [] : problem('run.problem.noWay');
  }
  if (view.barred) return problem(`run.bar.${view.barred}`);
  if (input.type === 'confirm') {
    const item = view.items.find((each) => each.id === input.item);
    if (!item) return problem('run.problem.noSuchItem', { item: input.item });
    if (item.by === 'reading') return [{ field: item.id, message: { id: 'run.problem.itemByReading' } }];
    write(
      know,
      draft,
      { kind: 'confirm', path, block, item: item.id, met: input.met, ...shown(draft, block) },
      nowMs,
    );
    return [];
  }
  if (input.type === 'close') {
    if (!isEnd) return problem('run.problem.notAtEnd');
    return close(know, draft, view, input, nowMs);
  }
  if (isEnd) return problem('run.problem.atEnd');
  if (view.missing.length > 0) return problem('run.problem.missingFacts', { facts: view.missing.join(', ') });
  if (input.type === 'pair') {
    const handed = pairingOf(view, input);
    if (!handed.ok) return [handed.problem];
    const { outcome, pairing } = handed;
    const event: GuideEvent = { type: 'outcome', outcome };
    return take(know, draft, view, event, nowMs, { pairing }) ? [] : problem('run.problem.noWay');
  }
  if (input.type === 'readings') return takeReadings(know, draft, view, input, nowMs);
  if (input.type === 'goOn') return goOn(know, draft, view, nowMs);
  if (!view.options.includes(input.outcome))
    return problem('run.problem.noSuchChoice', { choice: input.outcome, choices: view.options.join(', ') });
  if (step.kind === 'wait') return goOn(know, draft, view, nowMs);
  if (step.kind === 'verdict' && !verdictOf(know, state)?.supported)
    return problem('run.problem.unsupported');
  const event: GuideEvent = { type: 'outcome', outcome: input.outcome };
  const tried = triedHere(know, draft.state, nowMs);
  return take(know, draft, view, event, nowMs, tried ? { tried } : {}) ? [] : problem('run.problem.noWay');
}

function takeReadings(
  know: Knowledge,
  draft: Draft,
  view: StepView,
  input: Extract<Input, { type: 'readings' }>,
  nowMs: number,
): InputProblem[] {
  if (view.readings.length === 0) return problem('run.problem.noReadings');
  const extra = Object.keys(input.texts).find((id) => !view.readings.some((each) => each.id === id));
  if (extra !== undefined)
    return problem('run.problem.noSuchReading', {
      reading: extra,
      readings: view.readings.map((each) => each.id).join(', '),
    });
  const results = view.readings.map((each) => readTyped(each, input.texts[each.id], draft.state.sheet));
  const problems = results.flatMap((each) => (each.ok ? [] : [each.problem]));
  if (problems.length > 0) return problems;
  const readings = results.flatMap((each) => (each.ok ? [each.reading] : []));
  const outcomes = Object.fromEntries(readings.map((each) => [each.id, each.outcome]));
  const taken = take(know, draft, view, { type: 'readings', outcomes }, nowMs, { readings });
  return taken ? [] : problem('run.problem.noWay');
}

function goOn(know: Knowledge, draft: Draft, view: StepView, nowMs: number): InputProblem[] {
  const { kind } = view.node.step;
  if (kind === 'hold') {
    const unmet = view.items.filter((item) => !item.met);
    if (unmet.length > 0)
      return unmet.map(({ id, by }) => ({
        field: id,
        message: { id: by === 'reading' ? 'run.problem.itemByReading' : 'run.problem.itemUnmet' },
      }));
    const items = view.items.map((item) => item.id);
    const event: GuideEvent = { type: 'outcome', outcome: 'done' };
    return take(know, draft, view, event, nowMs, { items }) ? [] : problem('run.problem.noWay');
  }
  if (kind === 'wait') {
    const left = Math.ceil(((view.waitEndsMs ?? 0) - nowMs) / 1000);
    if (left > 0) return problem('run.problem.waitNotOver', { seconds: left });
    const event: GuideEvent = { type: 'outcome', outcome: view.options[0] ?? 'done' };
    return take(know, draft, view, event, nowMs) ? [] : problem('run.problem.noWay');
  }
  if (kind === 'workOut' && view.work) {
    const { outcome, use } = view.work;
    const told: Told = { by: 'worksheet', ...(use ? { inputs: { ...use.inputs } } : {}) };
    return take(know, draft, view, { type: 'outcome', outcome }, nowMs, told)
      ? []
      : problem('run.problem.noWay');
  }
  return problem(kind === 'workOut' ? 'run.problem.cannotWork' : 'run.problem.answerFirst');
}

function close(
  know: Knowledge,
  draft: Draft,
  view: StepView,
  { ruledOut = [] }: Extract<Input, { type: 'close' }>,
  nowMs: number,
): InputProblem[] {
  const { step, path, block } = view.node;
  if (step.kind !== 'end') return problem('run.problem.notAtEnd');
  const ending = endingOf(draft.state, step, view.items);
  const unmet = view.items.filter((item) => !item.met);
  if (unmet.length > 0)
    return unmet.map(({ id }) => ({ field: id, message: { id: 'run.problem.itemUnmet' } }));
  if (ending.leaves === undefined) return problem('run.problem.plantNotLeft');
  const against = ruledOut.map(({ cause, by }) => ({ cause, by: [...by] }));
  const body: Body = {
    kind: 'closed',
    path,
    result: ending.result,
    leaves: ending.leaves,
    ...(against.length > 0 ? { ruledOut: against } : {}),
  };
  write(know, draft, { ...body, ...shown(draft, block) }, nowMs);
  return [];
}
