/**
 * Stepped correction factors for crystalline silicon modules by lowest expected ambient temperature.
 * NEC 2020 Table 690.7(A). A step table: take the row, never a value between two rows.
 */
export const nec690_7 = {
  source: 'nec-2020',
  clause: 'Table 690.7(A)',
  /** Warmest first; a row holds from `downToC` up to the row above it. */
  rows: [
    { downToC: 20, factor: 1.02 },
    { downToC: 15, factor: 1.04 },
    { downToC: 10, factor: 1.06 },
    { downToC: 5, factor: 1.08 },
    { downToC: 0, factor: 1.1 },
    { downToC: -5, factor: 1.12 },
    { downToC: -10, factor: 1.14 },
    { downToC: -15, factor: 1.16 },
    { downToC: -20, factor: 1.18 },
    { downToC: -25, factor: 1.2 },
    { downToC: -30, factor: 1.21 },
    { downToC: -35, factor: 1.23 },
    { downToC: -40, factor: 1.25 },
  ],
} as const;

/** The temperature from which the table asks for no correction. */
const noCorrectionFromC = 25;

/**
 * Factor on Voc at the lowest expected ambient temperature (°C); a temperature between two whole
 * degrees takes the colder row. `undefined` below −40 °C, where the table stops and the module's
 * own coefficient is needed.
 */
export function necColdFactor(lowestAmbientC: number): number | undefined {
  if (lowestAmbientC >= noCorrectionFromC) return 1;
  return nec690_7.rows.find((row) => lowestAmbientC >= row.downToC)?.factor;
}

/** The table as a staircase to draw: [°C, factor] corners from the warmest row down to `lowestC`. */
export function necColdSteps(lowestC: number): readonly (readonly [number, number])[] {
  let fromC: number = noCorrectionFromC;
  const corners: (readonly [number, number])[] = [];
  for (const { downToC, factor } of nec690_7.rows) {
    if (fromC <= lowestC) break;
    const toC = Math.max(downToC, lowestC);
    corners.push([fromC, factor], [toC, factor]);
    fromC = toC;
  }
  return corners;
}
