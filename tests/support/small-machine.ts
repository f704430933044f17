import type { Machine, Step } from '../../src/guide/vocabulary.ts';

const guarded = [{ id: 'owner-told' }, { id: 'area-closed' }, { id: 'return-time' }];

/** A sound little procedure that opens and locks a PV isolator: tests break it in one place at a time. */
export const openIsolator: Machine = {
  id: 'small',
  kind: 'procedure',
  version: 1,
  begins: ['asFound'],
  start: 'someone-knows',
  escape: 'leave',
  stop: 'get-away',
  steps: {
    'someone-knows': {
      kind: 'hold',
      items: [{ id: 'named-person' }],
      outcomes: { done: { to: 'clamp', does: [{ namedPerson: true }] } },
    },
    clamp: {
      kind: 'measure',
      at: ['pvString'],
      energised: true,
      hazards: ['pv-arc'],
      ppe: ['rated-gloves', 'eye-protection'],
      tools: ['meter-cat3-1000', 'dc-clamp'],
      readings: { amps: { point: 'P1', scale: 'pv-zero', mode: 'dcClamp' } },
      outcomes: {
        zero: { to: 'open', does: [{ zeroShown: 'pv' }] },
        flows: {
          to: 'clamp',
          does: [{ currentFlows: 'pv' }],
          limit: { counter: 'clamp', max: 2, otherwise: 'leave' },
        },
        undetermined: {
          to: 'clamp',
          does: [{ currentFlows: 'pv' }],
          limit: { counter: 'clamp', max: 2, otherwise: 'leave' },
        },
      },
    },
    open: {
      kind: 'operate',
      hazards: ['pv-arc'],
      outcomes: { done: { to: 'lock', does: [{ open: 'pv' }] } },
    },
    lock: {
      kind: 'operate',
      hazards: ['pv-live-in-light'],
      outcomes: { done: { to: 'opened', does: [{ lock: 'pv' }] } },
    },
    opened: { kind: 'end', result: 'done', leaves: ['isolated'], items: [{ id: 'owner-told' }] },
    leave: {
      kind: 'end',
      result: 'leftGuarded',
      leaves: ['untouched', 'isolated', 'guarded'],
      items: guarded,
    },
    'get-away': { kind: 'end', result: 'leftGuarded', leaves: ['guarded'], items: guarded },
  },
};

/** The little procedure with some steps replaced or added. */
export const withSteps = (steps: Record<string, Step>, rest: Partial<Machine> = {}): Machine => ({
  ...openIsolator,
  ...rest,
  steps: { ...openIsolator.steps, ...steps },
});
