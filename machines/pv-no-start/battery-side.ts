import type { Steps } from './steps.ts';

/** A tracker has no supply of its own: the battery side must be live at the unit. */
export const batterySide = {
  'battery-meter': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'meter-for-battery',
    outcomes: { enough: 'ready-battery', 'too-low': 'meter-too-low' },
  },
  'ready-battery': {
    kind: 'hold',
    state: 'asFound',
    items: [{ id: 'meter-rated' }, { id: 'jacks-checked' }, { id: 'gear-on' }],
    outcomes: { done: 'battery-at-inverter' },
  },
  'battery-at-inverter': {
    kind: 'measure',
    state: 'asFound',
    at: ['invDC'],
    energised: true,
    hazards: ['live-metering', 'meter-rating'],
    ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
    tools: ['meter-cat3-1000'],
    minutes: 3,
    readings: {
      volts: { point: 'I', scale: 'battery-at-inverter', mode: 'dcVolts', signed: true },
    },
    outcomes: {
      reversed: 'left-guarded',
      dead: 'v-battery-not-live',
      low: 'v-battery-not-live',
      ok: 'awake',
      high: 'v-battery-high',
      undetermined: {
        to: 'battery-at-inverter',
        limit: { counter: 'battery-again', max: 1, otherwise: 'leave-as-found' },
      },
    },
  },
  awake: {
    kind: 'choose',
    state: 'asFound',
    outcomes: { dark: 'dark-unit', steady: 'charge-permit' },
  },
  'v-battery-not-live': {
    kind: 'verdict',
    hazards: ['live-metering'],
    causes: ['battery-not-live'],
    because: [{ step: 'battery-at-inverter', outcomes: ['dead', 'low'] }],
    outcomes: { 'put-right': 'make-safe', refer: 'referred' },
  },
  'v-battery-high': {
    kind: 'verdict',
    hazards: ['live-metering'],
    causes: ['battery-not-live', 'held-back'],
    because: [{ step: 'battery-at-inverter', outcomes: ['high'] }],
    outcomes: { 'put-right': 'make-safe', refer: 'referred' },
  },
  'battery-found': {
    kind: 'look',
    state: 'lockedOut',
    minutes: 10,
    outcomes: { awake: 'bring-back', 'not-recoverable': 'left-open', 'still-off': 'left-open' },
    cant: 'left-open',
    unsure: 'left-open',
  },
} as const satisfies Steps;
