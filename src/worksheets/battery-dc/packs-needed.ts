/**
 * Packs in parallel that a bank needs so that each stays within its amps.
 * @param bankAmps what the bank gives [A], ≥ 0
 * @param packAmps what one pack may give [A], > 0
 */
export function packsNeeded(bankAmps: number, packAmps: number): number {
  // A hair of rounding error does not cost a pack.
  return Math.max(1, Math.ceil(bankAmps / packAmps - 1e-9));
}

/** AC power that a bank of some amps holds at those volts through an inverter [W]; never below zero. */
export function heldWatts(bankAmps: number, volts: number, efficiency: number, idleDcWatts: number): number {
  return Math.max(0, (bankAmps * volts - idleDcWatts) * efficiency);
}
