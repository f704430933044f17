import type { Likeness } from './like-words.ts';
import type { LoadedIndex } from './loaded-index.ts';
import { stem, tokensOf } from './spelling.ts';

/** A word that was typed and says something, with all that it may stand for. */
export interface Term {
  /** As typed, without its case. */
  word: string;
  /** Best first for every stem; empty for a word that nothing here is like. */
  stands: readonly Likeness[];
}

/** Longer than anything a person types; what comes after is not read. */
const mostLetters = 200;
const mostTerms = 12;

/** A thing said for another is nearly as good as its own name. */
const meaningQuality = 0.82;

/** Keeps of every stem its best likeness. */
function bestOfEach(all: readonly Likeness[]): Likeness[] {
  const best = new Map<number, Likeness>();
  for (const each of all) if (each.quality > (best.get(each.stem)?.quality ?? 0)) best.set(each.stem, each);
  return [...best.values()];
}

/**
 * Reads what was typed.
 * @param text anything at all; an empty list where it holds no word that says something
 */
export function readQuery(text: string, index: LoadedIndex): Term[] {
  const typed = text.slice(0, mostLetters);
  const tokens = tokensOf(typed);
  const unfinished = /[\p{L}\p{N}]$/u.test(typed) ? tokens.at(-1) : undefined;
  const read = tokens
    .map((token) => ({ ...token, root: stem(token.word), open: token === unfinished }))
    .filter(({ root }) => !index.ignore.has(root))
    // A letter by itself says something only where the pages have it: lo-z.
    .filter(({ word, root }) => word.length > 1 || index.words.numberOf(root) !== undefined)
    .slice(0, mostTerms);

  const stands = read.map(({ word, root, open }) => {
    const own = index.words.find(word, root, open);
    const meant = own.flatMap(({ stem: at, quality, how }) =>
      meaning(index.stems[at]!, quality, index).map((each) => (how === 'same' ? each : { ...each, via: at })),
    );
    return [...own, ...meant];
  });
  addJoined(read, stands, index);
  addSayings(read, stands, index);
  return read.map(({ word }, at) => ({ word, stands: bestOfEach(stands[at]!) }));
}

const meaning = (said: string, quality: number, { means }: LoadedIndex): Likeness[] =>
  (means.get(said) ?? []).map((stem) => ({ stem, quality: quality * meaningQuality, how: 'means' }));

/** Two words typed that the pages write as one, as *over voltage*. */
function addJoined(read: readonly { word: string }[], stands: Likeness[][], { words }: LoadedIndex): void {
  for (let at = 1; at < read.length; at += 1) {
    const joined = words.numberOf(stem(`${read[at - 1]!.word}${read[at]!.word}`));
    if (joined === undefined) continue;
    for (const each of [at - 1, at]) stands[each]!.push({ stem: joined, quality: 0.95, how: 'same' });
  }
}

/** Sayings of several words. */
function addSayings(read: readonly { root: string }[], stands: Likeness[][], index: LoadedIndex): void {
  for (let length = 2; length <= index.longestMeaning; length += 1)
    for (let from = 0; from + length <= read.length; from += 1) {
      const words = read.slice(from, from + length);
      const meant = meaning(words.map(({ root }) => root).join(' '), 1, index);
      for (let at = from; at < from + length; at += 1) stands[at]!.push(...meant);
    }
}
