import type { Group } from '../plant/index.ts';

/** Causes that give the same readings, and what would tell them apart. Trade knowledge; physics of each in the fault list. */
export interface SameReadings {
  group: Group;
  /** What all of them show. */
  reads: string;
  causes: readonly string[];
  /** The check that splits them, where it can be made. */
  splitter: string;
}

export const sameReadings: readonly SameReadings[] = [
  {
    group: 'a',
    reads: 'whole string volts on both sides of the isolator, no amps',
    causes: [
      'string-too-short',
      'string-too-long',
      'held-back',
      'insulation-fault',
      'start-disabled-by-setting',
      'lockout-latched',
      'tracker-input-failed',
    ],
    splitter:
      'window arithmetic, event list, added load, permitted amps, pole to ground, swap, in this order',
  },
  {
    group: 'a',
    reads: 'no volts on the inverter side',
    causes: [
      'isolator-open',
      'string-fuse-open',
      'module-shutdown-holding',
      'string-open-circuit',
      'string-reversed',
      'string-shorted',
    ],
    splitter: 'a clamp: no amps or about the short-circuit current; then signed volts with the isolator open',
  },
  {
    group: 'a',
    reads: 'volts fall on a start',
    causes: ['high-resistance-joint', 'string-too-short', 'module-bypassed'],
    splitter: 'full sun: a joint stays; string volts at rest count modules',
  },
  {
    group: 'd',
    reads: 'the legs part at the panel',
    causes: ['neutral-open-feeder', 'neutral-open-at-source'],
    splitter: 'the same three volts at the output',
  },
  {
    group: 'd',
    reads: 'volts lost along the feeder, in the same direction',
    causes: ['neutral-joint-poor', 'feeder-long'],
    splitter: 'ohms by length and size of the run as built',
  },
  {
    group: 'd',
    reads: 'the loaded leg falls',
    causes: ['hot-joint-poor', 'source-sags'],
    splitter: 'whether the other leg falls with it',
  },
  {
    group: 'd',
    reads: 'nothing between the legs',
    causes: ['legs-in-phase', 'leg-lost'],
    splitter: 'two-pole loads off',
  },
  {
    group: 'd',
    reads: 'blinks',
    causes: ['start-dip', 'search-mode'],
    splitter: 'a beat of its own, with no load changing',
  },
];
