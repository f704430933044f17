import { proceduresById } from '../../../machines/index.ts';
import unevenLegs from '../../../machines/uneven-legs.ts';
import { scales, waits, works } from '../../../src/expected/index.ts';
import { compile } from '../../../src/guide/compile.ts';
import { flatten } from '../../../src/guide/flatten.ts';
import { questions } from '../../../src/guide/questions.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import type { Knowledge } from '../../../src/visit/knowledge.ts';
import { answersSchema, type WalkResult, walk } from '../../../src/visit/walk.ts';

/** The guide on uneven legs with all it is judged by. */
export const legKnowledge: Knowledge = {
  compiled: compile(flatten(unevenLegs, proceduresById)),
  scales,
  works,
  waits,
  questions,
};

const walkWith = (sheet: SiteSheet, answers: Record<string, unknown>): WalkResult =>
  walk(legKnowledge, sheet, answersSchema.parse({ answers }));

/** Walks with whatever of the plant's readings the walk comes to ask for; what it never asks for is left out. */
export function walkLegs(sheet: SiteSheet, answers: Record<string, unknown>): WalkResult {
  const asked = new Set(walkWith(sheet, answers).outcomes.map(({ block }) => block));
  const used = Object.fromEntries(Object.entries(answers).filter(([block]) => asked.has(block)));
  return walkWith(sheet, used);
}
