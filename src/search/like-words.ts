import Fuse from 'fuse.js/basic';

/** How a word of the index comes to stand for a typed one. */
export type How =
  | 'same'
  /** The typed word is how it begins: half a word. */
  | 'begins'
  /** Nearly the same letters: a slip. */
  | 'like'
  /** Said for it. */
  | 'means';

export interface Likeness {
  /** Number of the stem in the index. */
  stem: number;
  /** 1 for the word itself, less the further off it is. */
  quality: number;
  how: How;
  /** `means`, where what was typed is not itself the word that stands for another but like it: that word's number. */
  via?: number;
}

/** Words that begin with two typed letters may be half the index; the first so many are enough. */
const mostBeginnings = 40;
const mostSlips = 6;

/** Wrong letters allowed, as a part of the typed word's length: one in four letters, two in seven. */
const slipsAllowed = 0.3;
const shortestWithSlips = 5;

/** Of two like words the one nearer in length is meant: taken off for every letter more or less. */
const lengthCost = 0.04;
/** The first letter is seldom the wrong one. */
const firstLetterCost = 0.15;
/** What is further off than this is another word. */
const leastLike = 0.62;

/** A word with more letters more or less than this is another. */
const mostLengthApart = 3;
const mostKept = 500;

interface Numbered {
  root: string;
  number: number;
}

const fuseOptions = {
  keys: ['root'],
  threshold: slipsAllowed,
  includeScore: true,
  minMatchCharLength: 2,
  ignoreFieldNorm: true,
};

/**
 * Finds the words of the index that a typed word may stand for. Fuse looks for slips through the unique words alone, each
 * held once however many entries have it, and only for words that are no word of the index and not the beginning of one.
 */
export class LikeWords {
  readonly #stems: readonly string[];
  readonly #at: ReadonlyMap<string, number>;
  /** The stems of each length with their numbers. */
  readonly #ofLength = new Map<number, Fuse<Numbered>>();
  readonly #slipsOf = new Map<string, readonly Likeness[]>();

  /** @param stems in order of the alphabet, by code units */
  constructor(stems: readonly string[]) {
    this.#stems = stems;
    this.#at = new Map(stems.map((root, index) => [root, index]));
    const lengths = new Map<number, Numbered[]>();
    stems.forEach((root, number) => {
      const group = lengths.get(root.length);
      if (group) group.push({ root, number });
      else lengths.set(root.length, [{ root, number }]);
    });
    for (const [length, group] of lengths) this.#ofLength.set(length, new Fuse(group, fuseOptions));
  }

  /** The number of a stem; undefined for one that the index does not have. */
  numberOf(root: string): number | undefined {
    return this.#at.get(root);
  }

  /**
   * @param word as typed, without its case
   * @param root its stem
   * @param unfinished true where the reader may still be typing it
   */
  find(word: string, root: string, unfinished: boolean): readonly Likeness[] {
    const same = this.#at.get(root);
    const beginnings = unfinished || same === undefined ? this.#beginningWith(word, root) : [];
    if (same !== undefined)
      return [
        { stem: same, quality: 1, how: 'same' },
        // A whole word is more likely meant than one that goes on.
        ...beginnings
          .filter(({ stem }) => stem !== same)
          .map((likeness) => ({ ...likeness, quality: likeness.quality * 0.7 })),
      ];
    if (beginnings.length > 0) return beginnings;
    return root.length < shortestWithSlips ? [] : this.#slips(root);
  }

  #beginningWith(word: string, root: string): Likeness[] {
    const found: Likeness[] = [];
    for (const start of new Set([word, root])) {
      if (start.length < 2) continue;
      for (let at = this.#firstFrom(start); at < this.#stems.length; at += 1) {
        const whole = this.#stems[at]!;
        if (!whole.startsWith(start) || found.length >= mostBeginnings) break;
        if (!found.some(({ stem }) => stem === at))
          found.push({ stem: at, quality: 0.7 + (0.25 * start.length) / whole.length, how: 'begins' });
      }
    }
    return found;
  }

  #firstFrom(start: string): number {
    let low = 0;
    let high = this.#stems.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#stems[middle]! < start) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Kept for every word: the next letter is most often one of another. */
  #slips(root: string): readonly Likeness[] {
    const known = this.#slipsOf.get(root);
    if (known) return known;
    if (this.#slipsOf.size > mostKept) this.#slipsOf.clear();
    const found = this.#lookForSlips(root);
    this.#slipsOf.set(root, found);
    return found;
  }

  #lookForSlips(root: string): Likeness[] {
    const found: Likeness[] = [];
    for (let length = root.length - mostLengthApart; length <= root.length + mostLengthApart; length += 1)
      for (const { item, score = 1 } of this.#ofLength.get(length)?.search(root) ?? []) {
        const quality =
          0.95 -
          score -
          lengthCost * Math.abs(length - root.length) -
          (item.root[0] === root[0] ? 0 : firstLetterCost);
        if (quality > leastLike) found.push({ stem: item.number, quality, how: 'like' });
      }
    found.sort((a, b) => b.quality - a.quality);
    const [best] = found;
    return best ? found.filter(({ quality }) => quality > best.quality - 0.12).slice(0, mostSlips) : [];
  }
}
