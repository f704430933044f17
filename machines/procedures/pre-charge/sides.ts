import { dcLive, type Steps } from '../../shared.ts';

/** Both sides of the open switch, signed. */
export const sides = {
  s1: {
    kind: 'measure',
    state: 'lockedOut',
    at: ['battBus'],
    ...dcLive,
    minutes: 2,
    readings: { s1: { point: 'S1', scale: 'battery-volts', mode: 'dcVolts', signed: true } },
    outcomes: {
      ok: { to: 'sides', does: [{ polarityProved: 'main' }] },
      reversed: 'left-isolated',
      absent: { to: 'pack-count', limit: { counter: 'wake', max: 1, otherwise: 'left-isolated' } },
      low: 'left-isolated',
      high: 'left-isolated',
      undetermined: 'left-isolated',
    },
  },
  sides: {
    kind: 'measure',
    state: 'lockedOut',
    at: ['battBus', 'invDC'],
    ...dcLive,
    minutes: 2,
    readings: {
      s1: { point: 'S1', scale: 'battery-volts', mode: 'dcVolts', signed: true },
      s2: { point: 'S2', scale: 's2-before', mode: 'dcVolts', signed: true },
    },
    rows: [
      { id: 'reversed', when: { s2: 'reversed' }, to: 'left-isolated' },
      { id: 'held-up', when: { s2: ['alike', 'above'] }, to: 's2-watch' },
      {
        id: 'uncharged',
        when: { s1: 'ok', s2: ['absent', 'apart', 'undetermined'] },
        to: 'unlock',
        does: [{ bothSidesRead: 'apart' }],
      },
      { id: 's1-changed', when: {}, to: 'left-isolated' },
    ],
  },
  's2-watch': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['invDC'],
    ...dcLive,
    hazards: ['battery-short', 'stored-charge', 'live-metering'],
    tools: ['meter-cat3-600', 'watch'],
    minutes: 2,
    readings: { s2: { point: 'S2', scale: 's2-fell', mode: 'dcVolts' } },
    outcomes: {
      fell: { to: 'sides', limit: { counter: 'held-up', max: 3, otherwise: 'left-guarded' } },
      held: 'left-guarded',
      undetermined: 'left-guarded',
    },
  },
  unlock: {
    kind: 'operate',
    state: 'lockedOut',
    hazards: ['battery-arc', 're-energise'],
    minutes: 1,
    outcomes: { done: { to: 'clip-on', does: [{ unlock: 'main' }] } },
  },
} as const satisfies Steps;
