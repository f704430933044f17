import type { Machine } from '../../src/guide/vocabulary.ts';
import { guardedItems, isolatedItems, stoppedItems } from '../shared.ts';
import { checks } from './string-check/checks.ts';
import { connect } from './string-check/connect.ts';

/** Checks a string behind its open, locked isolator, and connects it with the unit off and the battery live. */
export default {
  id: 'string-check',
  kind: 'procedure',
  version: 1,
  begins: ['pvOpen', 'batteryOnly'],
  start: 'ready',
  escape: 'left-isolated',
  stop: 'stopped',
  subject: 'pvString',
  facts: ['strings', 'trackers'],
  steps: {
    ready: {
      kind: 'hold',
      state: 'pvOpen',
      hazards: ['pv-live-in-light', 'meter-rating'],
      tools: ['meter-cat3-1000', 'dc-clamp', 'thermometer'],
      minutes: 2,
      items: [{ id: 'isolator-open' }, { id: 'meter-fit' }, { id: 'no-crackle' }, { id: 'named-person' }],
      outcomes: { done: { to: 'cell-temp', does: [{ namedPerson: true }] } },
    },
    ...checks,
    ...connect,
    connected: {
      kind: 'end',
      result: 'done',
      leaves: ['restored', 'isolated'],
      items: isolatedItems,
      promises: [{ closed: 'pv' }, 'verified'],
    },
    'left-isolated': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
    'no-volts': {
      kind: 'end',
      result: 'leftIsolated',
      leaves: ['isolated'],
      items: isolatedItems,
      promises: [{ held: 'pv' }, { noCurrent: 'pv' }],
    },
    'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
    stopped: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  },
} as const satisfies Machine;
