/**
 * How badly each hazard can hurt and how surely, and the signal word that follows from it (after ANSI Z535.4 and Z535.6:
 * the word is a function of severity and likelihood, never of taste). The statements themselves are words.
 */

export type Severity =
  /** Death or an injury for life. */
  | 'serious'
  /** Heals. */
  | 'moderate'
  /** Equipment or data alone. */
  | 'property';

export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

export interface HazardRisk {
  severity: Severity;
  /** Harm follows almost surely when the statement is ignored. */
  nearCertain?: true;
}

/** The signal word of a risk. */
export function signalWord({ severity, nearCertain }: HazardRisk): SignalWord {
  if (severity === 'property') return 'notice';
  if (severity === 'moderate') return 'caution';
  return nearCertain ? 'danger' : 'warning';
}

const certain: HazardRisk = { severity: 'serious', nearCertain: true };
const serious: HazardRisk = { severity: 'serious' };
const moderate: HazardRisk = { severity: 'moderate' };
const property: HazardRisk = { severity: 'property' };

/** Every hazard a step may name, by the id its statement has in the words. */
export const hazardRisks: Readonly<Record<string, HazardRisk>> = {
  'pv-arc': certain,
  'pv-reversed-arc': certain,
  'battery-short': certain,
  'ac-backfeed': certain,
  'co-fumes': certain,
  'frame-live': certain,
  'dc-link': certain,

  'pv-live-in-light': serious,
  'pv-shock': serious,
  'battery-arc': serious,
  'bus-inrush': serious,
  'stored-charge': serious,
  'ac-shock': serious,
  'neutral-open': serious,
  'generator-start': serious,
  'unproved-tester': serious,
  'meter-rating': serious,
  'live-metering': serious,
  'roof-fall': serious,
  lifting: serious,
  'wrong-charge-profile': serious,
  'cold-charge': serious,
  'insulation-test-volts': serious,
  're-energise': serious,
  'close-on-fault': serious,
  'parallel-packs': serious,
  'cell-vent': serious,

  'resistor-hot': moderate,
  'hot-surface': moderate,
  'moving-parts': moderate,

  'data-pins': property,
  'equipment-damage': property,
  'input-overvolts': property,
};
