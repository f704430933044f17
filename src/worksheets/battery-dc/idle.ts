/** From the array into the battery and out again, in a fair install. Common practice, 0.70 to 0.85. */
export const usualChargePath = 0.8;

/** What an inverter burns with nothing plugged in: battery amps times battery volts [W]. */
export function idleWatts(busVolts: number, amps: number): number {
  return busVolts * amps;
}

/** Energy a steady draw takes in a day [J]. */
export function joulesPerDay(watts: number): number {
  return watts * 86_400;
}

/** Array power that covers an energy within a window of sun [W]. */
export function arrayWatts(joules: number, windowS: number, chargePathEfficiency: number): number {
  return joules / (windowS * chargePathEfficiency);
}

/** Power an inverter takes from the battery [W]: P_ac/η + P_idle, with idle counted on the DC side. */
export function drawnWatts(acWatts: number, efficiency: number, idleDcWatts: number): number {
  return acWatts / efficiency + idleDcWatts;
}

/**
 * DC amps an inverter takes: (P_ac/η + P_idle)/V, with idle counted on the DC side. Leave idle out when the
 * efficiency comes from a curve that already holds it.
 */
export function inverterAmps(
  acWatts: number,
  efficiency: number,
  idleDcWatts: number,
  busVolts: number,
): number {
  return drawnWatts(acWatts, efficiency, idleDcWatts) / busVolts;
}

/** Conversion efficiency that a loaded reading implies once idle is taken off; above 1 the readings disagree. */
export function impliedEfficiency(
  acWatts: number,
  busVolts: number,
  amps: number,
  idleDcWatts: number,
): number | undefined {
  const converted = busVolts * amps - idleDcWatts;
  return converted > 0 ? acWatts / converted : undefined;
}
