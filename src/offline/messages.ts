/** What a page may ask of a worker. It answers on the port that comes with the question. */
export type Ask =
  /** Which version are you? Answer: its version. */
  | 'version'
  /** Serve your own version from now on. Answer: its version, when that is so. Asked only after the person said so. */
  | 'use-your-version'
  /** Save again what the browser has thrown out. Answer: the version, when all of it is there. */
  | 'save-again';
