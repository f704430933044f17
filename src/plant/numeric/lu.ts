/**
 * Dense LU with partial pivoting, in place, row-major. Plants are small (tens of unknowns), so dense and without
 * allocation beats sparse. Golub & Van Loan, *Matrix Computations*, 4th ed., algorithm 3.4.1.
 */

/** A pivot smaller than this share of the largest entry of the matrix counts as none. */
const singularShare = 1e-16;

/**
 * Factors `a` (n × n) in place; `pivots[k]` is the row that came to k. False when the matrix has no inverse to
 * working accuracy: what `a` holds then is of no use.
 */
export function factor(a: Float64Array, n: number, pivots: Int32Array): boolean {
  let largest = 0;
  for (let i = 0; i < n * n; i++) largest = Math.max(largest, Math.abs(a[i]!));
  const least = largest * singularShare;
  for (let k = 0; k < n; k++) {
    let row = k;
    let best = Math.abs(a[k * n + k]!);
    for (let i = k + 1; i < n; i++) {
      const size = Math.abs(a[i * n + k]!);
      if (size > best) {
        best = size;
        row = i;
      }
    }
    // Written so that a NaN fails too.
    if (!(best > least)) return false;
    pivots[k] = row;
    if (row !== k) {
      for (let j = 0; j < n; j++) {
        const held = a[k * n + j]!;
        a[k * n + j] = a[row * n + j]!;
        a[row * n + j] = held;
      }
    }
    const inverse = 1 / a[k * n + k]!;
    for (let i = k + 1; i < n; i++) {
      const at = i * n;
      if (a[at + k] === 0) continue;
      const factorOf = a[at + k]! * inverse;
      a[at + k] = factorOf;
      for (let j = k + 1; j < n; j++) a[at + j] = a[at + j]! - factorOf * a[k * n + j]!;
    }
  }
  return true;
}

/** Solves for one right-hand side in place, with what `factor` left. */
export function solveFactored(a: Float64Array, n: number, pivots: Int32Array, b: Float64Array): void {
  for (let k = 0; k < n; k++) {
    const row = pivots[k]!;
    if (row === k) continue;
    const held = b[k]!;
    b[k] = b[row]!;
    b[row] = held;
  }
  for (let i = 1; i < n; i++) {
    let sum = b[i]!;
    for (let j = 0; j < i; j++) sum -= a[i * n + j]! * b[j]!;
    b[i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let j = i + 1; j < n; j++) sum -= a[i * n + j]! * b[j]!;
    b[i] = sum / a[i * n + i]!;
  }
}
