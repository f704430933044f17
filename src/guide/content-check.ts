import type { ContentBlock, ContentPart } from './content-blocks.ts';
import { readBlocks } from './content-blocks.ts';
import type { ContentFinding } from './content-finding.ts';
import { hazardousAct } from './hazardous-act.ts';
import { proseFindings } from './prose-check.ts';
import type { HoldItem, Machine, Step, StepId } from './vocabulary.ts';

/**
 * Holds the words and the machines together: every step, outcome, reading and item has its words and the other way
 * round; every id that a step names has words; every cause has its page and every page its verdict; every source is on
 * the list. It reads texts handed to it and touches no file.
 */

/** One content file. */
export interface ContentFile {
  path: string;
  kind: 'guide' | 'procedure' | 'cause' | 'library';
  /** The file's name without its ending: the machine's, the cause's or the article's id. */
  id: string;
  /** The file's whole text. */
  source: string;
  /** Ids of sources in its head. */
  sources: readonly string[];
  /** `cause`: the guide in its head. */
  guide?: string;
}

/** Ids that have words, by list. */
export interface WordLists {
  /** Hazard id → its signal word. */
  hazards: Readonly<Record<string, string>>;
  ppe: readonly string[];
  tools: readonly string[];
  states: readonly string[];
  zones: readonly string[];
}

export interface ContentInput {
  guides: readonly Machine[];
  procedures: readonly Machine[];
  files: readonly ContentFile[];
  words: WordLists;
  /** Hazard id → the word that its severity asks for. */
  signalWords: Readonly<Record<string, string>>;
  /** Ids of the source list. */
  sources: readonly string[];
  /** Files whose head could not be read. */
  broken: readonly ContentFinding[];
  /** Source ids named elsewhere (worksheets, glossary), and by what. */
  cited: readonly { where: string; id: string }[];
}

/** Parts a step may have. */
const partTags = ['Do', 'Reading', 'Expect', 'Sign', 'Outcome', 'Cant', 'Unsure', 'Item'];
/** Kinds whose plate would be empty without an instruction. */
const acting: readonly Step['kind'][] = [
  'measure',
  'display',
  'operate',
  'touch',
  'handleLive',
  'discharge',
  'wait',
];
/** Sections of a cause, in order. */
export const causeSections = [
  'What it is',
  'How it shows',
  'The check that tells it apart',
  'Remedy',
  'Re-test',
  'Trap',
];
/** An outcome whose label goes without saying. */
const selfSaid = 'done';
const severityOrder = ['danger', 'warning', 'caution', 'notice'];

/** Everything wrong between machines and words; empty when they fit. */
export function checkContent(input: ContentInput): ContentFinding[] {
  return [
    ...input.broken,
    ...input.guides.flatMap((machine) => machineFindings(machine, 'guide', input)),
    ...input.procedures.flatMap((machine) => machineFindings(machine, 'procedure', input)),
    ...orphanFiles(input),
    ...causeFindings(input),
    ...sourceFindings(input),
    ...hazardFindings(input),
    ...input.files.flatMap((file) => proseFindings(file.path, file.source)),
  ];
}

