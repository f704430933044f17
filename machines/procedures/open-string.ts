import type { Machine } from '../../src/guide/vocabulary.ts';
import { guardedItems, isolatedItems, pvClampLive, stoppedItems } from '../shared.ts';

/** Opens and locks the PV isolator of one string, and only at no current. */
export default {
  id: 'open-string',
  kind: 'procedure',
  version: 1,
  begins: ['asFound', 'running', 'noLoad', 'batteryOnly', 'pvOpen'],
  start: 'ready',
  escape: 'left-guarded',
  stop: 'stopped',
  subject: 'pvString',
  steps: {
    ready: {
      kind: 'hold',
      minutes: 2,
      tools: ['meter-cat3-1000', 'dc-clamp', 'locks-tags'],
      items: [{ id: 'named-person' }, { id: 'clamp-proved' }, { id: 'no-crackle' }, { id: 'isolator-sound' }],
      outcomes: { done: { to: 'amps', does: [{ namedPerson: true }] } },
    },
    amps: {
      kind: 'measure',
      at: ['pvString'],
      ...pvClampLive,
      minutes: 2,
      readings: { amps: { point: 'P1-I', scale: 'pv-zero', mode: 'dcClamp' } },
      outcomes: {
        zero: { to: 'open-pv', does: [{ zeroShown: 'pv' }] },
        flows: {
          to: 'stop-unit',
          does: [{ currentFlows: 'pv' }],
          limit: { counter: 'amps', max: 2, otherwise: 'still-flows' },
        },
        // A small number may be a current: the unit is stopped once before the clamp is blamed.
        undetermined: {
          to: 'stop-unit',
          does: [{ currentFlows: 'pv' }],
          limit: { counter: 'small', max: 1, otherwise: 'finer' },
        },
      },
    },
    finer: {
      kind: 'look',
      minutes: 2,
      outcomes: {
        again: { to: 'amps', limit: { counter: 'finer', max: 2, otherwise: 'not-shown' } },
        'no-finer': 'not-shown',
      },
    },
    'stop-unit': {
      kind: 'operate',
      minutes: 1,
      outcomes: { done: { to: 'settle', does: [{ inverter: 'off' }] } },
    },
    settle: { kind: 'wait', wait: 'tracker-stop', minutes: 1, outcomes: { done: 'amps' } },
    'still-flows': {
      kind: 'look',
      hazards: ['pv-reversed-arc'],
      minutes: 1,
      outcomes: { understood: 'left-guarded' },
    },
    'open-pv': {
      kind: 'operate',
      device: 'pv',
      hazards: ['pv-arc'],
      ppe: ['rated-gloves', 'eye-protection', 'face-shield'],
      minutes: 1,
      outcomes: { done: { to: 'lock-pv', does: [{ open: 'pv' }] } },
    },
    'lock-pv': {
      kind: 'operate',
      hazards: ['pv-live-in-light'],
      tools: ['locks-tags'],
      minutes: 1,
      outcomes: {
        locked: { to: 'open', does: [{ lock: 'pv' }] },
        tagged: { to: 'open', does: [{ tagPlus: 'pv' }] },
      },
    },
    open: {
      kind: 'end',
      result: 'done',
      leaves: ['isolated'],
      items: isolatedItems,
      promises: [{ held: 'pv' }],
    },
    'left-guarded': {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['untouched', 'guarded'],
      items: guardedItems,
    },
    // Neither that current flows nor that none does: the clamp is too coarse to tell.
    'not-shown': {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['untouched', 'guarded'],
      items: guardedItems,
    },
    stopped: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  },
} as const satisfies Machine;
