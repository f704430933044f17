/** Words as the search compares them: without case, accents, signs and endings. The same for the index and for what is typed. */

/** Units that people write against their number. */
const glued = /^(\d+)(v|volts?|a|amps?|w|kw|watts?|ohms?|hz|c|f|k)$/;

/** A run of letters and digits in a text, and where it stands. */
export interface Token {
  /** Lower case, without accents or apostrophes. */
  word: string;
  /** From and to in the text. */
  from: number;
  to: number;
}

/** Letters, digits, and apostrophes between them. */
const run = /[\p{L}\p{N}]+(?:['’ʼ`´][\p{L}\p{N}]+)*/gu;

/** One word in plain letters. */
const plain = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]/gu, '')
    .toLowerCase();

/** The words of a text in order, with their places. Any text is allowed; what is no letter or digit only parts words. */
export function tokensOf(text: string): Token[] {
  return [...text.matchAll(run)].flatMap((match) => {
    const word = plain(match[0]);
    if (word === '') return [];
    const from = match.index;
    const to = from + match[0].length;
    const [, number] = glued.exec(word) ?? [];
    return [{ word: number ?? word, from, to }];
  });
}

/** Pairs written with a hyphen, as one word: people write pre-charge, pre charge and precharge. */
export const joinedWords = (text: string): string[] =>
  [...text.matchAll(/[\p{L}\p{N}]+(?:[-‑–][\p{L}\p{N}]+)+/gu)].map(([pair]) => plain(pair));

const vowel = /[aeiouy]/;

/** `trip` of `tripp`; `ll`, `ss` and `zz` stand at the end of words by themselves. */
const undoubled = (root: string): string => (/([^lsz])\1$/.test(root) ? root.slice(0, -1) : root);

/**
 * A word without its ending, so that trips, tripped and tripping are one word. It is no word to be shown. Short words stay
 * as they are: little of them is left to be told apart by.
 */
export function stem(word: string): string {
  if (word.length < 4 || /\d/.test(word)) return word;
  const [, root] = /^(.+?)(?:ings?|ed)$/.exec(word) ?? [];
  if (root && root.length > 2 && vowel.test(root)) return withoutE(undoubled(root));
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (word.endsWith('sses') || word.endsWith('shes') || word.endsWith('ches')) return word.slice(0, -2);
  if (word.endsWith('s') && !/(?:ss|us|is)$/.test(word)) return withoutE(word.slice(0, -1));
  return withoutE(word);
}

const withoutE = (word: string): string =>
  word.length > 3 && word.endsWith('e') && !word.endsWith('ee') ? word.slice(0, -1) : word;

/** The stems of a text, in order. */
export const stemsOf = (text: string): string[] => tokensOf(text).map(({ word }) => stem(word));
