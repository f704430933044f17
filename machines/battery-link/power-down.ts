import { batteryHandlePpe, dcLive, type Steps } from '../shared.ts';

const locked = { state: 'lockedOut', cant: 'left-open', unsure: 'left-open' } as const;

/** Everything off by the procedures, the packs last; the packs back first, and everything on again. */
export const powerDown = {
  'off-or-not': {
    kind: 'choose',
    state: 'running',
    minutes: 1,
    outcomes: { go: 'power-down', 'not-today': 'by-voltage' },
    cant: 'by-voltage',
    unsure: 'by-voltage',
  },
  'power-down': {
    kind: 'perform',
    procedure: 'isolate',
    endings: {
      'isolated-dead': 'packs-off',
      'left-isolated': 'left-open',
      'left-guarded': 'left-guarded',
      'not-shown': 'left-guarded',
    },
  },
  'packs-off': {
    kind: 'operate',
    ...locked,
    hazards: ['battery-arc', 'data-pins'],
    ppe: batteryHandlePpe,
    minutes: 2,
    outcomes: { done: { to: 'off-wait', does: [{ open: 'packs' }] } },
  },
  'off-wait': { kind: 'wait', ...locked, wait: 'link-off', minutes: 2, outcomes: { done: 'off-work' } },
  'off-work': {
    kind: 'sheet',
    ...locked,
    ask: 'link-off-work',
    outcomes: { ohms: 'pair-off', switches: 'set-switches', 'set-pack': 'set-pack', wake: 'on-count' },
  },
  'set-switches': { kind: 'operate', ...locked, minutes: 5, outcomes: { done: 'on-count' } },
  'set-pack': { kind: 'operate', ...locked, minutes: 5, outcomes: { done: 'on-count' } },
  'on-count': {
    kind: 'sheet',
    ...locked,
    ask: 'several-packs',
    outcomes: { several: 'on-gear', one: 'on-ready' },
  },
  'on-gear': {
    kind: 'hold',
    ...locked,
    hazards: ['battery-short'],
    items: [{ id: 'meter-rated' }, { id: 'jacks-checked' }, { id: 'gear-on' }],
    outcomes: { done: 'on-volts' },
  },
  'on-volts': {
    kind: 'measure',
    ...locked,
    at: ['packPost'],
    ...dcLive,
    hazards: ['battery-short', 'parallel-packs', 'live-metering'],
    minutes: 4,
    readings: {
      pack: { point: 'B', scale: 'battery-volts', mode: 'dcVolts', signed: true },
      across: { point: 'pack-breaker', scale: 'pack-difference', mode: 'dcVolts' },
    },
    rows: [
      { id: 'alike', when: { pack: 'ok', across: 'ok' }, to: 'on-charge' },
      { id: 'apart', when: {}, to: 'left-open' },
    ],
  },
  'on-charge': {
    kind: 'choose',
    ...locked,
    hazards: ['parallel-packs'],
    minutes: 1,
    outcomes: { alike: { to: 'on-ready', does: [{ packsAlike: true }] }, 'not-known': 'left-open' },
  },
  'on-ready': {
    kind: 'hold',
    ...locked,
    hazards: ['battery-arc', 'data-pins'],
    minutes: 1,
    items: [{ id: 'main-open' }, { id: 'plugs-as-meant' }, { id: 'label-wake' }, { id: 'stand-aside' }],
    outcomes: { done: 'packs-on' },
  },
  'packs-on': {
    kind: 'operate',
    ...locked,
    hazards: ['battery-arc'],
    ppe: batteryHandlePpe,
    minutes: 1,
    outcomes: { done: { to: 'was-asleep', does: [{ close: 'packs' }] } },
  },
  'was-asleep': {
    kind: 'sheet',
    ...locked,
    ask: 'link-woken',
    outcomes: { asleep: 'woken-cells', awake: 'bring-back' },
  },
  'woken-cells': {
    kind: 'display',
    ...locked,
    hazards: ['cold-charge'],
    minutes: 3,
    readings: {
      lowest: { point: 'display', scale: 'lowest-cell-volts', mode: 'display' },
      coldest: { point: 'display', scale: 'charge-cell-temp', mode: 'display', signed: true },
      hottest: { point: 'display', scale: 'charge-cell-temp', mode: 'display', signed: true },
    },
    rows: [
      { id: 'fit', when: { lowest: 'ok', coldest: 'ok', hottest: 'ok' }, to: 'bring-back' },
      { id: 'not-fit', when: {}, to: 'out-of-service' },
    ],
  },
  'bring-back': {
    kind: 'perform',
    procedure: 'restore',
    endings: {
      restored: 'settle',
      'left-isolated': 'left-open',
      'left-guarded': 'left-guarded',
    },
  },
  settle: {
    kind: 'wait',
    state: 'running',
    wait: 'link-settle',
    minutes: 1,
    outcomes: { done: 'after-power' },
  },
  'after-power': {
    kind: 'sheet',
    state: 'running',
    ask: 'link-after-power',
    outcomes: { try: 'try-result', proof: 'time-out', alive: 'alive-now', 'by-voltage': 'by-voltage' },
  },
  'alive-now': {
    kind: 'choose',
    state: 'running',
    minutes: 2,
    outcomes: { up: 'v-came-back', none: 'before-pairs' },
    cant: 'by-voltage',
    unsure: 'before-pairs',
  },
  'v-came-back': {
    kind: 'verdict',
    state: 'running',
    causes: ['link-plug-or-lead', 'address-or-host'],
    because: [{ step: 'alive-now', outcomes: ['up'] }],
    outcomes: { prove: 'time-out' },
  },
} as const satisfies Steps;
