import type { MessageRef } from '../quantity/message.ts';
import { checkSheet } from './check.ts';
import type { SheetDraft } from './draft.ts';
import { draftFormat, readDraft } from './draft-exchange.ts';
import { readJson } from './safe-json.ts';
import type { SiteSheet } from './sheet.ts';

/** Format and version of a file of sites. A later version may be read by a later program, never guessed at here. */
const fileFormat = 'faultwright-sites';
const fileVersion = 1;

/** Longest file read, in characters: two hundred full sheets fit in. */
export const longestFile = 1_000_000;
const mostSites = 200;

/** The text of a file that holds these sites whole. */
export function exportSites(sites: readonly SiteSheet[]): string {
  return `${JSON.stringify({ format: fileFormat, version: fileVersion, sites }, null, 2)}\n`;
}

/** A reason a file is refused; where one value is at fault, the site and the fact. */
export interface FileProblem {
  site?: string;
  factIds: string[];
  reason: MessageRef;
}

/** Sites whole, or one that was never finished, as it was typed. */
export type ImportResult =
  | { ok: true; sites: SiteSheet[]; draft?: SheetDraft }
  | { ok: false; problems: FileProblem[] };

/**
 * Reads a file of sites, of one site sheet alone, or of one that was never finished. Nothing is taken from a file that has any fault: half an
 * import would be worse than none.
 */
export function importSites(text: string): ImportResult {
  if (text.length > longestFile) return refuse('site.file.tooLong', { longest: longestFile / 1000 });
  const read = readJson(text);
  if (!read.ok) return refuse(`site.file.${read.why}`);
  const { value } = read;
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return refuse('site.file.notSites');
  const file = value as Record<string, unknown>;
  if (file.format === 'faultwright-site') return sheetsOf([file]);
  if (file.format === draftFormat) {
    const read = readDraft(file);
    return read.ok
      ? { ok: true, sites: [], draft: read.draft }
      : { ok: false, problems: [{ factIds: [], reason: read.reason }] };
  }
  if (file.format !== fileFormat) return refuse('site.file.notSites');
  if (typeof file.version === 'number' && file.version > fileVersion) {
    return refuse('site.file.newer', { version: file.version, known: fileVersion });
  }
  if (file.version !== fileVersion) return refuse('site.file.badVersion');
  const extra = Object.keys(file).filter((key) => !['format', 'version', 'sites'].includes(key));
  if (extra.length > 0) return refuse('site.unknownField', { names: extra.join(', ').slice(0, 120) });
  if (!Array.isArray(file.sites) || file.sites.length === 0) return refuse('site.file.empty');
  if (file.sites.length > mostSites) return refuse('site.file.tooMany', { most: mostSites });
  return sheetsOf(file.sites);
}

function sheetsOf(inputs: readonly unknown[]): ImportResult {
  const sites: SiteSheet[] = [];
  const problems: FileProblem[] = [];
  inputs.forEach((input, at) => {
    const site = siteName(input, at);
    const version = (input as { version?: unknown } | null)?.version;
    if (typeof version === 'number' && version > 1) {
      problems.push({ site, factIds: [], reason: { id: 'site.file.newer', params: { version, known: 1 } } });
      return;
    }
    const result = checkSheet(input);
    if (result.ok) sites.push(result.sheet);
    else problems.push(...result.problems.map((problem) => ({ site, ...problem })));
  });
  const ids = sites.map((sheet) => sheet.id);
  const twice = ids.find((id, at) => ids.indexOf(id) !== at);
  if (twice !== undefined)
    problems.push({ factIds: [], reason: { id: 'site.file.idTwice', params: { id: twice } } });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, sites };
}

function siteName(input: unknown, at: number): string {
  const name = (input as { name?: unknown } | null)?.name;
  return typeof name === 'string' && name.trim() !== '' ? name.slice(0, 80) : `#${at + 1}`;
}

function refuse(id: string, params?: Record<string, string | number>): ImportResult {
  return { ok: false, problems: [{ factIds: [], reason: params ? { id, params } : { id } }] };
}
