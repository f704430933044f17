import { bankLimits } from '../../../src/worksheets/link/voltage-limits.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'run-by-voltage';
const guide = 'Published charging guide for sixteen cells: volts a cell beside volts of the bank';
const practice = 'Common practice: limits of lithium iron phosphate banks by cells in series';
const limits = (cells: number, chargeCellV = 3.45) =>
  bankLimits({ cells, chargeCellV, cellMaxV: 3.65, floatCellV: 3.35, cutCellV: 3, restartCellV: 3.25 });

const check = (id: string, what: string, published: number, worked: () => number): OutsideCheck => ({
  id: `by-voltage-${id}`,
  worksheet,
  source: id.startsWith('guide') ? guide : practice,
  origin: id.startsWith('guide') ? 'published' : 'common practice',
  what,
  published,
  worked,
  tolerance: 'fullPrecision',
});

export const runByVoltageChecks: OutsideCheck[] = [
  check('guide-charge-16', 'charge volts, 16 cells at 3.45 V', 55.2, () => limits(16).chargeVolts),
  check('charge-15', 'charge volts, 15 cells at 3.45 V', 51.75, () => limits(15).chargeVolts),
  check(
    'guide-charge-16-high',
    'charge asked at 3.65 V stays 0.1 V a cell lower',
    56.8,
    () => limits(16, 3.65).chargeVolts,
  ),
  check(
    'guide-top-16',
    'the pack’s own cut-off on charge, 16 cells at 3.65 V',
    58.4,
    () => limits(16).topVolts,
  ),
  check('guide-float-16', 'float, 16 cells at 3.35 V', 53.6, () => limits(16).floatVolts),
  check('guide-cut-16', 'low cut, 16 cells at 3.0 V', 48, () => limits(16).cutVolts),
];
