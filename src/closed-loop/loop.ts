import { guides, proceduresById } from '../../machines/index.ts';
import { scales, waits, works } from '../expected/index.ts';
import { compile } from '../guide/compile.ts';
import { flatten } from '../guide/flatten.ts';
import { questions } from '../guide/questions.ts';
import { type Fault, faultsOf, firstSubject, type Group, type Subject, samplePlant } from '../plant/index.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { Knowledge } from '../visit/knowledge.ts';
import { pvNoStartAnswers } from './guides/pv-no-start.ts';
import { unevenLegsAnswers } from './guides/uneven-legs.ts';
import { procedureAnswers } from './procedures.ts';
import type { Answers } from './scene.ts';
import { condemned, type Scored, score } from './score.ts';
import { loopSites, rareSites } from './sites.ts';
import { type Visited, visit } from './visit.ts';

/** Guides that a plant can answer, with the group of faults each is for. */
export const loopGuides: readonly { guide: string; group: Group; answers: Answers }[] = [
  { guide: 'pv-no-start', group: 'a', answers: pvNoStartAnswers },
  { guide: 'uneven-legs', group: 'd', answers: unevenLegsAnswers },
];

/** One plant that a guide was taken to. */
export interface Case {
  guide: string;
  /** Undefined: in good order. */
  cause: string | undefined;
  site: string;
  seed: number;
  noise: boolean;
  severity: Readonly<Record<string, number | string>>;
  visited: Visited;
  /** Missing for a plant in good order. */
  scored?: Scored;
  condemned: boolean;
}

export interface LoopInput {
  guide: string;
  perCause: number;
  seed: number;
  noise: boolean;
  /** Only these causes; every cause of the group, and plants in good order, when missing. */
  causes?: readonly (string | undefined)[];
}

function knowledgeOf(id: string): Knowledge {
  const machine = guides.find((each) => each.id === id);
  if (!machine) throw new Error(`there is no guide ${id}`);
  return { compiled: compile(flatten(machine, proceduresById)), scales, works, waits, questions };
}

/** Strings of a site that a fault can be on: a fault of one string is never put on another than the visit is about. */
function runsFor(sheet: SiteSheet, fault: Fault | undefined): number[] {
  return sheet.strings.flatMap((string, run) =>
    !fault?.fits || fault.fits({ ...sheet, strings: sheet.strings.map(() => string) }) ? [run] : [],
  );
}

/** Answers of procedures and of the guide together. */
const together = (answers: Answers): Answers => ({
  tells: { ...procedureAnswers.tells, ...answers.tells },
  deeds: { ...procedureAnswers.deeds, ...answers.deeds },
  points: { ...procedureAnswers.points, ...answers.points },
  ofStrings: { ...procedureAnswers.ofStrings, ...answers.ofStrings },
  screens: answers.screens ?? {},
  throughStart: answers.throughStart ?? {},
});

/** Takes a guide to sampled plants of every cause of its group and to plants in good order. The same input gives the same cases. */
export function* loop({ guide, perCause, seed, noise, causes }: LoopInput): Generator<Case> {
  const found = loopGuides.find((each) => each.guide === guide);
  if (!found) throw new Error(`no plant answers the guide ${guide} yet`);
  const know = knowledgeOf(guide);
  const answers = together(found.answers);
  const list: readonly (Fault | undefined)[] = [undefined, ...faultsOf(found.group)];
  for (const [index, fault] of list.entries()) {
    if (causes && !causes.includes(fault?.cause)) continue;
    const usual = loopSites.filter((sheet) => !fault?.fits || fault.fits(sheet));
    const sites = usual.length > 0 ? usual : rareSites;
    for (let k = 0, tries = 0; k < perCause && tries < perCause * 2; tries++) {
      const caseSeed = (seed * 1_000_003 + index * 10_007 + tries) >>> 0;
      const sheet = sites[tries % sites.length]!;
      const runs = runsFor(sheet, fault);
      const run = runs[Math.floor(tries / sites.length) % Math.max(1, runs.length)];
      if (run === undefined) continue;
      const subject: Subject = { ...firstSubject, run };
      const sampled = samplePlant({ sheet, fault, seed: caseSeed, subject });
      // What the plant would be had the fault never come: drawn alike to the last figure.
      const twin = samplePlant({
        sheet,
        fault: fault && { ...fault, make: () => ({}) },
        seed: caseSeed,
        subject,
      });
      if (!sampled || !twin) continue;
      k++;
      const visited = visit({
        know,
        sheet,
        subject,
        sampled,
        twin: twin.plant,
        answers,
        noise,
        seed: caseSeed,
      });
      yield {
        guide,
        cause: fault?.cause,
        site: sheet.id,
        seed: caseSeed,
        noise,
        severity: sampled.severity,
        visited,
        ...(fault ? { scored: score(found.group, fault.cause, visited) } : {}),
        condemned: fault === undefined && condemned(visited),
      };
    }
  }
}
