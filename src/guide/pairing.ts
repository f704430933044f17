/**
 * A pairing grid: the settings that the inverter offers for its battery against those that the pack offers for its
 * inverter, both typed as they are printed on the person's own equipment. It says which pair to try next; it knows no
 * maker. At most six by six, so that a grid fully tried always ends.
 */

/** Options on one side, and characters of one. */
export const mostOptions = 6;
export const longestOption = 60;

/** One setting at the inverter with one at the pack. */
export interface Pair {
  inverter: string;
  pack: string;
}

/** The two lists as typed, how both stood when the grid was begun, and what the papers name. */
export interface Grid {
  inverter: readonly string[];
  pack: readonly string[];
  /** As found: the pair that stands while the link is down. */
  found: Pair;
  /** The inverter's option that a paper names for this pack, the pack's that a paper names for this inverter. */
  named: Partial<Pair>;
}

/** A pair that was set, and what came of it after how long. */
export interface PairTry extends Pair {
  /** Outcome of the step that says what came of it; missing while it is not known. */
  result?: string;
  /** Seconds from the plant standing ready with this pair to the result. */
  waitedS?: number;
}

const same = (a: Pair, b: Pair): boolean => a.inverter === b.inverter && a.pack === b.pack;

/** The pair that stands now: the last one set, or the one found. */
export const standingPair = (grid: Grid, tries: readonly PairTry[]): Pair => tries.at(-1) ?? grid.found;

/** Words of a name that two makers could share; numbers alone say nothing. */
const wordsOf = (name: string): string[] => name.toLowerCase().match(/[a-z][a-z0-9]+/g) ?? [];
const readAlike = ({ inverter, pack }: Pair): boolean =>
  wordsOf(inverter).some((word) => wordsOf(pack).includes(word));

/**
 * How likely a pair is, the highest first: named by the papers, names that share a word, no change at the pack (each asks
 * for the packs to be powered down), and last the pair that is known to be down.
 */
function likelihood(grid: Grid, now: Pair, pair: Pair): number {
  return (
    (pair.inverter === grid.named.inverter ? 4 : 0) +
    (pair.pack === grid.named.pack ? 4 : 0) +
    (readAlike(pair) ? 2 : 0) +
    (pair.pack === now.pack ? 1 : 0) -
    (same(pair, grid.found) ? 3 : 0)
  );
}

/** Pairs with no result yet, the likeliest first; of two alike, the one typed first. */
export function untried(grid: Grid, tries: readonly PairTry[]): Pair[] {
  const now = standingPair(grid, tries);
  return grid.pack
    .flatMap((pack) => grid.inverter.map((inverter) => ({ inverter, pack })))
    .filter((pair) => !tries.some((each) => each.result !== undefined && same(each, pair)))
    .map((pair, place) => ({ pair, place, likely: likelihood(grid, now, pair) }))
    .sort((a, b) => b.likely - a.likely || a.place - b.place)
    .map(({ pair }) => pair);
}

/** Which way a pair is set: at the inverter alone, or with the packs powered down. */
export const sideOf = (now: Pair, pair: Pair): 'at-inverter' | 'at-pack' =>
  pair.pack === now.pack && pair.inverter !== now.inverter ? 'at-inverter' : 'at-pack';

/** Options as typed, one a line or apart by semicolons: trimmed, none empty, none twice. */
export const readOptions = (text: string): string[] => [
  ...new Set(
    text
      .split(/[\n;]/)
      .map((each) => each.trim().replace(/\s+/g, ' '))
      .filter((each) => each !== ''),
  ),
];

/** What is wrong with a grid, as the last part of a message's id; `undefined` when nothing is. */
export function gridProblem(grid: Grid): { field: string; problem: string } | undefined {
  for (const side of ['inverter', 'pack'] as const) {
    const options = grid[side];
    if (options.length === 0) return { field: side, problem: 'noOptions' };
    if (options.length > mostOptions) return { field: side, problem: 'manyOptions' };
    if (options.some((each) => each.length > longestOption)) return { field: side, problem: 'longOption' };
    if (new Set(options).size < options.length) return { field: side, problem: 'twiceOption' };
    if (!options.includes(grid.found[side])) return { field: `found-${side}`, problem: 'notFound' };
    const named = grid.named[side];
    if (named !== undefined && !options.includes(named))
      return { field: `named-${side}`, problem: 'notNamed' };
  }
  return undefined;
}
