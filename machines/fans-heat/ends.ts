import { guardedItems, isolatedItems } from '../shared.ts';
import type { Steps } from './steps.ts';

/** How a run of this guide can end. */
export const ends = {
  'get-away': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
  'leave-as-found': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'someone-elses-lock': { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  'come-back-hot': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'cold-morning': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  overloaded: { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  healthy: { kind: 'end', result: 'healthy', leaves: ['untouched', 'restored'] },
  fixed: { kind: 'end', result: 'fixed', leaves: ['untouched', 'restored'] },
  referred: { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  'refer-joint': { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  'retest-owed': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'not-mended': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'loads-still-off': {
    kind: 'end',
    result: 'leftGuarded',
    leaves: ['untouched', 'guarded'],
    items: guardedItems,
  },
  'left-isolated': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
  'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
} as const satisfies Steps;
