import { posterior } from './belief.ts';
import { type History, notDone } from './history.ts';
import { noneOfThese, type Table } from './table.ts';

/** Below this share a suspect counts as ruled out on the page; it stays in the list and can come back. */
export const ruledOutBelow = 0.01;

/** How a suspect stands after the readings so far. */
export interface Standing {
  suspect: number;
  share: number;
  /** "None of these" is never ruled out. */
  ruledOut: boolean;
  /** Checks whose reading speaks against this suspect, the strongest first. */
  against: readonly { check: number; outcome: number; bits: number }[];
}

/**
 * Every suspect, "none of these" among them, likeliest first. `bits` is how much less likely the reading
 * is under this suspect than under the best explanation of that same reading: log2 of the ratio (weight of evidence,
 * Good 1950).
 */
export function standings(table: Table, history: History): Standing[] {
  const shares = posterior(table, history);
  const isNone = (suspect: number): boolean => table.suspects[suspect]!.id === noneOfThese;
  const againstOf = (suspect: number) =>
    history
      .flatMap((outcome, check) => {
        if (outcome === notDone) return [];
        const { rows } = table.checks[check]!;
        const most = Math.max(...rows.map((row) => row[outcome]!));
        const mine = rows[suspect]![outcome]!;
        return mine < most
          ? [{ check, outcome, bits: mine > 0 ? Math.log2(most / mine) : Number.POSITIVE_INFINITY }]
          : [];
      })
      .sort((a, b) => b.bits - a.bits || a.check - b.check);
  return shares
    .map((share, suspect) => ({
      suspect,
      share,
      ruledOut: !isNone(suspect) && share < ruledOutBelow,
      against: againstOf(suspect),
    }))
    .sort((a, b) => b.share - a.share || a.suspect - b.suspect);
}
