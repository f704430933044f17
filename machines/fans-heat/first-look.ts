import type { Steps } from './steps.ts';

/** From the door to the commonest answer: nothing is touched, two figures are read off the screen. */
export const firstLook = {
  'first-look': {
    kind: 'look',
    state: 'asFound',
    hazards: ['hot-surface', 'moving-parts'],
    minutes: 1,
    outcomes: {
      quiet: 'complaint',
      'someone-elses-lock': 'someone-elses-lock',
      'smell-or-scorch': 'get-away',
    },
  },
  complaint: {
    kind: 'choose',
    state: 'asFound',
    minutes: 1,
    outcomes: { 'fans-run': 'numbers', 'hot-derates': 'conditions', scrapes: 'v-bearing' },
  },
  'v-bearing': {
    kind: 'verdict',
    hazards: ['dc-link', 'moving-parts'],
    causes: ['fan-failed'],
    because: [{ step: 'complaint', outcomes: ['scrapes'] }],
    outcomes: { 'service-did': 'retest-choose', refer: 'referred' },
  },
  conditions: {
    kind: 'choose',
    state: 'asFound',
    minutes: 1,
    outcomes: { 'at-it': 'numbers', 'like-then': 'numbers', milder: 'numbers', 'off-now': 'come-back-hot' },
    cant: 'come-back-hot',
    unsure: 'come-back-hot',
  },
  numbers: {
    kind: 'display',
    state: 'asFound',
    minutes: 2,
    readings: {
      watts: { point: 'display', scale: 'heat-output', mode: 'display' },
      charge: { point: 'display', scale: 'heat-charge', mode: 'display' },
    },
    rows: [
      { id: 'over', when: { watts: 'over' }, to: 'overloaded' },
      { id: 'charging', when: { charge: ['some', 'undetermined'] }, to: 'source-fitted' },
      { id: 'not-charging', when: {}, to: 'which-way' },
    ],
  },
  'source-fitted': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'second-source',
    outcomes: { fitted: 'charge-from', none: 'which-way' },
    cant: 'which-way',
    unsure: 'which-way',
  },
  'charge-from': {
    kind: 'choose',
    state: 'asFound',
    minutes: 1,
    outcomes: { pv: 'which-way', 'ac-source': 'charge-for' },
    cant: 'which-way',
    unsure: 'which-way',
  },
  // Fewer amps make a loud unit quiet. What makes one hot they only hide.
  'charge-for': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'heat-complaint',
    outcomes: { 'fans-run': 'charge-down', 'hot-derates': 'which-way' },
  },
  'which-way': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'heat-complaint',
    outcomes: { 'fans-run': 'normal', 'hot-derates': 'height' },
  },
  normal: {
    kind: 'workOut',
    state: 'asFound',
    ask: 'heat-normal',
    outcomes: {
      'by-design': 'v-normal-design',
      'load-asks': 'v-normal-load',
      'charge-asks': 'v-normal-charge',
      'heat-decides': 'sink-running',
      'should-rest': 'va-screen',
      'not-known': 'ease-off',
    },
    cant: 'ease-off',
    unsure: 'ease-off',
  },
  'sink-running': {
    kind: 'display',
    state: 'asFound',
    minutes: 1,
    readings: { sink: { point: 'display', scale: 'heat-sink', mode: 'display', signed: true } },
    outcomes: {
      'colder-than-air': 'ease-off',
      'below-start': 'ease-off',
      'past-start': 'room-air',
      undetermined: 'ease-off',
    },
    cant: 'ease-off',
    unsure: 'ease-off',
  },
  'v-normal-design': {
    kind: 'verdict',
    causes: ['fans-normal'],
    because: [
      { step: 'which-way', outcomes: ['fans-run'] },
      { step: 'normal', outcomes: ['by-design'] },
    ],
    outcomes: { explained: 'idle-cost' },
  },
  'v-normal-load': {
    kind: 'verdict',
    causes: ['fans-normal'],
    because: [
      { step: 'which-way', outcomes: ['fans-run'] },
      { step: 'normal', outcomes: ['load-asks'] },
    ],
    outcomes: { explained: 'idle-cost' },
  },
  'v-normal-charge': {
    kind: 'verdict',
    causes: ['fans-normal'],
    because: [
      { step: 'which-way', outcomes: ['fans-run'] },
      { step: 'normal', outcomes: ['charge-asks'] },
    ],
    outcomes: { explained: 'idle-cost' },
  },
  'idle-cost': {
    kind: 'workOut',
    ask: 'heat-idle',
    minutes: 1,
    outcomes: { counted: 'healthy', assumed: 'healthy' },
    cant: 'healthy',
    unsure: 'healthy',
  },
} as const satisfies Steps;
