/** Power through one inverter, and what it makes of it. Watts, shares of one. */
export interface Throughput {
  /** Converted from the battery to AC; what a second source passes straight through is not part of it. */
  acWatts: number;
  /** Battery to AC, idle draw not counted. */
  efficiency: number;
  /** Put into the battery by this unit, from PV or from an AC source. */
  chargeWatts: number;
  chargeEfficiency: number;
  idleWatts: number;
}

/** What one inverter turns into heat [W]. */
export function lossWatts({
  acWatts,
  efficiency,
  chargeWatts,
  chargeEfficiency,
  idleWatts,
}: Throughput): number {
  return acWatts * (1 / efficiency - 1) + chargeWatts * (1 / chargeEfficiency - 1) + idleWatts;
}
