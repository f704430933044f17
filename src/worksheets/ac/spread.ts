/** Something that lands on one of two legs: a single circuit, or a pair whose halves must land on opposite ones. */
export interface Weight {
  /** By how much one way of landing it puts leg 1 above leg 2; the other way does the reverse. */
  difference: number;
}

export interface Spread {
  /** Per weight: `true` as given, `false` turned over. */
  asGiven: boolean[];
  /** Leg 1 less leg 2, never below zero. */
  difference: number;
}

/**
 * The most even way of landing weights on two legs, exactly: every way is covered. Half of them are tried outright, and
 * for each the best fitting way of the other half is looked up in a sorted list; 24 weights take some thousand steps.
 * Among equally even ways the one that turns over the fewest wins. @param fixed what leg 1 already carries more than leg 2.
 */
export function spread(weights: readonly Weight[], fixed = 0): Spread {
  const half = weights.length >> 1;
  const left = waysOf(weights.slice(0, half));
  const right = waysOf(weights.slice(half)).toSorted((a, b) => a.sum - b.sum || a.turned - b.turned);
  let best: { way: number; rest: number; size: number; turned: number } | undefined;
  const scale = weights.reduce((sum, weight) => sum + Math.abs(weight.difference), Math.abs(fixed));
  /** Below this two differences are the same: floating point. */
  const same = 1e-12 * Math.max(1, scale);
  for (const one of left) {
    const wanted = -(fixed + one.sum);
    const at = firstAtLeast(right, wanted - same);
    // Neighbours on both sides; equal sums stand together with the fewest turned first.
    const below = right[at - 1];
    for (const rest of [right[at], below && right[firstAtLeast(right, below.sum - same)]]) {
      if (!rest) continue;
      const size = Math.abs(fixed + one.sum + rest.sum);
      const turned = one.turned + rest.turned;
      if (!best || size < best.size - same || (size <= best.size + same && turned < best.turned))
        best = { way: one.mask, rest: rest.mask, size, turned };
    }
  }
  const asGiven = weights.map((_, at) =>
    at < half ? !((best!.way >> at) & 1) : !((best!.rest >> (at - half)) & 1),
  );
  const difference = weights.reduce(
    (sum, weight, at) => sum + (asGiven[at] ? weight.difference : -weight.difference),
    fixed,
  );
  // Every weight turned and the fixed part too is the same spread seen from the other leg; only without a fixed part free.
  return difference < 0 && fixed === 0
    ? { asGiven: asGiven.map((each) => !each), difference: -difference }
    : { asGiven, difference };
}

interface Way {
  /** A bit for each weight turned over. */
  mask: number;
  sum: number;
  turned: number;
}

function waysOf(weights: readonly Weight[]): Way[] {
  let ways: Way[] = [{ mask: 0, sum: 0, turned: 0 }];
  for (const [at, { difference }] of weights.entries()) {
    ways = ways.flatMap(({ mask, sum, turned }) => [
      { mask, sum: sum + difference, turned },
      { mask: mask | (1 << at), sum: sum - difference, turned: turned + 1 },
    ]);
  }
  return ways;
}

function firstAtLeast(ways: readonly Way[], sum: number): number {
  let [low, high] = [0, ways.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ways[middle]!.sum < sum) low = middle + 1;
    else high = middle;
  }
  return low;
}
