import type { Steps } from '../shared.ts';

const locked = { state: 'lockedOut', cant: 'on-count', unsure: 'on-count' } as const;
const ohms = {
  ...locked,
  at: ['control'],
  hazards: ['data-pins'],
  tools: ['meter-cat3-600', 'data-breakout'],
  minutes: 4,
} as const;
const mending = { mend: 'mend-lead', 'leave-out': 'on-count' } as const;

/** End resistors and wires by resistance: both devices off. */
export const endsOfLine = {
  'pair-off': {
    kind: 'measure',
    ...ohms,
    readings: { volts: { point: 'C', scale: 'link-pair-off', mode: 'dcVolts' } },
    outcomes: { off: 'ends-ohms', fed: 'still-fed', undetermined: 'still-fed' },
  },
  'still-fed': {
    kind: 'look',
    ...locked,
    minutes: 3,
    outcomes: {
      found: { to: 'pair-off', limit: { counter: 'still-fed', max: 2, otherwise: 'on-count' } },
      'not-found': 'on-count',
    },
  },
  'ends-ohms': {
    kind: 'measure',
    ...ohms,
    readings: { ohms: { point: 'C', scale: 'link-ends', mode: 'ohms' } },
    outcomes: {
      shorted: 'one-out',
      many: 'v-ends-many',
      good: 'lead-pins',
      between: 'one-out',
      one: 'one-out',
      none: 'one-out',
      undetermined: 'one-out',
    },
  },
  'one-out': {
    kind: 'measure',
    ...ohms,
    readings: {
      cable: { point: 'C', scale: 'link-one-end', mode: 'ohms' },
      socket: { point: 'C', scale: 'link-one-end', mode: 'ohms' },
    },
    rows: [
      { id: 'socket-short', when: { socket: 'shorted' }, to: 'v-port-short' },
      { id: 'cable-short', when: { cable: 'shorted' }, to: 'short-where' },
      { id: 'unit-end-missing', when: { cable: 'one', socket: 'none' }, to: 'v-end-unit' },
      { id: 'cable-open', when: { cable: 'none' }, to: 'pack-alone' },
      { id: 'each-one', when: { cable: 'one', socket: 'one' }, to: 'v-contact' },
      { id: 'too-many', when: { cable: 'two', socket: 'one' }, to: 'v-ends-far' },
      { id: 'other', when: {}, to: 'lead-pins' },
    ],
  },
  'pack-alone': {
    kind: 'measure',
    ...ohms,
    readings: { ohms: { point: 'C', scale: 'link-one-end', mode: 'ohms' } },
    outcomes: {
      shorted: 'v-port-alone',
      two: 'v-lead-broken',
      between: 'lead-pins',
      one: 'v-lead-broken',
      none: 'v-end-pack',
      undetermined: 'lead-pins',
    },
  },
  'short-where': {
    kind: 'measure',
    ...ohms,
    readings: { ohms: { point: 'C', scale: 'link-one-end', mode: 'ohms' } },
    outcomes: {
      shorted: 'v-port-pack-short',
      two: 'v-lead-short',
      between: 'v-lead-short',
      one: 'v-lead-short',
      none: 'v-lead-short',
      undetermined: 'lead-pins',
    },
  },
  'set-ends': {
    kind: 'operate',
    ...locked,
    hazards: ['data-pins'],
    minutes: 5,
    outcomes: { done: 'ends-again' },
  },
  'ends-again': {
    kind: 'measure',
    ...ohms,
    readings: { ohms: { point: 'C', scale: 'link-ends', mode: 'ohms' } },
    rows: [
      { id: 'good', when: { ohms: 'good' }, to: 'lead-pins' },
      {
        id: 'not-good',
        when: {},
        to: 'set-ends',
        limit: { counter: 'set-ends', max: 2, otherwise: 'lead-pins' },
      },
    ],
  },
  'lead-pins': {
    kind: 'measure',
    ...ohms,
    minutes: 8,
    readings: {
      same: { point: 'C', scale: 'link-wire-joined', mode: 'continuity' },
      crossed: { point: 'C', scale: 'link-wire-apart', mode: 'continuity' },
      stray: { point: 'C', scale: 'link-wire-apart', mode: 'continuity' },
    },
    rows: [
      { id: 'stray', when: { stray: ['joined', 'poor'] }, to: 'v-lead-pins' },
      { id: 'crossed', when: { crossed: 'joined' }, to: 'v-lead-pins' },
      { id: 'broken', when: { same: ['open', 'poor'] }, to: 'v-lead-open' },
      { id: 'right', when: { same: 'joined', crossed: ['open', 'poor'], stray: 'open' }, to: 'lead-back' },
      { id: 'no-tell', when: {}, to: 'lead-back' },
    ],
  },
  'lead-back': {
    kind: 'operate',
    ...locked,
    hazards: ['data-pins'],
    minutes: 2,
    outcomes: { done: 'on-count' },
  },
  'mend-lead': {
    kind: 'operate',
    ...locked,
    hazards: ['data-pins'],
    tools: ['data-lead'],
    minutes: 15,
    outcomes: { done: 'on-count' },
  },
  'v-ends-many': {
    kind: 'verdict',
    ...locked,
    causes: ['end-resistors-wrong'],
    because: [{ step: 'ends-ohms', outcomes: ['many'] }],
    outcomes: { mend: 'set-ends' },
  },
  'v-ends-far': {
    kind: 'verdict',
    ...locked,
    causes: ['end-resistors-wrong'],
    because: [{ step: 'one-out', outcomes: ['too-many'] }],
    outcomes: { mend: 'set-ends' },
  },
  'v-end-unit': {
    kind: 'verdict',
    ...locked,
    causes: ['end-resistors-wrong'],
    because: [{ step: 'one-out', outcomes: ['unit-end-missing'] }],
    outcomes: { mend: 'set-ends' },
  },
  'v-end-pack': {
    kind: 'verdict',
    ...locked,
    causes: ['end-resistors-wrong'],
    because: [
      { step: 'one-out', outcomes: ['cable-open'] },
      { step: 'pack-alone', outcomes: ['none'] },
    ],
    outcomes: { mend: 'set-ends' },
  },
  'v-lead-broken': {
    kind: 'verdict',
    ...locked,
    causes: ['link-plug-or-lead'],
    because: [
      { step: 'one-out', outcomes: ['cable-open'] },
      { step: 'pack-alone', outcomes: ['one', 'two'] },
    ],
    outcomes: mending,
  },
  'v-lead-short': {
    kind: 'verdict',
    ...locked,
    causes: ['link-plug-or-lead'],
    because: [
      { step: 'one-out', outcomes: ['cable-short'] },
      { step: 'short-where', outcomes: ['two', 'between', 'one', 'none'] },
    ],
    outcomes: mending,
  },
  'v-contact': {
    kind: 'verdict',
    ...locked,
    causes: ['link-plug-or-lead'],
    because: [{ step: 'one-out', outcomes: ['each-one'] }],
    outcomes: mending,
  },
  'v-lead-pins': {
    kind: 'verdict',
    ...locked,
    causes: ['lead-pins-wrong'],
    because: [{ step: 'lead-pins', outcomes: ['stray', 'crossed'] }],
    outcomes: mending,
  },
  'v-lead-open': {
    kind: 'verdict',
    ...locked,
    causes: ['link-plug-or-lead'],
    because: [{ step: 'lead-pins', outcomes: ['broken'] }],
    outcomes: mending,
  },
  'v-port-short': {
    kind: 'verdict',
    ...locked,
    causes: ['link-port-dead'],
    because: [{ step: 'one-out', outcomes: ['socket-short'] }],
    outcomes: { 'leave-out': 'on-count' },
  },
  'v-port-pack-short': {
    kind: 'verdict',
    ...locked,
    causes: ['link-port-dead'],
    because: [
      { step: 'one-out', outcomes: ['cable-short'] },
      { step: 'short-where', outcomes: ['shorted'] },
    ],
    outcomes: { 'leave-out': 'on-count' },
  },
  'v-port-alone': {
    kind: 'verdict',
    ...locked,
    causes: ['link-port-dead'],
    because: [{ step: 'pack-alone', outcomes: ['shorted'] }],
    outcomes: { 'leave-out': 'on-count' },
  },
} as const satisfies Steps;
