import type { Steps } from './steps.ts';

/** Blinks with a beat of their own: the search mode, and a unit that changes its source. Eyes and ears only. */
export const rhythm = {
  'pulse-look': {
    kind: 'look',
    state: 'asFound',
    hazards: ['neutral-open'],
    minutes: 5,
    outcomes: { stops: 'v-search-mode', brighter: 'loads-away', 'goes-on': 'pulse-next' },
  },
  'pulse-next': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'output-legs',
    outcomes: { two: 'meter-ready', one: 'line-ready' },
  },
  'v-search-mode': {
    kind: 'verdict',
    causes: ['search-mode'],
    because: [{ step: 'pulse-look', outcomes: ['stops'] }],
    outcomes: { explained: 'search-watch', refer: 'referred' },
  },
  'search-watch': {
    kind: 'look',
    state: 'asFound',
    minutes: 10,
    outcomes: { steady: 'fixed', 'still-blinks': 'pulse-next' },
  },
  'source-fitted': {
    kind: 'sheet',
    state: 'asFound',
    ask: 'second-source',
    outcomes: { fitted: 'source-watch', none: 'pulse-next' },
  },
  'source-watch': {
    kind: 'look',
    state: 'asFound',
    minutes: 10,
    outcomes: { 'with-relay': 'v-source-flipping', alone: 'pulse-next' },
    cant: 'pulse-next',
    unsure: 'pulse-next',
  },
  'v-source-flipping': {
    kind: 'verdict',
    causes: ['source-flipping'],
    because: [{ step: 'source-watch', outcomes: ['with-relay'] }],
    outcomes: { explained: 'source-settled', refer: 'referred' },
  },
  'source-settled': {
    kind: 'look',
    state: 'asFound',
    minutes: 30,
    outcomes: { steady: 'fixed', 'still-flips': 'referred' },
    cant: 'referred',
    unsure: 'referred',
  },
} as const satisfies Steps;
