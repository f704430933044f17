import type { Machine } from '../src/guide/vocabulary.ts';
import { against } from './pv-no-start/against.ts';
import { batterySide } from './pv-no-start/battery-side.ts';
import { ends } from './pv-no-start/ends.ts';
import { firstLook } from './pv-no-start/first-look.ts';
import { groundChecks } from './pv-no-start/ground.ts';
import { heldBack } from './pv-no-start/held-back.ts';
import { lockout } from './pv-no-start/lockout.ts';
import { noVolts } from './pv-no-start/no-volts.ts';
import { overVolts } from './pv-no-start/over-volts.ts';
import { repair } from './pv-no-start/repair.ts';
import { startBehaviour } from './pv-no-start/start.ts';
import { stringAsFound } from './pv-no-start/string.ts';
import { swap } from './pv-no-start/swap.ts';

/** PV volts are there but the tracker will not start. Cheapest and safest checks first; the chapters stand in that order. */
export default {
  id: 'pv-no-start',
  kind: 'guide',
  version: 3,
  begins: ['asFound'],
  start: 'first-look',
  escape: 'leave-as-found',
  stop: 'get-away',
  facts: ['strings', 'trackers'],
  subject: 'pvString',
  against,
  steps: {
    ...firstLook,
    ...heldBack,
    ...batterySide,
    ...stringAsFound,
    ...noVolts,
    ...startBehaviour,
    ...groundChecks,
    ...lockout,
    ...overVolts,
    ...swap,
    ...repair,
    ...ends,
  },
} satisfies Machine;
