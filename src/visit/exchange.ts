import type { MessageRef } from '../quantity/message.ts';
import { readJson } from '../site/safe-json.ts';
import { type Entry, entrySchema } from './entries.ts';
import { fileFormat, fileVersion, type Log } from './visit-file.ts';

/** Longest file read, in characters. */
const longestFile = 20_000_000;
const mostVisits = 500;
const mostEntries = 5000;

export type VisitsRead = { ok: true; logs: Entry[][] } | { ok: false; reason: MessageRef };

const refuse = (id: string, params?: Record<string, string | number>): { ok: false; reason: MessageRef } => ({
  ok: false,
  reason: params ? { id, params } : { id },
});

/** Reads a file of visits. Nothing is taken from a file that has any fault. */
export function importVisits(text: string): VisitsRead {
  if (text.length > longestFile) return refuse('visit.file.tooLong', { longest: longestFile / 1_000_000 });
  const read = readJson(text);
  if (!read.ok) return refuse(`visit.file.${read.why}`);
  const file = read.value as { format?: unknown; version?: unknown; visits?: unknown } | null;
  if (typeof file !== 'object' || file === null || file.format !== fileFormat)
    return refuse('visit.file.notVisits');
  if (typeof file.version === 'number' && file.version > fileVersion)
    return refuse('visit.file.newer', { version: file.version, known: fileVersion });
  if (file.version !== fileVersion) return refuse('visit.file.badVersion');
  const { visits } = file;
  if (!Array.isArray(visits) || visits.length === 0) return refuse('visit.file.empty');
  if (visits.length > mostVisits) return refuse('visit.file.tooMany', { most: mostVisits });
  const logs: Entry[][] = [];
  for (const [at, visit] of visits.entries()) {
    const log = readLog((visit as { entries?: unknown } | null)?.entries, at + 1);
    if (!log.ok) return log;
    logs.push(log.entries);
  }
  const ids = logs.map((log) => log[0]!.visit);
  const twice = ids.find((id, at) => ids.indexOf(id) !== at);
  return twice === undefined ? { ok: true, logs } : refuse('visit.file.idTwice', { id: twice });
}

type LogRead = { ok: true; entries: Entry[] } | { ok: false; reason: MessageRef };

/** One log: every line known, numbered without a gap, in order of time, of one visit that begins once and ends last. */
function readLog(input: unknown, visit: number): LogRead {
  if (!Array.isArray(input) || input.length === 0) return refuse('visit.file.emptyVisit', { visit });
  if (input.length > mostEntries) return refuse('visit.file.tooLongVisit', { visit, most: mostEntries });
  const entries: Entry[] = [];
  for (const [at, line] of input.entries()) {
    const parsed = entrySchema.safeParse(line);
    const where = { visit, line: at + 1 };
    if (!parsed.success) {
      const field = parsed.error.issues[0]?.path.join('.') ?? '';
      return refuse('visit.file.badLine', { ...where, field: field.slice(0, 80) });
    }
    const entry = parsed.data;
    const before = entries.at(-1);
    if (entry.seq !== at) return refuse('visit.file.gap', where);
    if ((entry.kind === 'begin') !== (at === 0)) return refuse('visit.file.badBegin', where);
    if (before && entry.visit !== before.visit) return refuse('visit.file.mixed', where);
    if (before && entry.at < before.at) return refuse('visit.file.backInTime', where);
    if (entry.kind !== 'note' && entries.some((each) => each.kind === 'closed'))
      return refuse('visit.file.afterEnd', where);
    entries.push(entry);
  }
  return { ok: true, entries };
}

/** What becomes of a log that is brought in beside one of the same visit that is kept here. */
export type Merge =
  | { how: 'new'; add: Log }
  /** The kept one goes on longer, or they are the same: nothing to do. */
  | { how: 'had' }
  /** The one brought in goes on longer: its further entries are added. */
  | { how: 'longer'; add: Log }
  /** They part ways: the one brought in is kept as a visit of its own, so that neither is lost. */
  | { how: 'parted'; add: Log };

/**
 * How a log brought in stands to the one kept here.
 * @param freshId an id for a visit of its own, where the two part ways
 */
export function mergeLog(kept: Log | undefined, brought: Log, freshId: string): Merge {
  if (!kept || kept.length === 0) return { how: 'new', add: brought };
  const shared = Math.min(kept.length, brought.length);
  const alike = brought.slice(0, shared).every((entry, at) => sameEntry(entry, kept[at]!));
  if (!alike) return { how: 'parted', add: brought.map((entry) => ({ ...entry, visit: freshId })) };
  return brought.length > kept.length ? { how: 'longer', add: brought.slice(shared) } : { how: 'had' };
}

const sameEntry = (a: Entry, b: Entry) => stable(a) === stable(b);

/** JSON with its keys in one order, so that two records compare by what they hold. */
function stable(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
}
