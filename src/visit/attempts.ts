import type { Entry } from './entries.ts';
import { takenBack } from './taken-back.ts';
import type { TrailStep } from './trail.ts';

/** A cause that was found, and what the re-test showed of its remedy. */
export interface Attempt {
  block: string;
  /** The verdict as the page showed it. */
  title: string;
  causes: readonly string[];
  /** Missing where no re-test was made, or none that could tell. */
  result?: 'cured' | 'failed';
}

type Answered = Pick<TrailStep, 'block' | 'asked' | 'found' | 'retest'>;

/** What was found in a run, in order, and whether it cured: a re-test speaks of the verdict before it, the last one counts. */
export function attemptsOf(answers: readonly Answered[]): Attempt[] {
  const attempts: Attempt[] = [];
  for (const { block, asked, found, retest } of answers) {
    if (found) attempts.push({ block, title: asked?.title ?? block, causes: found });
    const last = attempts.at(-1);
    if (retest && last) last.result = retest;
  }
  return attempts;
}

/** The same from a log, of the answers that still stand. */
export function attemptsIn(entries: readonly Entry[]): Attempt[] {
  const taken = takenBack(entries);
  return attemptsOf(
    entries.flatMap((entry) => (entry.kind === 'answer' && !taken.has(entry.seq) ? [entry] : [])),
  );
}
