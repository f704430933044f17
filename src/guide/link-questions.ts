import type { QuestionDef } from './question-def.ts';

type Outcomes = Readonly<Record<string, string>>;

/** Verdicts after which nothing was put right yet: every other one that leads to the proof is a mending. */
const noMending = ['v-limits', 'v-sound', 'v-came-back'];
const mendedBy = (outcomes: Outcomes) =>
  Object.keys(outcomes).some((block) => block.startsWith('v-') && !noMending.includes(block));
/** Verdicts on faults that come with load and time. */
const loadBorn = [
  'v-noise',
  'v-ends-many',
  'v-end-unit',
  'v-end-pack',
  'v-master',
  'v-plug-touch',
  'v-contact',
  'v-came-back',
];
const taken = (outcomes: Outcomes, blocks: readonly string[]) =>
  blocks.some((block) => outcomes[block] !== undefined);

/**
 * Why the packs were powered down. A later part of the guide outweighs an earlier one; once a proof has failed and the
 * guide was gone through again, only the person knows.
 */
function offWork(outcomes: Outcomes): string | undefined {
  const reasons = [
    ...(outcomes.pairs === 'at-pack' ? ['set-pack'] : []),
    ...(outcomes['off-or-not'] === 'go' ? ['ohms'] : []),
    ...(outcomes['v-addresses'] === 'set' || outcomes['v-selector'] === 'set' ? ['switches'] : []),
    ...(outcomes['v-asleep'] === 'wake' || outcomes['v-asleep-share'] === 'wake' ? ['wake'] : []),
  ];
  return reasons.length > 1 && outcomes['proof-failed'] === 'further' ? undefined : reasons[0];
}

/** What comes after the plant is back. */
function afterPower(outcomes: Outcomes): string | undefined {
  // The lead was found wrong or a port dead, and stays out.
  if (Object.values(outcomes).includes('leave-out')) return 'by-voltage';
  switch (offWork(outcomes)) {
    case 'set-pack':
      return 'try';
    case 'ohms':
      return taken(outcomes, ['set-ends', 'mend-lead']) ? 'proof' : 'alive';
    case 'switches':
    case 'wake':
      return 'proof';
    default:
      return undefined;
  }
}

function mended(outcomes: Outcomes): 'limits' | 'mended' | 'as-found' | 'not-seen' {
  if (outcomes['v-limits'] !== undefined) return 'limits';
  // A fault that comes and goes is not cured by being powered down: half an hour without it shows nothing yet.
  if (mendedBy(outcomes)) return 'mended';
  if (outcomes['v-came-back'] === undefined)
    return outcomes.symptom === 'comes-goes' ? 'not-seen' : 'as-found';
  return outcomes.symptom === 'comes-goes' ? 'not-seen' : 'mended';
}

/** What the answers of the battery-link guide decide further on. */
export const linkQuestions: readonly QuestionDef[] = [
  {
    id: 'link-kind',
    answers: ['can', 'serial', 'none'],
    decide: ({ sheet }) => ({ can: 'can', 'serial-485': 'serial', none: 'none' })[sheet.dataLink.kind],
    onVariant: () => ['can', 'serial', 'none'],
  },
  {
    id: 'link-off-work',
    answers: ['ohms', 'switches', 'set-pack', 'wake'],
    decide: ({ outcomes }) => offWork(outcomes),
    onVariant: () => ['ohms', 'switches', 'set-pack', 'wake'],
  },
  {
    id: 'link-woken',
    answers: ['asleep', 'awake'],
    decide: ({ outcomes }) =>
      taken(outcomes, ['v-asleep', 'v-asleep-share'])
        ? offWork(outcomes) === 'wake'
          ? 'asleep'
          : undefined
        : 'awake',
    onVariant: () => ['asleep', 'awake'],
  },
  {
    id: 'link-after-power',
    answers: ['try', 'proof', 'alive', 'by-voltage'],
    decide: ({ outcomes }) => afterPower(outcomes),
    onVariant: () => ['try', 'proof', 'alive', 'by-voltage'],
  },
  {
    id: 'link-long-run',
    answers: ['needed', 'not-needed'],
    decide: ({ outcomes }) =>
      outcomes.symptom === 'comes-goes' || taken(outcomes, loadBorn) ? 'needed' : 'not-needed',
    onVariant: () => ['needed', 'not-needed'],
  },
  {
    id: 'link-mended',
    answers: ['limits', 'mended', 'as-found', 'not-seen'],
    decide: ({ outcomes }) => mended(outcomes),
    onVariant: () => ['limits', 'mended', 'as-found', 'not-seen'],
  },
  {
    id: 'link-limit-by',
    answers: ['hand', 'profile'],
    decide: ({ outcomes }) => (outcomes['v-limits'] === 'hand' ? 'hand' : 'profile'),
    onVariant: () => ['hand', 'profile'],
  },
];
