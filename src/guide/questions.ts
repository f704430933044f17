import type { ExpectContext } from '../expected/context.ts';
import type { Variant } from '../safety/plant.ts';
import { acNominal } from '../site/ac.ts';

/** A question that the sheet answers. Unknown counts as the answer that asks for more care. */
export interface QuestionDef {
  id: string;
  answers: readonly string[];
  /** The sheet's answer; `undefined` when it does not know and the person is asked. */
  decide(context: ExpectContext): string | undefined;
  /** The answers possible on a plant variant. */
  onVariant(variant: Variant): readonly string[];
}

/** The questions a `sheet` step may ask, by id. */
export const questions: Readonly<Record<string, QuestionDef>> = Object.fromEntries(
  (
    [
      {
        id: 'second-source',
        answers: ['fitted', 'none'],
        decide: ({ sheet }) => (sheet.secondSource.kind === 'none' ? 'none' : 'fitted'),
        onVariant: (variant) => [variant.source === 'none' ? 'none' : 'fitted'],
      },
      {
        id: 'several-packs',
        answers: ['one', 'several'],
        decide: ({ sheet }) => (sheet.battery.packs > 1 ? 'several' : 'one'),
        onVariant: (variant) => [variant.packs],
      },
      {
        id: 'several-inverters',
        answers: ['one', 'several'],
        decide: ({ sheet }) => (sheet.parallelUnits > 1 ? 'several' : 'one'),
        onVariant: (variant) => [variant.inverters],
      },
      {
        id: 'output-legs',
        answers: ['two', 'one'],
        decide: ({ sheet }) => (acNominal[sheet.inverter.topology].legs === 2 ? 'two' : 'one'),
        onVariant: () => ['two', 'one'],
      },
      {
        id: 'several-trackers',
        answers: ['one', 'several'],
        decide: ({ sheet }) => (sheet.trackers.length > 1 ? 'several' : 'one'),
        onVariant: () => ['one', 'several'],
      },
      {
        id: 'shutdown-devices',
        answers: ['fitted', 'none'],
        decide: ({ sheet, stringId }) => {
          const fitted = sheet.strings.find(({ name }) => name === stringId)?.shutdownDevices ?? undefined;
          return fitted === undefined ? undefined : fitted ? 'fitted' : 'none';
        },
        onVariant: () => ['fitted', 'none'],
      },
      {
        id: 'parallel-strings',
        answers: ['one', 'several'],
        decide: ({ sheet, stringId }) => {
          const string = sheet.strings.find(({ name }) => name === stringId);
          return string && (string.parallel > 1 ? 'several' : 'one');
        },
        onVariant: () => ['one', 'several'],
      },
    ] satisfies QuestionDef[]
  ).map((question) => [question.id, question]),
);
