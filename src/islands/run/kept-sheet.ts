import type { SiteSheet } from '../../site/sheet.ts';
import { openDb } from '../../visit/db.ts';

/** A sheet that this version reads; whatever another version left is not offered. */
export const isSheet = (record: unknown): record is SiteSheet => {
  const { format, version } = (record ?? {}) as { format?: unknown; version?: unknown };
  return format === 'faultwright-site' && version === 1;
};

/** The sheet of a site as it is kept here now; `undefined` when it is not kept, or not readable by this version. */
export async function keptSheet(id: string): Promise<SiteSheet | undefined> {
  try {
    const record: unknown = await (await openDb()).get('sites', id);
    return isSheet(record) ? record : undefined;
  } catch {
    return undefined; // Nothing is kept here: the visit's own copy stands.
  }
}
