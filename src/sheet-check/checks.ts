import type { Check } from './check.ts';
import { acChecks } from './checks-ac.ts';
import { batteryChecks } from './checks-battery.ts';
import { pvChecks } from './checks-pv.ts';

/** Every check. A new one is an entry here and a sentence in the words. */
export const checks: readonly Check[] = [...pvChecks, ...batteryChecks, ...acChecks];
