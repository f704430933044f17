import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { parse } from 'yaml';
import {
  causeHead,
  glossaryEntry,
  guideHead,
  libraryHead,
  searchAliases,
  sourceEntry,
  worksheetHead,
} from './content-schemas.ts';

/** The folder of one language. Another language is another folder. */
const words = './content/en';

const prose = (folder: string) => glob({ base: `${words}/${folder}`, pattern: '*.mdx' });

export const collections = {
  guides: defineCollection({ loader: prose('guides'), schema: guideHead }),
  procedures: defineCollection({ loader: prose('procedures'), schema: guideHead }),
  worksheets: defineCollection({ loader: prose('worksheets'), schema: worksheetHead }),
  causes: defineCollection({ loader: prose('causes'), schema: causeHead }),
  library: defineCollection({ loader: prose('library'), schema: libraryHead }),
  glossary: defineCollection({ loader: file(`${words}/glossary.yaml`), schema: glossaryEntry }),
  // One file, one entry.
  search: defineCollection({
    loader: file(`${words}/search-aliases.yaml`, { parser: (text) => ({ aliases: parse(text) }) }),
    schema: searchAliases,
  }),
  sources: defineCollection({ loader: file(`${words}/sources.yaml`), schema: sourceEntry }),
};
