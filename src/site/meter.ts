import type { MeterSpec } from '../quantity/meter.ts';
import type { MeterFunction, SiteSheet } from './sheet.ts';

/** The accuracy of one function of this site's meter; `null` while the sheet does not know it. */
export function meterSpecOf(sheet: SiteSheet, meterFunction: MeterFunction): MeterSpec | null {
  const { ofReading, counts } = sheet.meter[meterFunction];
  return ofReading === null || counts === null ? null : { percentOfReading: ofReading * 100, counts };
}

/** The facts to ask for when a step reads that function. */
export const meterFactIds = (meterFunction: MeterFunction): string[] => [
  `meter.${meterFunction}.ofReading`,
  `meter.${meterFunction}.counts`,
];
