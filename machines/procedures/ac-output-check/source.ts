import type { Steps } from '../../shared.ts';

/** The second source out of the way, so that it is the inverter's own output that is read; and back again. */
export const sourceAway = {
  source: {
    kind: 'sheet',
    ask: 'second-source',
    outcomes: { fitted: 'source-there', none: 'out-open' },
  },
  'source-there': {
    kind: 'choose',
    hazards: ['ac-backfeed'],
    minutes: 1,
    outcomes: { 'locked-off': 'out-open', connected: 'auto-start-off' },
  },
  'auto-start-off': {
    kind: 'operate',
    hazards: ['generator-start'],
    minutes: 1,
    outcomes: { done: { to: 'source-stop', does: [{ autoStart: 'disabled' }] } },
  },
  'source-stop': {
    kind: 'operate',
    hazards: ['co-fumes', 'generator-start'],
    minutes: 4,
    outcomes: { done: { to: 'ac-in-open', does: [{ source: 'stopped' }] } },
  },
  'ac-in-open': {
    kind: 'operate',
    hazards: ['ac-backfeed'],
    ppe: ['rated-gloves', 'eye-protection'],
    minutes: 1,
    outcomes: { done: { to: 'ac-in-lock', does: [{ open: 'acIn' }] } },
  },
  'ac-in-lock': {
    kind: 'operate',
    hazards: ['ac-backfeed'],
    tools: ['locks-tags'],
    minutes: 1,
    outcomes: {
      locked: { to: 'out-open', does: [{ lock: 'acIn' }] },
      tagged: { to: 'out-open', does: [{ tagPlus: 'acIn' }] },
    },
  },
} as const satisfies Steps;

export const sourceBack = {
  'source-again': {
    kind: 'sheet',
    state: 'noLoad',
    ask: 'second-source',
    cant: 'off-loaded',
    unsure: 'off-loaded',
    outcomes: { fitted: 'source-was', none: 'loads-on' },
  },
  'source-was': {
    kind: 'choose',
    state: 'noLoad',
    minutes: 1,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    outcomes: { 'stays-locked': 'loads-on', 'bring-back': 'source-ready' },
  },
  'source-ready': {
    kind: 'hold',
    state: 'noLoad',
    hazards: ['ac-backfeed', 're-energise'],
    minutes: 2,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    items: [
      { id: 'engine-stopped' },
      { id: 'one-way-in' },
      { id: 'tools-out' },
      { id: 'covers-on' },
      { id: 'people-told' },
    ],
    outcomes: { done: { to: 'ac-in-unlock', does: [{ readyToRestore: true }] } },
  },
  'ac-in-unlock': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['ac-backfeed', 're-energise'],
    minutes: 1,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    outcomes: { done: { to: 'ac-in-ready', does: [{ unlock: 'acIn' }] } },
  },
  'ac-in-ready': {
    kind: 'hold',
    state: 'noLoad',
    hazards: ['ac-backfeed'],
    minutes: 1,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    items: [{ id: 'engine-stopped' }, { id: 'nobody-at-inlet' }],
    outcomes: { done: 'ac-in-close' },
  },
  'ac-in-close': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['ac-backfeed', 're-energise'],
    ppe: ['rated-gloves', 'eye-protection'],
    minutes: 1,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    outcomes: { done: { to: 'auto-on', does: [{ close: 'acIn' }] } },
  },
  'auto-on': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['co-fumes', 'generator-start'],
    minutes: 2,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    outcomes: { done: { to: 'loads-on', does: [{ autoStart: 'enabled' }] } },
  },
} as const satisfies Steps;
