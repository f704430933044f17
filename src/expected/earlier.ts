import type { ExpectContext } from './context.ts';

/**
 * A reading taken earlier in a procedure. A procedure stands alone on its own page, where its steps are blocks of the
 * same name, or inside a guide, where they are `procedure--step`.
 */
export function earlierReading(
  { readings }: ExpectContext,
  procedure: string,
  step: string,
  reading: string,
): number | undefined {
  return readings[`${procedure}--${step}.${reading}`] ?? readings[`${step}.${reading}`];
}

/** The time-stamped values of a reading taken as a series earlier in a procedure. */
export function earlierSeries(
  { series }: ExpectContext,
  procedure: string,
  step: string,
  reading: string,
): readonly (readonly [seconds: number, value: number])[] | undefined {
  return series?.[`${procedure}--${step}.${reading}`] ?? series?.[`${step}.${reading}`];
}
