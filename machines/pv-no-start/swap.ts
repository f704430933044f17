import type { Steps } from './steps.ts';

/** The last split: a good string on this tracker, this string on a good tracker. The leads move on the inverter side, proved dead. */
export const swap = {
  'swap-fits': {
    kind: 'workOut',
    state: 'pvOpen',
    ask: 'pv-swap-fits',
    outcomes: {
      fits: 'make-safe',
      'too-much': 'unresolved-open',
      'too-little': 'unresolved-open',
      'no-other': 'unresolved-open',
    },
    cant: 'unresolved-open',
    unsure: 'unresolved-open',
  },
  'swap-light': {
    kind: 'look',
    minutes: 1,
    outcomes: { bright: 'swap-result', weak: 'noon-come-back' },
    cant: 'noon-come-back',
    unsure: 'noon-come-back',
  },
  'swap-result': {
    kind: 'display',
    minutes: 10,
    readings: {
      here: { point: 'display', scale: 'pv-making', mode: 'display' },
      there: { point: 'display', scale: 'pv-making', mode: 'display' },
    },
    rows: [
      { id: 'tracker-dead', when: { here: 'none', there: 'making' }, to: 'v-tracker-failed' },
      { id: 'both-run', when: { here: 'making', there: 'making' }, to: 'swap-cured' },
      { id: 'neither-tells', when: {}, to: 'leave-as-found' },
    ],
  },
  'v-tracker-failed': {
    kind: 'verdict',
    causes: ['tracker-input-failed'],
    because: [{ step: 'swap-result', outcomes: ['tracker-dead'] }],
    outcomes: { refer: 'referred' },
  },
} as const satisfies Steps;
