import { conductorRules, largestDevice } from '../pv/string-amps.ts';
import type { ConductorInPlace } from '../tables/ampacity.ts';
import { ampacitySizesMm2 } from '../tables/nec-310-16.ts';
import type { NecEdition } from '../tables/standard-ratings.ts';

/**
 * The NEC on the circuit between a battery and its inverter: current at rated power and lowest input volts, conductor
 * and device at 125 % of it. The same in the editions carried.
 */
export const nec706 = {
  source: 'nec-706',
  clause: '706.30, 706.31',
  continuousFactor: 1.25,
} as const;

/** What conductor and device must be rated for [A], from the current at rated power and lowest volts [A]. */
export const ratedCircuitAmps = (amps: number): number => nec706.continuousFactor * amps;

/** A copper cable of one pole, in its place: one conductor, or several alike side by side. */
export interface BatteryCable extends Omit<ConductorInPlace, 'metal'> {
  readonly runs: number;
}

export interface CableRules {
  /** All runs together, no factors: the smaller of insulation and lugs [A]. */
  readonly plainAmps: number;
  /** All runs together, after the factors for ambient and bundling [A]. */
  readonly correctedAmps: number;
  /** The largest device that protects the cable [A]. */
  readonly mostDeviceAmps: number | undefined;
  readonly ambientFactor: number;
  readonly bundlingFactor: number;
  readonly fits: boolean;
}

/** Conductors smaller than this may not be run in parallel [mm²]: 1/0 AWG. NEC 310.10(G). */
const leastParallelMm2 = 53.2;

export const mayRunParallel = (areaMm2: number): boolean => areaMm2 >= leastParallelMm2;

/**
 * How a battery cable meets the two rules, which stand side by side and are never multiplied: 125 % of the current with
 * no factors, and the current itself after the factors. `undefined` where it is too hot for the insulation or no table
 * row fits.
 */
export function cableRules(amps: number, cable: BatteryCable, edition: NecEdition): CableRules | undefined {
  const { runs, ...one } = cable;
  const place = { ...one, metal: 'copper' as const };
  const each = { maximumAmps: amps / runs, ratedAmps: ratedCircuitAmps(amps) / runs };
  const rules = conductorRules(each, place);
  if (!rules) return undefined;
  const { ampacity } = rules;
  const together = {
    ...ampacity,
    correctedAmps: runs * ampacity.correctedAmps,
    terminationAmps: runs * ampacity.terminationAmps,
  };
  return {
    plainAmps: runs * rules.plainAmps,
    correctedAmps: together.correctedAmps,
    mostDeviceAmps: largestDevice(together, cable.areaMm2, 'copper', edition),
    ambientFactor: ampacity.ambientFactor,
    bundlingFactor: ampacity.bundlingFactor,
    fits: rules.meetsPlain && rules.meetsCorrected,
  };
}

/** The smallest copper size of the table [mm²] that fits and that a device of that rating protects. */
export function smallestCableMm2(
  amps: number,
  cable: Omit<BatteryCable, 'areaMm2'>,
  deviceAmps: number,
  edition: NecEdition,
): number | undefined {
  return ampacitySizesMm2('copper').find((areaMm2) => {
    if (cable.runs > 1 && !mayRunParallel(areaMm2)) return false;
    const rules = cableRules(amps, { ...cable, areaMm2 }, edition);
    return rules?.fits === true && (rules.mostDeviceAmps ?? 0) >= deviceAmps;
  });
}

/**
 * Current a bank drives into a dead short at its posts [A]: volts over the resistance of its packs in parallel. Cable
 * is left out, which errs high; a resistance printed too high errs low.
 */
export const prospectiveAmps = (volts: number, packOhms: number, packs: number): number =>
  (packs * volts) / packOhms;

/** What the device of one pack must break [A]: its own pack into a short, or all the others into a short in that pack. */
export const packDeviceAmps = (onePackAmps: number, packs: number): number =>
  onePackAmps * Math.max(1, packs - 1);
