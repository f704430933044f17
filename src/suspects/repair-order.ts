/**
 * Check-and-fix actions done one after another until the fault is gone (Heckerman, Breese & Rommelse, CACM 38(3),
 * 1995). One fault, each action fixes one cause surely, success is seen at once. Actions are named by their index.
 */

/** Expected cost of doing the actions in this order: each is paid with the chance that it is still needed. */
export function expectedCost(
  p: readonly number[],
  cost: readonly number[],
  order: readonly number[],
): number {
  let remaining = 1;
  let sum = 0;
  for (const action of order) {
    sum += cost[action]! * remaining;
    remaining -= p[action]!;
  }
  return sum;
}

/** Decreasing p/c, the optimum under the assumptions above (Kadane & Simon 1977). Ties in index order. */
export const ratioOrder = (p: readonly number[], cost: readonly number[]): number[] =>
  p.map((_, action) => action).sort((a, b) => cost[a]! * p[b]! - cost[b]! * p[a]! || a - b);

/** The order and its expected cost. */
export interface Ordered {
  order: readonly number[];
  cost: number;
}

const cheapest = (plans: readonly Ordered[]): Ordered => plans.reduce((a, b) => (b.cost < a.cost ? b : a));

/**
 * The best order when the last suspect is accepted unchecked. p/c alone is then not the optimum: each suspect is
 * tried as the one left over and the rest go by p/c.
 */
export const bestByElimination = (p: readonly number[], cost: readonly number[]): Ordered =>
  cheapest(
    p.map((_, last) => {
      const order = ratioOrder(p, cost).filter((action) => action !== last);
      return { order, cost: expectedCost(p, cost, order) };
    }),
  );

/** The best number of actions, by p/c, before paying `callCost` for someone who ends it surely. */
export const bestBeforeCalling = (p: readonly number[], cost: readonly number[], callCost: number): Ordered =>
  cheapest(
    [...p.map((_, k) => k), p.length].map((k) => {
      const order = ratioOrder(p, cost).slice(0, k);
      const left = order.reduce((sum, action) => sum - p[action]!, 1);
      // With every suspect checked nobody is called: what is left of the sum is rounding.
      const call = k === p.length ? 0 : left * callCost;
      return { order, cost: expectedCost(p, cost, order) + call };
    }),
  );

/** An action that fixes any of several causes. */
export interface Action {
  fixes: readonly number[];
  cost: number;
}

/** Expected cost of actions that may fix the same causes. */
export function expectedCostOf(
  p: readonly number[],
  actions: readonly Action[],
  order: readonly number[],
): number {
  const left = new Set(p.keys());
  let sum = 0;
  for (const at of order) {
    const { fixes, cost } = actions[at]!;
    sum += cost * [...left].reduce((mass, cause) => mass + p[cause]!, 0);
    for (const cause of fixes) left.delete(cause);
  }
  return sum;
}

/**
 * Greedy by p/c with p taken anew after each action. With shared causes this is near the optimum only: min-sum set
 * cover, within a factor 4 (Feige, Lovász & Tetali 2004).
 */
export function greedyOrder(p: readonly number[], actions: readonly Action[]): number[] {
  const left = new Set(p.keys());
  const order: number[] = [];
  for (;;) {
    const ratio = ({ fixes, cost }: Action): number =>
      fixes.reduce((mass, cause) => (left.has(cause) ? mass + p[cause]! : mass), 0) / cost;
    const best = actions
      .map((action, at) => ({ at, ratio: order.includes(at) ? 0 : ratio(action) }))
      .reduce((a, b) => (b.ratio > a.ratio ? b : a));
    if (!(best.ratio > 0)) return order;
    order.push(best.at);
    for (const cause of actions[best.at]!.fixes) left.delete(cause);
  }
}

/** Actions behind one door: `entryCost` (isolate, lock, prove dead, open) is paid once. Outside: a group of its own. */
export interface Cluster {
  entryCost: number;
  actions: readonly number[];
}

/**
 * Whole clusters by Σp / (entry + Σc), p/c within each: best when a cluster once entered is finished. Clusters are
 * compared as blocks (arXiv 1203.3502).
 */
export function clusterOrder(
  p: readonly number[],
  cost: readonly number[],
  clusters: readonly Cluster[],
): Ordered {
  const sum = (list: readonly number[], of: readonly number[]) => of.reduce((s, at) => s + list[at]!, 0);
  const blocks = clusters.map(({ entryCost, actions }) => {
    const inside = ratioOrder(p, cost).filter((action) => actions.includes(action));
    return { inside, entryCost, p: sum(p, actions), cost: entryCost + sum(cost, actions) };
  });
  blocks.sort((a, b) => a.cost * b.p - b.cost * a.p);
  const paid = [...cost];
  for (const { inside, entryCost } of blocks) {
    const first = inside[0];
    if (first !== undefined) paid[first]! += entryCost;
  }
  const order = blocks.flatMap(({ inside }) => inside);
  return { order, cost: expectedCost(p, paid, order) };
}