function machineFindings(
  machine: Machine,
  kind: 'guide' | 'procedure',
  input: ContentInput,
): ContentFinding[] {
  const path = `content/en/${kind}s/${machine.id}.mdx`;
  const file = input.files.find((candidate) => candidate.kind === kind && candidate.id === machine.id);
  if (!file)
    return [{ file: path, id: machine.id, message: `the ${kind} has no words: this file is not there` }];
  const { blocks, problems } = readBlocks(file.source);
  const findings: ContentFinding[] = problems.map(({ line, message }) => ({
    file: file.path,
    id: `line ${line}`,
    message,
  }));
  const say = (id: string, message: string) => findings.push({ file: file.path, id, message });

  const seen = new Map<string, ContentBlock>();
  for (const block of blocks) {
    if (block.of !== machine.id)
      say(block.id, `is a step of "${block.of}", but this file belongs to "${machine.id}"`);
    if (seen.has(block.id)) say(block.id, 'has two blocks');
    seen.set(block.id, block);
    if (!machine.steps[block.id]) say(block.id, 'has words but the machine has no such step');
    if (!block.title) say(block.id, 'has no title');
    else if (block.title === block.id) say(block.id, 'has its id for a title');
  }
  for (const [stepId, step] of Object.entries(machine.steps)) {
    const block = seen.get(stepId);
    if (!block) say(stepId, 'is a step of the machine but has no words here');
    else for (const message of stepFindings(step, block, procedureOf(step, input))) say(stepId, message);
    for (const message of nameFindings(step, input.words)) say(stepId, message);
    if (hazardousAct(step) && !step.hazards?.length)
      say(stepId, `does something hazardous (${hazardousAct(step)}) and names no hazard`);
  }
  return findings;
}

const procedureOf = (step: Step, input: ContentInput): Machine | undefined =>
  step.kind === 'perform' ? input.procedures.find(({ id }) => id === step.procedure) : undefined;

/** Outcome ids that need words, and those that may have them. */
function outcomesOf(step: Step, procedure: Machine | undefined): { need: string[]; may: string[] } {
  if (step.kind === 'end') return { need: [], may: [] };
  if (step.kind === 'perform') return { need: [], may: Object.keys(procedure?.steps ?? step.endings) };
  const ids =
    (step.kind === 'measure' || step.kind === 'display') && step.rows
      ? step.rows.map((row) => row.id)
      : Object.keys(step.outcomes ?? {});
  return { need: ids.filter((id) => id !== selfSaid), may: [...ids, selfSaid] };
}

const itemsOf = (step: Step): readonly HoldItem[] =>
  step.kind === 'hold' ? step.items : step.kind === 'end' ? (step.items ?? []) : [];

function stepFindings(step: Step, block: ContentBlock, procedure: Machine | undefined): string[] {
  const found: string[] = [];
  const of = (tag: string): readonly ContentPart[] => block.parts.filter((part) => part.tag === tag);
  const ids = (tag: string) => of(tag).map((part) => part.attributes.id ?? '');
  for (const part of block.parts)
    if (!partTags.includes(part.tag)) found.push(`line ${part.line}: <${part.tag}> is not a part of a step`);

  const match = (tag: string, what: string, need: readonly string[], may: readonly string[] = need) => {
    const have = ids(tag);
    for (const id of need) if (!have.includes(id)) found.push(`${what} "${id}" has no words`);
    for (const id of have)
      if (!may.includes(id)) found.push(`has words for ${what} "${id}", which the machine has not`);
    for (const id of new Set(have))
      if (have.filter((other) => other === id).length > 1) found.push(`has words twice for ${what} "${id}"`);
  };
  const outcomes = outcomesOf(step, procedure);
  match('Outcome', 'outcome', outcomes.need, outcomes.may);
  match(
    'Reading',
    'reading',
    step.kind === 'measure' || step.kind === 'display' ? Object.keys(step.readings) : [],
  );
  match(
    'Item',
    'item',
    itemsOf(step).map(({ id }) => id),
  );
  for (const part of [...of('Outcome'), ...of('Reading')])
    if (!part.attributes.label) found.push(`${part.tag.toLowerCase()} "${part.attributes.id}" has no label`);
  for (const item of of('Item')) if (!item.text) found.push(`item "${item.attributes.id}" has no text`);
  for (const tag of ['Do', 'Expect', 'Sign', 'Cant', 'Unsure'])
    if (of(tag).length > 1) found.push(`has more than one <${tag}>`);
  if (acting.includes(step.kind) && of('Do').length === 0)
    found.push('asks for something to be done and has no <Do>');
  return found;
}

