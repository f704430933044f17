import type { Entry } from './entries.ts';

/** Format and version of a file of visits. A later version may be read by a later program, never guessed at here. */
export const fileFormat = 'faultwright-visits';
export const fileVersion = 1;

/** The whole log of one visit, in order. */
export type Log = readonly Entry[];

/** The text of a file that holds these visits whole. */
export function exportVisits(logs: readonly Log[]): string {
  const visits = logs.map((entries) => ({ entries }));
  return `${JSON.stringify({ format: fileFormat, version: fileVersion, visits }, null, 1)}\n`;
}
