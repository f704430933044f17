import { cableResistance, dropVolts, type Metal } from '../battery-dc/cable-resistance.ts';
import { type AmpacityColumn, type ConductorMetal, nec310_16, tableAmps } from '../tables/nec-310-16.ts';

export const conductorMetal = (metal: Metal): ConductorMetal =>
  metal === 'aluminium' ? 'aluminium' : 'copper';

/** A two-wire run at its working current. */
export interface Run {
  readonly amps: number;
  readonly lengthM: number;
  readonly areaMm2: number;
  readonly metal: Metal;
  readonly insulation: AmpacityColumn;
  /** Earth or air around it [°C]. */
  readonly ambientC: number;
}

export interface RunLoss {
  /** The metal at that current [°C]. */
  readonly conductorC: number;
  readonly ohmsPerM: number;
  /** Out and back [Ω]. */
  readonly ohms: number;
  readonly dropVolts: number;
  readonly heatWatts: number;
}

/**
 * Temperature of a conductor that carries less than its ampacity: the table's own law, a rise in proportion to the
 * square of the current, from 30 °C to the insulation's rating at table amps; never above that rating, where the
 * conductor is overloaded and another rule forbids it.
 */
export function conductorTempC(run: Run): number | undefined {
  const table = tableAmps(run.areaMm2, conductorMetal(run.metal), run.insulation);
  if (table === undefined) return undefined;
  const riseC = (run.insulation - nec310_16.ambientC) * (run.amps / table) ** 2;
  return Math.min(run.ambientC + riseC, Math.max(run.insulation, run.ambientC));
}

/** `undefined` where the ampacity table has no row for the conductor. */
export function runLoss(run: Run): RunLoss | undefined {
  const conductorC = conductorTempC(run);
  if (conductorC === undefined) return undefined;
  const { ohmsPerM } = cableResistance(run.areaMm2, conductorC, run.metal);
  return {
    conductorC,
    ohmsPerM,
    ohms: 2 * ohmsPerM * run.lengthM,
    dropVolts: dropVolts(run.amps, ohmsPerM, run.lengthM),
    heatWatts: run.amps * dropVolts(run.amps, ohmsPerM, run.lengthM),
  };
}

/**
 * Heat over a year [J]: it goes with the square of the light, and the light is mostly less than full.
 * @param sunS hours of full sun a year [s]: yearly light on the array ÷ 1000 W/m².
 * @param squareShare mean of the light's square over those hours, 0 to 1.
 */
export const yearOfHeatJ = (fullWatts: number, sunS: number, squareShare: number): number =>
  fullWatts * sunS * squareShare;
