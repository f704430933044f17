import { acLive, type Steps } from '../../shared.ts';

/** The house loads back, what the output then reads, and the way back to an output that is off. */
export const loads = {
  'loads-on': {
    kind: 'operate',
    state: 'noLoad',
    hazards: ['re-energise'],
    minutes: 4,
    cant: 'off-loaded',
    unsure: 'off-loaded',
    outcomes: { done: { to: 'verify-legs', does: [{ loads: 'on' }] } },
  },
  'verify-legs': {
    kind: 'sheet',
    ask: 'output-legs',
    cant: 'loads-back-off',
    unsure: 'loads-back-off',
    outcomes: { two: 'verify-two', one: 'verify' },
  },
  'verify-two': {
    kind: 'measure',
    at: ['loadPanel'],
    ...acLive,
    minutes: 3,
    cant: 'loads-back-off',
    unsure: 'loads-back-off',
    readings: {
      v1: { point: 'D-V1', scale: 'leg-volts', mode: 'acVolts' },
      v2: { point: 'D-V2', scale: 'leg-volts', mode: 'acVolts' },
      ng: { point: 'D-NG', scale: 'n-g-loaded', mode: 'acVolts' },
    },
    rows: [
      { id: 'holds', when: { v1: 'ok', v2: 'ok', ng: 'ok' }, to: 'sound', does: [{ verified: true }] },
      {
        id: 'undetermined',
        when: { v1: ['ok', 'undetermined'], v2: ['ok', 'undetermined'], ng: ['ok', 'undetermined'] },
        to: 'loads-back-off',
      },
      { id: 'sags', when: {}, to: 'loads-back-off' },
    ],
  },
  verify: {
    kind: 'measure',
    at: ['loadPanel'],
    ...acLive,
    minutes: 3,
    cant: 'loads-back-off',
    unsure: 'loads-back-off',
    readings: {
      v1: { point: 'D-V1', scale: 'leg-volts', mode: 'acVolts' },
      ng: { point: 'D-NG', scale: 'n-g-loaded', mode: 'acVolts' },
    },
    rows: [
      { id: 'holds', when: { v1: 'ok', ng: 'ok' }, to: 'sound', does: [{ verified: true }] },
      {
        id: 'undetermined',
        when: { v1: ['ok', 'undetermined'], ng: ['ok', 'undetermined'] },
        to: 'loads-back-off',
      },
      { id: 'sags', when: {}, to: 'loads-back-off' },
    ],
  },
  'loads-back-off': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'off-running', does: [{ loads: 'off' }] } },
  },
  'off-unloaded': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'left-off', does: [{ inverter: 'off' }] } },
  },
  'off-loaded': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'left-off', does: [{ inverter: 'off' }] } },
  },
  'off-running': {
    kind: 'operate',
    minutes: 1,
    outcomes: { done: { to: 'left-off', does: [{ inverter: 'off' }] } },
  },
} as const satisfies Steps;
