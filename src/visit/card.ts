import type { VisitCard } from './db.ts';
import type { Entry } from './entries.ts';

/** The card of a visit, from its log alone. */
export function cardOf(entries: readonly Entry[], stepTitle = ''): VisitCard {
  const begin = entries[0];
  if (begin?.kind !== 'begin') throw new Error('a visit log starts with its beginning');
  const last = entries.at(-1)!;
  const closed = entries.findLast((entry) => entry.kind === 'closed');
  const answer = entries.findLast((entry) => entry.kind === 'answer');
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
    stepTitle: stepTitle || (answer?.asked?.title ?? ''),
    ...(closed ? { result: closed.result } : {}),
  };
}
