import type { Steps } from './steps.ts';

/** From the door to the first reading: nothing is touched. */
export const firstLook = {
  'first-look': {
    kind: 'look',
    state: 'asFound',
    minutes: 1,
    outcomes: { quiet: 'symptom', 'someone-elses-lock': 'someone-elses-lock', 'smell-or-noise': 'get-away' },
  },
  symptom: {
    kind: 'choose',
    state: 'asFound',
    minutes: 1,
    outcomes: {
      'volts-no-watts': 'light',
      'no-volts': 'light',
      'drops-out': 'light',
      'unit-dark': 'ready-battery',
      'working-now': 'running-now',
    },
  },
  'running-now': {
    kind: 'display',
    state: 'asFound',
    minutes: 1,
    readings: {
      volts: { point: 'display', scale: 'pv-running-volts', mode: 'display' },
      watts: { point: 'display', scale: 'pv-making', mode: 'display' },
    },
    rows: [
      { id: 'working', when: { volts: 'tracking', watts: 'making' }, to: 'v-working' },
      { id: 'dragged', when: { volts: ['collapsed', 'dragged'], watts: 'making' }, to: 'ready-string' },
      {
        id: 'limited',
        when: { volts: ['held', 'high', 'undetermined'], watts: 'making' },
        to: 'load-before',
      },
      { id: 'not-running', when: {}, to: 'light' },
    ],
  },
  'v-working': {
    kind: 'verdict',
    causes: ['nothing-wrong'],
    because: [{ step: 'running-now', outcomes: ['working'] }],
    outcomes: { explained: 'healthy' },
  },
  light: {
    kind: 'look',
    state: 'asFound',
    minutes: 1,
    outcomes: { bright: 'window', weak: 'window', dark: 'come-back-in-light' },
  },
  window: {
    kind: 'workOut',
    state: 'asFound',
    ask: 'pv-string-window',
    minutes: 0,
    outcomes: {
      'over-maximum': 'v-too-long',
      'too-short': 'ready-string',
      'near-maximum': 'screen',
      fits: 'screen',
      'no-answer': 'screen',
    },
    cant: 'screen',
    unsure: 'screen',
  },
  'v-too-long': {
    kind: 'verdict',
    hazards: ['input-overvolts'],
    causes: ['string-too-long'],
    because: [{ step: 'window', outcomes: ['over-maximum'] }],
    outcomes: { 'open-it': 'ready-to-open' },
  },
  screen: {
    kind: 'display',
    state: 'asFound',
    minutes: 1,
    readings: { volts: { point: 'display', scale: 'pv-screen-volts', mode: 'display' } },
    outcomes: {
      none: 'ready-string',
      part: 'ready-string',
      present: 'events',
      over: 'v-over-now',
      undetermined: 'ready-string',
    },
    cant: 'ready-string',
    unsure: 'ready-string',
  },
  'v-over-now': {
    kind: 'verdict',
    hazards: ['input-overvolts'],
    causes: ['string-too-long'],
    because: [{ step: 'screen', outcomes: ['over'] }],
    outcomes: { 'open-it': 'ready-to-open' },
  },
  events: {
    kind: 'choose',
    state: 'asFound',
    minutes: 1,
    outcomes: {
      none: 'battery-screen',
      'arc-latched': 'inspect',
      'ground-latched': 'ready-string',
      insulation: 'ready-string',
      'over-volts': 'ready-string',
      'battery-link': 'settings',
      other: 'battery-screen',
    },
    cant: 'battery-screen',
    unsure: 'battery-screen',
  },
} as const satisfies Steps;
