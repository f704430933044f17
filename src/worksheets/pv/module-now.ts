import { vmpAt, vocAt } from './string-volts.ts';

/** A module's label, at 1000 W/m² and 25 °C cell, with its temperature coefficients as fractions per °C. */
export interface ModuleLabel {
  readonly vocVolts: number;
  readonly vmpVolts: number;
  readonly iscAmps: number;
  readonly impAmps: number;
  readonly vocPerC: number;
  readonly vmpPerC: number;
  readonly iscPerC: number;
  /** Cells in series: 60 or 72, also in modules of half cells. */
  readonly cells: number;
}

export interface ModuleNow {
  readonly vocVolts: number;
  readonly vmpVolts: number;
  readonly iscAmps: number;
  readonly impAmps: number;
}

const fullSun = 1000;
const boltzmannPerCharge = 1.380649e-23 / 1.602176634e-19;
const kelvinAtZeroC = 273.15;
/** Ideality of a silicon cell in daylight. Common practice. */
const ideality = 1.1;

/** n·k·T/q of all cells in series [V]. */
export const thermalVolts = (cells: number, cellC: number): number =>
  ideality * cells * boltzmannPerCharge * (cellC + kelvinAtZeroC);

/**
 * What one module gives in this light at this cell temperature. Amps go with the light; open-circuit volts with its
 * logarithm (King et al. 2004; De Soto et al. 2006). Volts at maximum power hardly change with the light while it is
 * more than a fifth of full sun, since what the light takes the series resistance gives back.
 * @param irradiance W/m², > 0.
 */
export function moduleNow(label: ModuleLabel, irradiance: number, cellC: number): ModuleNow {
  const suns = irradiance / fullSun;
  const ampsFactor = suns * (1 + label.iscPerC * (cellC - 25));
  return {
    vocVolts: Math.max(
      0,
      vocAt(label.vocVolts, label.vocPerC, cellC) + thermalVolts(label.cells, cellC) * Math.log(suns),
    ),
    vmpVolts: Math.max(0, vmpAt(label.vmpVolts, label.vmpPerC, cellC)),
    iscAmps: label.iscAmps * ampsFactor,
    impAmps: label.impAmps * ampsFactor,
  };
}
