import type { MessageRef } from '../quantity/message.ts';
import { draftFactIds, type SheetDraft, type SheetList } from './draft.ts';
import { factOf } from './facts.ts';

/** Format and version of a file that holds one sheet as it was typed, gaps and slips included. */
export const draftFormat = 'faultwright-site-draft';
const draftVersion = 1;

/** Longest text of one box, and most rows of a list: more than the sheet itself allows, so that a slip comes back too. */
const longestText = 4000;
const mostRows: Readonly<Record<SheetList, number>> = { trackers: 40, strings: 40 };
const idPattern = /^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/;

/** The text of a file that holds what is typed, finished or not. */
export function exportDraft({ id, invented, rows, typed, unknown }: SheetDraft): string {
  const draft = { id, invented, rows, typed, unknown };
  return `${JSON.stringify({ format: draftFormat, version: draftVersion, draft }, null, 2)}\n`;
}

export type DraftResult = { ok: true; draft: SheetDraft } | { ok: false; reason: MessageRef };

/**
 * Reads such a file, its text already read as JSON that holds no harmful key. Its texts may be anything a person can
 * type; its boxes must be boxes of the form.
 */
export function readDraft(file: Readonly<Record<string, unknown>>): DraftResult {
  if (typeof file.version === 'number' && file.version > draftVersion)
    return refuse('site.file.newer', { version: file.version, known: draftVersion });
  if (file.version !== draftVersion) return refuse('site.file.badVersion');
  const { id, invented, rows, typed, unknown } = recordOf(file.draft);
  const counts = { trackers: countOf(rows, 'trackers'), strings: countOf(rows, 'strings') };
  if (typeof id !== 'string' || !idPattern.test(id)) return refuse('site.file.badDraft');
  if (typeof invented !== 'boolean' || counts.trackers === undefined || counts.strings === undefined)
    return refuse('site.file.badDraft');
  const draft: SheetDraft = {
    id,
    invented,
    rows: { trackers: counts.trackers, strings: counts.strings },
    typed: {},
    unknown: [],
  };
  const boxes = new Set(draftFactIds(draft));
  for (const [box, text] of Object.entries(recordOf(typed))) {
    if (!boxes.has(box)) return refuse('site.unknownField', { names: box.slice(0, 120) });
    if (typeof text !== 'string' || text.length > longestText) return refuse('site.file.badDraft');
    draft.typed[box] = text;
  }
  if (!Array.isArray(unknown)) return refuse('site.file.badDraft');
  for (const box of unknown) {
    if (typeof box !== 'string' || !boxes.has(box) || !factOf(box).unknownAllowed)
      return refuse('site.file.badDraft');
    if (!draft.unknown.includes(box)) draft.unknown.push(box);
  }
  return { ok: true, draft };
}

/** The name that was typed; empty where there is none yet. */
export const draftName = (draft: SheetDraft): string => (draft.typed.name ?? '').trim().slice(0, 80);

const recordOf = (value: unknown): Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : {};

function countOf(rows: unknown, list: SheetList): number | undefined {
  const count = recordOf(rows)[list];
  return Number.isInteger(count) && Number(count) >= 0 && Number(count) <= mostRows[list]
    ? Number(count)
    : undefined;
}

const refuse = (id: string, params?: Record<string, string | number>): DraftResult => ({
  ok: false,
  reason: params ? { id, params } : { id },
});
