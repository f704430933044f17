import type { ExpectContext } from '../expected/context.ts';
import { inletAtLimit } from '../expected/heat/site.ts';
import { stringVoc } from '../expected/pv/site.ts';
import { acNominal } from '../site/ac.ts';
import type { AcTopology } from '../site/sheet.ts';
import { linkQuestions } from './link-questions.ts';
import type { QuestionDef } from './question-def.ts';

/**
 * Room, inlet and outlet were read, and each stands where a sound unit has it. The strip of tissue speaks only for an inlet
 * too close to call: it does not cool one that was read hot.
 */
const airInBand = (outcomes: ExpectContext['outcomes']): boolean =>
  outcomes['room-air'] === 'ok' &&
  (outcomes['inlet-air'] === 'as-room' ||
    (outcomes['inlet-air'] === 'undetermined' && outcomes['air-path'] === 'free')) &&
  outcomes['outlet-air'] === 'ok';

const topologyAnswers: Record<AcTopology, string> = {
  'opposed-120-240': 'opposed',
  'common-120': 'common',
  'wye-120-208': 'wye',
  'single-230': 'single',
};

/** What was said of the lights, where the legs read in band just now. */
const symptomAnswers: Readonly<Record<string, string>> = {
  'blinks-at-start': 'dips',
  'dims-together': 'dips',
  dims: 'dips',
  'trips-leg': 'overload',
  'odd-to-ground': 'ground',
};

/** A start that pulled the legs down so far that it had to be looked into. */
const dipsSeen: readonly string[] = ['deep', 'deep-2', 'dips', 'dips-2', 'between'];

/** Verdicts that a leg is asked for too much: put right only when the peak has been clamped again. */
const overloads: readonly string[] = [
  'v-leg-overloaded',
  'v-legs-shared-badly',
  'v-house-overloaded',
  'v-house-pulled-low',
];

/** What the test of the legs has come to, once the house is back on. */
function legsCameTo(outcomes: Readonly<Record<string, string>>): string {
  if (outcomes['set-legs'] === 'done') return 'set';
  const one = outcomes['step-work'] ?? outcomes['line-work'];
  if (one === 'long') return 'long';
  if (outcomes['test-load-off-watch'] !== undefined || one === 'no-reference') return 'watch';
  if (one === 'cannot-tell' && outcomes['run-drop'] !== 'small') return 'watch';
  return dipsSeen.includes(outcomes['dip-watch'] ?? '') ? 'dip' : 'sound';
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
        id: 'output-topology',
        answers: ['opposed', 'common', 'wye', 'single'],
        decide: ({ sheet }) => topologyAnswers[sheet.inverter.topology],
        onVariant: () => ['opposed', 'common', 'wye', 'single'],
      },
      {
        id: 'legs-symptom',
        answers: ['dips', 'overload', 'ground', 'other'],
        decide: ({ outcomes }) =>
          symptomAnswers[outcomes.symptom ?? outcomes['symptom-one'] ?? ''] ?? 'other',
        onVariant: () => ['dips', 'overload', 'ground', 'other'],
      },
      {
        id: 'legs-came-to',
        answers: ['sound', 'dip', 'long', 'set', 'watch'],
        decide: ({ outcomes }) => legsCameTo(outcomes),
        onVariant: () => ['sound', 'dip', 'long', 'set', 'watch'],
      },
      {
        id: 'legs-mended',
        answers: ['overload', 'other'],
        decide: ({ outcomes }) =>
          overloads.some((verdict) => outcomes[verdict] === 'mend') ? 'overload' : 'other',
        onVariant: () => ['overload', 'other'],
      },
      {
        id: 'low-z-meter',
        answers: ['here', 'none'],
        decide: ({ sheet: { meter } }) =>
          meter.lowImpedance === null ? undefined : meter.lowImpedance ? 'here' : 'none',
        onVariant: () => ['here', 'none'],
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
        id: 'pv-over-logged',
        answers: ['logged', 'not-logged'],
        decide: ({ outcomes: { events } }) => (events === 'over-volts' ? 'logged' : 'not-logged'),
        onVariant: () => ['logged', 'not-logged'],
      },
      {
        id: 'pv-runs-already',
        answers: ['runs', 'not'],
        decide: ({ outcomes }) =>
          outcomes['running-now'] === 'working' || outcomes['running-between'] === 'runs' ? 'runs' : 'not',
        onVariant: () => ['runs', 'not'],
      },
      {
        id: 'pv-alarm-logged',
        answers: ['logged', 'not-logged'],
        decide: ({ outcomes: { events } }) =>
          events === 'insulation' || events === 'ground-latched' ? 'logged' : 'not-logged',
        onVariant: () => ['logged', 'not-logged'],
      },
      {
        id: 'heat-complaint',
        answers: ['fans-run', 'hot-derates'],
        decide: ({ outcomes: { complaint } }) => complaint,
        onVariant: () => ['fans-run', 'hot-derates'],
      },
      {
        id: 'heat-conditions',
        answers: ['at-it', 'like-then', 'milder'],
        decide: ({ outcomes: { conditions } }) => conditions,
        onVariant: () => ['at-it', 'like-then', 'milder'],
      },
      {
        id: 'heat-fan-start',
        answers: ['known', 'assumed'],
        decide: ({ sheet }) => (sheet.inverter.fanStartC === null ? 'assumed' : 'known'),
        onVariant: () => ['known', 'assumed'],
      },
      {
        id: 'heat-inlet-limit',
        answers: ['at-limit', 'below', 'not-read'],
        decide: inletAtLimit,
        onVariant: () => ['at-limit', 'below', 'not-read'],
      },
      {
        id: 'heat-air-read',
        answers: ['all-in-band', 'not-all'],
        decide: ({ outcomes }) => (airInBand(outcomes) ? 'all-in-band' : 'not-all'),
        onVariant: () => ['all-in-band', 'not-all'],
      },
      {
        id: 'heat-all-read',
        answers: ['all-in-band', 'not-all'],
        decide: ({ outcomes }) =>
          airInBand(outcomes) &&
          outcomes['fans-turn'] === 'all-blow' &&
          outcomes['twin-heat'] === 'cool-enough' &&
          outcomes['joint-heat'] === 'alike'
            ? 'all-in-band'
            : 'not-all',
        onVariant: () => ['all-in-band', 'not-all'],
      },
      {
        id: 'heat-rest-high',
        answers: ['high', 'not-shown'],
        decide: ({ outcomes }) => (outcomes['rest-watts'] === 'high' ? 'high' : 'not-shown'),
        onVariant: () => ['high', 'not-shown'],
      },
      {
        id: 'heat-mended',
        answers: ['joint', 'air'],
        decide: ({ outcomes }) => (outcomes['v-hot-joint'] === undefined ? 'air' : 'joint'),
        onVariant: () => ['joint', 'air'],
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
      ...linkQuestions,
    ] satisfies QuestionDef[]
  ).map((question) => [question.id, question]),
);
