import * as z from 'zod/mini';
import { type Grid, type Pair, readOptions, untried } from '../guide/pairing.ts';
import type { MessageRef } from '../quantity/message.ts';
import type { RunState } from './fold.ts';
import type { Input } from './input.ts';
import type { Knowledge } from './knowledge.ts';
import type { StepView } from './step.ts';

/** The answers file of a walk: what it may hold, which answer is whose, and what a person would do with it. */

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

/** What is wrong with an answer. */
export interface WalkProblem {
  block: string;
  field?: string;
  message: MessageRef;
}

/** Texts that say every item of a hold point or an end is met. */
const allMet: readonly string[] = ['done', 'all'];
/** Texts for a step that needs no answer but to go on. */
const goingOn: readonly string[] = [...allMet, 'goOn'];
const wayOuts: readonly string[] = ['cant', 'unsure', 'stop'];

/** Blocks of the file that the guide has not: a slip of the pen that would otherwise pass for a missing answer. */
export function unknownBlocks(know: Knowledge, file: WalkAnswers): string[] {
  const blocks = new Set([...know.compiled.flat.nodes.values()].map((node) => node.block));
  return Object.keys(file.answers).filter((block) => !blocks.has(block));
}

/** The answer for this visit to a block: the next of a list, or the one there is. */
export function nextAnswer(
  file: WalkAnswers,
  taken: Map<string, number>,
  block: string,
): OneAnswer | undefined {
  const given = file.answers[block];
  const count = taken.get(block) ?? 0;
  taken.set(block, count + 1);
  return Array.isArray(given) ? given[count] : given;
}

/** Answers that nothing came of, by block; `block #3` is the third of a list. */
export function unusedOf(file: WalkAnswers, taken: ReadonlyMap<string, number>, state: RunState): string[] {
  const otherwise = new Map(
    state.trail.filter((step) => step.by !== undefined).map((step) => [step.block, step.outcome]),
  );
  return Object.entries(file.answers).flatMap(([block, given]) => {
    const visits = taken.get(block) ?? 0;
    if (Array.isArray(given)) return given.slice(visits).map((_, i) => `${block} #${visits + i + 1}`);
    const decided = otherwise.get(block);
    const overruled = decided !== undefined && !goingOn.includes(given as string) && given !== decided;
    return overruled || (visits === 0 && decided === undefined) ? [block] : [];
  });
}

/** What is wrong with an answer before it is given: words and names that the step does not have. */
export function slipsIn(view: StepView, given: OneAnswer | undefined): WalkProblem[] {
  const { block, step } = view.node;
  const problem = (id: string, params: Record<string, string>): WalkProblem => ({
    block,
    message: { id, params },
  });
  if (given === undefined || wayOuts.includes(given as string)) return [];
  if (step.kind === 'hold' || step.kind === 'end') {
    if (typeof given === 'string') return allMet.includes(given) ? [] : [problem('walk.holdText', { given })];
    const wrong = Object.entries(given)
      .filter(([id, met]) => !view.items.some((item) => item.id === id) || typeof met !== 'boolean')
      .map(([id]) => id);
    return wrong.length === 0 ? [] : [problem('walk.unknownItems', { items: wrong.join(', ') })];
  }
  if (step.kind === 'pair') {
    const wrong =
      typeof given === 'string' ? [] : Object.keys(given).filter((id) => !pairFields.includes(id));
    return wrong.length === 0 ? [] : [problem('walk.unknownReadings', { readings: wrong.join(', ') })];
  }
  if (step.kind === 'wait' && !goingOn.includes(given as string))
    return [problem('walk.holdText', { given: JSON.stringify(given) })];
  if (typeof given !== 'string' && view.readings.length > 0) {
    const wrong = Object.keys(given).filter((id) => !view.readings.some((reading) => reading.id === id));
    return wrong.length === 0 ? [] : [problem('walk.unknownReadings', { readings: wrong.join(', ') })];
  }
  return [];
}

/** What a person would do at this step with this answer; nothing when the file has none that is needed. */
export function inputsFor(view: StepView, given: OneAnswer | undefined): Input[] {
  const { kind } = view.node.step;
  if (given === 'cant' || given === 'unsure' || given === 'stop') return [{ type: given }];
  if (kind === 'wait' || kind === 'workOut') return [{ type: 'goOn' }];
  if (given === undefined) return [];
  if (view.pairing && view.options.length === 0) return pairInputs(view.pairing, given);
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

const pairFields: readonly string[] = ['inverter', 'pack', 'found', 'named', 'pair'];

/** `inverter / pack`, either side left empty where nothing is meant. */
const sides = (text: unknown): Partial<Pair> => {
  const [inverter = '', pack = ''] = String(text ?? '')
    .split(' / ')
    .map((each) => each.trim());
  return { ...(inverter === '' ? {} : { inverter }), ...(pack === '' ? {} : { pack }) };
};

/** The grid as a person would type it, and a pair of it; `"next"` is the pair that is suggested. */
function pairInputs(shown: NonNullable<StepView['pairing']>, given: OneAnswer): Input[] {
  const told = typeof given === 'string' ? {} : given;
  const { inverter = '', pack = '' } = sides(told.found);
  const grid: Grid = shown.grid ?? {
    inverter: readOptions(String(told.inverter ?? '')),
    pack: readOptions(String(told.pack ?? '')),
    found: { inverter, pack },
    named: sides(told.named),
  };
  const asked = sides(told.pair);
  const [suggested] = untried(grid, shown.tries);
  const pair = asked.inverter === undefined || asked.pack === undefined ? suggested : (asked as Pair);
  return [{ type: 'pair', grid, ...(pair ? { pair } : {}) }];
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
