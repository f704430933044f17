import { getCollection, getEntry } from 'astro:content';
import type { APIRoute } from 'astro';
import { guides, procedures } from '../../machines/index.ts';
import { buildIndex } from '../search/build-index.ts';
import { entriesOf } from '../search/entries.ts';

const books = async (folder: 'guides' | 'procedures') =>
  (await getCollection(folder)).map(({ id, data, body = '' }) => ({ id, data, body }));

/** The index of everything that can be found, as the search page fetches it. */
export const GET: APIRoute = async () => {
  const entries = entriesOf({
    guides: await books('guides'),
    procedures: await books('procedures'),
    causes: await getCollection('causes'),
    worksheets: await getCollection('worksheets'),
    library: await getCollection('library'),
    glossary: (await getCollection('glossary')).map(({ data }) => data),
    machines: [...guides, ...procedures],
  });
  const aliases = (await getEntry('search', 'aliases'))!.data;
  return Response.json(buildIndex(entries, aliases));
};
