import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { z } from 'astro/zod';
import { parse } from 'yaml';
import { guides, procedures } from '../../machines/index.ts';
import { causeHead, guideHead, libraryHead, searchAliases, worksheetHead } from '../content-schemas.ts';
import { buildIndex } from '../search/build-index.ts';
import { entriesOf } from '../search/entries.ts';
import type { Aliases, Entry, SearchIndex } from '../search/search-index.ts';
import { readGlossary } from './content-input.ts';
import { root } from './project.ts';

const words = join(root, 'content/en');

const parts = /^---\r?\n([\s\S]*?)\r?\n---\r?\n?([\s\S]*)$/;

function read<Schema extends z.ZodType>(folder: string, schema: Schema) {
  const from = join(words, folder);
  if (!existsSync(from)) return [];
  return readdirSync(from)
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => {
      const [, head = '', body = ''] = parts.exec(readFileSync(join(from, name), 'utf8')) ?? [];
      return { id: basename(name, '.mdx'), data: schema.parse(parse(head)), body };
    });
}

/** Everything that can be found, from the project's files. */
export function readEntries(): Entry[] {
  return entriesOf({
    guides: read('guides', guideHead),
    procedures: read('procedures', guideHead),
    causes: read('causes', causeHead),
    worksheets: read('worksheets', worksheetHead),
    library: read('library', libraryHead),
    glossary: readGlossary(),
    machines: [...guides, ...procedures],
  });
}

/** The alias file. */
export const readAliases = (): Aliases =>
  searchAliases.parse(parse(readFileSync(join(words, 'search-aliases.yaml'), 'utf8')));

/** The index as the build makes it. */
export const readIndex = (): SearchIndex => buildIndex(readEntries(), readAliases());
