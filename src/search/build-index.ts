import { type Aliases, type Entry, fields, kinds, type SearchIndex } from './search-index.ts';
import { joinedWords, stem, stemsOf, tokensOf } from './spelling.ts';

/** The stems of a phrase and the word that each was, hyphened pairs also as one word. */
function wordsIn(text: string): [stem: string, word: string][] {
  const single = tokensOf(text).map(({ word }) => word);
  return [...single, ...joinedWords(text)].map((word) => [stem(word), word]);
}

/** Entries with the alias file's phrases added. */
const withAliases = (entries: readonly Entry[], said: Aliases['said']): Entry[] =>
  entries.map((entry) => ({
    ...entry,
    phrases: [...entry.phrases, ...(said[entry.id] ?? []).map((text) => ({ field: 'said' as const, text }))],
  }));

/** Ids in the alias file that no entry has: a page that was renamed, or a slip. */
export const strayAliases = (entries: readonly Entry[], { said }: Aliases): string[] => {
  const known = new Set(entries.map(({ id }) => id));
  return Object.keys(said).filter((id) => !known.has(id));
};

/**
 * The index of everything that can be found.
 * @param entries in the order in which equals are to be shown
 */
export function buildIndex(entries: readonly Entry[], aliases: Aliases): SearchIndex {
  const all = withAliases(entries, aliases.said);
  const ignore = new Set(aliases.ignore.flatMap(stemsOf));
  const holders = new Map<string, Set<number>>();
  const words = new Map<string, Map<string, number>>();
  const note = (root: string, word: string): void => {
    const seen = words.get(root) ?? new Map<string, number>();
    words.set(root, seen.set(word, (seen.get(word) ?? 0) + 1));
  };

  let phrase = 0;
  for (const { phrases } of all)
    for (const { text } of phrases) {
      for (const [root, word] of wordsIn(text)) {
        if (ignore.has(root)) continue;
        holders.set(root, (holders.get(root) ?? new Set()).add(phrase));
        note(root, word);
      }
      phrase += 1;
    }
  for (const { said, words: meant } of aliases.means)
    for (const text of [...said, ...meant])
      for (const { word } of tokensOf(text)) if (!ignore.has(stem(word))) note(stem(word), word);

  const stems = [...words.keys()].sort();
  const at = new Map(stems.map((root, index) => [root, index]));
  const place = new Map(all.map(({ id }, entry) => [id, entry]));
  return {
    entries: all.map(({ kind, id, url, under }) => {
      const over = under === undefined ? undefined : place.get(under);
      return over === undefined ? [kinds.indexOf(kind), id, url] : [kinds.indexOf(kind), id, url, over];
    }),
    phrases: all.map(({ phrases }) => phrases.map(({ field, text }) => [fields.indexOf(field), text])),
    stems: stems.join(' '),
    shown: stems.map((root) => wordShown(root, words.get(root)!)).join(' '),
    postings: stems.map((root) => gaps([...(holders.get(root) ?? [])])),
    ignore: [...ignore].sort(),
    means: meanings(aliases, ignore, at),
  };
}

/** The word that stands for a stem on the screen: the one written most, of equals the shortest. Empty: the stem itself. */
function wordShown(root: string, seen: ReadonlyMap<string, number>): string {
  const [[best]] = [...seen].sort(([a, times], [b, often]) => often - times || a.length - b.length) as [
    [string, number],
  ];
  return best === root ? '' : best;
}

const gaps = (numbers: readonly number[]): number[] =>
  numbers.map((number, at) => number - (numbers[at - 1] ?? 0));

function meanings(
  { means }: Aliases,
  ignore: ReadonlySet<string>,
  at: ReadonlyMap<string, number>,
): SearchIndex['means'] {
  const found = new Map<string, Set<number>>();
  for (const { said, words } of means) {
    const meant = words.flatMap(stemsOf).flatMap((root) => at.get(root) ?? []);
    for (const text of said) {
      const key = stemsOf(text)
        .filter((root) => !ignore.has(root))
        .join(' ');
      if (key === '') continue;
      const so = found.get(key) ?? new Set<number>();
      for (const index of meant) so.add(index);
      found.set(key, so);
    }
  }
  return [...found].map(([key, indexes]) => [key, [...indexes]]);
}
