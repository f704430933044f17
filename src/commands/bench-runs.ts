/** How far the bench goes on each guide and procedure: from its start to the first reading that is judged. */
import type { WalkAnswers } from '../visit/walk.ts';

export interface BenchRun {
  /** Its page, as a path of the site. */
  page: string;
  /** Answers up to that reading and no further. Worksheets, waits and what the sheet answers go by themselves. */
  answers: WalkAnswers['answers'];
  /** It is about one PV string, and asks which. */
  strings?: true;
}

/** The guide whose bytes and times the budgets are for. */
export const guideRun: BenchRun = {
  page: 'guides/pv-no-start',
  strings: true,
  answers: {
    'first-look': 'quiet',
    'someone-knows': 'done',
    events: 'none',
    symptom: 'volts-no-watts',
    light: 'bright',
    screen: { volts: '312' },
  },
};

const sourceOff = {
  'auto-start-off': 'done',
  'source-stop': 'done',
  'ac-in-open': 'done',
  'ac-in-lock': 'locked',
};
const output = { 'out-two': { v12: '240.5', v1: '120.2', v2: '120.3' } };

export const benchRuns: readonly BenchRun[] = [
  guideRun,
  {
    page: 'guides/fans-heat',
    answers: {
      'first-look': 'quiet',
      complaint: 'fans-run',
      numbers: { watts: '900', charge: '0' },
    },
  },
  {
    page: 'guides/battery-link',
    answers: {
      'first-look': 'quiet',
      'someone-knows': 'done',
      'pack-lights': 'off',
      'share-ready': 'done',
      'asleep-share': { dark: '11.2', other: '11.4' },
    },
  },
  {
    page: 'procedures/isolate',
    answers: {
      ready: 'done',
      'loads-off': 'done',
      'out-open': 'done',
      'out-lock': 'locked',
      'inverter-off': 'done',
      ...sourceOff,
      'pv-amps': { largest: '0.02' },
    },
  },
  { page: 'procedures/prove-dead', answers: { ready: 'done', 'tester-before': { dc: '53.2', ac: '240.3' } } },
  { page: 'procedures/open-string', strings: true, answers: { ready: 'done', amps: { amps: '0.02' } } },
  {
    page: 'procedures/restore',
    answers: {
      ready: 'done',
      inlet: 'in-place',
      'pre-charge--ready': 'done',
      'pre-charge--packs': 'all-on',
      'pre-charge--s1': { s1: '53.2' },
    },
  },
  { page: 'procedures/pre-charge', answers: { ready: 'done', packs: 'all-on', s1: { s1: '53.2' } } },
  {
    page: 'procedures/first-power-up',
    answers: {
      ready: 'done',
      'pre-charge--ready': 'done',
      'pre-charge--packs': 'all-on',
      'pre-charge--s1': { s1: '53.2' },
    },
  },
  { page: 'procedures/string-check', strings: true, answers: { ready: 'done', 'cell-temp': { cell: '25' } } },
  {
    page: 'procedures/ac-output-check',
    answers: {
      ready: 'done',
      'loads-off': 'done',
      'source-there': 'connected',
      ...sourceOff,
      'out-open': 'done',
      'inverter-on': 'done',
      ...output,
    },
  },
  { page: 'procedures/join-unit-dc', answers: { ready: 'done', bus: { volts: '53.2' } } },
  {
    page: 'procedures/restore-ac',
    answers: {
      ready: 'done',
      'ac-in-unlock': 'done',
      'ac-in-ready': 'done',
      'ac-in-close': 'done',
      'inverter-on': 'done',
      ...output,
    },
  },
  {
    page: 'procedures/neutral-proof',
    answers: { ready: 'done', unloaded: { v12: '240.4', v1: '120.2', v2: '120.2' } },
  },
];
