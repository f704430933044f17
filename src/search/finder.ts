import { type LoadedIndex, loadIndex, tellingOf } from './loaded-index.ts';
import { readQuery, type Term } from './read-query.ts';
import type { Kind, SearchIndex } from './search-index.ts';
import { stemsOf } from './spelling.ts';
import { type Why, whyOf } from './why.ts';

/** One thing found. */
export interface Hit {
  kind: Kind;
  id: string;
  /** Address from the site's base. */
  url: string;
  title: string;
  /** Title of what it stands under. */
  under?: string;
  why: Why;
  /** 0 to 1. Good for an order alone. */
  score: number;
  /** The part of what was typed that the entry speaks of, 0 to 1, telling words counting more. */
  covered: number;
}

export interface Found {
  /**
   * `nothing`: no entry speaks of enough of what was typed, and `hits` only share a word with it. `empty`: nothing was
   * typed that says something.
   */
  verdict: 'fits' | 'nothing' | 'empty';
  hits: readonly Hit[];
  /** Typed words that nothing here is like. */
  unknown: readonly string[];
}

const mostHits = 8;
const mostNear = 3;

/** An entry that speaks of less than this part of what was typed does not fit it. */
const leastCovered = 0.46;
/** In a long sentence much is said beside the point: with three telling words met, less will do. */
const leastCoveredOfMany = 0.34;
/** Hits that are far worse than the best are left out. */
const leastOfBest = 0.55;

/** An unknown word tells as much as the rarest word here; a number that nothing has, a quarter of it. */
const entriesOfUnknown = 1;
const numberShare = 0.25;

/** A guide fits nearly as well as the best of the causes that it finds: it is the way there. */
const guideOfCause = 0.92;

/** Added where what was typed is a title, word for word. Only so many of the first are looked at. */
const wholeTitle = 0.25;
const mostLookedAt = 40;

/** What one typed word comes to over all phrases. */
interface Spread {
  /** How telling it is. */
  weight: number;
  phrases: Int32Array;
  /** For each of them, how well it is met, and how telling the word is that meets it. */
  quality: Float32Array;
  met: Float32Array;
}

/** Searches one index. It keeps what it worked out for each word, so that a further letter costs one word's work. */
export class Finder {
  readonly #index: LoadedIndex;
  readonly #spreads = new Map<string, Spread>();
  /** Of titles looked at, the stems that say something. */
  readonly #titles = new Map<number, string>();
  // Sums over phrases and entries; zero between searches.
  readonly #phraseCover: Float64Array;
  readonly #phraseMet: Float64Array;
  readonly #entryCover: Float64Array;
  readonly #entryBest: Float64Array;
  readonly #entryTerm: Int32Array;
  readonly #entryTermQuality: Float64Array;
  readonly #entryTerms: Int32Array;

  constructor(index: SearchIndex) {
    this.#index = loadIndex(index);
    const { phrases, entries } = this.#index;
    this.#phraseCover = new Float64Array(phrases.length);
    this.#phraseMet = new Float64Array(phrases.length);
    this.#entryCover = new Float64Array(entries.length);
    this.#entryBest = new Float64Array(entries.length);
    this.#entryTerm = new Int32Array(entries.length);
    this.#entryTermQuality = new Float64Array(entries.length);
    this.#entryTerms = new Int32Array(entries.length);
  }

