import type { ExpectContext } from '../expected/context.ts';
import { stringVoc } from '../expected/pv/site.ts';
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
        id: 'shutdown-told',
        answers: ['off', 'on'],
        decide: ({ outcomes }) => (outcomes['shutdown-button'] === 'on' ? 'on' : undefined),
        onVariant: () => ['off', 'on'],
      },
      {
        id: 'meter-for-string',
        answers: ['enough', 'too-low'],
        decide: ({ sheet, stringId }) => {
          const string = sheet.strings.find(({ name }) => name === stringId) ?? sheet.strings[0];
          const { categoryV } = sheet.meter;
          if (categoryV === null || !string) return undefined;
          return categoryV < stringVoc(string, sheet.climate.recordLowC) ? 'too-low' : 'enough';
        },
        onVariant: () => ['enough', 'too-low'],
      },
      {
        id: 'meter-for-battery',
        answers: ['enough', 'too-low'],
        decide: ({ sheet }) =>
          sheet.meter.categoryV === null
            ? undefined
            : sheet.meter.categoryV < sheet.inverter.dcMaxV
              ? 'too-low'
              : 'enough',
        onVariant: () => ['enough', 'too-low'],
      },
      {
        id: 'dc-clamp',
        answers: ['here', 'none'],
        decide: ({ sheet }) => (sheet.meter.hasDcClamp ? 'here' : 'none'),
        onVariant: () => ['here', 'none'],
      },
      {
        id: 'pv-light',
        answers: ['bright', 'weak'],
        decide: ({ outcomes: { light } }) => (light === 'bright' || light === 'weak' ? light : undefined),
        onVariant: () => ['bright', 'weak'],
      },
      {
        id: 'pv-history',
        answers: ['short-always', 'other'],
        decide: ({ outcomes }) => (outcomes['short-history'] === 'heat-or-never' ? 'short-always' : 'other'),
        onVariant: () => ['short-always', 'other'],
      },
      {
        id: 'pv-link-event',
        answers: ['lost', 'not-logged'],
        decide: ({ outcomes: { events } }) => (events === 'battery-link' ? 'lost' : 'not-logged'),
        onVariant: () => ['lost', 'not-logged'],
      },
      {
        id: 'pv-alarm-logged',
        answers: ['logged', 'not-logged'],
        decide: ({ outcomes: { events } }) =>
          events === 'insulation' || events === 'ground-latched' ? 'logged' : 'not-logged',
        onVariant: () => ['logged', 'not-logged'],
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
