import type { ScaleDef, WaitDef, WorkDef } from '../expected/context.ts';
import type { Moves } from '../guide/moves.ts';
import type { QuestionDef } from '../guide/question-def.ts';

/** Everything a run is judged by: the guide, and what is expected of a plant. */
export interface Knowledge {
  compiled: Moves;
  scales: Readonly<Record<string, ScaleDef>>;
  works: Readonly<Record<string, WorkDef>>;
  waits: Readonly<Record<string, WaitDef>>;
  questions: Readonly<Record<string, QuestionDef>>;
}
