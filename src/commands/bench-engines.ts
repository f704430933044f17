/**
 * Runs in the browser's page: our search and MiniSearch over the same entries and phrases, letter by letter. Only the search
 * is timed, nothing is shown.
 */
import MiniSearch from 'minisearch';
import { Finder } from '../search/finder.ts';
import { kindWeight } from '../search/loaded-index.ts';
import type { Kind, SearchIndex } from '../search/search-index.ts';
import { kinds } from '../search/search-index.ts';
import type { Asked } from './search-phrases.ts';

/** What one engine made of the phrases. Times in milliseconds. */
export interface EngineResult {
  loadMs: number;
  medianMs: number;
  worstMs: number;
  keystrokes: number;
  /** Parts of one: wanted among the first three; nothing fits, and so said. */
  recall: number;
  nothingRight: number;
}

interface Engine {
  /** Ids, best first; none where it says that nothing fits. */
  find(text: string): readonly string[];
}

interface Work {
  index: SearchIndex;
  fits: readonly Asked[];
  nothing: readonly string[];
  places: number;
}

const ours = ({ index }: Work): Engine => {
  const finder = new Finder(index);
  return {
    find: (text) => {
      const { verdict, hits } = finder.find(text);
      return verdict === 'fits' ? hits.map(({ id }) => id) : [];
    },
  };
};

/** MiniSearch at its best for this: the same phrases and weights, slips and half words allowed, the same words ignored. */
const theirs = ({ index }: Work): Engine => {
  const ignore = new Set(index.ignore);
  const kindOf = new Map<string, Kind>(index.entries.map(([kind, id]) => [id, kinds[kind]!]));
  const engine = new MiniSearch({
    fields: ['title', 'said', 'summary'],
    processTerm: (term) => (ignore.has(term.toLowerCase()) ? null : term.toLowerCase()),
    searchOptions: {
      prefix: true,
      fuzzy: 0.2,
      boost: { title: 1, said: 1, summary: 0.75 },
      boostDocument: (id) => kindWeight[kindOf.get(String(id))!],
    },
  });
  const text = (entry: number, field: number) =>
    index.phrases[entry]!.filter(([each]) => each === field)
      .map(([, words]) => words)
      .join(' . ');
  engine.addAll(
    index.entries.map(([, id], entry) => ({
      id,
      title: text(entry, 0),
      said: text(entry, 1),
      summary: text(entry, 2),
    })),
  );
  return { find: (typed) => engine.search(typed).map(({ id }) => String(id)) };
};

function measure(make: (work: Work) => Engine, work: Work): EngineResult {
  const begun = performance.now();
  const engine = make(work);
  const loadMs = performance.now() - begun;
  const times: number[] = [];
  const type = (phrase: string): readonly string[] => {
    let found: readonly string[] = [];
    for (let to = 1; to <= phrase.length; to += 1) {
      const pressed = performance.now();
      found = engine.find(phrase.slice(0, to));
      times.push(performance.now() - pressed);
    }
    return found;
  };
  const right = work.fits.filter(({ say, wants }) =>
    type(say)
      .slice(0, work.places)
      .some((id) => wants.includes(id)),
  );
  const none = work.nothing.filter((say) => type(say).length === 0);
  times.sort((a, b) => a - b);
  return {
    loadMs,
    medianMs: times[times.length >> 1]!,
    worstMs: times.at(-1)!,
    keystrokes: times.length,
    recall: right.length / work.fits.length,
    nothingRight: none.length / work.nothing.length,
  };
}

/** Both engines, one after the other. */
export const benchEngines = (work: Work): { ours: EngineResult; miniSearch: EngineResult } => ({
  ours: measure(ours, work),
  miniSearch: measure(theirs, work),
});

Object.assign(globalThis, { benchEngines });
