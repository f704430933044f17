import { dcClampLive, type Steps } from '../shared.ts';

const on = { state: 'running', cant: 'by-voltage', unsure: 'by-voltage' } as const;
const clamp = {
  ...on,
  at: ['battBus'],
  ...dcClampLive,
  minutes: 3,
  readings: { amps: { point: 'S1-I', scale: 'link-charge-amps', mode: 'dcClamp' } },
} as const;

/** The link is up: are the packs' limits kept? And the limits by volts where there is no link to keep. */
export const limits = {
  'permit-clamp': {
    kind: 'sheet',
    ...on,
    ask: 'dc-clamp',
    outcomes: { here: 'permit-ready', none: 'by-voltage' },
  },
  'permit-ready': {
    kind: 'hold',
    ...on,
    hazards: ['battery-short'],
    items: [{ id: 'meter-rated' }, { id: 'jacks-checked' }, { id: 'gear-on' }, { id: 'charging-hard' }],
    outcomes: { done: 'permitted' },
    cant: 'come-back-charging',
    unsure: 'come-back-charging',
  },
  permitted: {
    kind: 'display',
    ...on,
    minutes: 1,
    readings: { amps: { point: 'display', scale: 'link-permitted', mode: 'display' } },
    outcomes: {
      none: 'charge-clamp',
      some: 'charge-clamp',
      'over-label': 'charge-clamp',
      undetermined: 'charge-clamp',
    },
  },
  'charge-clamp': {
    kind: 'measure',
    ...clamp,
    outcomes: {
      little: 'come-back-charging',
      kept: 'values',
      over: 'v-limits',
      undetermined: {
        to: 'charge-clamp',
        limit: { counter: 'charge-clamp', max: 1, otherwise: 'come-back-charging' },
      },
    },
  },
  'v-limits': {
    kind: 'verdict',
    ...on,
    hazards: ['wrong-charge-profile'],
    causes: ['limits-not-obeyed'],
    because: [{ step: 'charge-clamp', outcomes: ['over'] }],
    outcomes: { hand: 'set-limit', pairing: 'before-pairs' },
  },
  'set-limit': {
    kind: 'operate',
    ...on,
    hazards: ['wrong-charge-profile', 'cold-charge'],
    minutes: 5,
    outcomes: { done: 'limit-wait' },
  },
  'limit-wait': { kind: 'wait', ...on, wait: 'link-settle', minutes: 1, outcomes: { done: 'again-ready' } },
  'again-ready': {
    kind: 'hold',
    state: 'running',
    hazards: ['battery-short'],
    items: [{ id: 'meter-rated' }, { id: 'jacks-checked' }, { id: 'gear-on' }, { id: 'charging-hard' }],
    outcomes: { done: 'charge-again' },
    cant: 'come-back-charging',
    unsure: 'come-back-charging',
  },
  'charge-again': {
    kind: 'measure',
    ...clamp,
    outcomes: {
      little: 'come-back-charging',
      kept: 'limit-by',
      over: 'stop-charge',
      undetermined: 'stop-charge',
    },
    cant: 'stop-charge',
    unsure: 'stop-charge',
  },
  'limit-by': {
    kind: 'sheet',
    ...on,
    ask: 'link-limit-by',
    outcomes: { hand: 'hand-limited', profile: 'fixed' },
  },
  'by-voltage': {
    kind: 'workOut',
    state: 'running',
    ask: 'link-run-by-voltage',
    minutes: 1,
    outcomes: {
      fits: 'set-by-voltage',
      'unit-cuts-first': 'set-by-voltage',
      'unit-too-low': 'stop-charge',
      'no-answer': 'stop-charge',
    },
    cant: 'stop-charge',
    unsure: 'stop-charge',
  },
  'set-by-voltage': {
    kind: 'operate',
    state: 'running',
    hazards: ['wrong-charge-profile', 'cold-charge'],
    minutes: 6,
    outcomes: { done: 'read-back' },
    cant: 'stop-charge',
    unsure: 'stop-charge',
  },
  'read-back': {
    kind: 'display',
    state: 'running',
    minutes: 3,
    readings: {
      charge: { point: 'display', scale: 'link-set-charge', mode: 'display' },
      float: { point: 'display', scale: 'link-set-float', mode: 'display' },
      cut: { point: 'display', scale: 'link-set-cut', mode: 'display' },
      restart: { point: 'display', scale: 'link-set-restart', mode: 'display' },
    },
    rows: [
      { id: 'right', when: { charge: 'ok', float: 'ok', cut: 'ok', restart: 'ok' }, to: 'on-by-voltage' },
      {
        id: 'not-right',
        when: {},
        to: 'set-by-voltage',
        limit: { counter: 'read-back', max: 2, otherwise: 'stop-charge' },
      },
    ],
    cant: 'stop-charge',
    unsure: 'stop-charge',
  },
  'stop-charge': {
    kind: 'operate',
    state: 'running',
    hazards: ['wrong-charge-profile'],
    minutes: 2,
    outcomes: { done: 'charge-left-off' },
    cant: 'referred',
    unsure: 'referred',
  },
} as const satisfies Steps;
