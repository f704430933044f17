/** What the meter's own data sheet says of one function: ±(percent of reading + counts of the last digit). */
export interface MeterSpec {
  /** Percent of the reading: 0.5 for "0.5 %". */
  percentOfReading: number;
  /** Number of counts of the last digit. */
  counts: number;
  /** Value of one count in the kind's inside unit, where it is known; else the last digit typed stands for it. */
  resolution?: number;
}

/** How far off a single reading may be, in the unit of the reading. */
export interface Uncertainty {
  /** The true value lies within ± this, if the meter keeps its specification. */
  halfWidth: number;
  /** Standard uncertainty of that interval, taken as rectangular (GUM, JCGM 100:2008, 4.3.7). */
  standard: number;
  /** Twice the standard uncertainty: about 95 %. */
  expanded: number;
}

/**
 * Half-width `a` of the meter's interval about `value`. `typedResolution` is what the last digit typed is
 * worth: someone who writes down fewer digits than the meter shows has rounded, so the larger step counts.
 */
export function halfWidth(value: number, spec: MeterSpec, typedResolution: number): number {
  const step = Math.max(spec.resolution ?? 0, typedResolution);
  return (spec.percentOfReading / 100) * Math.abs(value) + spec.counts * step;
}

/** Uncertainty of one reading from the meter's specification alone: u = a/√3, U = 2u. */
export function readingUncertainty(value: number, spec: MeterSpec, typedResolution: number): Uncertainty {
  const a = halfWidth(value, spec, typedResolution);
  const standard = a / Math.sqrt(3);
  return { halfWidth: a, standard, expanded: 2 * standard };
}
