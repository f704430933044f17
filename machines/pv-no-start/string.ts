import { clampPv, livePv, type Steps } from './steps.ts';

/** The string as it stands, isolator not moved: amps first, then signed volts on both sides of the isolator. */
export const stringAsFound = {
  'ready-string': {
    kind: 'hold',
    state: 'asFound',
    items: [{ id: 'named-person' }, { id: 'meter-rated' }, { id: 'jacks-checked' }, { id: 'gear-on' }],
    outcomes: { done: { to: 'clamp-string', does: [{ namedPerson: true }] } },
  },
  'clamp-string': {
    kind: 'measure',
    state: 'asFound',
    at: ['pvBus'],
    ...clampPv,
    hazards: ['pv-reversed-arc', 'pv-shock', 'meter-rating'],
    minutes: 3,
    readings: { amps: { point: 'P2', scale: 'pv-string-clamp', mode: 'dcClamp', signed: true } },
    outcomes: {
      backward: 'flowing',
      zero: 'cell-temp',
      some: 'flowing',
      'isc-like': 'flowing',
      undetermined: 'cell-temp',
    },
  },
  'cell-temp': {
    kind: 'measure',
    state: 'asFound',
    tools: ['thermometer'],
    minutes: 2,
    readings: { cell: { point: 'module', scale: 'pv-cell-temp', mode: 'temperature', signed: true } },
    outcomes: { cool: 'volts-still', warm: 'volts-still', undetermined: 'volts-still' },
    cant: 'volts-still',
    unsure: 'volts-still',
  },
  'volts-still': {
    kind: 'measure',
    state: 'asFound',
    at: ['pvString', 'pvBus'],
    ...livePv,
    facts: ['strings[].vocV', 'strings[].modulesInSeries', 'strings[].vocPerC'],
    minutes: 3,
    readings: {
      p2: { point: 'P2', scale: 'pv-string-volts', mode: 'dcVolts', signed: true },
      p1: { point: 'P1', scale: 'pv-string-volts', mode: 'dcVolts', signed: true },
    },
    rows: [
      { id: 'reversed', when: { p1: 'reversed' }, to: 'ready-to-check' },
      { id: 'reversed-at-p2', when: { p2: 'reversed' }, to: 'ready-to-check' },
      { id: 'slightly-negative', when: { p1: 'slightly-negative' }, to: 'ready-to-check' },
      { id: 'over', when: { p1: 'over' }, to: 'cold-again' },
      {
        id: 'open-pole',
        when: {
          p1: ['low', 'ok', 'high', 'undetermined'],
          p2: ['slightly-negative', 'near-zero', 'held-off'],
        },
        to: 'isolator-handle',
      },
      { id: 'held-off', when: { p1: 'held-off' }, to: 'shutdown-look' },
      { id: 'nothing', when: { p1: 'near-zero' }, to: 'clamp-again' },
      { id: 'longer', when: { p1: 'high' }, to: 'cold-again' },
      { id: 'poor-contact', when: { p1: 'ok', p2: 'low' }, to: 'isolator-handle' },
      { id: 'shorter', when: { p1: 'low' }, to: 'count-missing' },
      { id: 'whole', when: { p1: 'ok', p2: ['ok', 'high', 'over'] }, to: 'start-margin' },
      { id: 'borderline', when: {}, to: 'start-margin' },
    ],
  },
  'isolator-handle': {
    kind: 'look',
    state: 'asFound',
    minutes: 1,
    outcomes: { off: 'v-isolator-off', on: 'across-poles', 'someone-elses-lock': 'someone-elses-lock' },
  },
  'v-isolator-off': {
    kind: 'verdict',
    causes: ['isolator-open'],
    because: [
      { step: 'volts-still', outcomes: ['open-pole', 'poor-contact'] },
      { step: 'isolator-handle', outcomes: ['off'] },
    ],
    outcomes: { 'close-it': 'ready-to-lock', 'leave-it': 'referred' },
  },
  'across-poles': {
    kind: 'measure',
    state: 'asFound',
    at: ['pvString', 'pvBus'],
    ...livePv,
    minutes: 3,
    readings: {
      plus: { point: 'P1', scale: 'pv-across-pole', mode: 'dcVolts', red: 'P1+', black: 'P2+' },
      minus: { point: 'P1', scale: 'pv-across-pole', mode: 'dcVolts', red: 'P2-', black: 'P1-' },
    },
    rows: [
      { id: 'plus-open', when: { plus: 'open' }, to: 'v-pole-open' },
      { id: 'minus-open', when: { minus: 'open' }, to: 'v-pole-open' },
      {
        id: 'both-closed',
        when: { plus: 'closed', minus: 'closed' },
        to: 'volts-still',
        limit: { counter: 'volts-once-more', max: 1, otherwise: 'leave-as-found' },
      },
      { id: 'both-open', when: {}, to: 'v-pole-open' },
    ],
  },
  'v-pole-open': {
    kind: 'verdict',
    causes: ['isolator-open'],
    because: [
      { step: 'volts-still', outcomes: ['open-pole', 'poor-contact'] },
      { step: 'across-poles', outcomes: ['plus-open', 'minus-open', 'both-open'] },
    ],
    outcomes: { mend: 'ready-to-open', refer: 'referred' },
  },
  'shutdown-look': {
    kind: 'look',
    state: 'asFound',
    minutes: 3,
    outcomes: { 'no-signal': 'v-shutdown', fitted: 'v-shutdown', 'none-fitted': 'clamp-again' },
    cant: 'v-shutdown-or-break',
    unsure: 'v-shutdown-or-break',
  },
  'v-shutdown': {
    kind: 'verdict',
    causes: ['module-shutdown-holding'],
    because: [
      { step: 'volts-still', outcomes: ['held-off'] },
      { step: 'shutdown-look', outcomes: ['no-signal', 'fitted'] },
    ],
    outcomes: { 'signal-back': 'retest-start', refer: 'referred' },
  },
  'v-shutdown-or-break': {
    kind: 'verdict',
    causes: ['module-shutdown-holding', 'string-open-circuit'],
    because: [{ step: 'volts-still', outcomes: ['held-off'] }],
    outcomes: { refer: 'referred' },
  },
  'count-missing': {
    kind: 'workOut',
    state: 'asFound',
    ask: 'pv-missing-modules',
    outcomes: {
      'below-start': 'module-count',
      'above-start': 'start-watch',
      'light-too-weak': 'noon-come-back',
    },
  },
  'module-count': {
    kind: 'look',
    state: 'asFound',
    minutes: 3,
    outcomes: {
      fewer: 'v-too-short-built',
      'as-sheet': 'v-module-bypassed',
      'cannot-count': 'v-short-or-bypassed',
    },
    cant: 'v-short-or-bypassed',
    unsure: 'v-short-or-bypassed',
  },
  'v-too-short-built': {
    kind: 'verdict',
    causes: ['string-too-short'],
    because: [
      { step: 'volts-still', outcomes: ['shorter'] },
      { step: 'count-missing', outcomes: ['below-start'] },
      { step: 'module-count', outcomes: ['fewer'] },
    ],
    outcomes: { mend: 'ready-to-open', plan: 'referred' },
  },
  'v-module-bypassed': {
    kind: 'verdict',
    causes: ['module-bypassed'],
    because: [
      { step: 'volts-still', outcomes: ['shorter'] },
      { step: 'count-missing', outcomes: ['below-start'] },
      { step: 'module-count', outcomes: ['as-sheet'] },
    ],
    outcomes: { mend: 'ready-to-open', plan: 'referred' },
  },
  'v-short-or-bypassed': {
    kind: 'verdict',
    causes: ['string-too-short', 'module-bypassed'],
    because: [
      { step: 'volts-still', outcomes: ['shorter'] },
      { step: 'count-missing', outcomes: ['below-start'] },
    ],
    outcomes: { plan: 'referred' },
  },
  'cold-again': {
    kind: 'workOut',
    state: 'asFound',
    ask: 'pv-cold-from-measured',
    outcomes: { 'over-maximum': 'v-too-long-built', fits: 'start-watch' },
  },
  'v-too-long-built': {
    kind: 'verdict',
    hazards: ['input-overvolts'],
    causes: ['string-too-long'],
    because: [
      { step: 'volts-still', outcomes: ['longer', 'over'] },
      { step: 'cold-again', outcomes: ['over-maximum'] },
    ],
    outcomes: { 'open-it': 'ready-to-open' },
  },
  'start-margin': {
    kind: 'workOut',
    state: 'asFound',
    ask: 'pv-start-margin',
    outcomes: {
      'below-start': 'v-too-short',
      'short-when-hot': 'when-it-fails',
      enough: 'start-watch',
      'light-too-weak': 'noon-come-back',
      'no-string': 'clamp-again',
    },
  },
  'v-too-short': {
    kind: 'verdict',
    causes: ['string-too-short'],
    because: [
      { step: 'volts-still', outcomes: ['whole', 'borderline'] },
      { step: 'start-margin', outcomes: ['below-start'] },
    ],
    outcomes: { mend: 'ready-to-open', plan: 'referred' },
  },
  'when-it-fails': {
    kind: 'choose',
    state: 'asFound',
    outcomes: {
      'hot-only': 'v-too-short-hot',
      'any-time': {
        to: 'events',
        limit: { counter: 'second-round', max: 1, otherwise: 'start-watch' },
      },
    },
    cant: 'start-watch',
    unsure: 'start-watch',
  },
  'v-too-short-hot': {
    kind: 'verdict',
    causes: ['string-too-short'],
    because: [
      { step: 'start-margin', outcomes: ['short-when-hot'] },
      { step: 'when-it-fails', outcomes: ['hot-only'] },
    ],
    outcomes: { mend: 'ready-to-open', plan: 'referred' },
  },
} as const satisfies Steps;
