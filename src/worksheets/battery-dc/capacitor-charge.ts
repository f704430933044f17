/** A capacitor bank charged through a resistor, with whatever hangs across the bank. */
export interface ChargeCircuit {
  /** Source volts, held steady [V], > 0. */
  readonly sourceVolts: number;
  /** Series resistor [Ω], > 0. */
  readonly resistorOhms: number;
  /** Bank [F], > 0. */
  readonly capacitanceF: number;
  /** Volts on the bank when the resistor goes in [V]. */
  readonly startVolts?: number;
  /** Resistive load across the bank [Ω], > 0; leave out for none. */
  readonly loadOhms?: number;
}

/** Volts the bank settles at: V·RL/(R + RL), or the source's volts with nothing across it. */
export function finalVolts(circuit: ChargeCircuit): number {
  const { sourceVolts, resistorOhms, loadOhms } = circuit;
  return loadOhms === undefined ? sourceVolts : (sourceVolts * loadOhms) / (resistorOhms + loadOhms);
}

/** Time constant: C times R in parallel with the load [s]. */
export function timeConstantS(circuit: ChargeCircuit): number {
  const { resistorOhms, capacitanceF, loadOhms } = circuit;
  const ohms = loadOhms === undefined ? resistorOhms : (resistorOhms * loadOhms) / (resistorOhms + loadOhms);
  return ohms * capacitanceF;
}

/** Volts on the bank at a time after the resistor goes in [V]. */
export function voltsAt(circuit: ChargeCircuit, timeS: number): number {
  const end = finalVolts(circuit);
  return end + ((circuit.startVolts ?? 0) - end) * Math.exp(-timeS / timeConstantS(circuit));
}

/** Time until the bank reaches a level [s]; `undefined` when it never does. */
export function timeToVolts(circuit: ChargeCircuit, volts: number): number | undefined {
  const end = finalVolts(circuit);
  const start = circuit.startVolts ?? 0;
  if (volts === start) return 0;
  const left = (volts - end) / (start - end);
  if (!(left > 0 && left < 1)) return undefined;
  return -timeConstantS(circuit) * Math.log(left);
}

/** Energy stored between two voltages: ½·C·(V² − V0²) [J]. Negative when it discharges. */
export function storedJoules(capacitanceF: number, volts: number, fromVolts = 0): number {
  return (capacitanceF * (volts ** 2 - fromVolts ** 2)) / 2;
}

/** Heat left in the resistor by one charge with nothing across the bank: ½·C·(V − V0)², for any R [J]. */
export function resistorJoules(circuit: ChargeCircuit): number {
  return (circuit.capacitanceF * (circuit.sourceVolts - (circuit.startVolts ?? 0)) ** 2) / 2;
}

/** Peak current when the main switch closes over the volts still missing: ΔV / path resistance [A]. */
export function closingAmps(missingVolts: number, pathOhms: number): number {
  return missingVolts / pathOhms;
}
