import type { FlatNode } from './flatten.ts';

/** The place of the procedure a step belongs to; empty for the guide's own steps. */
const procedureOf = (path: string): string => path.slice(0, path.lastIndexOf('/') + 1);

/** A step where the tester is shown on a known live source: where a proof that grew old is begun again. */
const beginsProof = (node: FlatNode): boolean =>
  node.edges.some((edge) => edge.does.some((effect) => 'testerProved' in effect));

/**
 * Whether a run may be taken back from one step to an earlier question, as far as their places go: within the same
 * performed procedure, or among the guide's own steps. A procedure begun is finished or left by its own ways out, never
 * walked out of backwards half done; and one that is finished is gone back into only to prove dead again.
 */
export function mayGoBack(from: FlatNode, to: FlatNode): boolean {
  return procedureOf(from.path) === procedureOf(to.path) || beginsProof(to);
}
