import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import { root } from './project.ts';

/** A phrase as a person says it, and the entries of which one should be among the first three. */
export interface Asked {
  say: string;
  wants: readonly string[];
}

/** One file of phrases; how they were made stands at its head. */
export interface PhraseSet {
  name: string;
  fits: readonly Asked[];
  /** Phrases that nothing here fits. */
  nothing: readonly string[];
}

const folder = join(root, 'tests/search/phrases');

/** The phrases that the search is measured by, a set a file. */
export const readPhrases = (): PhraseSet[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => {
      const { fits, nothing } = parse(readFileSync(join(folder, name), 'utf8')) as Omit<PhraseSet, 'name'>;
      return { name: name.replace('.yaml', ''), fits, nothing };
    });

/** Places on the first screen of a phone. */
export const firstPlaces = 3;
