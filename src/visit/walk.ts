import { kindFacts } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import type { BeginState } from '../safety/energy.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { answer } from './answer.ts';
import { attemptsOf } from './attempts.ts';
import { endingOf } from './ending.ts';
import type { Entry, LoggedReading } from './entries.ts';
import type { RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';
import { advance, beginVisit, startNeeds } from './run.ts';
import { type StepView, stepView, type WorkShown } from './step.ts';
import { ruledOut, verdictOf } from './verdict.ts';
import {
  inputsFor,
  nextAnswer,
  slipsIn,
  unknownBlocks,
  unusedOf,
  type WalkAnswers,
  type WalkProblem,
} from './walk-answers.ts';

export { answersSchema, type WalkAnswers, type WalkProblem } from './walk-answers.ts';

/** What was worked out at a step, and by which worksheet, where one holds the arithmetic. */
export interface WalkWork {
  worksheet?: string;
  inputs?: Readonly<Record<string, number | string>>;
  says: readonly MessageRef[];
}

export interface WalkReading {
  id: string;
  text: string;
  /** Inside unit of its kind; `overRange` where the meter showed OL. */
  value: number | 'overRange';
  /** The inside unit. */
  unit: string;
  /** Expanded uncertainty, same unit as the value. */
  u: number;
  band: { expected: string; zones: LoggedReading['scale']['zones'] };
  outcome: string;
  between?: readonly string[];
}

/** What a walk came to. */
export interface WalkResult {
  guide: string;
  site: string;
  subject?: string;
  path: string[];
  outcomes: { block: string; outcome: string; by?: string; readings: WalkReading[]; work?: WalkWork }[];
  verdict: {
    causes: readonly string[];
    because: { block: string; outcome: string; readings: string[] }[];
  } | null;
  /** Verdicts in the order they were come to, and what a re-test showed of each one's remedy. */
  tried: { block: string; causes: readonly string[]; retest: 'cured' | 'failed' | null }[];
  end: { result: string; leaves: string | null } | null;
  ruledOut: { cause: string; by: string[] }[];
  /** Hazard statements of the steps come to, in the order they were shown; those of a step once. */
  warnings: { block: string; hazard: string }[];
  /** What the step that the answers ended at asks for. */
  needs: {
    step: string;
    kind: string;
    options?: readonly string[];
    readings?: readonly string[];
    items?: readonly string[];
    facts?: readonly string[];
  } | null;
  problems: WalkProblem[];
  /** Answers of the file that the walk did not come to, or that the sheet or a worksheet gave otherwise. */
  unusedAnswers: string[];
}

/** Steps in a walk before it is given up: far more than any guide has. */
const mostSteps = 2000;

/** How long one answer takes by the walk's clock. */
const answerMs = 5000;

/**
 * Walks a guide by a file of answers, as the browser's run would go with the same typed readings. Its clock is its own:
 * waits pass at once.
 */
export function walk(know: Knowledge, sheet: SiteSheet, file: WalkAnswers): WalkResult {
  const { machine } = know.compiled.flat;
  const names = sheet.strings.map((string) => string.name);
  const only = machine.subject === 'pvString' && names.length === 1 ? names[0] : undefined;
  const subject = file.subject ?? only;
  const result: WalkResult = {
    guide: machine.id,
    site: sheet.name,
    ...(subject === undefined ? {} : { subject }),
    path: [],
    outcomes: [],
    verdict: null,
    end: null,
    tried: [],
    ruledOut: [],
    warnings: [],
    needs: null,
    problems: [],
    unusedAnswers: [],
  };
  const refuse = (id: string, params: Record<string, string>) => {
    result.problems.push({ block: '', message: { id, params } });
    return result;
  };
  const needs = startNeeds(know, sheet, subject);
  if (needs.subjects.length > 0) return refuse('walk.subject', { names: needs.subjects.join(', ') });
  if (needs.facts.length > 0) return refuse('walk.facts', { facts: needs.facts.join(', ') });
  if (file.begins !== undefined && !(machine.begins as readonly string[]).includes(file.begins))
    return refuse('walk.begins', { begins: machine.begins.join(', ') });
  const unknown = unknownBlocks(know, file);
  if (unknown.length > 0) return refuse('walk.unknownBlocks', { blocks: unknown.join(', ') });

  let nowMs = Date.parse('2030-01-01T08:00:00.000Z');
  const begun = beginVisit(
    know,
    {
      visit: 'walk-000001',
      sheet,
      begins: file.begins as BeginState | undefined,
      ...(subject ? { subject } : {}),
    },
    nowMs,
  );
  const log: Entry[] = [...begun.entries];
  let state = begun.state;
  const taken = new Map<string, number>();
  const shown = new Set<string>();
  const works = new Map<number, WalkWork>();

  for (let count = 0; count < mostSteps; count++) {
    const view = stepView(know, state);
    show(result, shown, view);
    const { block } = view.node;
    const given = nextAnswer(file, taken, block);
    const slips = slipsIn(view, given);
    result.problems.push(...slips);
    const inputs = view.barred || slips.length > 0 ? [] : inputsFor(view, given);
    if (inputs.length === 0) {
      if (view.node.step.kind !== 'end') result.needs = needsOf(view);
      if (view.barred) result.problems.push({ block, message: { id: `run.bar.${view.barred}` } });
      break;
    }
    nowMs += answerMs + (view.waitSeconds ?? 0) * 1000;
    const refused = inputs.some((input) => {
      const answered = answer(know, state, input, nowMs);
      log.push(...answered.entries);
      if (view.work) keepWork(works, answered.entries, block, view.work);
      state = advance(know, state, answered.entries);
      if (!answered.ok) result.problems.push(...answered.problems.map((each) => ({ block, ...each })));
      return !answered.ok;
    });
    if (refused) {
      result.needs = needsOf(view);
      break;
    }
    if (view.node.step.kind === 'end') break;
  }
  return { ...finish(know, state, result, works), unusedAnswers: unusedOf(file, taken, state) };
}

function keepWork(
  works: Map<number, WalkWork>,
  entries: readonly Entry[],
  block: string,
  { use, says }: WorkShown,
): void {
  const work = { ...(use ? { worksheet: use.worksheet, inputs: use.inputs } : {}), says };
  for (const entry of entries)
    if (entry.kind === 'answer' && entry.block === block) works.set(entry.seq, work);
}

/** The hazard statements of a step come to for the first time. */
function show(result: WalkResult, shown: Set<string>, view: StepView): void {
  for (const hazard of view.node.step.hazards ?? []) {
    const key = `${view.node.block} ${hazard}`;
    if (shown.has(key)) continue;
    shown.add(key);
    result.warnings.push({ block: view.node.block, hazard });
  }
}

function needsOf(view: StepView): WalkResult['needs'] {
  const { node, options, readings, items, missing } = view;
  return {
    step: node.block,
    kind: node.step.kind,
    ...(options.length > 0 ? { options } : {}),
    ...(readings.length > 0 ? { readings: readings.map((each) => each.id) } : {}),
    ...(items.length > 0 ? { items: items.map((each) => each.id) } : {}),
    ...(missing.length > 0 ? { facts: missing } : {}),
  };
}

function finish(
  know: Knowledge,
  state: RunState,
  result: WalkResult,
  works: ReadonlyMap<number, WalkWork>,
): WalkResult {
  const node = know.compiled.flat.nodes.get(state.position.path)!;
  const blocks = state.trail.map((step) => step.block);
  const verdict = verdictOf(know, state);
  const step = node.step;
  const ending = step.kind === 'end' ? endingOf(state, step, stepView(know, state).items) : undefined;
  return {
    ...result,
    path: [...blocks, node.block],
    outcomes: state.trail.map(({ seq, block, outcome, by, readings }) => ({
      block,
      outcome,
      ...(by ? { by } : {}),
      readings: readings.map(readingOf),
      ...(works.has(seq) ? { work: works.get(seq)! } : {}),
    })),
    verdict: verdict
      ? {
          causes: verdict.causes,
          because: verdict.because.map(({ block, outcome, readings }) => ({
            block,
            outcome: outcome ?? '',
            readings: readings.map((reading) => `${reading.id} ${reading.text}`),
          })),
        }
      : null,
    tried: attemptsOf(state.trail).map(({ block, causes, result: retest = null }) => ({
      block,
      causes,
      retest,
    })),
    end: ending ? { result: ending.result, leaves: ending.leaves ?? null } : null,
    ruledOut: ruledOut(know, state).map(({ cause, by }) => ({ cause, by: by.map((each) => each.block) })),
  };
}

function readingOf(reading: LoggedReading): WalkReading {
  const { id, value, uncertaintyU, scale, outcome, between } = reading;
  return {
    id,
    text: reading.text,
    value,
    unit: kindFacts[scale.kind].insideUnit,
    u: uncertaintyU,
    band: { expected: scale.expected, zones: scale.zones },
    outcome,
    ...(between ? { between } : {}),
  };
}
