import type { Machine } from '../../src/guide/vocabulary.ts';
import { guardedItems, isolatedItems, stoppedItems } from '../shared.ts';
import { ac } from './prove-dead/ac.ts';
import { dc } from './prove-dead/dc.ts';
import { pv } from './prove-dead/pv.ts';
import { tester } from './prove-dead/tester.ts';

/** Known source, every pair and pole, known source again. Nothing else is done between the two. */
export default {
  id: 'prove-dead',
  kind: 'procedure',
  version: 1,
  begins: ['lockedOut'],
  start: 'ready',
  escape: 'left-isolated',
  stop: 'stopped',
  steps: {
    ready: {
      kind: 'hold',
      state: 'lockedOut',
      tools: ['meter-cat3-1000', 'proving-source'],
      minutes: 1,
      items: [{ id: 'named-person' }, { id: 'locks-on' }, { id: 'proving-source' }],
      outcomes: { done: { to: 'label-wait', does: [{ namedPerson: true }] } },
    },
    'label-wait': {
      kind: 'wait',
      state: 'lockedOut',
      wait: 'label-wait',
      hazards: ['stored-charge'],
      minutes: 6,
      outcomes: { done: { to: 'tester-before', does: [{ waited: 'invDC' }, { waited: 'pvBus' }] } },
    },
    ...tester,
    ...dc,
    ...pv,
    ...ac,
    proved: {
      kind: 'end',
      result: 'done',
      leaves: ['isolated'],
      items: isolatedItems,
      promises: [
        { provedDead: 'invDC' },
        { provedDead: 'pvBus' },
        { provedDead: 'acOut' },
        { provedDead: 'acIn' },
      ],
    },
    'left-isolated': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
    'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
    stopped: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  },
} as const satisfies Machine;
