import type { Steps } from './steps.ts';

/** Charging hard from a generator or the utility: the one setting that the owner can trade for quiet. */
export const charge = {
  'charge-down': {
    kind: 'operate',
    state: 'asFound',
    hazards: ['wrong-charge-profile'],
    minutes: 3,
    outcomes: { done: 'charge-wait' },
    cant: 'which-way',
    unsure: 'which-way',
  },
  'charge-wait': {
    kind: 'wait',
    state: 'asFound',
    wait: 'heat-settle',
    minutes: 15,
    outcomes: { done: 'fans-charge' },
    cant: 'charge-back',
    unsure: 'charge-back',
  },
  'fans-charge': {
    kind: 'look',
    state: 'asFound',
    hazards: ['moving-parts'],
    minutes: 1,
    outcomes: { slower: 'v-charging', same: 'charge-back' },
    cant: 'charge-back',
    unsure: 'charge-back',
  },
  'charge-back': {
    kind: 'operate',
    state: 'asFound',
    hazards: ['wrong-charge-profile'],
    minutes: 2,
    outcomes: { done: 'which-way' },
    cant: 'leave-as-found',
    unsure: 'leave-as-found',
  },
  'v-charging': {
    kind: 'verdict',
    causes: ['charging-hard'],
    because: [
      { step: 'charge-for', outcomes: ['fans-run'] },
      { step: 'charge-from', outcomes: ['ac-source'] },
      { step: 'fans-charge', outcomes: ['slower'] },
    ],
    outcomes: { 'keep-lower': 'retest-charge', 'put-back': 'charge-explained' },
  },
  'charge-explained': {
    kind: 'operate',
    state: 'asFound',
    hazards: ['wrong-charge-profile'],
    minutes: 2,
    outcomes: { done: 'idle-cost' },
    cant: 'referred',
    unsure: 'referred',
  },
  'retest-charge': {
    kind: 'choose',
    state: 'asFound',
    minutes: 5,
    outcomes: { quiet: 'fixed', 'not-like-then': 'retest-owed', 'still-loud': 'charge-back' },
    cant: 'retest-owed',
    unsure: 'retest-owed',
  },
} as const satisfies Steps;
