import { dcLive, type Steps } from '../../shared.ts';
import { every, invDcPairs } from './pairs.ts';

/** The DC posts, and charge that is left in them. */
export const dc = {
  'dc-dead': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['invDC'],
    proves: 'invDC',
    ...dcLive,
    hazards: ['stored-charge', 'live-metering'],
    tools: ['meter-cat3-1000'],
    minutes: 4,
    readings: invDcPairs,
    rows: [
      { id: 'dead', when: every(invDcPairs, 'dead'), to: 'dc-rise', does: [{ measuredDead: 'invDC' }] },
      {
        id: 'undetermined',
        when: every(invDcPairs, ['dead', 'undetermined']),
        to: 'dc-live',
        does: [{ measuredLive: 'invDC' }],
      },
      { id: 'live', when: {}, to: 'dc-live', does: [{ measuredLive: 'invDC' }] },
    ],
  },
  'dc-rise': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['invDC'],
    ...dcLive,
    hazards: ['stored-charge', 'live-metering'],
    tools: ['meter-cat3-1000', 'watch'],
    minutes: 1,
    readings: { later: { point: 'I', scale: 'not-rising-dc', mode: 'dcVolts' } },
    outcomes: {
      steady: 'pv-dead',
      rising: 'dc-live',
      undetermined: 'dc-live',
    },
  },
  'dc-live': {
    kind: 'choose',
    state: 'lockedOut',
    hazards: ['stored-charge'],
    minutes: 2,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    outcomes: {
      falling: {
        to: 'label-wait',
        limit: { counter: 'dc-wait', max: 2, otherwise: 'bleed-ready' },
      },
      steady: 'left-guarded',
    },
  },
  'bleed-ready': {
    kind: 'hold',
    state: 'lockedOut',
    hazards: ['stored-charge'],
    tools: ['bleed-resistor'],
    minutes: 2,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    items: [{ id: 'locks-on' }, { id: 'resistor-rated' }, { id: 'leads-insulated' }],
    outcomes: { done: 'bleed' },
  },
  bleed: {
    kind: 'discharge',
    state: 'lockedOut',
    at: ['invDC'],
    hazards: ['stored-charge', 'resistor-hot'],
    ppe: ['rated-gloves', 'eye-protection', 'face-shield', 'no-metal-worn'],
    tools: ['bleed-resistor', 'insulated-leads', 'meter-cat3-1000'],
    minutes: 4,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    outcomes: {
      done: {
        to: 'tester-before',
        does: [{ bleed: 'invDC' }],
        limit: { counter: 'bleed', max: 2, otherwise: 'left-guarded' },
      },
    },
  },
} as const satisfies Steps;
