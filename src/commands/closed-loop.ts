import { parseArgs } from 'node:util';
import { type Case, loop, loopGuides } from '../closed-loop/loop.ts';
import { type CauseTally, type LoopTally, tally } from '../closed-loop/tally.ts';

/**
 * Takes the guides to simulated plants, every cause and plants in good order, without meter noise and with it, and prints
 * how often the verdict was right, what was condemned, and what was unsafe by the plant's physics.
 * Exit status: 0 when nothing healthy was condemned and nothing unsafe was done; 1 otherwise; 2 for a wrong command.
 */

const usage =
  'npm run -s closed-loop -- [--guide ID] [--per-cause N] [--seed N] [--json]\n' +
  `  --guide      one of: ${loopGuides.map(({ guide }) => guide).join(', ')}; all of them when missing\n` +
  '  --per-cause  plants of each cause, and in good order, each taken twice: without noise and with it (20)\n' +
  '  --seed       the same seed gives the same plants (1)';

class BadCommand extends Error {}

function wholeNumber(name: string, text: string): number {
  const value = Number(text);
  if (!Number.isInteger(value) || value < 1)
    throw new BadCommand(`--${name} wants a whole number from 1 up.`);
  return value;
}

/** Why there is no Bayes limit in the figures yet. */
const bayesReason =
  'not computed: it needs the likelihood of every history a guide can reach, which comes with the suspects';

const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

function causeLines(name: string, causes: Readonly<Record<string, CauseTally>>): string[] {
  return [
    `  ${name}: cause, plants, exact, class, right; what was said`,
    ...Object.entries(causes).map(([cause, { cases, exactHits, classHits, right, said }]) => {
      const words = Object.entries(said)
        .map(([text, times]) => `${text} ${times}`)
        .join('; ');
      return `    ${cause.padEnd(28)}${String(cases).padStart(5)}${String(exactHits).padStart(6)}${String(classHits).padStart(6)}${percent(right).padStart(9)}   ${words}`;
    }),
  ];
}

const listed = (title: string, counts: Readonly<Record<string, number>>): string[] =>
  Object.entries(counts).map(([text, times]) => `  ${title}: ${text} (${times})`);

function asText(byGuide: Readonly<Record<string, LoopTally>>, seconds: number): string {
  const lines = Object.entries(byGuide).flatMap(([guide, each]) => [
    guide,
    ...causeLines('without noise', each.byCause),
    ...causeLines('with noise', each.byCauseWithNoise),
    `  right without noise ${percent(each.noNoise.right)}, with noise ${percent(each.withNoise.right)}; minutes to a verdict ${each.meanMinutes?.toFixed(0) ?? 'none'}`,
    `  plants in good order ${each.healthyRuns}, condemned ${each.healthyCondemned}; unsafe acts ${each.unsafeActs}`,
    ...listed('unsafe', each.unsafe),
    ...listed('stands still', each.stuck),
    '',
  ]);
  return [...lines, `Bayes limit ${bayesReason}.`, `${seconds.toFixed(1)} s`].join('\n');
}

function main(): number {
  const { values } = parseArgs({
    options: {
      guide: { type: 'string' },
      'per-cause': { type: 'string', default: '20' },
      seed: { type: 'string', default: '1' },
      json: { type: 'boolean', default: false },
    },
  });
  const perCause = wholeNumber('per-cause', values['per-cause']);
  const seed = wholeNumber('seed', values.seed);
  const chosen = loopGuides.filter(({ guide }) => values.guide === undefined || guide === values.guide);
  if (chosen.length === 0) throw new BadCommand(`No plant answers the guide ${values.guide}.`);
  const began = performance.now();
  const all: Case[] = [];
  const byGuide: Record<string, LoopTally> = {};
  for (const { guide } of chosen) {
    const cases = [false, true].flatMap((noise) => [...loop({ guide, perCause, seed, noise })]);
    byGuide[guide] = tally(cases);
    all.push(...cases);
  }
  const seconds = (performance.now() - began) / 1000;
  const total = tally(all);
  const result = {
    cases: all.length,
    perCause,
    seed,
    byGuide,
    exactHits: total.noNoise.exactHits,
    classHits: total.noNoise.classHits,
    meanClassSize: total.noNoise.meanClassSize,
    top1NoNoise: total.noNoise.top1,
    top1WithNoise: total.withNoise.top1,
    rightNoNoise: total.noNoise.right,
    rightWithNoise: total.withNoise.right,
    bayesLimit: null,
    bayesLimitReason: bayesReason,
    healthyRuns: total.healthyRuns,
    healthyCondemned: total.healthyCondemned,
    unsafeActs: total.unsafeActs,
    meanMinutes: total.meanMinutes,
    seconds,
  };
  console.log(values.json ? JSON.stringify(result, null, 2) : asText(byGuide, seconds));
  return total.healthyCondemned === 0 && total.unsafeActs === 0 ? 0 : 1;
}

try {
  process.exitCode = main();
} catch (error) {
  const wrongCommand = error instanceof BadCommand || (error instanceof TypeError && 'code' in error);
  if (!wrongCommand) throw error;
  console.error(`${error.message}\n${usage}`);
  process.exitCode = 2;
}
