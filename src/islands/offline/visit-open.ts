import type { VisitCard } from '../../visit/db.ts';
import { listVisits } from '../../visit/store.ts';

/** Visits that are not closed yet. Rejects when the browser lets nothing be read. */
export const openVisits = async (): Promise<VisitCard[]> =>
  (await listVisits()).filter(({ result }) => result === undefined);

/** Is a visit open on this phone? Where nothing can be read, none can be resumed either. */
export const visitIsOpen = async (): Promise<boolean> => (await openVisits().catch(() => [])).length > 0;
