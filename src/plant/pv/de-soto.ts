import type { DiodeParams } from './single-diode.ts';

/** Single-diode parameters of a module at 1000 W/m² and 25 °C, and how its short-circuit current moves with heat. */
export interface ModuleParams extends DiodeParams {
  /** [A/°C] */
  iscPerC: number;
}

/** Silicon at 25 °C [eV] and its change with heat [1/K]; Boltzmann [eV/K]. De Soto, Klein & Beckman, Solar Energy 80, 2006. */
export const silicon = { gapEv: 1.121, gapPerK: -0.0002677 } as const;
export const boltzmannEv = 8.617333262e-5;
export const referenceK = 298.15;

/**
 * The parameters in other light and at another cell temperature (De Soto, Klein & Beckman, Solar Energy 80, 2006).
 * Light in W/m² of the plane, 0 for night: the shunt is then as good as none.
 */
export function translated(ref: ModuleParams, lightWm2: number, cellC: number): DiodeParams {
  const cellK = cellC + 273.15;
  const gap = silicon.gapEv * (1 + silicon.gapPerK * (cellK - referenceK));
  const light = Math.max(0, lightWm2) / 1000;
  return {
    photoA: light * (ref.photoA + ref.iscPerC * (cellK - referenceK)),
    satA:
      ref.satA *
      (cellK / referenceK) ** 3 *
      Math.exp(silicon.gapEv / (boltzmannEv * referenceK) - gap / (boltzmannEv * cellK)),
    seriesOhm: ref.seriesOhm,
    shuntOhm: ref.shuntOhm / Math.max(light, darkest),
    slopeV: (ref.slopeV * cellK) / referenceK,
  };
}

/** Below this share of full light the shunt stops growing, so that night has a number for it. */
const darkest = 1e-4;
