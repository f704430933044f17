import { readFile } from 'node:fs/promises';
import { parseArgs } from 'node:util';
import { guides, procedures, proceduresById } from '../../machines/index.ts';
import { scales, waits, works } from '../expected/index.ts';
import { compile } from '../guide/compile.ts';
import { flatten } from '../guide/flatten.ts';
import { questions } from '../guide/questions.ts';
import type { Machine } from '../guide/vocabulary.ts';
import { demoSites } from '../site/demo.ts';
import { importSites } from '../site/exchange.ts';
import type { SiteSheet } from '../site/sheet.ts';
import {
  answersSchema,
  type WalkAnswers,
  type WalkProblem,
  type WalkResult,
  type WalkWork,
  walk,
} from '../visit/walk.ts';
import { sayRun } from '../words/en/run.ts';
import { siteMessages } from '../words/en/site.ts';
import { triedText } from '../words/en/tried.ts';
import { zoneName } from '../words/en/zones.ts';

/**
 * Walks a guide or procedure from a file of answers and prints what it came to.
 * Exit status: 0 when the answers led as far as they go, 1 when one was refused, 2 when the command or a file is wrong:
 * a name that the guide has not, or an answer that the walk never came to.
 */

const usage =
  'npm run -s walk -- --guide ID --site FILE --answers FILE [--json]\n' +
  '  --guide    id of a guide or procedure\n' +
  '  --site     an exported site (JSON), or the id of a demo site; --site-id ID where the file holds several\n' +
  '  --answers  {"subject": "East", "answers": {"step": "choice", "step": {"reading": "312.4 V"}}}';

class BadFile extends Error {}

async function textOf(what: string, file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch (error) {
    throw new BadFile(`${what} ${file} cannot be read: ${(error as Error).message}`);
  }
}

function machineOf(id: string): Machine {
  const known = [...guides, ...procedures];
  const machine = known.find((each) => each.id === id);
  if (machine) return machine;
  throw new BadFile(
    `There is no guide or procedure "${id}". There are: ${known.map((each) => each.id).join(', ')}.`,
  );
}

async function siteOf(file: string, id: string | undefined): Promise<SiteSheet> {
  const demo = demoSites.find((each) => each.id === file || each.id === `demo-${file}`);
  if (demo) return demo;
  const read = importSites(await textOf('The site file', file));
  if (!read.ok) {
    const reasons = read.problems.map(({ site, reason }) => {
      const words = siteMessages[reason.id]?.(reason.params ?? {}) ?? reason.id;
      return site === undefined ? words : `${site}: ${words}`;
    });
    throw new BadFile(`The site file ${file} is refused:\n  ${reasons.join('\n  ')}`);
  }
  if (read.draft)
    throw new BadFile(`The site file ${file} holds a site that was not finished. Finish and save it first.`);
  const ids = read.sites.map((site) => site.id).join(', ');
  if (id === undefined && read.sites.length > 1)
    throw new BadFile(`The site file ${file} holds several sites. Name one with --site-id: ${ids}.`);
  const site = read.sites.find((each) => id === undefined || each.id === id);
  if (!site) throw new BadFile(`The site file ${file} holds no site "${id}". It holds: ${ids}.`);
  return site;
}

async function answersOf(file: string): Promise<WalkAnswers> {
  let value: unknown;
  try {
    value = JSON.parse(await textOf('The answers file', file));
  } catch (error) {
    if (error instanceof BadFile) throw error;
    throw new BadFile(`The answers file ${file} is not JSON: ${(error as Error).message}`);
  }
  const parsed = answersSchema.safeParse(value);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  const where = issue?.path.join('.') || 'the top';
  throw new BadFile(
    `The answers file ${file} is wrong at ${where}: ${issue?.message}. Expected {"subject"?, "begins"?, "answers": {step: answer}}, an answer being a text, an object of readings or items, or a list of such for a step come to again.`,
  );
}

/**
 * Text for a terminal: what a file holds is printed, never obeyed. Control characters, and those that turn the direction
 * of writing round, stand as a replacement sign.
 */
const printable = (text: string): string =>
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
  text.replace(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, '\ufffd');

