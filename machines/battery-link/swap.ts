import type { Steps } from '../shared.ts';

const on = { state: 'running' } as const;
const hazards = ['wrong-charge-profile', 'data-pins'] as const;
/** Whatever the partner's pack says or the options made of the charge volts: nothing charges while it is tried. */
const ready = {
  kind: 'hold',
  ...on,
  hazards,
  minutes: 5,
  items: [
    { id: 'photos' },
    { id: 'limits-written' },
    { id: 'charge-off' },
    { id: 'off-bus' },
    { id: 'people-told' },
  ],
} as const;
const tryIt = { kind: 'operate', ...on, hazards, tools: ['data-lead'], minutes: 15 } as const;
/** As found, and read back, before anything is concluded or charges again. */
const back = {
  kind: 'hold',
  ...on,
  hazards,
  minutes: 5,
  items: [{ id: 'leads-back' }, { id: 'options-back' }, { id: 'volts-read' }, { id: 'chargers-back' }],
  cant: 'stop-charge',
  unsure: 'stop-charge',
} as const;

/** Each port with a good partner: another pack's word must never rule the charge of this bank, nor this pack's that of another. */
export const swap = {
  'partner-early': {
    kind: 'choose',
    ...on,
    minutes: 1,
    outcomes: { here: 'swap-early-ready', 'no-partner': 'off-or-not' },
    cant: 'off-or-not',
    unsure: 'off-or-not',
  },
  'swap-early-ready': {
    ...ready,
    outcomes: { done: 'swap-early-try' },
    cant: 'off-or-not',
    unsure: 'off-or-not',
  },
  'swap-early-try': {
    ...tryIt,
    outcomes: { done: 'swap-early-back' },
    cant: 'swap-early-back',
    unsure: 'swap-early-back',
  },
  'swap-early-back': { ...back, outcomes: { done: 'swap-early' } },
  'swap-early': {
    kind: 'choose',
    ...on,
    minutes: 1,
    outcomes: {
      'inverter-deaf': 'v-port-unit',
      'pack-deaf': 'v-port-pack',
      'both-work': 'off-or-not',
    },
    cant: 'off-or-not',
    unsure: 'off-or-not',
  },
  'partner-late': {
    kind: 'choose',
    ...on,
    minutes: 1,
    outcomes: { here: 'swap-late-ready', 'no-partner': 'v-undecided' },
    cant: 'by-voltage',
    unsure: 'by-voltage',
  },
  'swap-late-ready': {
    ...ready,
    outcomes: { done: 'swap-late-try' },
    cant: 'by-voltage',
    unsure: 'by-voltage',
  },
  'swap-late-try': {
    ...tryIt,
    outcomes: { done: 'swap-late-back' },
    cant: 'swap-late-back',
    unsure: 'swap-late-back',
  },
  'swap-late-back': { ...back, outcomes: { done: 'swap-late' } },
  'swap-late': {
    kind: 'choose',
    ...on,
    minutes: 1,
    outcomes: {
      'inverter-deaf': 'v-port-unit-late',
      'pack-deaf': 'v-port-pack-late',
      'both-work': 'v-revision',
    },
    cant: 'by-voltage',
    unsure: 'by-voltage',
  },
} as const satisfies Steps;
