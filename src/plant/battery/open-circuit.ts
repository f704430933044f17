/**
 * Open-circuit volts of a lithium-iron-phosphate cell by state of charge: pseudo-open-circuit at C/32, room
 * temperature. Sunil, Pattipati & Balasingam, IEEE Trans. Instrum. Meas., 2025, lookup table of the data repository.
 */
const table: readonly (readonly [charge: number, volts: number])[] = [
  [0, 2.0102],
  [0.0033, 2.4177],
  [0.0117, 2.7405],
  [0.0267, 2.9299],
  [0.0534, 3.0872],
  [0.0885, 3.1942],
  [0.2972, 3.2772],
  [0.9833, 3.3511],
  [0.995, 3.418],
  [1, 3.5981],
];

/** Volts of one cell at rest; `charge` from 0 to 1, held there outside. Straight lines between points. */
export function cellOpenVolts(charge: number): number {
  const at = Math.min(1, Math.max(0, charge));
  const above = table.findIndex(([x]) => x >= at);
  if (above <= 0) return table[0]![1];
  const [[x0, y0], [x1, y1]] = [table[above - 1]!, table[above]!];
  return y0 + ((at - x0) / (x1 - x0)) * (y1 - y0);
}
