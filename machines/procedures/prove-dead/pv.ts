import { pvLive, type Steps } from '../../shared.ts';
import { every, pvPairs } from './pairs.ts';

/** The PV terminals on the inverter side, and charge that is left in them. */
export const pv = {
  'pv-dead': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['pvBus'],
    proves: 'pvBus',
    ...pvLive,
    hazards: ['pv-live-in-light', 'stored-charge', 'meter-rating'],
    tools: ['meter-cat3-1000', 'watch'],
    minutes: 4,
    readings: pvPairs,
    rows: [
      { id: 'dead', when: every(pvPairs, 'dead'), to: 'pv-rise', does: [{ measuredDead: 'pvBus' }] },
      {
        id: 'undetermined',
        when: every(pvPairs, ['dead', 'undetermined']),
        to: 'pv-live',
        does: [{ measuredLive: 'pvBus' }],
      },
      { id: 'live', when: {}, to: 'pv-live', does: [{ measuredLive: 'pvBus' }] },
    ],
  },
  'pv-rise': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['pvBus'],
    ...pvLive,
    hazards: ['pv-live-in-light', 'stored-charge', 'meter-rating'],
    tools: ['meter-cat3-1000', 'watch'],
    minutes: 1,
    readings: { later: { point: 'P2', scale: 'not-rising-pv', mode: 'dcVolts' } },
    outcomes: {
      steady: 'out-dead',
      rising: 'pv-live',
      undetermined: 'pv-live',
    },
  },
  'pv-live': {
    kind: 'choose',
    state: 'lockedOut',
    hazards: ['stored-charge'],
    minutes: 2,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    outcomes: {
      falling: {
        to: 'label-wait',
        limit: { counter: 'pv-wait', max: 2, otherwise: 'bleed-pv-ready' },
      },
      steady: 'left-guarded',
      wandering: { to: 'ghost', limit: { counter: 'ghost', max: 2, otherwise: 'left-isolated' } },
    },
  },
  'bleed-pv-ready': {
    kind: 'hold',
    state: 'lockedOut',
    hazards: ['stored-charge'],
    tools: ['bleed-resistor'],
    minutes: 2,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    items: [{ id: 'locks-on' }, { id: 'resistor-rated' }, { id: 'leads-insulated' }],
    outcomes: { done: 'bleed-pv' },
  },
  'bleed-pv': {
    kind: 'discharge',
    state: 'lockedOut',
    at: ['pvBus'],
    hazards: ['stored-charge', 'resistor-hot'],
    ppe: ['rated-gloves', 'eye-protection', 'face-shield', 'no-metal-worn'],
    tools: ['bleed-resistor', 'insulated-leads', 'meter-cat3-1000'],
    minutes: 4,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    outcomes: {
      done: {
        to: 'tester-before',
        does: [{ bleed: 'pvBus' }],
        limit: { counter: 'bleed-pv', max: 2, otherwise: 'left-guarded' },
      },
    },
  },
} as const satisfies Steps;
