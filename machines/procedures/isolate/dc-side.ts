import { batteryHandlePpe, dcClampLive, pvClampLive, type Steps } from '../../shared.ts';

/** PV, other units and battery: no current shown, open and locked. */
export const dcSide = {
  'pv-amps': {
    kind: 'measure',
    at: ['pvString'],
    ...pvClampLive,
    minutes: 3,
    readings: { largest: { point: 'P1-I', scale: 'pv-zero', mode: 'dcClamp' } },
    outcomes: {
      zero: { to: 'pv-open', does: [{ zeroShown: 'pv' }, { zeroShown: 'pvOther' }] },
      flows: {
        to: 'pv-settle',
        does: [{ currentFlows: 'pv' }, { currentFlows: 'pvOther' }],
        limit: { counter: 'pv-amps', max: 2, otherwise: 'pv-flows' },
      },
      undetermined: { to: 'pv-finer', does: [{ currentFlows: 'pv' }, { currentFlows: 'pvOther' }] },
    },
  },
  'pv-finer': {
    kind: 'look',
    minutes: 2,
    outcomes: {
      again: { to: 'pv-amps', limit: { counter: 'pv-finer', max: 2, otherwise: 'not-shown' } },
      'no-finer': 'not-shown',
    },
  },
  'pv-settle': { kind: 'wait', wait: 'tracker-stop', minutes: 1, outcomes: { done: 'pv-amps' } },
  'pv-flows': {
    kind: 'look',
    hazards: ['pv-reversed-arc'],
    minutes: 1,
    outcomes: { understood: 'left-guarded' },
  },
  'pv-open': {
    kind: 'operate',
    device: 'pv',
    hazards: ['pv-arc'],
    ppe: ['rated-gloves', 'eye-protection', 'face-shield'],
    minutes: 2,
    outcomes: { done: { to: 'pv-lock', does: [{ open: 'pv' }, { open: 'pvOther' }] } },
  },
  'pv-lock': {
    kind: 'operate',
    hazards: ['pv-live-in-light'],
    tools: ['locks-tags'],
    minutes: 2,
    outcomes: {
      locked: { to: 'other-units', does: [{ lock: 'pv' }, { lock: 'pvOther' }] },
      tagged: { to: 'other-units', does: [{ tagPlus: 'pv' }, { tagPlus: 'pvOther' }] },
    },
  },
  'other-units': {
    kind: 'sheet',
    ask: 'several-inverters',
    outcomes: { several: 'others-off', one: 'battery-amps' },
  },
  'others-off': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: 'others-amps' },
  },
  'others-amps': {
    kind: 'measure',
    at: ['invDC'],
    ...dcClampLive,
    minutes: 2,
    readings: { largest: { point: 'I-I', scale: 'battery-zero', mode: 'dcClamp' } },
    outcomes: {
      zero: { to: 'others-open', does: [{ zeroShown: 'others' }] },
      flows: {
        to: 'others-draw',
        does: [{ currentFlows: 'others' }],
        limit: { counter: 'others-amps', max: 2, otherwise: 'left-guarded' },
      },
      undetermined: {
        to: 'others-draw',
        does: [{ currentFlows: 'others' }],
        limit: { counter: 'others-amps', max: 2, otherwise: 'left-guarded' },
      },
    },
  },
  'others-draw': {
    kind: 'look',
    minutes: 3,
    outcomes: { found: 'others-amps', 'not-found': 'left-guarded' },
  },
  'others-open': {
    kind: 'operate',
    hazards: ['ac-backfeed', 'battery-arc'],
    ppe: batteryHandlePpe,
    minutes: 2,
    outcomes: { done: { to: 'others-lock', does: [{ open: 'others' }] } },
  },
  'others-lock': {
    kind: 'operate',
    hazards: ['ac-backfeed'],
    tools: ['locks-tags'],
    minutes: 2,
    outcomes: {
      locked: { to: 'battery-amps', does: [{ lock: 'others' }] },
      tagged: { to: 'battery-amps', does: [{ tagPlus: 'others' }] },
    },
  },
  'battery-amps': {
    kind: 'measure',
    at: ['battBus'],
    ...dcClampLive,
    minutes: 2,
    readings: { amps: { point: 'S1-I', scale: 'battery-zero', mode: 'dcClamp' } },
    outcomes: {
      zero: { to: 'main-open', does: [{ zeroShown: 'main' }] },
      flows: {
        to: 'battery-draw',
        does: [{ currentFlows: 'main' }],
        limit: { counter: 'battery-amps', max: 2, otherwise: 'left-guarded' },
      },
      undetermined: {
        to: 'battery-draw',
        does: [{ currentFlows: 'main' }],
        limit: { counter: 'battery-amps', max: 2, otherwise: 'left-guarded' },
      },
    },
  },
  'battery-draw': {
    kind: 'look',
    minutes: 3,
    outcomes: { found: 'battery-amps', 'not-found': 'left-guarded' },
  },
  'main-open': {
    kind: 'operate',
    device: 'main',
    hazards: ['battery-arc'],
    ppe: batteryHandlePpe,
    minutes: 1,
    outcomes: { done: { to: 'main-lock', does: [{ open: 'main' }] } },
  },
  'main-lock': {
    kind: 'operate',
    hazards: ['battery-short', 'stored-charge'],
    tools: ['locks-tags'],
    minutes: 1,
    outcomes: {
      locked: { to: 'prove', does: [{ lock: 'main' }] },
      tagged: { to: 'prove', does: [{ tagPlus: 'main' }] },
    },
  },
} as const satisfies Steps;
