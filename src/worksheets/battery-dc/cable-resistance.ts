import { awgOfArea } from '../../quantity/wire.ts';
import { copperResistivity, iec60228class5, necTable8, strandingFactor } from '../tables/conductors.ts';

export type Coating = 'plain' | 'tinned';

/** Where a resistance comes from: a row of a table, or area and resistivity for a size no table here has. */
export type ResistanceBasis = 'nec' | 'iec' | 'area';

export interface CableResistance {
  /** One conductor, one way [Ω/m]. */
  readonly ohmsPerM: number;
  readonly basis: ResistanceBasis;
}

const metresPerKft = 304.8;

/**
 * Resistance of a copper conductor at its own temperature.
 * @param areaMm2 conductor area [mm²], > 0; an AWG size is looked up in NEC chapter 9 table 8, a metric one in
 *   IEC 60228 class 5, anything else is worked out from its area.
 * @param tempC temperature of the copper [°C], −40 to 150.
 */
export function cableResistance(areaMm2: number, tempC: number, coating: Coating = 'plain'): CableResistance {
  const gauge = awgOfArea(areaMm2);
  const awg = necTable8.rows.find((row) => row.gauge === gauge);
  const metric = iec60228class5.rows.find((row) => Math.abs(row.areaMm2 / areaMm2 - 1) < 0.005);
  if (metric) return { ohmsPerM: warm(metric[coating], tempC, iec60228class5) / 1000, basis: 'iec' };
  const perKft = awg?.[coating];
  if (perKft !== undefined) return { ohmsPerM: warm(perKft, tempC, necTable8) / metresPerKft, basis: 'nec' };
  const perKm = (copperResistivity * strandingFactor * coatingFactor[coating]) / areaMm2;
  return { ohmsPerM: warm(perKm, tempC, iec60228class5) / 1000, basis: 'area' };
}

/** Tinning costs the strands a few per cent; the largest step of the tabled sizes above 14 AWG. */
const coatingFactor: Record<Coating, number> = { plain: 1, tinned: 1.045 };

/** R2 = R1·(1 + α·(T2 − T1)), with the base and coefficient of the table the row came from. */
function warm(ohms: number, tempC: number, table: { baseC: number; coefficientPerC: number }): number {
  return ohms * (1 + table.coefficientPerC * (tempC - table.baseC));
}

/** Volts lost out and back over a two-wire run: 2·I·r·L [V]. */
export function dropVolts(amps: number, ohmsPerM: number, oneWayM: number): number {
  return 2 * amps * ohmsPerM * oneWayM;
}
