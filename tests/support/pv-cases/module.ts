/**
 * The physics that the readings of the PV cases come from: a single-diode module with the demo site's ratings. It shares
 * nothing with the expected bands, which are linear in temperature and know no light.
 */

/** Ratings of the demo module at 1000 W/m² and 25 °C cell; its diode and series resistance fitted to the four of them. */
const rated = { vocV: 41, iscA: 11.5, vocPerC: -0.0028, iscPerC: 0.0005 };
/** n·Ns·kT/q at 25 °C for 60 cells with n = 1.1 [V]. */
const diodeV = 1.1 * 60 * 0.025693;
/** From Imp 10.8 A at Vmp 34 V: (34 − 41 + 10.8·Rs)/a = ln(1 − 10.8/11.5). */
const seriesOhm = (7 + diodeV * Math.log(1 - 10.8 / 11.5)) / 10.8;

/** Light and heat on a string. */
export interface Sun {
  /** Irradiance [W/m²]. */
  light: number;
  /** Cell temperature [°C]. */
  cellC: number;
}

export const noon: Sun = { light: 950, cellC: 45 };

const thermal = ({ cellC }: Sun) => (diodeV * (cellC + 273.15)) / 298.15;

/** Short-circuit current of a module [A]. */
export const iscA = ({ light, cellC }: Sun): number =>
  (rated.iscA * light * (1 + rated.iscPerC * (cellC - 25))) / 1000;

/** Open-circuit volts of a module [V]: the label's coefficient, and the logarithm of the light. */
export const vocV = (sun: Sun): number =>
  rated.vocV * (1 + rated.vocPerC * (sun.cellC - 25)) + thermal(sun) * Math.log(sun.light / 1000);

/** Volts of a module at a current [V]. */
export function moduleV(amps: number, sun: Sun): number {
  const share = 1 - amps / iscA(sun);
  return share <= 0 ? 0 : vocV(sun) + thermal(sun) * Math.log(share) - amps * seriesOhm;
}

/** Volts at the end of a run that holds a resistance, at a current [V]. */
export const stringV = (modules: number, amps: number, sun: Sun, jointOhm = 0): number =>
  modules * moduleV(amps, sun) - amps * jointOhm;

/** Current that a tracker can draw when it holds the end of the run at some volts [A]. Found by halving. */
export function ampsAt(volts: number, modules: number, sun: Sun, jointOhm = 0): number {
  let low = 0;
  let high = iscA(sun);
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (stringV(modules, middle, sun, jointOhm) > volts) low = middle;
    else high = middle;
  }
  return low;
}

/** Current that a longer string drives into a shorter one beside it, isolator open [A]. Found by halving. */
export function circulatingA(longer: number, shorter: number, sun: Sun): number {
  let low = 0;
  let high = iscA(sun);
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (stringV(longer, middle, sun) > stringV(shorter, -middle, sun)) low = middle;
    else high = middle;
  }
  return low;
}

/** Working point of most power: volts and amps. */
export function workingPoint(modules: number, sun: Sun): { volts: number; amps: number; watts: number } {
  let best = { volts: 0, amps: 0, watts: 0 };
  for (let amps = 0.01; amps < iscA(sun); amps += 0.01) {
    const volts = stringV(modules, amps, sun);
    if (volts * amps > best.watts) best = { volts, amps, watts: volts * amps };
  }
  return best;
}

/**
 * Poles of a floating string to ground through a meter, one after the other, with one leak to ground after `k` of its
 * modules counted from plus [V].
 */
export function polesToGround(modules: number, k: number, leakOhm: number, meterOhm: number, sun: Sun) {
  const each = vocV(sun);
  const share = meterOhm / (meterOhm + leakOhm);
  return { plus: k * each * share, minus: -(modules - k) * each * share };
}
