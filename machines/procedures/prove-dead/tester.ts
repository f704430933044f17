import { dcLive, type Steps } from '../../shared.ts';

/** The tester on known live sources, before and after. */
export const tester = {
  'tester-before': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['battBus'],
    ...dcLive,
    hazards: ['battery-short', 'unproved-tester', 'live-metering'],
    tools: ['meter-cat3-1000', 'proving-source'],
    minutes: 2,
    readings: {
      dc: { point: 'S1', scale: 'known-live-battery', mode: 'dcVolts' },
      ac: { point: 'proving-source', scale: 'known-live-ac', mode: 'acVolts' },
    },
    rows: [
      { id: 'right', when: { dc: 'live', ac: 'live' }, to: 'dc-dead', does: [{ testerProved: true }] },
      {
        id: 'not-right',
        when: {},
        to: 'tester-mend',
        limit: { counter: 'tester-before', max: 1, otherwise: 'left-isolated' },
      },
    ],
  },
  'tester-mend': {
    kind: 'look',
    state: 'lockedOut',
    minutes: 3,
    outcomes: { mended: 'tester-before', 'no-tester': 'left-isolated' },
  },
  'tester-after': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['battBus'],
    ...dcLive,
    hazards: ['battery-short', 'unproved-tester', 'live-metering'],
    tools: ['meter-cat3-1000', 'proving-source'],
    minutes: 2,
    readings: {
      dc: { point: 'S1', scale: 'known-live-battery', mode: 'dcVolts' },
      ac: { point: 'proving-source', scale: 'known-live-ac', mode: 'acVolts' },
    },
    rows: [
      { id: 'right', when: { dc: 'live', ac: 'live' }, to: 'proved', does: [{ testerProved: true }] },
      {
        id: 'not-right',
        when: {},
        to: 'tester-failed',
        limit: { counter: 'tester-after', max: 1, otherwise: 'left-isolated' },
      },
    ],
  },
  'tester-failed': {
    kind: 'look',
    state: 'lockedOut',
    hazards: ['unproved-tester'],
    minutes: 3,
    outcomes: { mended: 'label-wait', 'no-tester': 'left-isolated' },
  },
} as const satisfies Steps;
