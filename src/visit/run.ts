import type { BeginState } from '../safety/energy.ts';
import { missingFacts } from '../site/fact-paths.ts';
import type { SiteSheet } from '../site/sheet.ts';
import { type AskedOf, answerFromSheet, type Draft } from './answer.ts';
import type { Entry, EntryOf } from './entries.ts';
import { beginState, foldEntry, type RunState } from './fold.ts';
import type { Knowledge } from './knowledge.ts';
import { logVersion } from './log-limits.ts';

/** What a new visit starts from. */
export interface Start {
  visit: string;
  sheet: SiteSheet;
  /** The PV string the run is about, by name; needed where the guide has a subject. */
  subject?: string;
  /** The plant state it begins from; the guide's first when missing. */
  begins?: BeginState;
  guideTitle?: string;
}

/** What is still missing before a run may begin. */
export interface StartNeeds {
  facts: readonly string[];
  /** Strings to choose from, when the guide is about one and none is chosen. */
  subjects: readonly string[];
}

/** Facts and choices that a guide needs before its first step. */
export function startNeeds(know: Knowledge, sheet: SiteSheet, subject?: string): StartNeeds {
  const { machine } = know.compiled.flat;
  const names = sheet.strings.map((string) => string.name);
  const wants = machine.subject === 'pvString';
  const row = names.indexOf(subject ?? '');
  const facts = missingFacts(sheet, machine.facts ?? []).filter(
    (id) => !id.startsWith('strings[') || row < 0 || id.startsWith(`strings[${row}]`),
  );
  const noStrings = wants && names.length === 0 && !facts.includes('strings') ? ['strings'] : [];
  return { facts: [...facts, ...noStrings], subjects: wants && row < 0 ? names : [] };
}

/** The first entries of a visit, to be written before its first step is shown. */
export function beginVisit(
  know: Knowledge,
  start: Start,
  nowMs: number,
  askedOf?: AskedOf,
): { state: RunState; entries: Entry[] } {
  const { machine } = know.compiled.flat;
  const begin: EntryOf<'begin'> = {
    kind: 'begin',
    visit: start.visit,
    seq: 0,
    at: new Date(nowMs).toISOString(),
    version: logVersion,
    guide: machine.id,
    guideKind: machine.kind,
    guideVersion: machine.version,
    begins: start.begins ?? machine.begins[0] ?? 'any',
    sheet: start.sheet,
    ...(start.subject === undefined ? {} : { subject: start.subject }),
    ...(start.guideTitle === undefined ? {} : { guideTitle: start.guideTitle }),
  };
  const draft: Draft = { state: beginState(know, begin), entries: [begin], ...(askedOf ? { askedOf } : {}) };
  answerFromSheet(know, draft, nowMs);
  return { state: draft.state, entries: draft.entries };
}

/**
 * Rebuilds a run from its log. Outcomes are taken as they were judged then. Where the guide has changed so that an answer
 * no longer fits, the run stands before that answer and says so (`misfit`).
 * @throws Error when the log has no beginning or is of another guide
 */
export function openRun(know: Knowledge, entries: readonly Entry[]): RunState {
  const [first, ...rest] = entries;
  if (first?.kind !== 'begin') throw new Error('a visit log starts with its beginning');
  if (first.guide !== know.compiled.flat.machine.id)
    throw new Error(`this visit is of the guide ${first.guide}`);
  return rest.reduce((state, entry) => foldEntry(know, state, entry), beginState(know, first));
}

/** The state after more entries: the same as opening the longer log. */
export function advance(know: Knowledge, state: RunState, entries: readonly Entry[]): RunState {
  return entries.reduce((before, entry) => foldEntry(know, before, entry), state);
}
