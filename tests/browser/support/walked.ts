import { expect } from 'vitest';
import { guides, procedures, proceduresById } from '../../../machines/index.ts';
import type { Driver } from '../../../src/commands/drive-run.ts';
import { scales, waits, works } from '../../../src/expected/index.ts';
import { compile } from '../../../src/guide/compile.ts';
import { flatten } from '../../../src/guide/flatten.ts';
import { questions } from '../../../src/guide/questions.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import type { Knowledge } from '../../../src/visit/knowledge.ts';
import { openRun } from '../../../src/visit/run.ts';
import { verdictOf } from '../../../src/visit/verdict.ts';
import { type WalkAnswers, type WalkResult, walk } from '../../../src/visit/walk.ts';

/** What judges a guide or procedure, as `walk` and the page have it. */
export function knowledgeOf(id: string): Knowledge {
  const machine = [...guides, ...procedures].find((each) => each.id === id);
  if (!machine) throw new Error(`no guide or procedure ${id}`);
  return { compiled: compile(flatten(machine, proceduresById)), scales, works, waits, questions };
}

/** What `walk` makes of the answers. */
export const walkOf = (id: string, sheet: SiteSheet, file: WalkAnswers): WalkResult =>
  walk(knowledgeOf(id), sheet, file);

type Outcomes = WalkResult['outcomes'];

const judged = (outcomes: Outcomes) =>
  outcomes.map(({ block, outcome, readings }) => ({
    block,
    outcome,
    readings: readings.map(({ id, text, value, outcome: zone }) => ({ id, text, value, zone })),
  }));

/**
 * Run the answers on the page and hold what came of it against `walk`: the way taken, each outcome, each reading's value
 * and judgement, the verdict and what it rests on, and the hazard statements seen, each before the words of the action.
 * Returns the walk, for what a test asks beyond that.
 */
export async function runAsWalked(
  driver: Driver,
  id: string,
  sheet: SiteSheet,
  file: WalkAnswers,
): Promise<WalkResult> {
  const walked = walkOf(id, sheet, file);
  const seen: { block: string; hazard: string }[] = [];
  const path = await driver.drive(file, async (block) => {
    const { hazards, misplaced } = await driver.page.evaluate(() => {
      const plate = document.querySelector('section.plate[data-now="now"]')!;
      const action = plate.querySelector('[data-role="do"], .plate-do');
      const shown = [...plate.querySelectorAll<HTMLElement>('[data-hazard]')].filter((each) =>
        each.checkVisibility(),
      );
      const before = (each: Node) =>
        !action || (each.compareDocumentPosition(action) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
      return {
        hazards: shown.map((each) => each.dataset.hazard ?? ''),
        misplaced: shown.filter((each) => !before(each)).map((each) => each.dataset.hazard),
      };
    });
    expect(misplaced).toEqual([]);
    // A step come to again shows its statements again; like the walk's, they are listed once.
    const listed = new Set(seen.map((each) => `${each.block} ${each.hazard}`));
    seen.push(
      ...hazards.filter((each) => !listed.has(`${block} ${each}`)).map((hazard) => ({ block, hazard })),
    );
  });
  const know = knowledgeOf(id);
  const entries = await driver.log();
  const state = openRun(know, entries);
  const fromLog = state.trail.map(({ block, outcome, readings }) => ({
    block,
    outcome,
    readings: readings.map(({ id: name, text, value, outcome: zone }) => ({ id: name, text, value, zone })),
  }));
  expect(fromLog).toEqual(judged(walked.outcomes));
  expect(seen).toEqual(walked.warnings);
  // Steps that the sheet answers are on the way, and are never shown.
  const bySheet = walked.outcomes.filter(({ by }) => by === 'sheet').map(({ block }) => block);
  expect(path).toEqual(walked.path.filter((block) => !bySheet.includes(block)));
  const verdict = verdictOf(know, state);
  expect(verdict?.causes ?? null).toEqual(walked.verdict?.causes ?? null);
  expect(verdict?.because.map(({ block, outcome }) => [block, outcome])).toEqual(
    walked.verdict?.because.map(({ block, outcome }) => [block, outcome]),
  );
  return walked;
}
