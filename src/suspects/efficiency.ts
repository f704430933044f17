import { type Bracket, bracket } from './bracket.ts';
import { notDone } from './history.ts';
import { nextCheck } from './next.ts';
import { mostStates, optimum, statesOf } from './optimum.ts';
import { type Performance, type Policy, performance } from './policy.ts';
import type { Price } from './price.ts';
import type { Table } from './table.ts';

/** The engine itself as a policy: what it would do when every check is allowed. */
export function enginePolicy(believed: Table, price: Price): Policy {
  return (history) => {
    const next = nextCheck(believed, history, { price });
    return next.kind === 'check' ? next.check : notDone;
  };
}

/** What is known of V*: exact while the dynamic program can hold it, else a bracket. */
export function best(table: Table, price: Price): Pick<Bracket, 'lower' | 'upper'> & { exact: boolean } {
  if (statesOf(table) <= mostStates) {
    const found = optimum(table, price);
    if (found.kind === 'optimum') return { lower: found.value, upper: found.value, exact: true };
  }
  const { lower, upper } = bracket(table, price);
  // The engine is a policy too, and often a better one than the search reached.
  const reached = performance(table, enginePolicy(table, price), price).total;
  return { lower, upper: Math.min(upper, reached), exact: false };
}

export interface Efficiency {
  /** V* / V, 0 to 1, from the lower end of what is known of V*: never too good. */
  least: number;
  /** The same from the upper end. */
  most: number;
  exact: boolean;
  performance: Performance;
}

/** How near a policy is to the optimum of the table. `believed` differs from the table when the priors may be off. */
export function efficiency(
  table: Table,
  policy: Policy,
  price: Price,
  known = best(table, price),
  believed: Table = table,
): Efficiency {
  const reached = performance(table, policy, price, believed);
  const share = (v: number): number => (reached.total > 0 ? Math.min(1, v / reached.total) : 1);
  return { least: share(known.lower), most: share(known.upper), exact: known.exact, performance: reached };
}
