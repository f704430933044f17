import { guardedItems, isolatedItems, stoppedItems } from '../shared.ts';
import type { Steps } from './steps.ts';

const asFound = ['untouched', 'restored'] as const;

/** How a run of this guide can end. */
export const ends = {
  'get-away': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: stoppedItems },
  'leave-as-found': { kind: 'end', result: 'unresolved', leaves: asFound },
  'someone-elses-lock': { kind: 'end', result: 'referred', leaves: asFound },
  'watch-it': { kind: 'end', result: 'unresolved', leaves: asFound },
  'pair-left-off': { kind: 'end', result: 'referred', leaves: asFound },
  'long-noted': { kind: 'end', result: 'referred', leaves: asFound },
  healthy: { kind: 'end', result: 'healthy', leaves: asFound },
  fixed: { kind: 'end', result: 'fixed', leaves: asFound },
  referred: { kind: 'end', result: 'referred', leaves: asFound },
  'sheet-differs': { kind: 'end', result: 'unresolved', leaves: ['isolated'], items: isolatedItems },
  'left-open': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
  'refer-open': { kind: 'end', result: 'referred', leaves: ['isolated'], items: isolatedItems },
  'set-referred': { kind: 'end', result: 'referred', leaves: ['isolated'], items: isolatedItems },
  'unresolved-open': { kind: 'end', result: 'unresolved', leaves: ['isolated'], items: isolatedItems },
  'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
} as const satisfies Steps;
