import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { z } from 'astro/zod';
import { parse } from 'yaml';
import { guides, procedures } from '../../machines/index.ts';
import { causeHead, glossaryEntry, guideHead, libraryHead, sourceEntry } from '../content-schemas.ts';
import type { ContentFile, ContentInput } from '../guide/content-check.ts';
import type { ContentFinding } from '../guide/content-finding.ts';
import { hazardRisks, signalWord } from '../safety/hazard-severity.ts';
import { ppe, tools } from '../words/en/gear.ts';
import { hazards } from '../words/en/hazards.ts';
import { states, zones } from '../words/en/states.ts';

/** The project's top folder. */
const top = new URL('../..', import.meta.url).pathname;
const words = join(top, 'content/en');

const headPattern = /^---\r?\n([\s\S]*?)\r?\n---/;

const headOf = { guide: guideHead, procedure: guideHead, cause: causeHead, library: libraryHead } as const;

/** A content file's head, held to its schema, or what is wrong with it in words. */
function head(source: string, kind: ContentFile['kind']) {
  try {
    const written: unknown = parse(headPattern.exec(source)?.[1] ?? '');
    const read = headOf[kind].safeParse(written);
    return read.success ? read.data : z.prettifyError(read.error);
  } catch (error) {
    return (error instanceof Error ? error.message : String(error)).split('\n')[0]!;
  }
}

function filesOf(folder: string, kind: ContentFile['kind'], broken: ContentFinding[]): ContentFile[] {
  return readdirSync(join(words, folder))
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => {
      const path = `content/en/${folder}/${name}`;
      const source = readFileSync(join(top, path), 'utf8');
      const id = basename(name, '.mdx');
      const data = head(source, kind);
      if (typeof data !== 'string')
        return {
          path,
          kind,
          id,
          source,
          sources: data.source,
          ...('guide' in data ? { guide: data.guide } : {}),
        };
      broken.push({ file: path, id, message: data });
      return { path, kind, id, source, sources: [] };
    });
}

const yaml = (name: string): unknown => parse(readFileSync(join(words, name), 'utf8'));

/** The glossary as written. */
export const readGlossary = () => glossaryEntry.array().parse(yaml('glossary.yaml'));

/** The list of sources as written. */
export const readSources = () => sourceEntry.array().parse(yaml('sources.yaml'));

/**
 * Everything that the content check compares, read from the project's files.
 * @param cited sources named by worksheets and the like
 */
export function readContent(cited: ContentInput['cited'] = []): ContentInput {
  const broken: ContentFinding[] = [];
  const files = [
    ...filesOf('guides', 'guide', broken),
    ...filesOf('procedures', 'procedure', broken),
    ...filesOf('causes', 'cause', broken),
    ...filesOf('library', 'library', broken),
  ];
  return {
    guides,
    procedures,
    files,
    broken,
    words: {
      hazards: Object.fromEntries(Object.entries(hazards).map(([id, { word }]) => [id, word])),
      ppe: Object.keys(ppe),
      tools: Object.keys(tools),
      states: Object.keys(states),
      zones: Object.keys(zones),
    },
    signalWords: Object.fromEntries(Object.entries(hazardRisks).map(([id, risk]) => [id, signalWord(risk)])),
    sources: readSources().map(({ id }) => id),
    cited,
  };
}