/** The same for JSON, where a character below a space is escaped already. */
const printableJson = (value: unknown): string =>
  JSON.stringify(value, null, 2).replace(
    /[\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );

function asText(result: WalkResult): string {
  const lines = [
    `${result.guide} at ${result.site}${result.subject ? `, string ${result.subject}` : ''}`,
    '',
  ];
  const warned = new Set<string>();
  for (const { block, outcome, by, readings, work } of result.outcomes) {
    if (!warned.has(block))
      for (const { hazard } of result.warnings.filter((each) => each.block === block))
        lines.push(`  ! ${hazard}`);
    warned.add(block);
    lines.push(`${block}: ${outcome}${by ? ` (by the ${by})` : ''}`);
    for (const { id, text, value, u, outcome: zone, between } of readings)
      lines.push(
        `    ${id} "${text}" = ${value}${value === 'overRange' ? '' : ` ± ${u.toPrecision(2)}`}: ${zoneName(zone)}${between ? ` (${between.join(' or ')})` : ''}`,
      );
    if (work) lines.push(...workLines(work));
  }
  lines.push('', `stands at: ${result.path.at(-1) ?? ''}`);
  if (result.verdict) {
    lines.push(`verdict: ${result.verdict.causes.join(' or ')}`);
    for (const { block, outcome, readings } of result.verdict.because)
      lines.push(`    because ${block}: ${outcome}${readings.length > 0 ? ` (${readings.join(', ')})` : ''}`);
  }
  for (const { causes, retest } of result.tried)
    lines.push(triedText(causes.join(' or '), retest ?? undefined));
  for (const { cause, by } of result.ruledOut) lines.push(`ruled out: ${cause}, by ${by.join(', ')}`);
  if (result.end)
    lines.push(`end: ${result.end.result}, plant left ${result.end.leaves ?? 'as no end allows'}`);
  if (result.needs) lines.push(`needs: ${JSON.stringify(result.needs)}`);
  for (const { block, field, message } of result.problems)
    lines.push(`problem${block ? ` at ${block}` : ''}${field ? `, ${field}` : ''}: ${sayRun(message)}`);
  for (const each of result.unusedAnswers) lines.push(`not used: the answer to ${each}`);
  return printable(lines.join('\n'));
}

/** What a worksheet was given, where one holds the arithmetic, and the figures it came to. */
function workLines({ worksheet, inputs = {}, says }: WalkWork): string[] {
  const figures = (params: Readonly<Record<string, unknown>>) =>
    Object.entries(params)
      .map(([name, value]) => `${name} ${typeof value === 'number' ? Number(value.toPrecision(6)) : value}`)
      .join(', ');
  return [
    ...(worksheet === undefined ? [] : [`    worksheet ${worksheet}: ${figures(inputs)}`]),
    ...says.map(({ id, params }) => `    ${id}${params ? `: ${figures(params)}` : ''}`),
  ];
}

/** Messages about the file itself and not about a plant: names and words that the guide has not. */
const aboutFile = ({ message: { id } }: WalkProblem): boolean =>
  id.startsWith('walk.') || id === 'run.problem.noSuchChoice';

function exitStatus({ problems, unusedAnswers }: WalkResult): number {
  if (problems.some((problem) => !aboutFile(problem))) return 1;
  return problems.length > 0 || unusedAnswers.length > 0 ? 2 : 0;
}

async function main(): Promise<number> {
  const { values } = parseArgs({
    options: {
      guide: { type: 'string' },
      site: { type: 'string' },
      'site-id': { type: 'string' },
      answers: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  const { guide, site, answers } = values;
  if (!guide || !site || !answers) throw new BadFile(`Usage: ${usage}`);
  const compiled = compile(flatten(machineOf(guide), proceduresById));
  const sheet = await siteOf(site, values['site-id']);
  const result = walk({ compiled, scales, works, waits, questions }, sheet, await answersOf(answers));
  const worded = {
    ...result,
    problems: result.problems.map((each) => ({ ...each, says: sayRun(each.message) })),
  };
  console.log(values.json ? printableJson(worded) : asText(result));
  return exitStatus(result);
}

try {
  process.exitCode = await main();
} catch (error) {
  const wrongCommand = error instanceof TypeError && 'code' in error;
  if (!(error instanceof BadFile) && !wrongCommand) throw error;
  console.error(printable(wrongCommand ? `${error.message}\n${usage}` : error.message));
  process.exitCode = 2;
}
