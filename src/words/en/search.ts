/** Words of the search page. */

const kinds: Readonly<Record<string, string>> = {
  guide: 'Find the fault',
  cause: 'Cause',
  procedure: 'Work safely',
  worksheet: 'Worksheet',
  library: 'Library',
  glossary: 'Word of the trade',
  step: 'Step',
};

export const search = {
  title: 'Search',
  lede: 'Say it as you would on the phone.',
  label: 'What does it do, or what do you look for?',
  submit: 'Search',
  loading: 'Fetching the index.',
  failed: 'The index could not be fetched. Pick from the list of symptoms.',
  noScript: 'Searching needs a script, and none is running here. Pick what you see.',
  symptoms: 'Or pick what you see',
  everything: 'Or look through everything',
  results: 'Results',
  near: 'These only share a word with it',
  kinds,
  count: (count: number): string => (count === 1 ? '1 result' : `${count} results`),
  nothing: 'Nothing here fits these words.',
  nothingNext: 'Say what it does in other words, or ',
  nothingLink: 'pick what you see',
  empty: 'Those words say too little. Name what you see, hear or read.',
  unknown: (words: readonly string[]): string =>
    `Not known here: ${words.map((word) => `“${word}”`).join(', ')}.`,
  why: {
    said: 'People say',
    summary: 'In short',
  } as Readonly<Record<string, string>>,
  /** Why a guide fits by the words of one of its causes. */
  finds: ({ field, finds }: { field: string; finds?: string }): string =>
    field === 'title' ? 'It finds' : `It finds “${finds}”. People say`,
  taken: {
    like: (typed: string, as: string) => `“${typed}” read as “${as}”`,
    means: (typed: string, as: string) => `“${typed}” taken for “${as}”`,
  } as Readonly<Record<string, (typed: string, as: string) => string>>,
  under: (title: string): string => `in: ${title}`,
  /** Said for the keyboard. */
  keys: 'Arrow down goes to the results, Escape back to the words.',
} as const;
