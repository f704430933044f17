import { acLive, pvLive, type Steps } from '../../shared.ts';
import { every, inPairs, outPairs } from './pairs.ts';

/** The AC terminals, and volts that may be ghosts. */
export const ac = {
  'out-dead': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['acOut'],
    proves: 'acOut',
    ...acLive,
    hazards: ['ac-backfeed', 'ac-shock'],
    minutes: 4,
    readings: outPairs,
    rows: [
      { id: 'dead', when: every(outPairs, 'dead'), to: 'source', does: [{ measuredDead: 'acOut' }] },
      {
        id: 'undetermined',
        when: every(outPairs, ['dead', 'undetermined']),
        to: 'ac-live',
        does: [{ measuredLive: 'acOut' }],
      },
      { id: 'live', when: {}, to: 'ac-live', does: [{ measuredLive: 'acOut' }] },
    ],
  },
  source: {
    kind: 'sheet',
    state: 'lockedOut',
    ask: 'second-source',
    outcomes: { fitted: 'in-dead', none: 'tester-after' },
  },
  'in-dead': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['acIn'],
    proves: 'acIn',
    ...acLive,
    hazards: ['ac-backfeed', 'ac-shock'],
    minutes: 4,
    readings: inPairs,
    rows: [
      { id: 'dead', when: every(inPairs, 'dead'), to: 'tester-after', does: [{ measuredDead: 'acIn' }] },
      {
        id: 'undetermined',
        when: every(inPairs, ['dead', 'undetermined']),
        to: 'ac-live',
        does: [{ measuredLive: 'acIn' }],
      },
      { id: 'live', when: {}, to: 'ac-live', does: [{ measuredLive: 'acIn' }] },
    ],
  },
  'ac-live': {
    kind: 'choose',
    state: 'lockedOut',
    hazards: ['ac-backfeed'],
    minutes: 2,
    cant: 'left-guarded',
    unsure: 'left-guarded',
    outcomes: {
      steady: 'left-guarded',
      wandering: { to: 'ghost', limit: { counter: 'ghost', max: 2, otherwise: 'left-isolated' } },
    },
  },
  ghost: {
    kind: 'measure',
    state: 'lockedOut',
    at: ['pvBus', 'acOut', 'acIn'],
    ...pvLive,
    tools: ['meter-cat3-1000', 'low-z-meter'],
    minutes: 2,
    readings: { lowz: { point: 'ghost', scale: 'dead-ac', mode: 'lowZVolts' } },
    outcomes: {
      dead: 'neighbour',
      live: 'left-guarded',
      undetermined: 'left-guarded',
    },
  },
  neighbour: {
    kind: 'look',
    state: 'lockedOut',
    minutes: 5,
    outcomes: { isolated: 'label-wait', 'not-found': 'left-isolated' },
  },
} as const satisfies Steps;
