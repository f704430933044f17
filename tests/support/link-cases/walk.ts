import batteryLink from '../../../machines/battery-link.ts';
import { proceduresById } from '../../../machines/index.ts';
import { scales, waits, works } from '../../../src/expected/index.ts';
import { compile } from '../../../src/guide/compile.ts';
import { flatten } from '../../../src/guide/flatten.ts';
import { questions } from '../../../src/guide/questions.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import type { Knowledge } from '../../../src/visit/knowledge.ts';
import { answersSchema, type WalkResult, walk } from '../../../src/visit/walk.ts';

/** The battery-link guide with all it is judged by. */
export const linkKnowledge: Knowledge = {
  compiled: compile(flatten(batteryLink, proceduresById)),
  scales,
  works,
  waits,
  questions,
};

/** Walks the battery-link guide on a site. */
export const walkLink = (sheet: SiteSheet, answers: Record<string, unknown>): WalkResult =>
  walk(linkKnowledge, sheet, answersSchema.parse({ answers }));
