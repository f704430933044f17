/** The place of the procedure a step belongs to; empty for the guide's own steps. */
const procedureOf = (path: string): string => path.slice(0, path.lastIndexOf('/') + 1);

/**
 * Whether a run may be taken back from one step to an earlier one, as far as their places go: only within the same
 * performed procedure, or among the guide's own steps. A procedure begun is finished or left by its own ways out, never
 * walked out of backwards half done.
 * @param from path of the present step
 * @param to path of the earlier question
 */
export function mayGoBack(from: string, to: string): boolean {
  return procedureOf(from) === procedureOf(to);
}
