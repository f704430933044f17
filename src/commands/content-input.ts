import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { parse } from 'yaml';
import { guides, procedures } from '../../machines/index.ts';
import { causeHead, glossaryEntry, guideHead, sourceEntry } from '../content-schemas.ts';
import type { ContentFile, ContentInput } from '../guide/content-check.ts';
import { hazardRisks, signalWord } from '../safety/hazard-severity.ts';
import { ppe, tools } from '../words/en/gear.ts';
import { hazards } from '../words/en/hazards.ts';
import { states, zones } from '../words/en/states.ts';

/** The project's top folder. */
const top = new URL('../..', import.meta.url).pathname;
const words = join(top, 'content/en');

const headPattern = /^---\r?\n([\s\S]*?)\r?\n---/;

/** A content file's head, held to its schema. */
function head(path: string, source: string, kind: ContentFile['kind']) {
  const written: unknown = parse(headPattern.exec(source)?.[1] ?? '');
  const schema = kind === 'cause' ? causeHead : guideHead;
  const read = schema.safeParse(written);
  if (!read.success) throw new Error(`${path}: ${read.error.message}`);
  return read.data;
}

function filesOf(folder: string, kind: ContentFile['kind']): ContentFile[] {
  return readdirSync(join(words, folder))
    .filter((name) => name.endsWith('.mdx'))
    .sort()
    .map((name) => {
      const path = `content/en/${folder}/${name}`;
      const source = readFileSync(join(top, path), 'utf8');
      const data = head(path, source, kind);
      return {
        path,
        kind,
        id: basename(name, '.mdx'),
        source,
        sources: data.source,
        ...('guide' in data ? { guide: data.guide } : {}),
      };
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
  return {
    guides,
    procedures,
    files: [
      ...filesOf('guides', 'guide'),
      ...filesOf('procedures', 'procedure'),
      ...filesOf('causes', 'cause'),
    ],
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
