import { getCollection } from 'astro:content';
import { readBlocks } from '../../guide/content-blocks.ts';
import type { Machine } from '../../guide/vocabulary.ts';
import { type GuideContent, type GuidePage, layPage, machinesOf } from './lookup.ts';

/** The collection entries of a page's machines, its own first, and the page laid out from their words. */
export async function pageData(machine: Machine, procedures: Readonly<Record<string, Machine>>) {
  const [guides, performed] = [await getCollection('guides'), await getCollection('procedures')];
  const entries = machinesOf(machine, procedures).map((each) => {
    const entry = (each.kind === 'guide' ? guides : performed).find(({ id }) => id === each.id);
    if (!entry) throw new Error(`The ${each.kind} "${each.id}" has no words in content/en/${each.kind}s`);
    return { machine: each, entry };
  });
  const contents: Record<string, GuideContent> = Object.fromEntries(
    entries.map(({ machine: each, entry }) => [
      each.id,
      { title: entry.data.title, blocks: readBlocks(entry.body ?? '').blocks },
    ]),
  );
  const page: GuidePage = layPage(machine, procedures, contents);
  return { page, entries: entries.map(({ entry }) => entry) };
}
