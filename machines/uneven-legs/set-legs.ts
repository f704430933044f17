import { leaveOpen, liveAc, type Steps } from './steps.ts';

const referSetting = { cant: 'set-referred', unsure: 'set-referred' } as const;

/**
 * The angle between the legs set, with nothing joined: a jumper reads like a wrong setting, and a unit set while it is joined to
 * another puts leg to leg across the two. The units stay on their battery: only their own AC breakers part them, so nothing here
 * opens or closes `others`, which are the DC and AC isolators together.
 */
export const setLegs = {
  'set-jumper': {
    kind: 'choose',
    state: 'noLoad',
    hazards: ['ac-backfeed', 'equipment-damage'],
    minutes: 2,
    outcomes: { 'none-there': 'set-kind', 'not-seen': 'make-safe' },
    ...leaveOpen,
  },
  'set-kind': {
    kind: 'sheet',
    state: 'noLoad',
    ask: 'several-inverters',
    outcomes: { one: 'set-ready', several: 'set-part' },
    ...referSetting,
  },
  'set-part': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['ac-backfeed', 'equipment-damage'],
    minutes: 3,
    outcomes: { done: 'set-ready' },
    ...referSetting,
  },
  'set-ready': {
    kind: 'hold',
    state: 'noLoad',
    hazards: ['equipment-damage'],
    minutes: 2,
    items: [{ id: 'output-open' }, { id: 'units-parted' }, { id: 'manual-here' }, { id: 'setting-noted' }],
    outcomes: { done: 'set-legs' },
    ...referSetting,
  },
  'set-legs': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['equipment-damage'],
    minutes: 10,
    outcomes: { done: 'out-after-set' },
    ...leaveOpen,
  },
  'out-after-set': {
    kind: 'measure',
    state: 'noLoad',
    at: ['acOut'],
    ...liveAc,
    minutes: 5,
    readings: {
      v12: { point: 'O-V12', scale: 'v12', mode: 'acVolts' },
      v1: { point: 'O-V1', scale: 'legs-leg', mode: 'acVolts' },
      v2: { point: 'O-V2', scale: 'legs-leg', mode: 'acVolts' },
    },
    rows: [
      { id: 'right', when: { v12: 'ok', v1: 'ok', v2: 'ok' }, to: 'set-several' },
      { id: 'not-right', when: {}, to: 'unresolved-open' },
    ],
    ...leaveOpen,
  },
  'set-several': {
    kind: 'sheet',
    state: 'noLoad',
    ask: 'several-inverters',
    outcomes: { one: 'close-ready', several: 'set-first-on' },
    ...leaveOpen,
  },
  'set-first-on': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['ac-backfeed', 're-energise'],
    minutes: 1,
    outcomes: { done: 'set-wait' },
    ...leaveOpen,
  },
  'set-wait': {
    kind: 'wait',
    state: 'noLoad',
    wait: 'in-step',
    minutes: 1,
    outcomes: { done: 'set-across' },
    ...leaveOpen,
  },
  'set-across': {
    kind: 'measure',
    state: 'noLoad',
    at: ['acOut'],
    ...liveAc,
    hazards: ['ac-backfeed', 'ac-shock', 'live-metering'],
    minutes: 3,
    readings: {
      apart: { point: 'unit-breaker', scale: 'same-leg-apart', mode: 'acVolts' },
      neutrals: { point: 'unit-neutral', scale: 'n-g', mode: 'acVolts' },
    },
    rows: [
      { id: 'in-step', when: { apart: 'ok', neutrals: 'ok' }, to: 'set-join-ready' },
      { id: 'not-in-step', when: {}, to: 'unresolved-open' },
    ],
    ...leaveOpen,
  },
  'set-join-ready': {
    kind: 'hold',
    state: 'noLoad',
    hazards: ['ac-backfeed'],
    minutes: 1,
    items: [
      { id: 'same-leg', reading: { step: 'set-across', reading: 'apart', zones: ['ok'] } },
      { id: 'steady-60' },
      { id: 'no-restart' },
    ],
    outcomes: { done: 'set-join' },
    ...leaveOpen,
  },
  'set-join': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['ac-backfeed', 're-energise'],
    ppe: ['rated-gloves', 'eye-protection', 'face-shield'],
    minutes: 2,
    outcomes: { done: 'out-joined' },
    ...leaveOpen,
  },
  'out-joined': {
    kind: 'measure',
    state: 'noLoad',
    at: ['acOut'],
    ...liveAc,
    minutes: 3,
    readings: {
      v12: { point: 'O-V12', scale: 'v12', mode: 'acVolts' },
      v1: { point: 'O-V1', scale: 'legs-leg', mode: 'acVolts' },
      v2: { point: 'O-V2', scale: 'legs-leg', mode: 'acVolts' },
    },
    rows: [
      { id: 'right', when: { v12: 'ok', v1: 'ok', v2: 'ok' }, to: 'close-ready' },
      { id: 'not-right', when: {}, to: 'unresolved-open' },
    ],
    ...leaveOpen,
  },
} as const satisfies Steps;
