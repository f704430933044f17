import type { Machine } from '../src/guide/vocabulary.ts';
import { air } from './fans-heat/air.ts';
import { charge } from './fans-heat/charge.ts';
import { ends } from './fans-heat/ends.ts';
import { firstLook } from './fans-heat/first-look.ts';
import { hidden } from './fans-heat/hidden.ts';
import { hot } from './fans-heat/hot.ts';
import { joint } from './fans-heat/joint.ts';
import { mend } from './fans-heat/mend.ts';
import { rest } from './fans-heat/rest.ts';
import { retest } from './fans-heat/retest.ts';

/** Fans always on, hot, or cutting back. Whether it is normal here comes first; the unit is never opened. */
export default {
  id: 'fans-heat',
  kind: 'guide',
  version: 1,
  begins: ['asFound'],
  start: 'first-look',
  escape: 'leave-as-found',
  stop: 'get-away',
  steps: {
    ...firstLook,
    ...charge,
    ...rest,
    ...hidden,
    ...hot,
    ...air,
    ...joint,
    ...mend,
    ...retest,
    ...ends,
  },
} satisfies Machine;
