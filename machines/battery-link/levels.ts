import type { Steps } from '../shared.ts';

const asked = { state: 'running', cant: 'off-or-not', unsure: 'off-or-not' } as const;
const probing = {
  ...asked,
  at: ['control'],
  hazards: ['data-pins'],
  tools: ['meter-cat3-600', 'data-breakout'],
  minutes: 5,
} as const;
const canPins = {
  high: { point: 'C', scale: 'link-can-pin', mode: 'dcVolts' },
  low: { point: 'C', scale: 'link-can-pin', mode: 'dcVolts' },
} as const;

/** Idle volts at each device by itself, plant on. */
export const levels = {
  'levels-kind': {
    kind: 'sheet',
    ...asked,
    ask: 'link-kind',
    outcomes: { can: 'can-pack', serial: 'pack-bias', none: 'off-or-not' },
  },
  'can-pack': {
    kind: 'measure',
    ...probing,
    readings: canPins,
    rows: [
      { id: 'alive', when: { high: 'ok', low: 'ok' }, to: 'can-unit' },
      { id: 'dead', when: { high: 'none', low: 'none' }, to: 'partner-early' },
      { id: 'odd', when: {}, to: 'can-unit' },
    ],
  },
  'can-unit': {
    kind: 'measure',
    ...probing,
    readings: canPins,
    rows: [
      { id: 'alive', when: { high: 'ok', low: 'ok' }, to: 'off-or-not' },
      { id: 'dead', when: { high: 'none', low: 'none' }, to: 'partner-early' },
      { id: 'odd', when: {}, to: 'off-or-not' },
    ],
  },
  'pack-bias': {
    kind: 'measure',
    ...probing,
    readings: { volts: { point: 'C', scale: 'link-serial-idle', mode: 'dcVolts', signed: true } },
    outcomes: { negative: 'unit-bias', weak: 'unit-bias', positive: 'unit-bias', undetermined: 'unit-bias' },
  },
  'unit-bias': {
    kind: 'measure',
    ...probing,
    readings: { volts: { point: 'C', scale: 'link-serial-idle', mode: 'dcVolts', signed: true } },
    outcomes: {
      negative: 'bias-compare',
      weak: 'bias-compare',
      positive: 'bias-compare',
      undetermined: 'bias-compare',
    },
  },
  'bias-compare': {
    kind: 'workOut',
    ...asked,
    ask: 'link-bias-compare',
    outcomes: {
      same: 'off-or-not',
      opposite: 'v-crossed',
      'one-biases': 'off-or-not',
      'none-biases': 'off-or-not',
    },
  },
  'v-crossed': {
    kind: 'verdict',
    state: 'running',
    causes: ['lead-pins-wrong'],
    because: [{ step: 'bias-compare', outcomes: ['opposite'] }],
    outcomes: { mend: 'fit-lead', 'not-today': 'by-voltage' },
  },
  'v-port-unit': {
    kind: 'verdict',
    state: 'running',
    causes: ['link-port-dead'],
    because: [{ step: 'swap-early', outcomes: ['inverter-deaf'] }],
    outcomes: { refer: 'by-voltage' },
  },
  'v-port-pack': {
    kind: 'verdict',
    state: 'running',
    causes: ['link-port-dead'],
    because: [{ step: 'swap-early', outcomes: ['pack-deaf'] }],
    outcomes: { refer: 'by-voltage' },
  },
} as const satisfies Steps;
