/** Cell temperature of the rating on a module's label, °C (IEC 61215 standard test conditions). */
export const ratingTempC = 25;

/**
 * Open-circuit volts of a module or a string at a cell temperature.
 * NEC 2020 690.7(A)(1), coefficient method.
 * @param vocRatedVolts Voc at 25 °C [V]; multiply by the modules in series for a string.
 * @param coefficientPerC fraction of Voc per °C, negative: −0.27 %/°C is −0.0027.
 * @param tempC cell temperature [°C]; before sunrise the cells are as cold as the air.
 */
export function vocAt(vocRatedVolts: number, coefficientPerC: number, tempC: number): number {
  return vocRatedVolts * (1 + coefficientPerC * (tempC - ratingTempC));
}

/**
 * Volts at maximum power at a cell temperature.
 * @param vmpRatedVolts Vmp at 25 °C [V].
 * @param coefficientPerC fraction of Vmp per °C, negative. A module's Pmax coefficient may stand in
 *   for it, but promises slightly too much when hot: current rises with heat, so volts fall faster
 *   than power. Keep a margin.
 */
export function vmpAt(vmpRatedVolts: number, coefficientPerC: number, tempC: number): number {
  return vmpRatedVolts * (1 + coefficientPerC * (tempC - ratingTempC));
}

/**
 * The cell temperature at which a linear voltage falls to a level [°C].
 * `undefined` when the voltage does not change with temperature.
 */
export function tempAtVolts(ratedVolts: number, coefficientPerC: number, volts: number): number | undefined {
  if (coefficientPerC === 0 || ratedVolts === 0) return undefined;
  return ratingTempC + (volts / ratedVolts - 1) / coefficientPerC;
}

/** A coefficient printed in volts per °C as a fraction of the rated volts per °C. */
export function coefficientFromVolts(voltsPerC: number, ratedVolts: number): number {
  return voltsPerC / ratedVolts;
}