function nameFindings(step: Step, words: WordLists): string[] {
  const found: string[] = [];
  const check = (what: string, ids: readonly string[] | undefined, known: readonly string[]) => {
    for (const id of ids ?? []) if (!known.includes(id)) found.push(`${what} "${id}" has no words`);
  };
  check('hazard', step.hazards, Object.keys(words.hazards));
  check('protective equipment', step.ppe, words.ppe);
  check('tool', step.tools, words.tools);
  check('state', step.state ? [step.state] : [], words.states);
  check('place', step.at, words.zones);
  const ranks = (step.hazards ?? []).map((id) => severityOrder.indexOf(words.hazards[id] ?? 'notice'));
  if (ranks.some((rank, at) => at > 0 && rank < ranks[at - 1]!))
    found.push(`hazards do not stand with the most severe first (${step.hazards?.join(', ')})`);
  return found;
}

function orphanFiles(input: ContentInput): ContentFinding[] {
  return input.files
    .filter(({ kind, id }) => {
      if (kind === 'cause' || kind === 'library') return false;
      return !(kind === 'guide' ? input.guides : input.procedures).some((machine) => machine.id === id);
    })
    .map(({ path, id, kind }) => ({
      file: path,
      id,
      message: `has words but there is no ${kind} of that id`,
    }));
}

/** Cause id → the guides and steps whose verdict names it. */
export function verdictsOf(guides: readonly Machine[]): Map<string, { guide: string; step: StepId }[]> {
  const named = new Map<string, { guide: string; step: StepId }[]>();
  for (const guide of guides)
    for (const [id, step] of Object.entries(guide.steps)) {
      if (step.kind !== 'verdict') continue;
      for (const cause of step.causes)
        named.set(cause, [...(named.get(cause) ?? []), { guide: guide.id, step: id }]);
    }
  return named;
}

function causeFindings(input: ContentInput): ContentFinding[] {
  const findings: ContentFinding[] = [];
  const named = verdictsOf([...input.guides, ...input.procedures]);
  const pages = input.files.filter(({ kind }) => kind === 'cause');
  for (const [cause, verdicts] of named)
    if (!pages.some(({ id }) => id === cause))
      findings.push({
        file: `content/en/causes/${cause}.mdx`,
        id: cause,
        message: `is named by the verdict ${verdicts[0]!.guide}/${verdicts[0]!.step} but has no page`,
      });
  for (const { id, path, guide, source } of pages) {
    const verdicts = named.get(id) ?? [];
    if (verdicts.length === 0) findings.push({ file: path, id, message: 'no verdict names this cause' });
    else if (!verdicts.some((verdict) => verdict.guide === guide))
      findings.push({ file: path, id, message: `no verdict of the guide "${guide}" names this cause` });
    const headings = [...source.matchAll(/^## +(.+?)\s*$/gm)].map((match) => match[1]!);
    if (headings.join('|') !== causeSections.join('|'))
      findings.push({ file: path, id, message: `its sections must be: ${causeSections.join(', ')}` });
  }
  return findings;
}

function sourceFindings(input: ContentInput): ContentFinding[] {
  const cited = [
    ...input.files.flatMap(({ path, sources }) => sources.map((id) => ({ where: path, id }))),
    ...input.cited,
  ];
  return cited
    .filter(({ id }) => !input.sources.includes(id))
    .map(({ where, id }) => ({ file: where, id, message: 'is not in content/en/sources.yaml' }));
}

function hazardFindings(input: ContentInput): ContentFinding[] {
  const file = 'src/words/en/hazards.ts';
  const findings: ContentFinding[] = [];
  for (const [id, word] of Object.entries(input.words.hazards)) {
    const asked = input.signalWords[id];
    if (!asked) findings.push({ file, id, message: 'has no severity in src/safety/hazard-severity.ts' });
    else if (asked !== word)
      findings.push({ file, id, message: `says "${word}", its severity asks for "${asked}"` });
  }
  for (const id of Object.keys(input.signalWords))
    if (!(id in input.words.hazards)) findings.push({ file, id, message: 'has a severity but no statement' });
  return findings;
}
