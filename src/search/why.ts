import type { How } from './like-words.ts';
import type { LoadedIndex } from './loaded-index.ts';
import type { Term } from './read-query.ts';
import type { Field } from './search-index.ts';
import { stem, type Token, tokensOf } from './spelling.ts';

/** A piece of the phrase that fits; `met` where it answers a typed word. */
export interface Piece {
  text: string;
  met: boolean;
}

/** A typed word that was taken for another. Half a word is none: the whole of it is marked. */
export interface Taken {
  typed: string;
  /** The word of the page. */
  as: string;
  how: 'like' | 'means';
}

/** Why a hit fits: the words of it that fit best, and how the typed ones were read. */
export interface Why {
  field: Field;
  /** Where they are the words of a cause, and the hit is the guide that finds it: the cause's title. */
  finds?: string;
  pieces: readonly Piece[];
  taken: readonly Taken[];
}

/** Why the entry of this phrase was found. */
export function whyOf(phrase: number, terms: readonly Term[], index: LoadedIndex): Why {
  const { field, text } = index.phrases[phrase]!;
  const pieces: Piece[] = [];
  const taken = new Map<string, Taken>();
  let done = 0;
  for (const { word, from, to } of wordsShown(text, terms, index)) {
    const reading = readingOf(stem(word), terms, index);
    if (!reading) continue;
    if (from > done) pieces.push({ text: text.slice(done, from), met: false });
    pieces.push({ text: text.slice(from, to), met: true });
    done = to;
    const { typed, how, via } = reading;
    if ((how !== 'like' && how !== 'means') || taken.has(typed)) continue;
    const named = via === undefined ? typed : `${typed} (${index.shown[via]})`;
    taken.set(typed, { typed: named, as: text.slice(from, to), how });
  }
  if (done < text.length) pieces.push({ text: text.slice(done), met: false });
  return { field, pieces, taken: [...taken.values()] };
}

/** The words of a phrase; a hyphened pair as one where that is what was typed. */
function wordsShown(text: string, terms: readonly Term[], index: LoadedIndex): Token[] {
  const shown: Token[] = [];
  for (const token of tokensOf(text)) {
    const before = shown.at(-1);
    if (before && /^[-‑–]$/.test(text.slice(before.to, token.from))) {
      const pair = { word: before.word + token.word, from: before.from, to: token.to };
      if (readingOf(stem(pair.word), terms, index)) {
        shown[shown.length - 1] = pair;
        continue;
      }
    }
    shown.push(token);
  }
  return shown;
}

interface Reading {
  typed: string;
  how: How;
  via?: number;
}

/** The typed word that a word of the phrase answers best. */
function readingOf(root: string, terms: readonly Term[], { words }: LoadedIndex): Reading | undefined {
  const at = words.numberOf(root);
  if (at === undefined) return undefined;
  let best: (Reading & { quality: number }) | undefined;
  for (const { word: typed, stands } of terms)
    for (const each of stands)
      if (each.stem === at && each.quality > (best?.quality ?? 0)) best = { typed, ...each };
  return best;
}
