import type { Steps } from './steps.ts';

/** From the door to the kind of trouble: nothing is touched. */
export const firstLook = {
  'first-look': {
    kind: 'look',
    state: 'asFound',
    minutes: 1,
    outcomes: {
      quiet: 'someone-knows',
      'someone-elses-lock': 'someone-elses-lock',
      'smell-or-noise': 'get-away',
    },
  },
  'someone-knows': {
    kind: 'hold',
    state: 'asFound',
    minutes: 1,
    items: [{ id: 'named-person' }],
    outcomes: { done: { to: 'output-kind', does: [{ namedPerson: true }] } },
  },
  'output-kind': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'output-topology',
    outcomes: { opposed: 'symptom', common: 'common-scope', wye: 'symptom', single: 'single-scope' },
  },
  'common-scope': {
    kind: 'look',
    state: 'asFound',
    minutes: 1,
    outcomes: { understood: 'symptom' },
  },
  symptom: {
    kind: 'choose',
    state: 'asFound',
    hazards: ['neutral-open'],
    minutes: 1,
    outcomes: {
      'see-saw': 'loads-away',
      'side-dead': 'meter-ready',
      'side-dims': 'meter-ready',
      'dims-together': 'meter-ready',
      'blinks-at-start': 'meter-ready',
      pulses: 'pulse-look',
      'source-blinks': 'source-fitted',
      'one-pair': 'pair-off',
      'trips-leg': 'meter-ready',
      'odd-to-ground': 'meter-ready',
      'nothing-now': 'meter-ready',
    },
  },
} as const satisfies Steps;
