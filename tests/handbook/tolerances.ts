/**
 * The one table of what a worksheet may differ from a published figure, by why the two differ at all.
 * `relative` is a share of the published figure, `absolute` is in its inside unit; the larger one counts.
 */
export const tolerances = {
  /** Counting and whole numbers: no difference is allowed. */
  exact: { relative: 1e-12, absolute: 0 },
  /** The source gives full precision; only floating point differs. */
  fullPrecision: { relative: 1e-9, absolute: 0 },
  /** The source rounds to four or five figures. */
  rounded: { relative: 5e-5, absolute: 0 },
  /** The source prints volts to a hundredth. */
  centivolt: { relative: 0, absolute: 0.0051 },
  /** The source prints volts to a tenth, or a percentage to a tenth. */
  decivolt: { relative: 0, absolute: 0.051 },
  /** The source prints a percentage to a tenth: half a unit of its last place. */
  tenthOfPercent: { relative: 0, absolute: 0.00051 },
  /** Three-figure code tables multiplied out. */
  codeTable: { relative: 0.002, absolute: 0 },
  /** The two columns of one code table, feet and metres, which part by up to 0.4 % in print. */
  twoColumns: { relative: 0.005, absolute: 0 },
  /** One K for every size; the rows of the table part from it by up to 0.6 %. */
  kForm: { relative: 0.008, absolute: 0 },
  /** A worked example that itself rounds on the way. */
  workedExample: { relative: 0.005, absolute: 0 },
  /** Handbook figures with two or three places kept. */
  threeFigures: { relative: 0.003, absolute: 0 },
  /** A straight line through two points of a curved physical model, judged at a third. */
  linearModel: { relative: 0.005, absolute: 0 },
  /** A figure a practitioner quotes with "about". */
  about: { relative: 0.015, absolute: 0 },
} as const;

export type Tolerance = keyof typeof tolerances;

/** The difference that is still accepted. */
export function allowed(published: number, tolerance: Tolerance): number {
  const { relative, absolute } = tolerances[tolerance];
  return Math.max(relative * Math.abs(published), absolute);
}
