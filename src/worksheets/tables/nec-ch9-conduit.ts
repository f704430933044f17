import { awgAreaMm2 } from '../../quantity/wire.ts';

/**
 * Room in electrical metallic tubing for more than two conductors: 40 % of its inside area. NEC chapter 9, Tables 1 and 4.
 * From memory.
 */
export const emtFill = {
  source: 'nec-ch9-memory',
  clause: 'chapter 9, Tables 1 and 4',
  share: 0.4,
  /** Trade size [in], whole inside area and 40 % of it [in²]. */
  rows: [
    { trade: '1/2', insideIn2: 0.304, fillIn2: 0.122 },
    { trade: '3/4', insideIn2: 0.533, fillIn2: 0.213 },
    { trade: '1', insideIn2: 0.864, fillIn2: 0.346 },
    { trade: '1 1/4', insideIn2: 1.496, fillIn2: 0.598 },
    { trade: '1 1/2', insideIn2: 2.036, fillIn2: 0.814 },
    { trade: '2', insideIn2: 3.356, fillIn2: 1.342 },
    { trade: '2 1/2', insideIn2: 5.858, fillIn2: 2.343 },
    { trade: '3', insideIn2: 8.846, fillIn2: 3.538 },
    { trade: '4', insideIn2: 14.753, fillIn2: 5.901 },
  ],
} as const;

/** Outside area of a THHN or THWN-2 conductor [in²] by gauge. NEC chapter 9, Table 5. From memory. */
export const thhnArea = {
  source: 'nec-ch9-memory',
  clause: 'chapter 9, Table 5',
  rows: [
    { gauge: 14, areaIn2: 0.0097 },
    { gauge: 12, areaIn2: 0.0133 },
    { gauge: 10, areaIn2: 0.0211 },
    { gauge: 8, areaIn2: 0.0366 },
    { gauge: 6, areaIn2: 0.0507 },
    { gauge: 4, areaIn2: 0.0824 },
    { gauge: 3, areaIn2: 0.0973 },
    { gauge: 2, areaIn2: 0.1158 },
    { gauge: 1, areaIn2: 0.1562 },
    { gauge: 0, areaIn2: 0.1855 },
    { gauge: -1, areaIn2: 0.2223 },
    { gauge: -2, areaIn2: 0.2679 },
    { gauge: -3, areaIn2: 0.3237 },
  ],
} as const;

/** The smallest tubing that takes so many conductors alike; `undefined` beyond the tables. */
export function emtFor(metalMm2: number, conductors: number): string | undefined {
  const row = thhnArea.rows.find(({ gauge }) => awgAreaMm2(gauge) >= metalMm2 / 1.005);
  if (!row) return undefined;
  return emtFill.rows.find(({ fillIn2 }) => fillIn2 >= conductors * row.areaIn2)?.trade;
}
