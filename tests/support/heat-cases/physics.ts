/**
 * The physics that the readings of the heat cases come from. It shares nothing with the expected bands: a loss that grows
 * with the square of the load, an atmosphere of one temperature, a case that gives off heat by itself.
 */

/** A unit and its place. Watts, m³/s, metres, °C. */
export interface Unit {
  ratedW: number;
  idleW: number;
  /** Air that its fans really move at full speed, clean. */
  airflowM3s: number;
  altitudeM: number;
}

/** Loss in proportion to the load, and with its square: 93 % at half load. */
const linearShare = 0.045;
const squareShare = 0.055;
/** Heat that leaves by the case and not by the air. */
const caseShare = 0.12;
/** Fin over the mean air [°C/W], and the inside over the fin. */
const finPerW = 0.035;
const insidePerW = 0.03;
const gasR = 8.314;
const airKgPerMol = 0.028965;

/** Heat that a unit makes at a load [W]. */
export const lossAt = ({ ratedW, idleW }: Unit, watts: number): number =>
  idleW + linearShare * watts + (squareShare * watts ** 2) / ratedW;

/** Density of air at a height: barometric formula of one temperature [kg/m³]. */
export function densityAt(altitudeM: number, tempC: number): number {
  const kelvin = tempC + 273.15;
  const pascal = 101_325 * Math.exp((-airKgPerMol * 9.80665 * altitudeM) / (gasR * kelvin));
  return (pascal * airKgPerMol) / (gasR * kelvin);
}

export interface Heat {
  inletC: number;
  outletC: number;
  /** Outside of the fins, taped. */
  finC: number;
  /** Where the unit's own sensor sits. */
  insideC: number;
}

/**
 * Air and metal of a unit that has carried its load for long.
 * @param open share of the clean airflow that still passes
 * @param otherHeatW heat put into the same air by something else, such as a joint
 */
export function heatOf(unit: Unit, watts: number, inletC: number, open = 1, otherHeatW = 0): Heat {
  const loss = lossAt(unit, watts) + otherHeatW;
  const flow = densityAt(unit.altitudeM, inletC) * 1005 * unit.airflowM3s * open;
  const outletC = inletC + ((1 - caseShare) * loss) / flow;
  const finC = (inletC + outletC) / 2 + finPerW * loss;
  return { inletC, outletC, finC, insideC: finC + insidePerW * loss };
}

/** Inlet of an upper unit that breathes a share of the exhaust below. */
export const mixedInletC = (roomC: number, exhaustC: number, share: number): number =>
  roomC + share * (exhaustC - roomC);

/** Jacket of a cable beside its lug [°C]: the cable's own heat, and the joint's. */
export const jacketC = (airC: number, amps: number, jointOhm: number): number =>
  airC + 0.0011 * amps ** 2 + 1.5 * amps ** 2 * jointOhm;

/** Battery amps behind an AC load [A]. */
export const dcAmps = (unit: Unit, watts: number, volts: number): number =>
  (watts + lossAt(unit, watts)) / volts;

/** Current that two outputs of unlike volts drive round through both their impedances, no load [A]. */
export const circulatingA = (apartV: number, ohmEach: number): number => apartV / (2 * ohmEach);
