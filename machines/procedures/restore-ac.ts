import type { Machine } from '../../src/guide/vocabulary.ts';
import { guardedItems, isolatedItems, stoppedItems } from '../shared.ts';
import { loads } from './restore-ac/loads.ts';
import { output } from './restore-ac/output.ts';
import { units } from './restore-ac/units.ts';

/** The AC side back on, with the battery already live: second source, inverter, output, other units, loads. */
export default {
  id: 'restore-ac',
  kind: 'procedure',
  version: 1,
  begins: ['batteryOnly'],
  start: 'ready',
  escape: 'left-guarded',
  stop: 'stopped',
  steps: {
    ready: {
      kind: 'hold',
      minutes: 2,
      items: [{ id: 'tools-out' }, { id: 'covers-on' }, { id: 'people-told' }, { id: 'named-person' }],
      outcomes: { done: { to: 'source', does: [{ namedPerson: true }, { readyToRestore: true }] } },
    },
    ...output,
    ...units,
    ...loads,
    on: {
      kind: 'end',
      result: 'done',
      leaves: ['restored', 'isolated'],
      items: isolatedItems,
      promises: [
        { closed: 'acIn' },
        { closed: 'acOut' },
        { closed: 'others' },
        'loadsOn',
        'autoStart',
        'neutralSound',
        'verified',
      ],
    },
    'left-off': {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['guarded'],
      items: guardedItems,
      promises: ['inverterOff', 'loadsOff'],
    },
    'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
    stopped: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  },
} as const satisfies Machine;
