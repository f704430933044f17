/** Visits with a long log, standing at a reading, made by the run itself and not by hand. */
import { guides, proceduresById } from '../../machines/index.ts';
import { scales, waits, works } from '../expected/index.ts';
import { compile } from '../guide/compile.ts';
import { flatten } from '../guide/flatten.ts';
import { questions } from '../guide/questions.ts';
import { sallowCreek } from '../site/demo.ts';
import { answer } from '../visit/answer.ts';
import type { Entry } from '../visit/entries.ts';
import type { Input } from '../visit/input.ts';
import { advance, beginVisit } from '../visit/run.ts';
import { stepView } from '../visit/step.ts';
import { inputsFor } from '../visit/walk-answers.ts';
import { guideRun } from './bench-runs.ts';

/** The reading that these visits stand at. */
export const readingBlock = 'screen';

const stepMs = 5000;

/**
 * The log of a visit of the guide that stands at `readingBlock` after having been answered and corrected there, again and
 * again, until it holds `atLeast` entries.
 */
export function longLog(visit: string, atLeast: number): Entry[] {
  const guide = guides.find(({ id }) => `guides/${id}` === guideRun.page);
  if (!guide) throw new Error(`there is no ${guideRun.page}`);
  const know = { compiled: compile(flatten(guide, proceduresById)), scales, works, waits, questions };
  // An hour ago: no entry may lie in the future.
  let nowMs = Date.now() - 3_600_000;
  const [string] = sallowCreek.strings;
  const begun = beginVisit(
    know,
    { visit, sheet: sallowCreek, ...(string ? { subject: string.name } : {}) },
    nowMs,
  );
  const log = [...begun.entries];
  let { state } = begun;
  const give = (input: Input): void => {
    nowMs += stepMs;
    const answered = answer(know, state, input, nowMs);
    if (!answered.ok) throw new Error(`the bench's log cannot be made: ${JSON.stringify(answered.problems)}`);
    log.push(...answered.entries);
    state = advance(know, state, answered.entries);
  };
  for (;;) {
    const view = stepView(know, state);
    const { block } = view.node;
    const answered = state.trail.findLast((step) => step.block === readingBlock);
    if (block === readingBlock && log.length >= atLeast) return log;
    if (answered) give({ type: 'correct', toSeq: answered.seq });
    else {
      const given = guideRun.answers[block];
      const inputs = inputsFor(view, Array.isArray(given) ? given[0] : given);
      if (inputs.length === 0) throw new Error(`the bench has no answer for ${block}`);
      for (const input of inputs) give(input);
    }
  }
}
