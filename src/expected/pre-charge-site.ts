import { restingCellVolts } from './battery.ts';
import type { ExpectContext } from './context.ts';
import { earlierReading } from './earlier.ts';

/** Sheet silent on capacitance: the high end for one unit of this class [F]. Common practice. */
export const largestUnitF = 0.03;

/** Battery volts at the switch: as last read in the procedure, else a bank at rest. */
export const sourceVolts = (context: ExpectContext): number =>
  earlierReading(context, 'pre-charge', 'sides', 's1') ??
  earlierReading(context, 'pre-charge', 's1', 's1') ??
  context.sheet.battery.cellsInSeries * restingCellVolts;

/** Capacitance on the bus [F]: all units of the install, the high end where the sheet is silent. */
export const bankF = ({ sheet }: ExpectContext): number =>
  (sheet.inverter.busCapacitanceF ?? largestUnitF) * sheet.parallelUnits;

/** Time constant that resistor and bank on the sheet give [s]; 0 while the resistor is not known. */
export const expectedTauS = (context: ExpectContext): number =>
  (context.sheet.precharge.resistorOhm ?? 0) * bankF(context);
