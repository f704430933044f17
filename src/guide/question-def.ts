import type { ExpectContext } from '../expected/context.ts';
import type { Variant } from '../safety/plant.ts';

/** A question that the sheet answers. Unknown counts as the answer that asks for more care. */
export interface QuestionDef {
  id: string;
  answers: readonly string[];
  /** The sheet's answer; `undefined` when it does not know and the person is asked. */
  decide(context: ExpectContext): string | undefined;
  /** The answers possible on a plant variant. */
  onVariant(variant: Variant): readonly string[];
}
