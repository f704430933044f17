import type { Steps } from './steps.ts';

/** A latched arc or ground-fault lock-out: looked into first, cleared once, watched. */
export const lockout = {
  inspect: {
    kind: 'look',
    state: 'asFound',
    hazards: ['pv-arc', 'roof-fall'],
    minutes: 15,
    outcomes: { damage: { to: 'v-arc-damage', does: [{ dangerFound: true }] }, nothing: 'v-lockout' },
  },
  'v-arc-damage': {
    kind: 'verdict',
    hazards: ['pv-arc'],
    causes: ['high-resistance-joint'],
    because: [{ step: 'inspect', outcomes: ['damage'] }],
    outcomes: { 'open-it': 'ready-to-open' },
    cant: 'left-guarded',
    unsure: 'left-guarded',
  },
  'v-lockout': {
    kind: 'verdict',
    hazards: ['pv-arc'],
    causes: ['lockout-latched'],
    because: [
      { step: 'events', outcomes: ['arc-latched'] },
      { step: 'inspect', outcomes: ['nothing'] },
    ],
    outcomes: { clear: 'clear-once', refer: 'referred' },
  },
  'inspect-open': {
    kind: 'look',
    state: 'pvOpen',
    hazards: ['frame-live', 'pv-live-in-light', 'roof-fall'],
    minutes: 15,
    outcomes: { damage: { to: 'v-damage-open', does: [{ dangerFound: true }] }, nothing: 'v-lockout-open' },
    cant: 'left-open',
    unsure: 'left-open',
  },
  'v-damage-open': {
    kind: 'verdict',
    hazards: ['frame-live'],
    causes: ['insulation-fault', 'high-resistance-joint'],
    because: [
      { step: 'wet-history', outcomes: ['latched'] },
      { step: 'inspect-open', outcomes: ['damage'] },
    ],
    outcomes: { mend: 'isolate-repair', leave: 'left-open' },
    cant: 'left-open',
    unsure: 'left-open',
  },
  'v-lockout-open': {
    kind: 'verdict',
    causes: ['lockout-latched'],
    because: [
      { step: 'wet-history', outcomes: ['latched'] },
      { step: 'inspect-open', outcomes: ['nothing'] },
    ],
    outcomes: { clear: 'close-for-clear', leave: 'left-open' },
    cant: 'left-open',
    unsure: 'left-open',
  },
  'close-for-clear': {
    kind: 'perform',
    procedure: 'string-check',
    endings: { connected: 'clear-once', 'left-isolated': 'left-open', 'left-guarded': 'left-guarded' },
  },
  'clear-once': {
    kind: 'operate',
    hazards: ['pv-arc', 'close-on-fault'],
    minutes: 3,
    outcomes: { done: 'watch-clear' },
    cant: 'ready-to-leave',
    unsure: 'ready-to-leave',
  },
  'watch-clear': {
    kind: 'display',
    minutes: 10,
    readings: { watts: { point: 'display', scale: 'pv-making', mode: 'display' } },
    outcomes: { making: 'fixed', none: 'open-after-retest', undetermined: 'open-after-retest' },
    cant: 'open-after-retest',
    unsure: 'open-after-retest',
  },
  'ready-to-leave': {
    kind: 'choose',
    outcomes: { 'open-it': 'open-after-retest' },
    cant: 'open-after-retest',
    unsure: 'open-after-retest',
  },
} as const satisfies Steps;
