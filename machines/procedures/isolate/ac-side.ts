import type { Steps } from '../../shared.ts';

/** Loads, output, inverter and second source: off, open and locked. */
export const acSide = {
  'loads-off': {
    kind: 'operate',
    minutes: 2,
    outcomes: { done: { to: 'out-open', does: [{ loads: 'off' }] } },
  },
  'out-open': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'out-lock', does: [{ open: 'acOut' }] } },
  },
  'out-lock': {
    kind: 'operate',
    hazards: ['ac-backfeed'],
    tools: ['locks-tags'],
    minutes: 1,
    outcomes: {
      locked: { to: 'inverter-off', does: [{ lock: 'acOut' }] },
      tagged: { to: 'inverter-off', does: [{ tagPlus: 'acOut' }] },
    },
  },
  'inverter-off': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'second-source', does: [{ inverter: 'off' }] } },
  },
  'second-source': {
    kind: 'sheet',
    ask: 'second-source',
    outcomes: { fitted: 'auto-start-off', none: 'pv-amps' },
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
      locked: { to: 'pv-amps', does: [{ lock: 'acIn' }] },
      tagged: { to: 'pv-amps', does: [{ tagPlus: 'acIn' }] },
    },
  },
} as const satisfies Steps;
