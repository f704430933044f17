import type { Because, Machine } from '../../src/guide/vocabulary.ts';

const took = (step: string, ...outcomes: string[]): Because => ({ step, outcomes });

/** Plus and minus of the whole string stand on both sides of the isolator. */
const wholeVolts = took('volts-still', 'whole', 'longer');
/** Some of the string, and no ghost: the volts stand on low impedance. */
const partVolts = [took('volts-still', 'shorter'), took('p1-low-z', 'low', 'ok', 'high')] as const;
/** The string's own input sees it the right way round. */
const atOwnInput = took('terminals', 'low', 'ok', 'high', 'over');
/** The tracker loads the string, on the meter and not on a screen that may show several strings. */
const starts = took('start-watch', 'starts');
const runs = took('flowing', 'running');
const givesCurrent = [
  took('clamp-string', 'backward', 'flows'),
  took('clamp-again', 'backward', 'flows'),
  took('flowing', 'running', 'limited', 'collapses', 'drags', 'amps-no-volts'),
] as const;
/** Parallel strings feed the same point: one of them says nothing of another. */
const oneString = took('parallel-strings', 'one');
/** The meter has shown that what it took for ground is ground. */
const soundToGround = [took('insulation', 'sound'), took('ground-contact', 'joined')] as const;
const noAlarm = [took('wet-history', 'neither'), took('alarm-logged', 'not-logged')] as const;

/** What rules each cause out. A reading that a sound part and a faulty one both give is in none of these lists. */
export const against: NonNullable<Machine['against']> = {
  'string-too-long': [
    [took('window', 'fits', 'too-short'), took('volts-still', 'whole')],
    [took('window', 'fits', 'too-short'), ...partVolts],
    [took('window', 'fits', 'too-short'), took('p1-open', 'low', 'ok')],
    [took('cold-again', 'fits')],
  ],
  'string-too-short': [[took('start-margin', 'enough')]],
  // No volts on either side, or volts on the array side alone, say nothing of the poles.
  'isolator-open': [[wholeVolts], [...partVolts], ...givesCurrent.map((each) => [each]), [starts]],
  'module-shutdown-holding': [
    [took('shutdown-first', 'none')],
    [took('shutdown-fitted', 'none')],
    [took('held-possible', 'none')],
    [took('shutdown-look', 'none-fitted')],
    [took('volts-still', 'whole', 'longer', 'over')],
    ...givesCurrent.map((each) => [each]),
    [took('array-clamp', 'backward', 'flows')],
  ],
  // Across a fuse in a dead string nothing stands, blown or not.
  'string-fuse-open': [[took('fuse-fitted', 'none')], [wholeVolts, oneString]],
  'string-open-circuit': [[wholeVolts, atOwnInput, oneString]],
  'string-shorted': [
    [wholeVolts],
    [took('light', 'bright'), took('clamp-again', 'zero'), took('array-clamp', 'zero')],
  ],
  'string-reversed': [
    [wholeVolts, atOwnInput],
    [...partVolts, atOwnInput],
    [took('p1-open', 'low', 'ok', 'high'), atOwnInput],
    [starts],
    [took('flowing', 'running', 'limited')],
  ],
  'pole-grounded-or-shared': [[...soundToGround]],
  // Many leak only when wet: one dry test is not enough.
  'insulation-fault': [
    [...soundToGround, ...noAlarm],
    [took('array-test', 'sound'), ...noAlarm],
  ],
  'unequal-strings': [[oneString], [took('parallel-clamp', 'zero')]],
  'lockout-latched': [[took('events', 'none')]],
  'start-disabled-by-setting': [[took('settings', 'all-right')]],
  'wrong-tracker-input': [[took('settings', 'all-right'), atOwnInput]],
  'held-back': [[took('load-before', 'none'), took('load-after', 'same')]],
  'battery-not-live': [[took('battery-at-inverter', 'ok')]],
  // An open-circuit voltage shows no bad joint, and neither does the little current of weak light.
  'high-resistance-joint': [
    [took('light', 'bright'), starts],
    [took('light', 'bright'), runs],
  ],
  'module-bypassed': [
    [wholeVolts, took('light', 'bright'), starts],
    [wholeVolts, took('light', 'bright'), runs],
  ],
  'tracker-input-failed': [
    [took('start-watch', 'starts', 'limited')],
    [took('flowing', 'running', 'limited')],
    [took('full-sun', 'starts')],
    [took('swap-result', 'both-run')],
    [took('running-now', 'working', 'limited', 'dragged')],
  ],
};
