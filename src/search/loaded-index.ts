import { LikeWords } from './like-words.ts';
import { type Field, fields, type Kind, kinds, type SearchIndex } from './search-index.ts';

/** How much words of each sort say about what a page is for. */
const fieldWeight: Readonly<Record<Field, number>> = { title: 1, said: 1, summary: 0.75 };

/** Of equal fits, what helps more: a guide decides, a step stands in the middle of one. */
export const kindWeight: Readonly<Record<Kind, number>> = {
  guide: 1,
  cause: 0.97,
  procedure: 0.96,
  worksheet: 0.95,
  library: 0.93,
  glossary: 0.88,
  step: 0.62,
};

/** The index unpacked for searching: plain arrays of numbers, phrases numbered through all entries. */
export interface LoadedIndex {
  entries: readonly {
    kind: Kind;
    id: string;
    url: string;
    title: string;
    under: number | undefined;
    weight: number;
  }[];
  phrases: readonly { entry: number; field: Field; text: string; weight: number }[];
  words: LikeWords;
  stems: readonly string[];
  shown: readonly string[];
  postings: readonly Int32Array[];
  /** How telling each stem is: the rarer, the more. */
  telling: Float64Array;
  /** Of every phrase, the sum of that over its stems. */
  phraseTelling: Float64Array;
  ignore: ReadonlySet<string>;
  means: ReadonlyMap<string, readonly number[]>;
  /** Stems in the longest thing said that stands for others. */
  longestMeaning: number;
}

/** How telling a word is that stands in `count` of `all` entries. */
export const tellingOf = (count: number, all: number): number => Math.log(1 + all / Math.max(1, count));

/** Unpacks the index. */
export function loadIndex(index: SearchIndex): LoadedIndex {
  const entries = index.entries.map(([kind, id, url, under], entry) => {
    const name = kinds[kind]!;
    const title = index.phrases[entry]?.[0]?.[1] ?? id;
    return { kind: name, id, url, title, under, weight: kindWeight[name] };
  });
  const phrases = index.phrases.flatMap((own, entry) =>
    own.map(([field, text]) => {
      const name = fields[field]!;
      return { entry, field: name, text, weight: fieldWeight[name] };
    }),
  );
  const stems = index.stems === '' ? [] : index.stems.split(' ');
  const shown = index.shown.split(' ');
  const postings = index.postings.map((gaps) => {
    let at = 0;
    return Int32Array.from(gaps, (gap) => (at += gap));
  });
  const telling = new Float64Array(stems.length);
  const phraseTelling = new Float64Array(phrases.length);
  postings.forEach((holders, root) => {
    let count = 0;
    let last = -1;
    for (const phrase of holders) {
      const { entry } = phrases[phrase]!;
      if (entry !== last) count += 1;
      last = entry;
    }
    telling[root] = tellingOf(count, entries.length);
    for (const phrase of holders) phraseTelling[phrase] = phraseTelling[phrase]! + telling[root]!;
  });
  const means = new Map(index.means);
  return {
    entries,
    phrases,
    words: new LikeWords(stems),
    stems,
    shown: stems.map((root, at) => shown[at] || root),
    postings,
    telling,
    phraseTelling,
    ignore: new Set(index.ignore),
    means,
    longestMeaning: Math.max(1, ...[...means.keys()].map((said) => said.split(' ').length)),
  };
}
