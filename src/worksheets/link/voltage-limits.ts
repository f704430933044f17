/** Limits by volts for a bank that runs without its data link: per cell times the cells in series. */

/** A charge target stays this far under the cell volts at which the pack cuts off [V]. Common practice. */
export const belowCutOff = 0.1;

export interface CellLimits {
  cells: number;
  chargeCellV: number;
  cellMaxV: number;
  floatCellV: number;
  cutCellV: number;
  restartCellV: number;
}

/** The limits [V] at the bank's terminals. A charge target never comes nearer the pack's own cut-off than `belowCutOff`. */
export function bankLimits({ cells, chargeCellV, cellMaxV, floatCellV, cutCellV, restartCellV }: CellLimits) {
  const charge = Math.min(chargeCellV, cellMaxV - belowCutOff);
  return {
    chargeVolts: cells * charge,
    floatVolts: cells * Math.min(floatCellV, charge),
    cutVolts: cells * cutCellV,
    restartVolts: cells * restartCellV,
    topVolts: cells * cellMaxV,
  };
}
