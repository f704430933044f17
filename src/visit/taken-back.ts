import type { Entry } from './entries.ts';

/** Answers that a later entry went back over. */
export function takenBack(entries: readonly Entry[]): ReadonlySet<number> {
  const standing: number[] = [];
  const taken = new Set<number>();
  for (const entry of entries) {
    if (entry.kind === 'answer') standing.push(entry.seq);
    if (entry.kind !== 'correct' && entry.kind !== 'undoAct') continue;
    const from = standing.indexOf(entry.toSeq);
    if (from >= 0) for (const seq of standing.splice(from)) taken.add(seq);
  }
  return taken;
}
