import type { Table } from './table.ts';

/**
 * A floor under the chance of naming the wrong remedy, whatever of the checks not done is still made. Takes
 * unnormalised weights and gives an unnormalised mass.
 *
 * For two suspects with masses a and b the error of any rule is at least ½ s (1 − √(1 − 4ab·BC²/s²)), s = a + b, BC
 * their Bhattacharyya coefficient over the checks left (Kailath, IEEE Trans. Comm. 15, 1967). Pairs without a shared
 * repair class add up: at most one class is named, so of every other pair at least the smaller share is lost.
 */
export function lossFloor(table: Table): (w: Float64Array, left: readonly number[]) => number {
  const { suspects, classOf, checks } = table;
  const count = suspects.length;
  const pairs: { a: number; b: number; likeness: number[] }[] = [];
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      if (classOf[a] === classOf[b]) continue;
      const likeness = checks.map(({ rows }) =>
        rows[a]!.reduce((sum, p, y) => sum + Math.sqrt(p * rows[b]![y]!), 0),
      );
      pairs.push({ a, b, likeness });
    }
  }
  // The product for each set of checks left is met again and again: kept.
  const kept = new Map<string, Float64Array>();
  const likenessOf = (left: readonly number[]): Float64Array => {
    const key = left.join();
    const known = kept.get(key);
    if (known) return known;
    const made = Float64Array.from(pairs, ({ likeness }) =>
      left.reduce((product, check) => product * likeness[check]!, 1),
    );
    kept.set(key, made);
    return made;
  };
  const used = new Uint8Array(table.remedies.length);
  return (w, left) => {
    const alike = likenessOf(left);
    const bounds = pairs
      .map(({ a, b }, at) => {
        const sum = w[a]! + w[b]!;
        if (sum === 0) return { at, least: 0 };
        // 1 − √(1 − x) as x / (1 + √(1 − x)): no digits lost when x is small.
        const x = Math.min(1, (4 * w[a]! * w[b]! * alike[at]! ** 2) / sum ** 2);
        return { at, least: (sum / 2) * (x / (1 + Math.sqrt(1 - x))) };
      })
      .sort((p, q) => q.least - p.least);
    used.fill(0);
    let floor = 0;
    for (const { at, least } of bounds) {
      const [a, b] = [classOf[pairs[at]!.a]!, classOf[pairs[at]!.b]!];
      if (used[a] || used[b]) continue;
      used[a] = 1;
      used[b] = 1;
      floor += least;
    }
    return floor;
  };
}
