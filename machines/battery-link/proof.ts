import type { Steps } from '../shared.ts';

const on = { state: 'running' } as const;
const out = { ...on, cant: 'plug-back-late', unsure: 'plug-back-late' } as const;
const failed = { ...on, cant: 'proof-failed', unsure: 'proof-failed' } as const;

/** The proof of a link: unplugged it raises the alarm in time, plugged it comes back by itself. */
export const proof = {
  'time-out': {
    kind: 'display',
    ...on,
    minutes: 2,
    readings: { seconds: { point: 'display', scale: 'link-time-out', mode: 'display' } },
    outcomes: { stated: 'unplug-ready', long: 'unplug-ready', undetermined: 'unplug-ready' },
    cant: 'unplug-ready',
    unsure: 'unplug-ready',
  },
  'unplug-ready': {
    kind: 'hold',
    ...on,
    hazards: ['data-pins'],
    minutes: 2,
    items: [{ id: 'people-told' }, { id: 'loads-can-stop' }, { id: 'watch-ready' }, { id: 'covers-on' }],
    outcomes: { done: 'pull-plug' },
    cant: 'not-proved',
    unsure: 'not-proved',
  },
  'pull-plug': {
    kind: 'operate',
    ...out,
    hazards: ['data-pins'],
    minutes: 1,
    outcomes: { done: 'alarm-came' },
  },
  'alarm-came': {
    kind: 'choose',
    ...out,
    minutes: 3,
    outcomes: { came: 'alarm-time', never: 'plug-back-late' },
  },
  'alarm-time': {
    kind: 'display',
    ...out,
    minutes: 1,
    readings: { seconds: { point: 'clock', scale: 'link-alarm-after', mode: 'watch' } },
    outcomes: { 'in-time': 'plug-back', late: 'plug-back-late', undetermined: 'plug-back-late' },
  },
  'plug-back': {
    kind: 'operate',
    ...failed,
    hazards: ['data-pins'],
    minutes: 1,
    outcomes: { done: 'clears' },
  },
  clears: {
    kind: 'choose',
    ...failed,
    minutes: 3,
    outcomes: { itself: 'clear-time', 'by-hand': 'proof-failed', not: 'proof-failed' },
  },
  'clear-time': {
    kind: 'display',
    ...failed,
    minutes: 1,
    readings: { seconds: { point: 'clock', scale: 'link-clears-after', mode: 'watch' } },
    outcomes: { 'in-time': 'values-again', late: 'proof-failed', undetermined: 'proof-failed' },
  },
  'values-again': {
    kind: 'choose',
    ...failed,
    minutes: 3,
    outcomes: { follow: 'count-again', 'do-not': 'proof-failed' },
  },
  'count-again': {
    kind: 'choose',
    ...failed,
    minutes: 1,
    outcomes: { all: 'long-run', fewer: 'proof-failed' },
  },
  'long-run': {
    kind: 'sheet',
    ...failed,
    ask: 'link-long-run',
    outcomes: { needed: 'long-load', 'not-needed': 'was-mended' },
  },
  'long-load': {
    kind: 'operate',
    ...on,
    minutes: 2,
    outcomes: { done: 'long-wait' },
    cant: 'not-proved',
    unsure: 'not-proved',
  },
  'long-wait': {
    kind: 'wait',
    ...on,
    wait: 'link-steady',
    minutes: 30,
    outcomes: { done: 'long-result' },
    cant: 'not-proved',
    unsure: 'not-proved',
  },
  'long-result': {
    kind: 'choose',
    ...failed,
    minutes: 1,
    outcomes: { steady: 'was-mended', dropped: 'proof-failed' },
  },
  'was-mended': {
    kind: 'sheet',
    ...on,
    ask: 'link-mended',
    outcomes: { limits: 'again-ready', mended: 'fixed', 'as-found': 'v-sound', 'not-seen': 'not-seen' },
  },
  'v-sound': {
    kind: 'verdict',
    ...on,
    causes: ['link-sound'],
    because: [
      { step: 'alarm-time', outcomes: ['in-time'] },
      { step: 'clear-time', outcomes: ['in-time'] },
      { step: 'values-again', outcomes: ['follow'] },
      { step: 'count-again', outcomes: ['all'] },
    ],
    outcomes: { explained: 'healthy' },
  },
  'plug-back-late': {
    kind: 'operate',
    ...on,
    hazards: ['data-pins'],
    minutes: 1,
    outcomes: { done: 'proof-failed' },
    cant: 'by-voltage',
    unsure: 'by-voltage',
  },
  'proof-failed': {
    kind: 'choose',
    ...on,
    minutes: 1,
    outcomes: {
      further: { to: 'seat', limit: { counter: 'proof-failed', max: 2, otherwise: 'by-voltage' } },
      stop: 'by-voltage',
    },
    cant: 'by-voltage',
    unsure: 'by-voltage',
  },
} as const satisfies Steps;
