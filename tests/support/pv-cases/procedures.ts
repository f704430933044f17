/** Answers to the procedures that the PV guide performs, on the demo site, when all goes well. */
type Answers = Record<string, unknown>;

const dead = '0.0';
const deadDc = {
  'plus-minus-dc': dead,
  'plus-earth-dc': dead,
  'minus-earth-dc': dead,
  'plus-minus-ac': dead,
  'plus-earth-ac': dead,
  'minus-earth-ac': dead,
};
const deadAc = {
  'hots-ac': dead,
  'hots-earth-ac': dead,
  'neutral-earth-ac': dead,
  'hots-dc': dead,
  'hots-earth-dc': dead,
  'neutral-earth-dc': dead,
};
const batteryV = '52.8';
const known = { dc: batteryV, ac: '120.0' };

/** Clamped at no current, opened, locked. */
export const openString: Answers = {
  'open-string--ready': 'done',
  'open-string--amps': '0.02',
  'open-string--open-pv': 'done',
  'open-string--lock-pv': 'locked',
};

/** The clamp goes on showing current with the unit stopped. */
export const openStringRefused: Answers = {
  'open-string--ready': 'done',
  'open-string--amps': ['10.90', '10.90', '10.85'],
  'open-string--stop-unit': 'done',
  'open-string--settle': 'done',
  'open-string--still-flows': 'understood',
};

export const isolate: Answers = {
  'isolate--ready': 'done',
  'isolate--loads-off': 'done',
  'isolate--out-open': 'done',
  'isolate--out-lock': 'locked',
  'isolate--inverter-off': 'done',
  'isolate--auto-start-off': 'done',
  'isolate--source-stop': 'done',
  'isolate--ac-in-open': 'done',
  'isolate--ac-in-lock': 'locked',
  'isolate--pv-amps': '0.01',
  'isolate--pv-open': 'done',
  'isolate--pv-lock': 'locked',
  'isolate--battery-amps': '0.4',
  'isolate--main-open': 'done',
  'isolate--main-lock': 'locked',
  'prove-dead--ready': 'done',
  'prove-dead--tester-before': known,
  'prove-dead--dc-dead': deadDc,
  'prove-dead--dc-rise': '0.0',
  'prove-dead--pv-dead': deadDc,
  'prove-dead--pv-rise': '0.0',
  'prove-dead--out-dead': deadAc,
  'prove-dead--in-dead': deadAc,
  'prove-dead--tester-after': known,
  'isolate--inlet': 'fixed',
};

/** Everything back, with P1 of the string as given. */
export const restore = (p1: string): Answers => ({
  'restore--ready': 'done',
  'restore--inlet': 'in-place',
  'pre-charge--ready': 'done',
  'pre-charge--packs': 'all-on',
  'pre-charge--s1': batteryV,
  'pre-charge--sides': { s1: batteryV, s2: '0.1' },
  'pre-charge--unlock': 'done',
  'pre-charge--clip-on': 'done',
  'pre-charge--resistor-on': 'done',
  // 25 Ω and 20 mF: time constant 0.5 s.
  'pre-charge--rise': {
    s2: [0.5, 1, 1.5, 2, 2.5].map((s) => [s, (52.8 * (1 - Math.exp(-s / 0.5))).toFixed(1)]),
  },
  'pre-charge--across': '0.3',
  'pre-charge--close-ready': 'done',
  'pre-charge--close-main': 'done',
  'pre-charge--resistor-off': 'done',
  'pre-charge--after': batteryV,
  'restore--p1': p1,
  'restore--pv-unlock': 'done',
  'restore--pv-ready': 'done',
  'restore--pv-close': 'done',
  'restore-ac--ready': 'done',
  'restore-ac--ac-in-unlock': 'done',
  'restore-ac--ac-in-ready': 'done',
  'restore-ac--ac-in-close': 'done',
  'restore-ac--inverter-on': 'done',
  'restore-ac--out-two': { v12: '240.2', v1: '120.1', v2: '120.1' },
  'restore-ac--out-unlock': 'done',
  'restore-ac--out-close': 'done',
  'neutral-proof--ready': 'done',
  'neutral-proof--unloaded': { v12: '240.2', v1: '120.1', v2: '120.1' },
  'neutral-proof--test-load': 'done',
  'neutral-proof--loaded': { v12: '239.6', v1: '119.2', v2: '120.4' },
  'neutral-proof--egc': '0.00',
  'neutral-proof--test-load-off': 'done',
  'restore-ac--loads-on': 'done',
  'restore-ac--auto-on': 'done',
  'restore-ac--verify': { leg: '120.0', bus: batteryV },
});

/** The string checked behind its open isolator and connected. */
export const stringCheck = (p1: string, working: { volts: string; watts: string }): Answers => ({
  'string-check--ready': 'done',
  'string-check--cell-temp': '45 °C',
  'string-check--p1': p1,
  'string-check--poles': { plus: '2.1', minus: '2.4' },
  'string-check--test-choice': 'skip',
  'string-check--sister-choice': 'no-sister',
  'string-check--unit-off': 'done',
  'string-check--close-ready': 'done',
  'string-check--unlock': 'done',
  'string-check--pv-ready': 'done',
  'string-check--pv-close': 'done',
  'string-check--p2': p1,
  'string-check--unit-on': 'done',
  'string-check--making': working,
});
