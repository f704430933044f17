import { ambientFactor, bundlingFactor } from './nec-310-15.ts';
import { type AmpacityColumn, type ConductorMetal, tableAmps } from './nec-310-16.ts';

export interface ConductorInPlace {
  /** Metal area [mm²], > 0. */
  readonly areaMm2: number;
  readonly metal: ConductorMetal;
  /** Rating of the insulation. */
  readonly insulation: AmpacityColumn;
  /** Lowest rating of the lugs at its two ends. */
  readonly termination: AmpacityColumn;
  /** Air or earth around the conductor [°C]. */
  readonly ambientC: number;
  /** Conductors that carry current in the same raceway or cable, this one counted. */
  readonly conductors: number;
}

export interface Ampacity {
  /** By the insulation's column, no factors [A]. */
  readonly tableAmps: number;
  readonly ambientFactor: number;
  readonly bundlingFactor: number;
  /** After both factors [A]. */
  readonly correctedAmps: number;
  /** By the lugs' column, no factors [A]. */
  readonly terminationAmps: number;
}

/**
 * Both ampacities of a conductor under the NEC: by its insulation after correction and adjustment, and by its lugs
 * without either (110.14(C), 310.14, 310.15). A load must fit each of them by its own rule; where one current counts,
 * the conductor is good for the smaller. `undefined` where the table has no row or the place is too hot for it.
 */
export function ampacityOf(place: ConductorInPlace): Ampacity | undefined {
  const { areaMm2, metal, insulation, termination, ambientC, conductors } = place;
  const amps = tableAmps(areaMm2, metal, insulation);
  const terminationAmps = tableAmps(areaMm2, metal, termination);
  const factor = ambientFactor(ambientC, insulation);
  if (amps === undefined || terminationAmps === undefined || factor === undefined) return undefined;
  const bundling = bundlingFactor(conductors);
  return {
    tableAmps: amps,
    ambientFactor: factor,
    bundlingFactor: bundling,
    correctedAmps: amps * factor * bundling,
    terminationAmps,
  };
}

/** The smaller of the two ampacities [A]: never both sets of factors multiplied. */
export const usableAmps = (ampacity: Ampacity): number =>
  Math.min(ampacity.correctedAmps, ampacity.terminationAmps);
