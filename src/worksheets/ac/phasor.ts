/** A voltage, current, impedance or admittance as a phasor: in-phase part and quadrature part. */
export type Phasor = readonly [re: number, im: number];

export const phasor = (magnitude: number, degrees: number): Phasor => {
  const angle = (degrees * Math.PI) / 180;
  return [magnitude * Math.cos(angle), magnitude * Math.sin(angle)];
};
export const plus = (a: Phasor, b: Phasor): Phasor => [a[0] + b[0], a[1] + b[1]];
export const minus = (a: Phasor, b: Phasor): Phasor => [a[0] - b[0], a[1] - b[1]];
export const times = (a: Phasor, b: Phasor): Phasor => [a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]];
export const over = (a: Phasor, b: Phasor): Phasor => {
  const size = b[0] ** 2 + b[1] ** 2;
  return [(a[0] * b[0] + a[1] * b[1]) / size, (a[1] * b[0] - a[0] * b[1]) / size];
};
export const magnitude = (a: Phasor): number => Math.hypot(a[0], a[1]);

/** Degrees by which current lags its volts at a power factor, 0 to 90. */
export const lagDegrees = (powerFactor: number): number =>
  (Math.acos(Math.min(1, Math.max(0, powerFactor))) * 180) / Math.PI;

/** Solves A·x = b by elimination with the largest pivot; A is square and regular. */
export function solve(rows: readonly (readonly Phasor[])[], right: readonly Phasor[]): Phasor[] {
  const a = rows.map((row, i) => [...row, right[i]!]);
  const n = a.length;
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (magnitude(a[i]![k]!) > magnitude(a[best]![k]!)) best = i;
    [a[k], a[best]] = [a[best]!, a[k]!];
    for (let i = k + 1; i < n; i++) {
      const factor = over(a[i]![k]!, a[k]![k]!);
      for (let j = k; j <= n; j++) a[i]![j] = minus(a[i]![j]!, times(factor, a[k]![j]!));
    }
  }
  const x: Phasor[] = Array.from({ length: n }, () => [0, 0]);
  for (let i = n - 1; i >= 0; i--) {
    let rest = a[i]![n]!;
    for (let j = i + 1; j < n; j++) rest = minus(rest, times(a[i]![j]!, x[j]!));
    x[i] = over(rest, a[i]![i]!);
  }
  return x;
}
