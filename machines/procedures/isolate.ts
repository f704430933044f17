import type { Machine } from '../../src/guide/vocabulary.ts';
import { guardedItems, isolatedItems, stoppedItems } from '../shared.ts';
import { acSide } from './isolate/ac-side.ts';
import { dcSide } from './isolate/dc-side.ts';

/** Every source off, open, locked and tagged, loads first and battery last; then proved dead where the work is. */
export default {
  id: 'isolate',
  kind: 'procedure',
  version: 1,
  begins: ['asFound', 'running', 'noLoad', 'pvOpen', 'batteryOnly', 'mainOpen', 'lockedOut'],
  start: 'ready',
  escape: 'left-guarded',
  stop: 'stopped',
  steps: {
    ready: {
      kind: 'hold',
      tools: ['meter-cat3-1000', 'dc-clamp', 'proving-source', 'locks-tags'],
      minutes: 5,
      items: [
        { id: 'no-smell' },
        { id: 'sources-listed' },
        { id: 'people-told' },
        { id: 'named-person' },
        { id: 'meter-fit' },
        { id: 'locks-enough' },
      ],
      outcomes: { done: { to: 'loads-off', does: [{ namedPerson: true }] } },
    },
    ...acSide,
    ...dcSide,
    prove: {
      kind: 'perform',
      procedure: 'prove-dead',
      endings: {
        proved: 'inlet-source',
        'left-isolated': 'left-isolated',
        'left-guarded': 'left-guarded',
      },
    },
    'inlet-source': {
      kind: 'sheet',
      ask: 'second-source',
      cant: 'left-isolated',
      unsure: 'left-isolated',
      outcomes: { fitted: 'inlet', none: 'isolated-dead' },
    },
    inlet: {
      kind: 'choose',
      cant: 'left-isolated',
      unsure: 'left-isolated',
      outcomes: { plug: 'inlet-unplug', fixed: 'isolated-dead' },
    },
    'inlet-unplug': {
      kind: 'operate',
      state: 'dead',
      at: ['acIn'],
      hazards: ['ac-backfeed', 'generator-start'],
      ppe: ['rated-gloves'],
      minutes: 1,
      cant: 'left-isolated',
      unsure: 'left-isolated',
      outcomes: { done: { to: 'isolated-dead', does: [{ inlet: 'unplugged' }] } },
    },
    'isolated-dead': {
      kind: 'end',
      result: 'done',
      leaves: ['isolated'],
      items: isolatedItems,
      promises: [
        { held: 'main' },
        { held: 'pv' },
        { held: 'pvOther' },
        { held: 'acIn' },
        { held: 'others' },
        { held: 'acOut' },
        { provedDead: 'invDC' },
        { provedDead: 'pvBus' },
        { provedDead: 'acOut' },
        { provedDead: 'acIn' },
      ],
    },
    'left-isolated': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
    'left-guarded': {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['untouched', 'guarded'],
      items: guardedItems,
    },
    // Neither that PV current flows nor that none does: the clamp is too coarse to tell.
    'not-shown': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
    stopped: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  },
} as const satisfies Machine;
