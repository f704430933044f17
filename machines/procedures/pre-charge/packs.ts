import { batteryHandlePpe, dcLive, type Steps } from '../../shared.ts';

/** Packs that are off, tripped, or new to each other: brought on with the main switch open. */
export const packs = {
  packs: {
    kind: 'look',
    state: 'lockedOut',
    minutes: 1,
    outcomes: {
      'all-on': { to: 's1', does: [{ packsAlike: true }] },
      off: 'pack-count',
      tripped: { to: 'trip-cause', does: [{ tripped: 'packs' }] },
    },
  },
  'trip-cause': {
    kind: 'choose',
    state: 'lockedOut',
    hazards: ['close-on-fault'],
    minutes: 5,
    outcomes: {
      explained: { to: 'pack-count', does: [{ tripExplained: 'packs' }] },
      unexplained: 'left-isolated',
    },
  },
  'pack-count': {
    kind: 'sheet',
    state: 'lockedOut',
    ask: 'several-packs',
    outcomes: { several: 'pack-volts', one: 'pack-ready' },
  },
  'pack-volts': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['packPost'],
    ...dcLive,
    hazards: ['battery-short', 'parallel-packs', 'live-metering'],
    minutes: 4,
    readings: {
      pack: { point: 'B', scale: 'battery-volts', mode: 'dcVolts', signed: true },
      across: { point: 'pack-breaker', scale: 'pack-difference', mode: 'dcVolts' },
    },
    rows: [
      { id: 'alike', when: { pack: 'ok', across: 'ok' }, to: 'pack-charge' },
      {
        id: 'undetermined',
        when: { pack: ['ok', 'undetermined'], across: ['ok', 'undetermined'] },
        to: 'left-isolated',
      },
      { id: 'apart', when: {}, to: 'left-isolated' },
    ],
  },
  'pack-charge': {
    kind: 'choose',
    state: 'lockedOut',
    hazards: ['parallel-packs'],
    minutes: 2,
    outcomes: { alike: { to: 'pack-ready', does: [{ packsAlike: true }] }, 'not-known': 'left-isolated' },
  },
  'pack-ready': {
    kind: 'hold',
    state: 'lockedOut',
    hazards: ['battery-arc', 'close-on-fault'],
    minutes: 1,
    items: [{ id: 'main-open' }, { id: 'label-wake' }, { id: 'stand-aside' }],
    outcomes: { done: 'pack-close' },
  },
  'pack-close': {
    kind: 'operate',
    state: 'lockedOut',
    hazards: ['battery-arc', 'close-on-fault'],
    ppe: batteryHandlePpe,
    minutes: 1,
    outcomes: { done: { to: 's1', does: [{ close: 'packs' }] } },
  },
} as const satisfies Steps;
