import fansHeat from '../../../machines/fans-heat.ts';
import { proceduresById } from '../../../machines/index.ts';
import { scales, waits, works } from '../../../src/expected/index.ts';
import { compile } from '../../../src/guide/compile.ts';
import { flatten } from '../../../src/guide/flatten.ts';
import { questions } from '../../../src/guide/questions.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import type { Knowledge } from '../../../src/visit/knowledge.ts';
import { answersSchema, type WalkResult, walk } from '../../../src/visit/walk.ts';

/** The guide to loud fans and hot units, with all it is judged by. */
export const heatKnowledge: Knowledge = {
  compiled: compile(flatten(fansHeat, proceduresById)),
  scales,
  works,
  waits,
  questions,
};

/** Walks the guide on a site. */
export const walkHeat = (sheet: SiteSheet, answers: Record<string, unknown>): WalkResult =>
  walk(heatKnowledge, sheet, answersSchema.parse({ answers }));
