import { attemptsIn } from './attempts.ts';
import type { VisitCard } from './db.ts';
import type { Entry } from './entries.ts';

/** What only the run knows of where a visit stands. */
export interface Standing {
  stepTitle: string;
  /** Devices that stand open. */
  open: readonly string[];
}

/** The card of a visit, from its log, and from its run where there is one. */
export function cardOf(entries: readonly Entry[], standing?: Standing): VisitCard {
  const begin = entries[0];
  if (begin?.kind !== 'begin') throw new Error('a visit log starts with its beginning');
  const last = entries.at(-1)!;
  const closed = entries.findLast((entry) => entry.kind === 'closed');
  const answer = entries.findLast((entry) => entry.kind === 'answer');
  const notCured = attemptsIn(entries).flatMap(({ title, result }) => (result === 'failed' ? [title] : []));
  return {
    id: begin.visit,
    guide: begin.guide,
    guideKind: begin.guideKind,
    guideTitle: begin.guideTitle ?? begin.guide,
    siteId: begin.sheet.id,
    siteName: begin.sheet.name,
    ...(begin.subject === undefined ? {} : { subject: begin.subject }),
    begunAt: begin.at,
    changedAt: last.at,
    entries: entries.length,
    path: answer?.path ?? '',
    stepTitle: standing?.stepTitle || (answer?.asked?.title ?? ''),
    ...(standing && standing.open.length > 0 ? { open: [...standing.open] } : {}),
    ...(notCured.length > 0 ? { notCured } : {}),
    ...(closed ? { result: closed.result } : {}),
  };
}
