import { guardedItems, isolatedItems, type Steps } from '../shared.ts';

const running = { leaves: ['untouched', 'restored'] } as const;

/** How a run of this guide can end. */
export const ends = {
  'get-away': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
  'leave-as-found': { kind: 'end', result: 'unresolved', ...running },
  'someone-elses-lock': { kind: 'end', result: 'referred', ...running },
  'meter-too-low': { kind: 'end', result: 'unresolved', ...running },
  healthy: { kind: 'end', result: 'healthy', ...running },
  fixed: { kind: 'end', result: 'fixed', ...running },
  'not-seen': { kind: 'end', result: 'unresolved', ...running },
  'not-proved': { kind: 'end', result: 'unresolved', ...running },
  referred: { kind: 'end', result: 'referred', ...running },
  'hand-limited': { kind: 'end', result: 'referred', ...running },
  'come-back-charging': { kind: 'end', result: 'unresolved', ...running },
  'on-by-voltage': { kind: 'end', result: 'unresolved', ...running },
  'charge-left-off': { kind: 'end', result: 'referred', ...running },
  'left-open': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
  'out-of-service': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
  'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardedItems },
} as const satisfies Steps;
