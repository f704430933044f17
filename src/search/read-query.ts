import type { Likeness } from './like-words.ts';
import type { LoadedIndex } from './loaded-index.ts';
import { stem, type Token, tokensOf } from './spelling.ts';

/** A word that was typed and says something, with all that it may stand for. */
export interface Term {
  /** As typed, without its case. */
  word: string;
  root: string;
  /** Best first for every stem; empty for a word that nothing here is like. */
  stands: readonly Likeness[];
}

/** Longer than anything a person types; what comes after is not read. */
const mostLetters = 200;
const mostTerms = 12;

/** A thing said for another is nearly as good as its own name. */
const meaningQuality = 0.82;
const joinedQuality = 0.95;

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
    .flatMap((token) => parted(token, index))
    .map((token, at) => ({ ...token, at, root: stem(token.word), open: token === unfinished }));
  const telling = read
    .filter(({ root }) => !index.ignore.has(root))
    // A letter by itself says something only where the pages have it: lo-z.
    .filter(({ word, root }) => word.length > 1 || index.words.numberOf(root) !== undefined)
    .slice(0, mostTerms);

  const stands = telling.map(({ word, root, open }) => {
    const own = index.words.find(word, root, open);
    const meant = own.flatMap(({ stem: at, quality, how }) =>
      meaning(index.stems[at]!, quality, index).map((each) => (how === 'same' ? each : { ...each, via: at })),
    );
    return [...own, ...meant];
  });
  telling.forEach(({ at }, term) => {
    stands[term]!.push(...joined(read[at - 1], read[at], index), ...joined(read[at], read[at + 1], index));
  });
  addSayings(telling, stands, index);
  return telling.map(({ word, root }, term) => ({ word, root, stands: bestOfEach(stands[term]!) }));
}

const meaning = (said: string, quality: number, { means }: LoadedIndex): Likeness[] =>
  (means.get(said) ?? []).map((stem) => ({ stem, quality: quality * meaningQuality, how: 'means' }));

/** Two words typed that the pages write as one or with a hyphen, as *over voltage* and *lock out*. */
function joined(one: Token | undefined, two: Token | undefined, { words }: LoadedIndex): Likeness[] {
  const pair = one && two && words.numberOf(stem(one.word + two.word));
  return pair === undefined ? [] : [{ stem: pair, quality: joinedQuality, how: 'same' }];
}

/** Sayings of several words, each as typed or as the word that it is likest to. */
function addSayings(read: readonly { root: string }[], stands: Likeness[][], index: LoadedIndex): void {
  const own = read.map(({ root }, at) => {
    const [best] = stands[at]!;
    return index.words.numberOf(root) === undefined && best?.how === 'like' ? index.stems[best.stem]! : root;
  });
  for (let length = 2; length <= index.longestMeaning; length += 1)
    for (let from = 0; from + length <= own.length; from += 1) {
      const meant = meaning(own.slice(from, from + length).join(' '), 1, index);
      for (let at = from; at < from + length; at += 1) stands[at]!.push(...meant);
    }
}

const shortestGlued = 6;
/** Shorter parts than this are taken for no word, but those of two letters that say nothing: *of*, *on*. */
const shortestPart = 4;

/** A word that is like none of the pages', as the two that it is made of where the space was missed. */
function parted(token: Token, { words, ignore }: LoadedIndex): Token[] {
  const { word } = token;
  const root = stem(word);
  if (word.length < shortestGlued || ignore.has(root) || words.find(word, root, false).length > 0)
    return [token];
  const whole = (part: string): boolean =>
    part.length >= shortestPart && words.numberOf(stem(part)) !== undefined;
  const filler = (part: string): boolean => part.length === 2 && ignore.has(part);
  for (let at = 2; at <= word.length - 2; at += 1) {
    const parts = [word.slice(0, at), word.slice(at)];
    if (parts.some(whole) && parts.every((part) => whole(part) || filler(part)))
      return parts.map((part) => ({ ...token, word: part }));
  }
  return [token];
}
