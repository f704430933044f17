import { setFact } from '../../site/facts.ts';
import type { GivenFact } from '../site/fact-form.ts';
import { getSite, putSite } from '../site/store.ts';

/** Keeps facts entered in a run on the site's own sheet too, where that sheet is kept here. The visit has them either way. */
export async function keepFacts(site: string, given: readonly GivenFact[]): Promise<void> {
  const kept = await getSite(site).catch(() => null);
  if (kept) await putSite(given.reduce((sheet, { id, value }) => setFact(sheet, id, value), kept));
}
