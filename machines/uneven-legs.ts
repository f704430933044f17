import type { Machine } from '../src/guide/vocabulary.ts';
import { asFoundLegs } from './uneven-legs/as-found.ts';
import { ends } from './uneven-legs/ends.ts';
import { firstLook } from './uneven-legs/first-look.ts';
import { groundReference } from './uneven-legs/ground.ts';
import { loadsAway } from './uneven-legs/loads-away.ts';
import { loadsBack } from './uneven-legs/loads-back.ts';
import { oneLine } from './uneven-legs/one-line.ts';
import { oneLineTest } from './uneven-legs/one-line-test.ts';
import { pair } from './uneven-legs/pair.ts';
import { panelDead } from './uneven-legs/panel-dead.ts';
import { repair } from './uneven-legs/repair.ts';
import { rhythm } from './uneven-legs/rhythm.ts';
import { secondLeg } from './uneven-legs/second-leg.ts';
import { setLegs } from './uneven-legs/set-legs.ts';
import { stepTest } from './uneven-legs/step-test.ts';
import { stepVerdicts } from './uneven-legs/step-verdicts.ts';

/** Legs that differ, lights that dim, brighten or flicker. A sign of a lost neutral takes the loads off before anything is measured. */
export default {
  id: 'uneven-legs',
  kind: 'guide',
  version: 2,
  begins: ['asFound'],
  start: 'first-look',
  escape: 'leave-as-found',
  stop: 'get-away',
  facts: ['inverter.topology'],
  steps: {
    ...firstLook,
    ...asFoundLegs,
    ...rhythm,
    ...groundReference,
    ...pair,
    ...loadsAway,
    ...setLegs,
    ...stepTest,
    ...stepVerdicts,
    ...secondLeg,
    ...loadsBack,
    ...oneLine,
    ...oneLineTest,
    ...repair,
    ...panelDead,
    ...ends,
  },
} satisfies Machine;
