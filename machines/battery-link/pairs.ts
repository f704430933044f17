import type { Steps } from '../shared.ts';

const on = { state: 'running', cant: 'by-voltage', unsure: 'by-voltage' } as const;
/** Six options by six: with the pairs tried a grid is done, whatever was typed. */
const bounded = { counter: 'pairs', max: 36, otherwise: 'partner-late' } as const;

/** The wires are sound and no data comes: settings, pair by pair, and what is left when every pair was tried. */
export const pairSteps = {
  'before-pairs': {
    kind: 'workOut',
    ...on,
    ask: 'link-run-by-voltage',
    minutes: 1,
    outcomes: {
      fits: 'settings-noted',
      'unit-cuts-first': 'settings-noted',
      'unit-too-low': 'stop-charge',
      'no-answer': 'stop-charge',
    },
  },
  'settings-noted': {
    kind: 'hold',
    ...on,
    hazards: ['wrong-charge-profile'],
    minutes: 5,
    items: [{ id: 'photos' }, { id: 'limits-written' }, { id: 'papers' }, { id: 'people-told' }],
    outcomes: { done: 'pairs' },
  },
  pairs: {
    kind: 'pair',
    ...on,
    result: 'try-result',
    minutes: 2,
    outcomes: {
      'at-inverter': { to: 'set-inverter', limit: bounded },
      'at-pack': { to: 'set-inverter-first', limit: bounded },
      'all-tried': 'partner-late',
    },
  },
  'set-inverter': {
    kind: 'operate',
    ...on,
    hazards: ['wrong-charge-profile'],
    minutes: 4,
    outcomes: { done: 'try-wait' },
  },
  'set-inverter-first': {
    kind: 'operate',
    ...on,
    hazards: ['wrong-charge-profile'],
    minutes: 4,
    outcomes: { done: 'power-down' },
  },
  'try-wait': { kind: 'wait', ...on, wait: 'link-settle', minutes: 1, outcomes: { done: 'try-result' } },
  'try-result': {
    kind: 'choose',
    ...on,
    minutes: 2,
    outcomes: { live: 'what-changed', part: 'pairs', nothing: 'pairs' },
  },
  'what-changed': {
    kind: 'choose',
    ...on,
    minutes: 1,
    outcomes: { profile: 'v-pairing', speed: 'v-speed', address: 'v-pair-address' },
    unsure: 'v-some-setting',
  },
  'v-pairing': {
    kind: 'verdict',
    ...on,
    causes: ['pairing-wrong'],
    because: [
      { step: 'try-result', outcomes: ['live'] },
      { step: 'what-changed', outcomes: ['profile'] },
    ],
    outcomes: { prove: 'time-out' },
  },
  'v-speed': {
    kind: 'verdict',
    ...on,
    causes: ['bus-speed-mismatch'],
    because: [
      { step: 'try-result', outcomes: ['live'] },
      { step: 'what-changed', outcomes: ['speed'] },
    ],
    outcomes: { prove: 'time-out' },
  },
  'v-pair-address': {
    kind: 'verdict',
    ...on,
    causes: ['address-or-host'],
    because: [
      { step: 'try-result', outcomes: ['live'] },
      { step: 'what-changed', outcomes: ['address'] },
    ],
    outcomes: { prove: 'time-out' },
  },
  'v-some-setting': {
    kind: 'verdict',
    ...on,
    causes: ['pairing-wrong', 'bus-speed-mismatch', 'address-or-host'],
    because: [{ step: 'try-result', outcomes: ['live'] }],
    outcomes: { prove: 'time-out' },
  },
  'v-port-unit-late': {
    kind: 'verdict',
    ...on,
    causes: ['link-port-dead'],
    because: [{ step: 'swap-late', outcomes: ['inverter-deaf'] }],
    outcomes: { refer: 'by-voltage' },
  },
  'v-port-pack-late': {
    kind: 'verdict',
    ...on,
    causes: ['link-port-dead'],
    because: [{ step: 'swap-late', outcomes: ['pack-deaf'] }],
    outcomes: { refer: 'by-voltage' },
  },
  'v-revision': {
    kind: 'verdict',
    ...on,
    causes: ['revision-mismatch'],
    because: [{ step: 'swap-late', outcomes: ['both-work'] }],
    outcomes: { refer: 'by-voltage' },
  },
  'v-undecided': {
    kind: 'verdict',
    ...on,
    causes: ['revision-mismatch', 'link-port-dead'],
    because: [{ step: 'partner-late', outcomes: ['no-partner'] }],
    outcomes: { refer: 'by-voltage' },
  },
} as const satisfies Steps;
