import { noneOfThese, type Suspect } from './table.ts';

/** How often a cause is met, as a tradesperson would say it. */
export type HowOften = 'common' | 'occasional' | 'rare';

/**
 * Weights behind the three words. From memory: only their order is known from the trade. The choice of the next
 * check hardly needs more (de Kleer 1990, "Using crude probability estimates to guide diagnosis").
 */
export const weightOf: Readonly<Record<HowOften, number>> = { common: 6, occasional: 3, rare: 1 };

/** "None of these" is never impossible: it starts as likely as one rare cause. From memory. */
export const noneOfTheseWeight = weightOf.rare;

/** What to do when no named cause fits: record, leave safe, hand over. The remedy id of "none of these". */
export const handOver = 'handOver';

/** Suspects with their shares, "none of these" last. The shares add up to 1. */
export function suspectsFrom(
  causes: readonly { id: string; remedy: string; howOften: HowOften }[],
): Suspect[] {
  const all = causes.reduce((sum, { howOften }) => sum + weightOf[howOften], noneOfTheseWeight);
  return [
    ...causes.map(({ id, remedy, howOften }) => ({ id, remedy, prior: weightOf[howOften] / all })),
    { id: noneOfThese, remedy: handOver, prior: noneOfTheseWeight / all },
  ];
}

/** The same suspects with each prior multiplied and the whole brought back to 1: for "what if the priors are off". */
export function withPriorsTimes(suspects: readonly Suspect[], factor: (at: number) => number): Suspect[] {
  const raw = suspects.map(({ prior }, at) => prior * factor(at));
  const all = raw.reduce((a, b) => a + b, 0);
  return suspects.map((suspect, at) => ({ ...suspect, prior: raw[at]! / all }));
}
