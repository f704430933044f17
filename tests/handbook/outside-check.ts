import type { Tolerance } from './tolerances.ts';

/**
 * Where the figure comes from. `published`: somebody else printed it. `worked apart`: the formula is published and its
 * numbers were worked out without this code. `from memory`: a table whose text has not been read, so that a check
 * against it only guards against slips. `common practice`: people who do the work quote it.
 */
export type Origin = 'published' | 'worked apart' | 'from memory' | 'common practice';

/** A figure from outside, beside what our own code makes of the same inputs. */
export interface OutsideCheck {
  /** Names the case; unique over all worksheets. */
  id: string;
  /** The worksheet whose formula or table it checks. */
  worksheet: string;
  /** The source: standard and table, book and page, data set. Distinct sources are counted by this text. */
  source: string;
  origin: Origin;
  /** What is worked out, in words. */
  what: string;
  published: number;
  worked: () => number | undefined;
  tolerance: Tolerance;
}
