import { proceduresById } from '../../../machines/index.ts';
import pvNoStart from '../../../machines/pv-no-start.ts';
import { scales, waits, works } from '../../../src/expected/index.ts';
import { compile } from '../../../src/guide/compile.ts';
import { flatten } from '../../../src/guide/flatten.ts';
import { questions } from '../../../src/guide/questions.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import type { Knowledge } from '../../../src/visit/knowledge.ts';
import { answersSchema, type WalkResult, walk } from '../../../src/visit/walk.ts';

/** The PV guide with all it is judged by. */
export const pvKnowledge: Knowledge = {
  compiled: compile(flatten(pvNoStart, proceduresById)),
  scales,
  works,
  waits,
  questions,
};

/** Walks the PV guide on the first string of a site. */
export const walkPv = (sheet: SiteSheet, answers: Record<string, unknown>): WalkResult =>
  walk(pvKnowledge, sheet, answersSchema.parse({ subject: sheet.strings[0]?.name, answers }));
