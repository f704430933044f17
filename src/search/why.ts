import type { How } from './like-words.ts';
import type { LoadedIndex } from './loaded-index.ts';
import type { Term } from './read-query.ts';
import type { Field } from './search-index.ts';
import { stem, tokensOf } from './spelling.ts';

/** A piece of the phrase that fits; `met` where it answers a typed word. */
export interface Piece {
  text: string;
  met: boolean;
}

/** A typed word that was taken for another. */
export interface Taken {
  typed: string;
  /** The word of the page. */
  as: string;
  how: Exclude<How, 'same'>;
}

/** Why a hit fits: the words of it that fit best, and how the typed ones were read. */
export interface Why {
  field: Field;
  pieces: readonly Piece[];
  taken: readonly Taken[];
}

/** Why the entry of this phrase was found. */
export function whyOf(phrase: number, terms: readonly Term[], index: LoadedIndex): Why {
  const { field, text } = index.phrases[phrase]!;
  const pieces: Piece[] = [];
  const taken = new Map<string, Taken>();
  let done = 0;
  for (const { word, from, to } of tokensOf(text)) {
    const reading = readingOf(stem(word), terms, index);
    if (!reading) continue;
    if (from > done) pieces.push({ text: text.slice(done, from), met: false });
    pieces.push({ text: text.slice(from, to), met: true });
    done = to;
    const { typed, how, quality } = reading;
    if (how !== 'same' && quality > (taken.get(typed)?.as ? 1 : 0))
      taken.set(typed, { typed, as: text.slice(from, to), how });
  }
  if (done < text.length) pieces.push({ text: text.slice(done), met: false });
  return { field, pieces, taken: [...taken.values()] };
}

/** The typed word that a word of the phrase answers best. */
function readingOf(root: string, terms: readonly Term[], { words }: LoadedIndex) {
  const at = words.numberOf(root);
  if (at === undefined) return undefined;
  return terms
    .flatMap(({ word, stands }) =>
      stands.filter(({ stem }) => stem === at).map(({ how, quality }) => ({ typed: word, how, quality })),
    )
    .sort((a, b) => b.quality - a.quality)[0];
}
