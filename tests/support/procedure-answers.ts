/** Answers that lead each procedure through a sound plant, in the words of the answers file of a walk. */

export type Answers = Record<string, unknown>;

export const under = (procedure: string, answers: Answers): Answers =>
  Object.fromEntries(Object.entries(answers).map(([step, answer]) => [`${procedure}--${step}`, answer]));

export const dcPairs = {
  'plus-minus-dc': '0.1',
  'plus-earth-dc': '0,1 V',
  'minus-earth-dc': '0',
  'plus-minus-ac': '0',
  'plus-earth-ac': '0.0',
  'minus-earth-ac': '0.0',
};
export const acPairs = {
  'hots-ac': '0.2',
  'hots-earth-ac': '0.1',
  'neutral-earth-ac': '0',
  'hots-dc': '0.0',
  'hots-earth-dc': '0.0',
  'neutral-earth-dc': '0.0',
};
export const tester = { dc: '53.2', ac: '240.3' };
export const proveDead: Answers = {
  ready: 'done',
  'label-wait': 'done',
  'tester-before': tester,
  'dc-dead': dcPairs,
  'dc-rise': { later: '0.1' },
  'pv-dead': dcPairs,
  'pv-rise': { later: '0.2' },
  'out-dead': acPairs,
  'in-dead': acPairs,
  'tester-after': tester,
};
export const isolate: Answers = {
  ready: 'done',
  'loads-off': 'done',
  'out-open': 'done',
  'out-lock': 'locked',
  'inverter-off': 'done',
  'auto-start-off': 'done',
  'source-stop': 'done',
  'ac-in-open': 'done',
  'ac-in-lock': 'locked',
  'pv-amps': { largest: '0.02 A' },
  'pv-open': 'done',
  'pv-lock': 'locked',
  'battery-amps': { amps: '0.4' },
  'main-open': 'done',
  'main-lock': 'tagged',
  ...under('prove-dead', proveDead),
  inlet: 'fixed',
};
export const rise = [
  [0.5, '33.6'],
  [1, '46.0'],
  [2, '52.2'],
  [4, '53.2'],
];
export const preCharge: Answers = {
  ready: 'done',
  packs: 'all-on',
  s1: { s1: '53.2' },
  sides: { s1: '53.2', s2: '0.1' },
  unlock: 'done',
  'clip-on': 'done',
  'resistor-on': 'done',
  rise: { s2: rise },
  across: { across: '0.1' },
  'close-ready': 'done',
  'close-main': 'done',
  'resistor-off': 'done',
  after: { s2: '53.1' },
};
export const stalled = {
  ...preCharge,
  rise: {
    s2: [
      [0.5, '30.4'],
      [1, '39.1'],
      [2, '42.3'],
      [4, '42.6'],
    ],
  },
  'resistor-off-stalled': 'done',
};
export const neutralProof: Answers = {
  ready: 'done',
  unloaded: { v12: '240.4', v1: '120.2', v2: '120.2' },
  'test-load': 'done',
  loaded: { v12: '240.0', v1: '119.4', v2: '120.6' },
  egc: { amps: '0.02' },
  'test-load-off': 'done',
};
export const restoreAc: Answers = {
  ready: 'done',
  'ac-in-unlock': 'done',
  'ac-in-ready': 'done',
  'ac-in-close': 'done',
  'inverter-on': 'done',
  'out-two': { v12: '240.5', v1: '120.2', v2: '120.3' },
  'out-unlock': 'done',
  'out-close': 'done',
  'loads-on': 'done',
  'auto-on': 'done',
  verify: { leg: '119.8', bus: '53.0' },
};
export const restore: Answers = {
  ready: 'done',
  inlet: 'in-place',
  ...under('pre-charge', preCharge),
  p1: { lowest: '331.2' },
  'pv-unlock': 'done',
  'pv-ready': 'done',
  'pv-close': 'done',
  ...under('restore-ac', restoreAc),
  ...under('neutral-proof', neutralProof),
};
/** A second source fitted and still connected: taken off first, brought back before the loads. */
export const outputCheck: Answers = {
  ready: 'done',
  'loads-off': 'done',
  'source-there': 'connected',
  'auto-start-off': 'done',
  'source-stop': 'done',
  'ac-in-open': 'done',
  'ac-in-lock': 'locked',
  'out-open': 'done',
  'inverter-on': 'done',
  'out-two': { v12: '240.5', v1: '120.2', v2: '120.3' },
  steadiness: { hz: '60.0', ng: '0.3' },
  'idle-feeds': 'battery-only',
  'idle-settle': 'done',
  idle: { amps: '2.1', flipped: '-1.9', volts: '52.5' },
  quiet: 'normal',
  'out-close': 'done',
  'source-was': 'bring-back',
  'source-ready': 'done',
  'ac-in-unlock': 'done',
  'ac-in-ready': 'done',
  'ac-in-close': 'done',
  'auto-on': 'done',
  'loads-on': 'done',
  'verify-two': { v1: '119.5', v2: '120.4', ng: '0.4' },
};
