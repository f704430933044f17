import fc from 'fast-check';
import { Matrix, solve } from 'ml-matrix';
import { expect, it } from 'vitest';
import { factor, solveFactored } from '../../src/plant/numeric/lu.ts';
import { randomFrom } from '../../src/plant/numeric/random.ts';

function ours(rows: readonly (readonly number[])[], b: readonly number[]): Float64Array | undefined {
  const n = rows.length;
  const a = Float64Array.from(rows.flat());
  const pivots = new Int32Array(n);
  if (!factor(a, n, pivots)) return undefined;
  const x = Float64Array.from(b);
  solveFactored(a, n, pivots, x);
  return x;
}

it('agrees with another library on random systems of 1 to 40 unknowns', () => {
  fc.assert(
    fc.property(fc.integer(), fc.integer({ min: 1, max: 40 }), (seed, n) => {
      const random = randomFrom(seed);
      // As a network's: conductances over nine decades, a few sources' rows.
      const rows = Array.from({ length: n }, () => Array.from({ length: n }, () => 0));
      for (let k = 0; k < 3 * n; k++) {
        const [i, j] = [random.whole(0, n - 1), random.whole(0, n - 1)];
        const g = random.logBetween(1e-5, 1e4);
        rows[i]![i]! += g;
        if (i === j) continue;
        rows[j]![j]! += g;
        rows[i]![j]! -= g;
        rows[j]![i]! -= g;
      }
      for (let i = 0; i < n; i++) rows[i]![i]! += 1e-5;
      const b = rows.map(() => random.between(-10, 10));
      const x = ours(rows, b)!;
      const other = solve(new Matrix(rows), Matrix.columnVector(b)).to1DArray();
      const size = Math.max(...other.map(Math.abs));
      other.forEach((value, i) => {
        expect(Math.abs(value - x[i]!)).toBeLessThan(1e-6 * size);
      });
    }),
    { numRuns: 300 },
  );
});

it('says so when there is no inverse', () => {
  expect(
    ours(
      [
        [1, 2],
        [2, 4],
      ],
      [1, 1],
    ),
  ).toBeUndefined();
  expect(ours([[0]], [1])).toBeUndefined();
  expect(ours([[Number.NaN]], [1])).toBeUndefined();
});
