import type { Tolerance } from './tolerances.ts';

/** A figure that somebody else published, beside what our own code makes of the same inputs. */
export interface OutsideCheck {
  /** Names the case; unique over all worksheets. */
  id: string;
  /** The worksheet whose formula or table it checks. */
  worksheet: string;
  /** The published source: standard and table, book and page, data set. Distinct sources are counted by this text. */
  source: string;
  /** What is worked out, in words. */
  what: string;
  published: number;
  worked: () => number | undefined;
  tolerance: Tolerance;
  /** A figure that circulates among people who do the work, with no publication behind it. */
  commonPractice?: true;
}
