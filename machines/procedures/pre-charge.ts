import type { Machine } from '../../src/guide/vocabulary.ts';
import { guardedItems, isolatedItems, stoppedItems } from '../shared.ts';
import { charge } from './pre-charge/charge.ts';
import { packs } from './pre-charge/packs.ts';
import { ready } from './pre-charge/ready.ts';
import { recover } from './pre-charge/recover.ts';
import { sides } from './pre-charge/sides.ts';

/** Brings the inverter's empty capacitors up through a resistor, watches them rise, and closes the main switch on it. */
export default {
  id: 'pre-charge',
  kind: 'procedure',
  version: 1,
  begins: ['mainOpen', 'lockedOut', 'dead'],
  start: 'resistor',
  escape: 'left-isolated',
  stop: 'stopped',
  facts: ['precharge.resistorOhm', 'precharge.ratedW'],
  steps: {
    ...ready,
    ...packs,
    ...sides,
    ...charge,
    ...recover,
    closed: {
      kind: 'end',
      result: 'done',
      leaves: ['isolated'],
      items: isolatedItems,
      promises: [{ closed: 'packs' }, { closed: 'main' }, { unlocked: 'main' }, 'resistorOff'],
    },
    'left-isolated': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
    'left-open': {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['guarded'],
      items: guardedItems,
      promises: [{ opened: 'main' }],
    },
    'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
    stopped: { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  },
} as const satisfies Machine;
