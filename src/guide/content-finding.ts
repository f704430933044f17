/** One thing wrong with the words, with the file and the id for its author. */
export interface ContentFinding {
  file: string;
  id: string;
  message: string;
}
