/** What can be found, and the index of it that the build writes and the page fetches. */

export const kinds = ['guide', 'cause', 'procedure', 'worksheet', 'library', 'glossary', 'step'] as const;
export type Kind = (typeof kinds)[number];

/** What sort of words a phrase is. `said`: how people say it, written by the author of the page or in the alias file. */
export const fields = ['title', 'said', 'summary'] as const;
export type Field = (typeof fields)[number];

export interface Phrase {
  field: Field;
  text: string;
}

/** One thing that can be found. */
export interface Entry {
  kind: Kind;
  /** `kind/id`; of a step `step/machine/id`. */
  id: string;
  /** Its address from the site's base. */
  url: string;
  /** Id of the guide or procedure that a step stands in, or of the guide that finds a cause. */
  under?: string;
  /** The title first. */
  phrases: readonly Phrase[];
}

/** Words that mean the same, or that are said for another. */
export interface Aliases {
  /** Words that say nothing about what is looked for. */
  ignore: readonly string[];
  /** What is said, and the words of the pages that it stands for. */
  means: readonly { said: readonly string[]; words: readonly string[] }[];
  /** More ways to say an entry, by its id. */
  said: Readonly<Record<string, readonly string[]>>;
}

/** The index as it is sent: columns of plain values, small when packed. */
export interface SearchIndex {
  /** Kind by its place in `kinds`, id, address, and the number of the entry that it stands under. */
  entries: readonly (readonly [kind: number, id: string, url: string, under?: number])[];
  /** Of every entry its phrases: field by its place in `fields`, then the text. */
  phrases: readonly (readonly (readonly [field: number, text: string])[])[];
  /** Every stem, in order of the alphabet, parted by spaces. */
  stems: string;
  /** Where a stem is no word to be shown, the word; parted by spaces, empty where the stem serves. */
  shown: string;
  /** For every stem, the phrases that hold it, numbered through all entries; each number less the one before it. */
  postings: readonly (readonly number[])[];
  /** Stems that say nothing. */
  ignore: readonly string[];
  /** What is said, as stems, and the numbers of the stems it stands for. */
  means: readonly (readonly [said: string, stems: readonly number[]])[];
}
