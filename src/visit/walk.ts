import * as z from 'zod/mini';
import { kindFacts } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import type { BeginState } from '../safety/energy.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { answer } from './answer.ts';
import { endingOf } from './ending.ts';
import type { Entry, LoggedReading } from './entries.ts';
import type { RunState } from './fold.ts';
import type { Input } from './input.ts';
import type { Knowledge } from './knowledge.ts';
import { advance, beginVisit, startNeeds } from './run.ts';
import { type StepView, stepView } from './step.ts';
import { ruledOut, verdictOf } from './verdict.ts';

const text = z.string();
const seconds = z.union([z.string(), z.number()]);
const typed = z.union([text, z.number(), z.array(z.tuple([seconds, z.union([text, z.number()])]))]);
const one = z.union([text, z.record(text, z.union([typed, z.boolean()]))]);

/** What the answers file holds: by block, one answer or, for a block come to several times, a list of them. */
export const answersSchema = z.strictObject({
  subject: z.optional(text),
  begins: z.optional(text),
  answers: z.record(text, z.union([one, z.array(one)])),
});

export type WalkAnswers = z.infer<typeof answersSchema>;
type OneAnswer = z.infer<typeof one>;

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
  outcomes: { block: string; outcome: string; by?: string; readings: WalkReading[] }[];
  verdict: {
    causes: readonly string[];
    because: { block: string; outcome: string; readings: string[] }[];
  } | null;
  end: { result: string; leaves: string | null } | null;
  ruledOut: { cause: string; by: string[] }[];
  /** Hazard statements shown, in the order they were. */
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
  problems: { block: string; field?: string; message: MessageRef }[];
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
    ruledOut: [],
    warnings: [],
    needs: null,
    problems: [],
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

  for (let count = 0; count < mostSteps; count++) {
    const view = stepView(know, state);
    show(result, shown, view, log.length);
    const { block } = view.node;
    const given = nextAnswer(file, taken, block);
    const inputs = view.barred ? [] : inputsFor(view, given);
    if (inputs.length === 0) {
      if (view.node.step.kind !== 'end') result.needs = needsOf(view);
      if (view.barred) result.problems.push({ block, message: { id: `run.bar.${view.barred}` } });
      break;
    }
    nowMs += answerMs + (view.waitSeconds ?? 0) * 1000;
    const refused = inputs.some((input) => {
      const answered = answer(know, state, input, nowMs);
      log.push(...answered.entries);
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
  return finish(know, state, result);
}

/** Blocks of the file that the guide has not: a slip of the pen that would otherwise pass for a missing answer. */
function unknownBlocks(know: Knowledge, file: WalkAnswers): string[] {
  const blocks = new Set([...know.compiled.flat.nodes.values()].map((node) => node.block));
  return Object.keys(file.answers).filter((block) => !blocks.has(block));
}

function nextAnswer(file: WalkAnswers, taken: Map<string, number>, block: string): OneAnswer | undefined {
  const given = file.answers[block];
  if (given === undefined || !Array.isArray(given)) return given;
  const count = taken.get(block) ?? 0;
  taken.set(block, count + 1);
  return given[count];
}

/** The hazard statements of a step just come to. */
function show(result: WalkResult, shown: Set<string>, view: StepView, at: number): void {
  for (const hazard of view.node.step.hazards ?? []) {
    const key = `${at} ${view.node.block} ${hazard}`;
    if (shown.has(key)) continue;
    shown.add(key);
    result.warnings.push({ block: view.node.block, hazard });
  }
}

/** What a person would do at this step with this answer; nothing when the file has none that is needed. */
function inputsFor(view: StepView, given: OneAnswer | undefined): Input[] {
  const { kind } = view.node.step;
  if (typeof given === 'string' && (given === 'cant' || given === 'unsure' || given === 'stop'))
    return [{ type: given }];
  if (kind === 'wait' || kind === 'workOut') return [{ type: 'goOn' }];
  if (given === undefined) return [];
  if (kind === 'hold' || kind === 'end')
    return [...ticks(view, given), kind === 'hold' ? { type: 'goOn' } : { type: 'close' }];
  if (view.readings.length > 0) return [{ type: 'readings', texts: textsOf(view, given) }];
  return [{ type: 'choice', outcome: typeof given === 'string' ? given : JSON.stringify(given) }];
}

function ticks(view: StepView, given: OneAnswer): Input[] {
  return view.items
    .filter((item) => item.by === 'person' && (typeof given === 'string' || given[item.id] === true))
    .map((item) => ({ type: 'confirm', item: item.id, met: true }));
}

type Texts = Extract<Input, { type: 'readings' }>['texts'];

/** A bare text at a step with one reading is that reading. */
function textsOf(view: StepView, given: OneAnswer): Texts {
  if (typeof given === 'string') return { [view.readings[0]!.id]: given };
  return Object.fromEntries(
    Object.entries(given).map(([id, value]) => [
      id,
      Array.isArray(value) ? value.map(([at, shown]) => [at, String(shown)] as const) : String(value),
    ]),
  );
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

function finish(know: Knowledge, state: RunState, result: WalkResult): WalkResult {
  const node = know.compiled.flat.nodes.get(state.position.path)!;
  const blocks = state.trail.map((step) => step.block);
  const verdict = verdictOf(know, state);
  const step = node.step;
  const ending = step.kind === 'end' ? endingOf(state, step, stepView(know, state).items) : undefined;
  return {
    ...result,
    path: [...blocks, node.block],
    outcomes: state.trail.map(({ block, outcome, by, readings }) => ({
      block,
      outcome,
      ...(by ? { by } : {}),
      readings: readings.map(readingOf),
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
