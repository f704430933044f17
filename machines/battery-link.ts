import type { Machine } from '../src/guide/vocabulary.ts';
import { ends } from './battery-link/ends.ts';
import { endsOfLine } from './battery-link/ends-of-line.ts';
import { firstLook } from './battery-link/first-look.ts';
import { levels } from './battery-link/levels.ts';
import { limits } from './battery-link/limits.ts';
import { pairSteps } from './battery-link/pairs.ts';
import { powerDown } from './battery-link/power-down.ts';
import { proof } from './battery-link/proof.ts';
import { swap } from './battery-link/swap.ts';
import { wiring } from './battery-link/wiring.ts';

/** The battery's data link is lost, comes and goes, or was never made. By eye first, then by volts, then powered down. */
export default {
  id: 'battery-link',
  kind: 'guide',
  version: 1,
  begins: ['asFound'],
  start: 'first-look',
  escape: 'leave-as-found',
  stop: 'get-away',
  steps: {
    ...firstLook,
    ...wiring,
    ...levels,
    ...powerDown,
    ...endsOfLine,
    ...pairSteps,
    ...swap,
    ...limits,
    ...proof,
    ...ends,
  },
} as const satisfies Machine;
