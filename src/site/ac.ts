import type { AcTopology } from './sheet.ts';

/** The volts an output is meant to have: each leg to neutral, and leg to leg; `null` where there is no such pair. */
export interface AcNominal {
  legs: 1 | 2;
  legToNeutralV: number;
  legToLegV: number | null;
}

/** Nominal output volts by topology. Two legs of 120 V: opposed add to 240, in step to 0, a third apart to 208. */
export const acNominal: Record<AcTopology, AcNominal> = {
  'opposed-120-240': { legs: 2, legToNeutralV: 120, legToLegV: 240 },
  'common-120': { legs: 2, legToNeutralV: 120, legToLegV: 0 },
  'wye-120-208': { legs: 2, legToNeutralV: 120, legToLegV: 208 },
  'single-230': { legs: 1, legToNeutralV: 230, legToLegV: null },
};
