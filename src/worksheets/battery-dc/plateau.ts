/**
 * What a pre-charge that stops early says about the thing drawing behind the resistor.
 * All from Ohm's law over the resistor: current = (source − bus) / R.
 */

/** Resistive load that would hold the bus at this level: R·v/(V − v) [Ω]. `undefined` at or above the source. */
export function plateauLoadOhms(
  sourceVolts: number,
  resistorOhms: number,
  busVolts: number,
): number | undefined {
  if (busVolts >= sourceVolts) return undefined;
  return Math.max(0, (resistorOhms * busVolts) / (sourceVolts - busVolts));
}

/** Power drawn at the bus at this level: v·(V − v)/R [W]. */
export function plateauWatts(sourceVolts: number, resistorOhms: number, busVolts: number): number {
  return Math.max(0, (busVolts * (sourceVolts - busVolts)) / resistorOhms);
}

/** Most power any load can draw through the resistor: V²/(4R), at half the volts [W]. */
export function greatestWatts(sourceVolts: number, resistorOhms: number): number {
  return sourceVolts ** 2 / (4 * resistorOhms);
}

/**
 * Volts the bus settles at under a load that holds its power (electronics, a power supply):
 * the upper root of v² − V·v + R·P = 0 [V]. `undefined` when the resistor cannot carry it.
 */
export function voltsUnderPower(
  sourceVolts: number,
  resistorOhms: number,
  watts: number,
): number | undefined {
  const under = sourceVolts ** 2 - 4 * resistorOhms * watts;
  return under < 0 ? undefined : (sourceVolts + Math.sqrt(under)) / 2;
}
