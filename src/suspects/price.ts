import { type Belief, byRemedy, largest } from './belief.ts';
import type { Check, Table } from './table.ts';

/** What things cost, all in minutes. */
export interface Price {
  /** Minutes that one hazard point weighs; 0 or more. Only orders checks that are allowed. */
  minutesPerHazard: number;
  /** Minutes lost by acting on a wrong cause; above 0. */
  wrongMinutes: number;
}

/** From memory: a wrong part fetched and fitted costs about an hour and a half; a hazard point weighs a minute. */
export const usualPrice: Price = { minutesPerHazard: 1, wrongMinutes: 90 };

export const costOf = ({ minutes, hazard }: Pick<Check, 'minutes' | 'hazard'>, price: Price): number =>
  minutes + price.minutesPerHazard * hazard;

/** The best remedy now, and what stopping here is expected to lose: W · (1 − P(best repair class)) [min]. */
export function stopNow(table: Table, belief: Belief, price: Price): { remedy: number; loss: number } {
  const mass = byRemedy(table, belief);
  const remedy = largest(mass);
  const others = mass.reduce((sum, p, at) => (at === remedy ? sum : sum + p), 0);
  return { remedy, loss: price.wrongMinutes * others };
}
