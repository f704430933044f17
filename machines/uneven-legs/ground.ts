import { liveAc, type Steps } from './steps.ts';

/** Legs that are right to neutral and odd to ground: is the neutral tied to ground at the source in use? */
export const groundReference = {
  'ground-volts': {
    kind: 'measure',
    state: 'asFound',
    at: ['loadPanel', 'acOut'],
    ...liveAc,
    minutes: 4,
    readings: {
      panel: { point: 'D-NG', scale: 'legs-ng', mode: 'acVolts' },
      output: { point: 'O-NG', scale: 'legs-ng', mode: 'acVolts' },
    },
    rows: [
      { id: 'floats', when: { output: 'floats' }, to: 'low-z-owned' },
      { id: 'panel-only', when: { panel: 'floats' }, to: 'loads-away-ground' },
      { id: 'tied', when: { output: 'ok' }, to: 'test-wanted' },
      { id: 'between', when: {}, to: 'test-wanted' },
    ],
    cant: 'test-wanted',
    unsure: 'test-wanted',
  },
  'low-z-owned': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'low-z-meter',
    outcomes: { here: 'ground-low-z', none: 'v-not-grounded' },
    cant: 'v-not-grounded',
    unsure: 'v-not-grounded',
  },
  'ground-low-z': {
    kind: 'measure',
    state: 'asFound',
    at: ['acOut'],
    ...liveAc,
    tools: ['meter-cat3-600', 'low-z-meter'],
    minutes: 2,
    readings: { ng: { point: 'O-NG', scale: 'legs-ng-low-z', mode: 'lowZVolts' } },
    outcomes: { collapses: 'v-not-grounded', stays: 'v-not-grounded', undetermined: 'v-not-grounded' },
    cant: 'v-not-grounded',
    unsure: 'v-not-grounded',
  },
  'v-not-grounded': {
    kind: 'verdict',
    hazards: ['frame-live'],
    causes: ['neutral-not-grounded'],
    because: [{ step: 'ground-volts', outcomes: ['floats'] }],
    outcomes: { mend: 'make-safe', leave: 'loads-away-ground' },
    cant: 'loads-away-ground',
    unsure: 'loads-away-ground',
  },
  'loads-away-ground': {
    kind: 'operate',
    device: 'acOut',
    hazards: ['frame-live'],
    minutes: 1,
    outcomes: { done: { to: 'refer-open', does: [{ open: 'acOut' }] } },
    cant: 'unit-off',
    unsure: 'unit-off',
  },
} as const satisfies Steps;
