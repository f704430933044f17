import { acLive, type Steps } from '../../shared.ts';

/** Loads, the last look, and the way back when it is not right. */
export const loads = {
  'loads-on': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['re-energise'],
    minutes: 4,
    cant: 'off-before-loads',
    unsure: 'off-before-loads',
    outcomes: { done: { to: 'auto-start', does: [{ loads: 'on' }] } },
  },
  'auto-start': {
    kind: 'sheet',
    ask: 'second-source',
    outcomes: { fitted: 'auto-on', none: 'verify' },
  },
  'auto-on': {
    kind: 'operate',
    hazards: ['co-fumes', 'generator-start'],
    minutes: 2,
    outcomes: { done: { to: 'verify', does: [{ autoStart: 'enabled' }] } },
  },
  verify: {
    kind: 'measure',
    at: ['loadPanel', 'invDC'],
    ...acLive,
    hazards: ['battery-short', 'ac-shock', 'live-metering'],
    minutes: 4,
    cant: 'shut-down',
    unsure: 'shut-down',
    readings: {
      leg: { point: 'D-V1', scale: 'leg-volts', mode: 'acVolts' },
      bus: { point: 'I', scale: 'battery-volts', mode: 'dcVolts' },
    },
    rows: [
      { id: 'works', when: { leg: 'ok', bus: 'ok' }, to: 'on', does: [{ verified: true }] },
      {
        id: 'undetermined',
        when: { leg: ['ok', 'undetermined'], bus: ['ok', 'undetermined'] },
        to: 'shut-down',
      },
      { id: 'not-right', when: {}, to: 'shut-down' },
    ],
  },
  'shut-down': {
    kind: 'operate',
    minutes: 2,
    outcomes: { done: { to: 'off-after-loads', does: [{ loads: 'off' }] } },
  },
  'off-before-output': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'left-off', does: [{ inverter: 'off' }] } },
  },
  'off-before-loads': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'left-off', does: [{ inverter: 'off' }] } },
  },
  'off-after-loads': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'left-off', does: [{ inverter: 'off' }] } },
  },
} as const satisfies Steps;
