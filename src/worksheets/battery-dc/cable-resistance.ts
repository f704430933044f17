import { awgOfArea } from '../../quantity/wire.ts';
import {
  aluminiumResistivity,
  copperResistivity,
  iec60228aluminium,
  iec60228class5,
  necTable8,
  strandingFactor,
} from '../tables/conductors.ts';

export type Coating = 'plain' | 'tinned';
export type Metal = Coating | 'aluminium';

/** Where a resistance comes from: a row of a table, or area and resistivity for a size no table here has. */
export type ResistanceBasis = 'nec' | 'iec' | 'area';

export interface CableResistance {
  /** One conductor, one way [Ω/m]. */
  readonly ohmsPerM: number;
  readonly basis: ResistanceBasis;
}

const metresPerKft = 304.8;

/**
 * Resistance of a copper or aluminium conductor at its own temperature.
 * @param areaMm2 conductor area [mm²], > 0; an AWG size is looked up in NEC chapter 9 table 8, a metric one in
 *   IEC 60228 (class 5 copper, class 2 aluminium), anything else is worked out from its area.
 * @param tempC temperature of the metal [°C], −40 to 150.
 */
export function cableResistance(areaMm2: number, tempC: number, metal: Metal = 'plain'): CableResistance {
  const gauge = awgOfArea(areaMm2);
  const awg = necTable8.rows.find((row) => row.gauge === gauge);
  const perKmMetric = metricOhmsPerKm(areaMm2, metal);
  if (perKmMetric !== undefined) {
    return { ohmsPerM: warm(perKmMetric, tempC, iecLaw(metal)) / 1000, basis: 'iec' };
  }
  const perKft = awg?.[metal];
  if (perKft !== undefined)
    return { ohmsPerM: warm(perKft, tempC, necLaw(metal)) / metresPerKft, basis: 'nec' };
  const perKm = (resistivity[metal] * strandingFactor) / areaMm2;
  return { ohmsPerM: warm(perKm, tempC, iecLaw(metal)) / 1000, basis: 'area' };
}

/** Tinning costs the strands a few per cent; the largest step of the tabled sizes above 14 AWG. */
const tinningFactor = 1.045;

/** Ω·mm²/km at 20 °C. */
const resistivity: Record<Metal, number> = {
  plain: copperResistivity,
  tinned: copperResistivity * tinningFactor,
  aluminium: aluminiumResistivity,
};

interface Law {
  readonly baseC: number;
  readonly coefficientPerC: number;
}

const iecLaw = (metal: Metal): Law => (metal === 'aluminium' ? iec60228aluminium : iec60228class5);
const necLaw = (metal: Metal): Law =>
  metal === 'aluminium'
    ? { baseC: necTable8.baseC, coefficientPerC: necTable8.aluminiumPerC }
    : { baseC: necTable8.baseC, coefficientPerC: necTable8.coefficientPerC };

function metricOhmsPerKm(areaMm2: number, metal: Metal): number | undefined {
  const here = (row: { areaMm2: number }): boolean => Math.abs(row.areaMm2 / areaMm2 - 1) < 0.005;
  return metal === 'aluminium'
    ? iec60228aluminium.rows.find(here)?.aluminium
    : iec60228class5.rows.find(here)?.[metal];
}

/** R2 = R1·(1 + α·(T2 − T1)), with the base and coefficient of the table the row came from. */
function warm(ohms: number, tempC: number, table: Law): number {
  return ohms * (1 + table.coefficientPerC * (tempC - table.baseC));
}

/** Volts lost out and back over a two-wire run: 2·I·r·L [V]. */
export function dropVolts(amps: number, ohmsPerM: number, oneWayM: number): number {
  return 2 * amps * ohmsPerM * oneWayM;
}
