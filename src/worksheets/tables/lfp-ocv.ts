/**
 * Rest volts of one lithium iron phosphate cell by its charge, the mean of charging and discharging over 32 hours at
 * room temperature, as the authors' breakpoints; straight lines between them. A small cylindrical cell: others lie
 * some hundredths of a volt beside it, and in the flat middle a straight line hides two flatter steps.
 */
export const lfpOcv = {
  source: 'lfp-ocv-2025',
  clause: 'open data, lithium iron phosphate cell, C/32',
  rows: [
    { charge: 0, volts: 2.0102 },
    { charge: 0.0033, volts: 2.4177 },
    { charge: 0.0117, volts: 2.7405 },
    { charge: 0.0267, volts: 2.9299 },
    { charge: 0.0534, volts: 3.0872 },
    { charge: 0.0885, volts: 3.1942 },
    { charge: 0.2972, volts: 3.2772 },
    { charge: 0.9833, volts: 3.3511 },
    { charge: 0.995, volts: 3.418 },
    { charge: 1, volts: 3.5981 },
  ],
} as const;

type Point = { readonly charge: number; readonly volts: number };

/** Straight line between the two rows that hold `at`; beyond the ends, the end. */
function between(at: number, from: keyof Point, to: keyof Point): number {
  const rows: readonly Point[] = lfpOcv.rows;
  const upper = rows.findIndex((row) => row[from] >= at);
  if (upper === 0) return rows[0]![to];
  if (upper < 0) return rows.at(-1)![to];
  const [low, high] = [rows[upper - 1]!, rows[upper]!];
  return low[to] + ((at - low[from]) / (high[from] - low[from])) * (high[to] - low[to]);
}

/** Rest volts of a cell at a charge of 0 to 1 [V]. */
export const restVoltsAt = (charge: number): number => between(charge, 'charge', 'volts');

/** Charge, 0 to 1, at which a cell rests at those volts [V]. */
export const chargeAt = (volts: number): number => between(volts, 'volts', 'charge');