  /** What fits a text, best first. Any text is allowed. */
  find(text: string): Found {
    const terms = readQuery(text, this.#index);
    if (terms.length === 0) return { verdict: 'empty', hits: [], unknown: [] };
    const ranked = this.#rank(terms);
    const unknown = terms.filter(({ stands }) => stands.length === 0).map(({ word }) => word);
    const [best] = ranked;
    if (!best) return { verdict: 'nothing', hits: [], unknown };
    const fits = ranked.filter(
      ({ covered, met, score }) =>
        score >= best.score * leastOfBest &&
        (covered >= leastCovered || (met >= 3 && covered >= leastCoveredOfMany)),
    );
    const verdict = fits.length > 0 ? 'fits' : 'nothing';
    const kept = fits.length > 0 ? fits.slice(0, mostHits) : ranked.slice(0, mostNear);
    return { verdict, hits: kept.map((each) => this.#hit(each, terms)), unknown };
  }

  #rank(terms: readonly Term[]): Ranked[] {
    const { phrases, entries, phraseTelling } = this.#index;
    const spreads = terms.map((term) => this.#spread(term));
    const whole = spreads.reduce((sum, { weight }) => sum + weight, 0);
    const touched: number[] = [];
    spreads.forEach(({ weight, phrases: held, quality, met }, term) => {
      for (let at = 0; at < held.length; at += 1) {
        const phrase = held[at]!;
        const { entry, weight: fieldWeight } = phrases[phrase]!;
        if (this.#phraseCover[phrase] === 0) touched.push(phrase);
        this.#phraseCover[phrase]! += weight * quality[at]!;
        this.#phraseMet[phrase]! += met[at]!;
        this.#addToEntry(entry, term + 1, weight, quality[at]! * fieldWeight);
      }
    });
    const found = new Map<number, Ranked>();
    for (const phrase of touched) {
      const { entry, weight } = phrases[phrase]!;
      const length = Math.min(1, this.#phraseMet[phrase]! / phraseTelling[phrase]!);
      const fit = weight * (this.#phraseCover[phrase]! / whole) * (0.6 + 0.4 * length);
      this.#phraseCover[phrase] = 0;
      this.#phraseMet[phrase] = 0;
      const known = found.get(entry);
      if (known && fit <= this.#entryBest[entry]!) continue;
      this.#entryBest[entry] = fit;
      const covered = this.#entryCover[entry]! / whole;
      const score = entries[entry]!.weight * (0.55 * fit + 0.45 * covered);
      found.set(entry, { entry, phrase, covered, score, met: this.#entryTerms[entry]! });
    }
    for (const entry of found.keys()) {
      this.#entryCover[entry] = 0;
      this.#entryBest[entry] = 0;
      this.#entryTerm[entry] = 0;
      this.#entryTerms[entry] = 0;
    }
    for (const cause of [...found.values()]) this.#liftGuide(cause, found);
    const ranked = [...found.values()].sort(byScore);
    const typed = terms.map(({ root }) => root).join(' ');
    for (const each of ranked.slice(0, mostLookedAt))
      if (this.#titleRoots(each.entry) === typed) each.score = Math.min(1, each.score + wholeTitle);
    return ranked.sort(byScore);
  }

  #titleRoots(entry: number): string {
    const known = this.#titles.get(entry);
    if (known !== undefined) return known;
    const { entries, ignore } = this.#index;
    const roots = stemsOf(entries[entry]!.title)
      .filter((root) => !ignore.has(root))
      .join(' ');
    this.#titles.set(entry, roots);
    return roots;
  }

  #liftGuide(cause: Ranked, found: Map<number, Ranked>): void {
    const { kind, under } = this.#index.entries[cause.entry]!;
    if (kind !== 'cause' || under === undefined) return;
    const score = cause.score * guideOfCause;
    if (score <= (found.get(under)?.score ?? 0)) return;
    found.set(under, { ...cause, entry: under, score, through: cause.entry });
  }

  /** Counts for an entry the best of a term's phrases, once. */
  #addToEntry(entry: number, term: number, weight: number, quality: number): void {
    const before = this.#entryTerm[entry] === term ? this.#entryTermQuality[entry]! : 0;
    if (this.#entryTerm[entry] !== term) this.#entryTerms[entry]! += 1;
    else if (quality <= before) return;
    this.#entryTerm[entry] = term;
    this.#entryTermQuality[entry] = quality;
    this.#entryCover[entry]! += weight * (quality - before);
  }

  #spread({ word, stands }: Term): Spread {
    const key = `${word} ${stands.map(({ stem, quality }) => `${stem}:${quality.toFixed(2)}`).join()}`;
    const known = this.#spreads.get(key);
    if (known) return known;
    const made = this.#makeSpread(word, stands);
    if (this.#spreads.size > 200) this.#spreads.clear();
    this.#spreads.set(key, made);
    return made;
  }

  #makeSpread(word: string, stands: Term['stands']): Spread {
    const { postings, telling, phrases, entries } = this.#index;
    const best = new Map<number, { quality: number; met: number }>();
    for (const { stem, quality } of stands)
      for (const phrase of postings[stem]!) {
        const met = telling[stem]! * quality;
        const before = best.get(phrase);
        if (!before) best.set(phrase, { quality, met });
        else if (quality > before.quality) {
          before.quality = quality;
          before.met = met;
        }
      }
    const held = Int32Array.from(best.keys()).sort();
    const holders = new Set<number>();
    for (const phrase of held) holders.add(phrases[phrase]!.entry);
    const unknown = tellingOf(entriesOfUnknown, entries.length) * (/^\d+$/.test(word) ? numberShare : 1);
    return {
      weight: held.length > 0 ? tellingOf(holders.size, entries.length) : unknown,
      phrases: held,
      quality: Float32Array.from(held, (phrase) => best.get(phrase)!.quality),
      met: Float32Array.from(held, (phrase) => best.get(phrase)!.met),
    };
  }

  #hit({ entry, phrase, through, score, covered }: Ranked, terms: readonly Term[]): Hit {
    const { entries } = this.#index;
    const { kind, id, url, title, under } = entries[entry]!;
    const why = whyOf(phrase, terms, this.#index);
    return {
      kind,
      id,
      url,
      title,
      ...(under === undefined ? {} : { under: entries[under]!.title }),
      why: through === undefined ? why : { ...why, finds: entries[through]!.title },
      score,
      covered,
    };
  }
}

const byScore = (a: Ranked, b: Ranked): number => b.score - a.score || a.entry - b.entry;

interface Ranked {
  entry: number;
  /** The phrase that fits best. */
  phrase: number;
  /** The entry whose phrase it is, where it is a cause of this guide. */
  through?: number;
  covered: number;
  score: number;
  /** How many of the typed words it speaks of. */
  met: number;
}
