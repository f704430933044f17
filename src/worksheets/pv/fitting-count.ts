/** How many equal parts in series stay at or below a limit; a hair of rounding error does not cost one. */
export function mostInSeries(limitVolts: number, eachVolts: number): number {
  return Math.max(0, Math.floor(limitVolts / eachVolts + 1e-9));
}

/** How few equal parts in series reach a level. */
export function leastInSeries(levelVolts: number, eachVolts: number): number {
  return Math.max(0, Math.ceil(levelVolts / eachVolts - 1e-9));
}
