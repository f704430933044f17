import type { MeterSpec } from '../quantity/meter.ts';
import type { MeterFunction, SiteSheet } from './sheet.ts';

/** The accuracy of one function of this site's meter; `null` while the sheet does not know it. */
export function meterSpecOf(sheet: SiteSheet, meterFunction: MeterFunction): MeterSpec | null {
  const { ofReading, counts } = sheet.meter[meterFunction];
  return ofReading === null || counts === null ? null : { percentOfReading: ofReading * 100, counts };
}

/**
 * Accuracy taken where the sheet has none: the wide end of what data sheets of hand-held instruments give (common
 * practice). It is never better than an ordinary instrument's, so not knowing is never an advantage.
 */
export const cautiousMeter: Readonly<Record<MeterFunction, MeterSpec>> = {
  dcVolts: { percentOfReading: 1, counts: 3 },
  acVolts: { percentOfReading: 1.5, counts: 5 },
  ohms: { percentOfReading: 1.5, counts: 3 },
  dcClamp: { percentOfReading: 3, counts: 10 },
  acClamp: { percentOfReading: 3, counts: 10 },
};

/** The facts to ask for when a step reads that function. */
export const meterFactIds = (meterFunction: MeterFunction): string[] => [
  `meter.${meterFunction}.ofReading`,
  `meter.${meterFunction}.counts`,
];
