/**
 * Worksheets that no outside figure holds, each with the reason why there is none: at most one in ten, and never one
 * that sizes protection, a conductor or string volts. An entry that has found its figure is taken off.
 */
export const commonPractice: Readonly<Record<string, string>> = {};

/** The largest share of the shelf that may stand on common practice alone. */
export const mostCommonPractice = 0.1;
