import { lossFloor } from './loss-floor.ts';
import { costOf, type Price } from './price.ts';
import type { Table } from './table.ts';

/** V* lies between the two: `lower` is proved, `upper` is reached by a policy. */
export interface Bracket {
  lower: number;
  upper: number;
  /** Histories looked at in the last complete round. */
  nodes: number;
  /** Histories of less probability than this were bounded and not searched. */
  leastMass: number;
}

export interface BracketInput {
  /** A round that needs more histories than this is given up and the one before it counts. */
  mostNodes?: number;
  /** Enough when (upper − lower) / upper is at most this. */
  gap?: number;
}

interface Bounds {
  lower: number;
  upper: number;
}

/** How much rarer the histories of each round are than those of the round before. */
const deeper = 3;

/**
 * Bracket of V* for tables that the dynamic program cannot hold. Branch and bound over histories, depth first, in
 * rounds: histories rarer than `leastMass` are bounded in place, and each round goes deeper. All in P(h)·V(h).
 *
 * In place: V ≥ min(stop now, cheapest check left + W · `lossFloor`) and V ≤ stop now. When the two meet the history
 * is settled. A check whose own lower bound is not below what is already reached cannot matter and is skipped.
 */
export function bracket(table: Table, price: Price, input: BracketInput = {}): Bracket {
  const { mostNodes = 100_000, gap = 0.01 } = input;
  const { checks, suspects, classOf } = table;
  const floorOf = lossFloor(table);
  const costs = checks.map((check) => costOf(check, price));
  const byRemedy = new Float64Array(table.remedies.length);

  const inPlace = (w: Float64Array, left: readonly number[]): Bounds & { mass: number } => {
    byRemedy.fill(0);
    let mass = 0;
    w.forEach((p, suspect) => {
      mass += p;
      byRemedy[classOf[suspect]!]! += p;
    });
    const stop = price.wrongMinutes * (mass - Math.max(...byRemedy));
    const cheapest = left.reduce((least, check) => Math.min(least, costs[check]!), Number.POSITIVE_INFINITY);
    if (stop <= cheapest * mass) return { lower: stop, upper: stop, mass };
    const lower = Math.min(stop, cheapest * mass + price.wrongMinutes * floorOf(w, left));
    return { lower, upper: stop, mass };
  };

  const round = (leastMass: number): (Bounds & { nodes: number }) | undefined => {
    const seen = new Map<string, Bounds>();
    let nodes = 0;

    const solve = (key: string, w: Float64Array, left: readonly number[]): Bounds => {
      const known = seen.get(key);
      if (known) return known;
      nodes += 1;
      const here = inPlace(w, left);
      const bounds: Bounds = { lower: here.lower, upper: here.upper };
      if (here.lower < here.upper && here.mass >= leastMass && nodes <= mostNodes) {
        const tries = left.map((check) => {
          const then = left.filter((other) => other !== check);
          const next = checks[check]!.outcomes.map((_, y) => {
            const v = w.map((p, suspect) => p * checks[check]!.rows[suspect]![y]!);
            return { key: keyAfter(key, check, y), w: v, bounds: inPlace(v, then) };
          });
          const paid = costs[check]! * here.mass;
          return {
            paid,
            then,
            next,
            lower: next.reduce((sum, n) => sum + n.bounds.lower, paid),
            upper: next.reduce((sum, n) => sum + n.bounds.upper, paid),
          };
        });
        tries.sort((a, b) => a.upper - b.upper);
        let [lower, upper] = [here.upper, Math.min(here.upper, tries[0]!.upper)];
        for (const one of tries) {
          if (one.lower >= upper) continue;
          let [low, up] = [one.paid, one.paid];
          let rest = one.lower - one.paid;
          let searched = true;
          for (const n of one.next) {
            const found = solve(n.key, n.w, one.then);
            rest -= n.bounds.lower;
            low += found.lower;
            up += found.upper;
            // The outcomes not yet searched count with what bounds them in place.
            if (low + rest >= upper) {
              searched = n === one.next.at(-1);
              break;
            }
          }
          lower = Math.min(lower, low + Math.max(0, rest));
          if (searched) upper = Math.min(upper, up);
        }
        // What was skipped or broken off is not below `upper`, so V* is not below the lesser of the two.
        bounds.lower = Math.max(here.lower, Math.min(lower, upper));
        bounds.upper = upper;
      }
      seen.set(key, bounds);
      return bounds;
    };

    const start = Float64Array.from(suspects, ({ prior }) => prior);
    const bounds = solve('.'.repeat(checks.length), start, [...checks.keys()]);
    return nodes > mostNodes ? undefined : { ...bounds, nodes };
  };

  let best: Bracket = { lower: 0, upper: Number.POSITIVE_INFINITY, nodes: 0, leastMass: 1 };
  for (let leastMass = 1; leastMass > 1e-12; leastMass /= deeper) {
    const found = round(leastMass);
    if (!found) break;
    best = {
      lower: Math.max(best.lower, found.lower),
      upper: Math.min(best.upper, found.upper),
      nodes: found.nodes,
      leastMass,
    };
    if (best.upper - best.lower <= gap * best.upper) break;
  }
  return best;
}

/** A history as a text: a letter for each outcome read, a point where none is. */
const keyAfter = (key: string, check: number, outcome: number): string =>
  key.slice(0, check) + String.fromCharCode(97 + outcome) + key.slice(check + 1);
