import { checkSheet } from '../../site/check.ts';
import type { SheetDraft } from '../../site/draft.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { openDb } from '../../visit/db.ts';

/** What became of something that should be kept on this phone. */
export type Kept = 'kept' | 'blocked' | 'full';

/** A kept site: a sheet that this version understands, or whatever another version left. */
export type KeptSite = { id: string; sheet: SiteSheet } | { id: string; sheet: null; raw: unknown };

const currentKey = 'current-site';
const draftKey = (id: string): string => `site-draft:${id}`;

/** Whether this browser lets the page keep anything at all. */
export async function canKeep(): Promise<boolean> {
  try {
    await openDb();
    return true;
  } catch {
    return false;
  }
}

/** Every site kept here, by name. Rejects when nothing can be read. */
export async function listSites(): Promise<KeptSite[]> {
  const db = await openDb();
  const kept = (await db.getAll('sites')).map(asKept);
  return kept.sort((a, b) => (a.sheet?.name ?? a.id).localeCompare(b.sheet?.name ?? b.id));
}

/** One site, or nothing when it is not kept here or cannot be read by this version. */
export async function getSite(id: string): Promise<SiteSheet | null> {
  const record = await (await openDb()).get('sites', id);
  return record ? asKept(record).sheet : null;
}

/** Keeps a sheet under its id, in place of what was there. */
export const putSite = (sheet: SiteSheet): Promise<Kept> =>
  keep(async () => (await openDb()).put('sites', sheet));

/** Keeps a record as it was, for undoing a deletion. */
export const putBack = (raw: { id: string }): Promise<Kept> =>
  keep(async () => (await openDb()).put('sites', raw));

/** Deletes a site with its draft. */
export const deleteSite = (id: string): Promise<Kept> =>
  keep(async () => {
    const db = await openDb();
    await db.delete('sites', id);
    await db.delete('settings', draftKey(id));
  });

/** Id of the site in use. */
export async function currentSiteId(): Promise<string | null> {
  const id = await (await openDb()).get('settings', currentKey);
  return typeof id === 'string' ? id : null;
}

export const setCurrentSite = (id: string | null): Promise<Kept> =>
  keep(async () => {
    const db = await openDb();
    return id === null ? db.delete('settings', currentKey) : db.put('settings', id, currentKey);
  });

/** The sheet of the site in use, or nothing while none is chosen or it cannot be read. */
export async function currentSheet(): Promise<SiteSheet | null> {
  const id = await currentSiteId();
  return id === null ? null : getSite(id);
}

/** What was typed and not saved, for a site or for `new`. */
export async function getDraft(id: string): Promise<SheetDraft | null> {
  const draft = await (await openDb()).get('settings', draftKey(id));
  return isDraft(draft) ? draft : null;
}

/** Every draft that belongs to no kept site, and the slot it is kept in. Rejects when nothing can be read. */
export async function listDrafts(): Promise<{ slot: string; draft: SheetDraft }[]> {
  const db = await openDb();
  const sites = new Set(await db.getAllKeys('sites'));
  const keys = (await db.getAllKeys('settings')).filter((key) => key.startsWith(draftKey('')));
  const slots = keys.map((key) => key.slice(draftKey('').length)).filter((slot) => !sites.has(slot));
  const drafts = await Promise.all(slots.map(async (slot) => ({ slot, draft: await getDraft(slot) })));
  return drafts.flatMap(({ slot, draft }) => (draft ? [{ slot, draft }] : []));
}

export const putDraft = (id: string, draft: SheetDraft): Promise<Kept> =>
  keep(async () => (await openDb()).put('settings', draft, draftKey(id)));

export const deleteDraft = (id: string): Promise<Kept> =>
  keep(async () => (await openDb()).delete('settings', draftKey(id)));

/** A name for a new site in storage. Not `randomUUID`, which a page served without https does not have. */
export function newSiteId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return `site-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}

function asKept(record: { id: string }): KeptSite {
  const result = checkSheet(record);
  return result.ok ? { id: record.id, sheet: result.sheet } : { id: record.id, sheet: null, raw: record };
}

async function keep(write: () => Promise<unknown>): Promise<Kept> {
  try {
    await write();
    return 'kept';
  } catch (error) {
    return error instanceof DOMException && error.name === 'QuotaExceededError' ? 'full' : 'blocked';
  }
}

function isDraft(value: unknown): value is SheetDraft {
  const draft = value as Partial<SheetDraft> | undefined;
  return (
    typeof draft?.id === 'string' &&
    typeof draft.typed === 'object' &&
    Array.isArray(draft.unknown) &&
    typeof draft.rows?.strings === 'number' &&
    typeof draft.rows.trackers === 'number'
  );
}
