import { getCollection } from 'astro:content';
import { guides, procedures } from '../../../machines/index.ts';
import { readBlocks } from '../../guide/content-blocks.ts';
import type { Machine } from '../../guide/vocabulary.ts';
import { href } from '../href.ts';
import { type Book, layPage } from './lookup.ts';

const folderOf = (machine: Machine) => (machine.kind === 'guide' ? 'guides' : 'procedures');

/** Address of a guide's or procedure's page. */
export const urlOf = (machine: Machine): string => href(`${folderOf(machine)}/${machine.id}/`);

async function makeBook() {
  const machines = [...guides, ...procedures];
  const collections = {
    guides: await getCollection('guides'),
    procedures: await getCollection('procedures'),
  };
  const entries = new Map(
    machines.map((machine) => {
      const entry = collections[folderOf(machine)].find(({ id }) => id === machine.id);
      if (!entry)
        throw new Error(`There are no words for "${machine.id}" in content/en/${folderOf(machine)}`);
      return [machine.id, entry] as const;
    }),
  );
  const contents = Object.fromEntries(
    [...entries].map(([id, entry]) => [
      id,
      {
        title: entry.data.title,
        blocks: readBlocks(entry.body ?? '').blocks,
        chapters: entry.data.chapters,
      },
    ]),
  );
  return { book: { machines, contents, urlOf } satisfies Book, entries };
}

let made: ReturnType<typeof makeBook> | undefined;

/** A machine's page, or one of its chapters, and the entry that holds its words. */
export async function pageData(machine: Machine, chapter?: string) {
  // Words change while the dev server runs; a build reads them once.
  if (import.meta.env.DEV) made = undefined;
  made ??= makeBook();
  const { book, entries } = await made;
  return { page: layPage(machine, book, chapter), entry: entries.get(machine.id)! };
}
