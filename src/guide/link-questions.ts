import type { QuestionDef } from './questions.ts';

type Outcomes = Readonly<Record<string, string>>;

/** Verdicts of the battery-link guide after which something was put right. */
const mendings = [
  'v-plug',
  'v-plug-seat',
  'v-plug-touch',
  'v-socket',
  'v-selector',
  'v-master',
  'v-addresses',
  'v-chain',
  'v-chain-lead',
  'v-noise',
  'v-crossed',
  'v-ends-many',
  'v-end-unit',
  'v-end-pack',
  'v-lead-pins',
  'v-lead-open',
  'v-lead-short',
  'v-lead-broken',
  'v-contact',
  'v-asleep',
  'v-asleep-share',
  'v-pairing',
  'v-speed',
  'v-pair-address',
  'v-came-back',
];
/** Of those, the ones whose failing condition comes with load and time. */
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

/** Why the packs were powered down; the order of the guide makes the later reason the one that counts. */
function offWork(outcomes: Outcomes): string | undefined {
  if (outcomes.pairs === 'at-pack') return 'set-pack';
  if (outcomes['off-or-not'] === 'go') return 'ohms';
  if (outcomes['v-addresses'] === 'set' || outcomes['v-selector'] === 'set') return 'switches';
  return outcomes['v-asleep'] === 'wake' || outcomes['v-asleep-share'] === 'wake' ? 'wake' : undefined;
}

/** What comes after the plant is back. */
function afterPower(outcomes: Outcomes): string | undefined {
  if (outcomes.pairs === 'at-pack') return 'try';
  const left = [
    'v-lead-pins',
    'v-lead-open',
    'v-lead-short',
    'v-lead-broken',
    'v-port-short',
    'v-port-pack-short',
  ];
  if (left.some((block) => outcomes[block] === 'leave-out')) return 'by-voltage';
  const inOff = ['set-ends', 'mend-lead', 'set-switches'];
  if (taken(outcomes, inOff)) return 'proof';
  return outcomes['off-or-not'] === 'go'
    ? 'alive'
    : taken(outcomes, ['v-asleep', 'v-asleep-share'])
      ? 'proof'
      : undefined;
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
    decide: ({ outcomes }) => (offWork(outcomes) === 'wake' ? 'asleep' : 'awake'),
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
    answers: ['mended', 'as-found', 'not-seen'],
    decide: ({ outcomes }) =>
      taken(outcomes, mendings) ? 'mended' : outcomes.symptom === 'comes-goes' ? 'not-seen' : 'as-found',
    onVariant: () => ['mended', 'as-found', 'not-seen'],
  },
];
