import { bandFor } from '../guide/reading.ts';
import type { RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';
import { nodeAt } from './step.ts';
import { contextOf, type TrailStep } from './trail.ts';

/**
 * Answers on the trail that the sheet as it is now would judge by other limits: shown as *judged on the old sheet*, never
 * judged again in silence. By the answers' places in the log.
 */
export function staleAnswers(know: Knowledge, state: RunState): ReadonlySet<number> {
  if (state.sheet === state.begin.sheet) return new Set();
  const stale = state.trail.filter((step, index) => isStale(know, state, step, state.trail.slice(0, index)));
  return new Set(stale.map((step) => step.seq));
}

function isStale(know: Knowledge, state: RunState, answer: TrailStep, before: readonly TrailStep[]): boolean {
  const { step } = nodeAt(know, answer.path);
  const context = contextOf(state.sheet, state.begin.subject, before);
  if (step.kind === 'sheet' && answer.by)
    return know.questions[step.ask ?? '']?.decide(context) !== answer.outcome;
  if (step.kind === 'workOut' && answer.by) {
    const result = know.works[step.ask ?? '']?.work(context);
    return !result?.ok || result.outcome !== answer.outcome;
  }
  if (step.kind !== 'measure' && step.kind !== 'display') return false;
  return answer.readings.some((logged) => {
    const reading = step.readings[logged.id];
    const band = reading && bandFor(reading, know.scales, context);
    if (!band?.ok) return true;
    const limits = (zones: readonly { id: string; max: number | null }[]) =>
      JSON.stringify(zones.map(({ id, max }) => [id, max]));
    return limits(band.scale.zones) !== limits(logged.scale.zones);
  });
}
