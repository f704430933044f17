/**
 * Checks the words against the machines, and a built site's guide pages as a reader without a script sees them.
 *   node src/commands/check-content.ts [folder of a built site]
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { wholeBook } from '../components/guide/lookup.ts';
import { checkContent } from '../guide/content-check.ts';
import type { ContentFinding } from '../guide/content-finding.ts';
import { checkPage } from '../guide/page-check.ts';
import { worksheets } from '../worksheets/index.ts';
import { readContent } from './content-input.ts';

/** Everything wrong between words and machines. */
export function contentFindings(): ContentFinding[] {
  const cited = worksheets.flatMap(({ id, sources }) =>
    sources.map((source) => ({ where: `worksheet ${id}`, id: source.id })),
  );
  return checkContent(readContent(cited));
}

/** Everything wrong with the guides' and procedures' pages of a built site. */
export function builtFindings(folder: string): ContentFinding[] {
  return ['guides', 'procedures'].flatMap((kind) =>
    readdirSync(join(folder, kind), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => join(folder, kind, entry.name))
      // A long guide is parted into chapters; what is held against its machine is the page with all of it.
      .map((place) => (existsSync(join(place, wholeBook)) ? join(place, wholeBook) : place))
      .map((place) => join(place, 'index.html'))
      .filter((file) => existsSync(file))
      .flatMap((file) => checkPage(file, readFileSync(file, 'utf8'))),
  );
}

/** A finding as one line. */
export const findingLine = ({ file, id, message }: ContentFinding): string => `${file}: ${id}: ${message}`;

if (import.meta.main) {
  const folder = process.argv[2];
  const found = [...contentFindings(), ...(folder ? builtFindings(folder) : [])];
  for (const finding of found) console.error(findingLine(finding));
  console.log(found.length === 0 ? 'Words and machines fit.' : `${found.length} findings.`);
  process.exitCode = found.length === 0 ? 0 : 1;
}
