import type { ExpectContext } from '../expected/context.ts';
import type { Effect } from '../safety/effects.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { Asked, EntryOf, LoggedReading } from './entries.ts';

/** An answer that still stands: one terminal of the strip. */
export interface TrailStep {
  seq: number;
  at: string;
  path: string;
  block: string;
  outcome: string;
  does: readonly Effect[];
  readings: readonly LoggedReading[];
  /** Where every handle, plug and switch stood when it was given (`standing`). */
  stood: string;
  by?: 'sheet' | 'worksheet';
  /** The causes of a verdict, where one was answered. */
  found?: readonly string[];
  /** What a re-test showed of the remedy that was tried. */
  retest?: 'cured' | 'failed';
  asked?: Asked;
}

export const trailStepOf = (entry: EntryOf<'answer'>, stood: string): TrailStep => ({
  stood,
  seq: entry.seq,
  at: entry.at,
  path: entry.path,
  block: entry.block,
  outcome: entry.outcome,
  does: entry.does,
  readings: entry.readings ?? [],
  ...(entry.by ? { by: entry.by } : {}),
  ...(entry.found ? { found: entry.found } : {}),
  ...(entry.retest ? { retest: entry.retest } : {}),
  ...(entry.asked ? { asked: entry.asked } : {}),
});

/** What an expectation may be made from: the sheet, and the readings and outcomes that still stand. */
export function contextOf(
  sheet: SiteSheet,
  subject: string | undefined,
  trail: readonly TrailStep[],
): ExpectContext {
  const readings: Record<string, number> = {};
  const outcomes: Record<string, string> = {};
  const series: Record<string, readonly (readonly [number, number])[]> = {};
  for (const step of trail) {
    outcomes[step.block] = step.outcome;
    for (const reading of step.readings) {
      const key = `${step.block}.${reading.id}`;
      if (reading.value === 'overRange') delete readings[key];
      else readings[key] = reading.value;
      if (reading.series) series[key] = reading.series.map(([seconds, , value]) => [seconds, value] as const);
    }
  }
  return { sheet, readings, outcomes, series, ...(subject === undefined ? {} : { stringId: subject }) };
}

/** The latest answer that stands at a place of the run. */
export const lastAt = (trail: readonly TrailStep[], path: string): TrailStep | undefined =>
  trail.findLast((step) => step.path === path);

/** The place that a step id means, said from the step at `from`: a step of the same machine at the same place. */
export function placeOf(from: string, step: string): string {
  const slash = from.lastIndexOf('/');
  return slash < 0 ? step : `${from.slice(0, slash)}/${step}`;
}
