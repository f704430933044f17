import { type AmpacityColumn, ampacityColumns } from './nec-310-16.ts';

/**
 * Correction of ampacity for ambient temperature, base 30 °C. NEC 2023 Table 310.15(B)(1)(1). A step table: take the
 * row, never a value between two rows. A missing factor means that insulation may not be used there.
 */
export const necAmbient = {
  source: 'nec-2023',
  clause: 'Table 310.15(B)(1)(1)',
  clauseByEdition: {
    '2017': 'Table 310.15(B)(2)(a)',
    '2020': 'Table 310.15(B)(1)',
    '2023': 'Table 310.15(B)(1)(1)',
  },
  /** Coolest first; a row holds up to `upToC`. Factors of the 60, 75 and 90 °C columns. */
  rows: [
    { upToC: 10, factors: [1.29, 1.2, 1.15] },
    { upToC: 15, factors: [1.22, 1.15, 1.12] },
    { upToC: 20, factors: [1.15, 1.11, 1.08] },
    { upToC: 25, factors: [1.08, 1.05, 1.04] },
    { upToC: 30, factors: [1, 1, 1] },
    { upToC: 35, factors: [0.91, 0.94, 0.96] },
    { upToC: 40, factors: [0.82, 0.88, 0.91] },
    { upToC: 45, factors: [0.71, 0.82, 0.87] },
    { upToC: 50, factors: [0.58, 0.75, 0.82] },
    { upToC: 55, factors: [0.41, 0.67, 0.76] },
    { upToC: 60, factors: [undefined, 0.58, 0.71] },
    { upToC: 65, factors: [undefined, 0.47, 0.65] },
    { upToC: 70, factors: [undefined, 0.33, 0.58] },
    { upToC: 75, factors: [undefined, undefined, 0.5] },
    { upToC: 80, factors: [undefined, undefined, 0.41] },
    { upToC: 85, factors: [undefined, undefined, 0.29] },
  ] as readonly { upToC: number; factors: readonly (number | undefined)[] }[],
} as const;

/**
 * Adjustment for more than three conductors that carry current in one raceway or cable. NEC 2023 Table 310.15(C)(1).
 */
export const necBundling = {
  source: 'nec-2023',
  clause: 'Table 310.15(C)(1)',
  clauseByEdition: {
    '2017': 'Table 310.15(B)(3)(a)',
    '2020': 'Table 310.15(C)(1)',
    '2023': 'Table 310.15(C)(1)',
  },
  rows: [
    { upTo: 3, factor: 1 },
    { upTo: 6, factor: 0.8 },
    { upTo: 9, factor: 0.7 },
    { upTo: 20, factor: 0.5 },
    { upTo: 30, factor: 0.45 },
    { upTo: 40, factor: 0.4 },
    { upTo: Number.POSITIVE_INFINITY, factor: 0.35 },
  ],
} as const;

/** Factor for ambient temperature [°C]; `undefined` where that insulation may carry nothing. */
export function ambientFactor(ambientC: number, column: AmpacityColumn): number | undefined {
  return necAmbient.rows.find((row) => ambientC <= row.upToC)?.factors[ampacityColumns.indexOf(column)];
}

/** Factor for the conductors that carry current in one raceway or cable; a DC pair counts two. */
export function bundlingFactor(conductors: number): number {
  return necBundling.rows.find((row) => conductors <= row.upTo)!.factor;
}
