import type { Steps } from './steps.ts';

const guardItems = [
  { id: 'area-closed' },
  { id: 'nobody-near' },
  { id: 'owner-told' },
  { id: 'return-time' },
] as const;
const isolatedItems = [{ id: 'tags-on' }, { id: 'covers-on' }, { id: 'owner-told' }] as const;

/** How a run of this guide can end. */
export const ends = {
  'get-away': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardItems },
  'leave-as-found': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'come-back-in-light': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'noon-come-back': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'someone-elses-lock': { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  'dark-unit': { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  healthy: { kind: 'end', result: 'healthy', leaves: ['untouched', 'restored'] },
  fixed: { kind: 'end', result: 'fixed', leaves: ['untouched', 'restored'] },
  referred: { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  'watch-a-day': { kind: 'end', result: 'referred', leaves: ['untouched', 'restored'] },
  'meter-too-low': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'swap-cured': { kind: 'end', result: 'unresolved', leaves: ['untouched', 'restored'] },
  'left-open': { kind: 'end', result: 'leftIsolated', leaves: ['isolated'], items: isolatedItems },
  'refer-open': { kind: 'end', result: 'referred', leaves: ['isolated'], items: isolatedItems },
  'unresolved-open': { kind: 'end', result: 'unresolved', leaves: ['isolated'], items: isolatedItems },
  'left-guarded': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guardItems },
} as const satisfies Steps;
