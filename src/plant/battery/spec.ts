import type { Contact } from '../pv/spec.ts';
import { cellOpenVolts } from './open-circuit.ts';

/** One pack with its management system. */
export interface PackSpec {
  cells: number;
  capacityAh: number;
  /** State of charge, 0 to 1. */
  charge: number;
  /** How far the highest and the lowest cell stand from the mean [V]. */
  highestCellOffV: number;
  lowestCellOffV: number;
  coldestC: number;
  hottestC: number;
  /** Resistance between its posts, its own breaker and switch included [Ω]. */
  innerOhm: number;
  /** Its management switch is on. A sleeping pack's posts see its cells only through this leak [Ω]. */
  awake: boolean;
  sleepLeakOhm: number;
  /** Limits of the label: volts of a cell, temperatures, currents. */
  cellMinV: number;
  cellChargeV: number;
  cellMaxV: number;
  chargeMinC: number;
  chargeMaxC: number;
  continuousA: number;
  peakA: number;
  /** Breaker and lugs between its posts and the busbar, closed. */
  breaker: Contact;
}

/** From the busbars to the inverter's DC posts. */
export interface DcPathSpec {
  fuse: Contact;
  /** Lugs and bars of the whole plus and minus path, each. */
  plusJoint: Contact;
  minusJoint: Contact;
  /** Main switch, closed. */
  main: Contact;
  /** It does not open: the handle moves and the contact stays. */
  mainWelded: boolean;
  /** One conductor, one way. */
  cableOhm: number;
  /** Battery leads exchanged at the switch. */
  reversed: boolean;
  prechargeOhm: number;
}

/** Volts between the posts at rest, switch on. */
export const packOpenVolts = (pack: PackSpec): number => pack.cells * cellOpenVolts(pack.charge);

/** Volts of the highest and the lowest cell at a pack current; charging counts positive. */
export function cellExtremes(pack: PackSpec, chargeA: number): { highestV: number; lowestV: number } {
  const mean = cellOpenVolts(pack.charge) + (chargeA * pack.innerOhm) / pack.cells;
  return { highestV: mean + pack.highestCellOffV, lowestV: mean + pack.lowestCellOffV };
}

/** What the management system lets in [A]: nothing outside its temperatures or with a cell at its top; tapered near it. */
export function permittedChargeA(pack: PackSpec): number {
  if (!pack.awake || pack.coldestC < pack.chargeMinC || pack.hottestC > pack.chargeMaxC) return 0;
  const { highestV } = cellExtremes(pack, 0);
  if (highestV >= pack.cellMaxV) return 0;
  const room = (pack.cellMaxV - highestV) / Math.max(1e-3, pack.cellMaxV - pack.cellChargeV);
  return pack.continuousA * Math.min(1, room);
}

/** What it lets out [A]. */
export const permittedDischargeA = (pack: PackSpec): number =>
  pack.awake && cellExtremes(pack, 0).lowestV > pack.cellMinV ? pack.continuousA : 0;
