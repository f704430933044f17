import type { WorksheetWords } from '../../worksheet-words.ts';

export const clampZero: WorksheetWords = {
  inputs: {
    readAmps: {
      label: 'Reading on the conductor',
      symbol: 'A1',
      hint: 'One conductor only, in the middle of the closed jaw. With its sign.',
      limit: 'Beyond that it is another instrument’s work.',
    },
    zeroAmps: {
      label: 'Reading with the jaw closed and empty',
      symbol: 'A0',
      hint: 'At the same spot, held the same way, just before. 0 if you pressed ZERO there. Empty: not done.',
      limit: 'More than that is a magnetised or broken clamp.',
    },
    turnedAmps: {
      label: 'Reading with the clamp turned over',
      symbol: 'A2',
      hint: 'Same conductor, same spot, the clamp the other way round. The sign flips, the zero error does not. Best of all; may be empty.',
      limit: 'Beyond that it is another instrument’s work.',
    },
    turns: {
      label: 'Turns of the conductor through the jaw',
      symbol: 'k',
      hint: 'Twice through the jaw reads double. 1 for a fixed cable.',
      limit: 'A jaw holds no more.',
    },
    ofReading: {
      label: 'Clamp: percent of reading',
      symbol: 'p',
      hint: 'On its data sheet, such as ±(2 % + 5): the 2 %.',
      limit: 'More than 10 % is no measuring instrument.',
    },
    counts: {
      label: 'Clamp: counts',
      symbol: 'c',
      hint: 'The figure after the plus: the 5.',
      limit: 'More than 50 is no measuring instrument.',
    },
    countAmps: {
      label: 'One count of the last digit',
      symbol: 'q',
      hint: '0.1 A if it shows 12.3, 0.01 A if it shows 1.23.',
      limit: 'Read the display again.',
    },
    question: {
      label: 'What do you want to know?',
      options: {
        measure: 'How much flows',
        pvZero: 'Whether nothing flows in a PV conductor',
        batteryZero: 'Whether nothing flows in a battery cable',
      },
      hint: '“Nothing” is under 0.5 A in PV, under 2 A in a battery cable.',
    },
  },
  outputs: {
    verdict: {
      label: 'What the reading says',
      verdicts: {
        measured: 'A measurement',
        coarse: 'A hint: the error is more than a quarter of it',
        none: 'Nothing flows, within this clamp’s error',
        flows: 'Current flows',
        cannotTell: 'This clamp cannot tell: treat it as current flowing',
        notZeroed: 'Not zeroed on the spot: treat it as current flowing',
      },
    },
    amps: { label: 'Current, zero error taken off' },
    leastAmps: { label: 'At least' },
    mostAmps: { label: 'At most' },
    offsetAmps: { label: 'Zero error' },
    errorAmps: { label: 'Clamp’s own error' },
    errorShare: { label: 'As a share of the current' },
    limitAmps: { label: 'Counts as nothing up to' },
  },
  working: {
    turned: {
      what: 'Current from both ways round',
      formula: '(A1 − A2) ÷ 2 ÷ k',
      numbers: '({readAmps:current} − {turnedAmps:current}) ÷ 2 ÷ {turns:count}',
      result: '{amps:current}',
    },
    zero: {
      what: 'Current, zero error taken off',
      formula: '(A1 − A0) ÷ k',
      numbers: '({readAmps:current} − {zeroAmps:current}) ÷ {turns:count}',
      result: '{amps:current}',
    },
    plain: {
      what: 'Current, with no zero taken',
      formula: 'A1 ÷ k',
      numbers: '{readAmps:current} ÷ {turns:count}',
      result: '{amps:current}',
    },
    error: {
      what: 'Clamp’s own error',
      formula: '(p × amps in the jaw + c × q) ÷ k',
      numbers:
        '({ofReading:ratio} × {throughAmps:current} + {counts:count} × {countAmps:current}) ÷ {turns:count}',
      result: '{errorAmps:current}',
    },
    most: {
      what: 'At most',
      formula: 'current + error',
      numbers: '{sizeAmps:current} + {errorAmps:current}',
      result: '{mostAmps:current}',
    },
  },
  says: {
    measured: 'Between {leastAmps:current} and {mostAmps:current} flows. Write both down with the reading.',
    coarse:
      'Between {leastAmps:current} and {mostAmps:current} flows: too wide to work with. Turn the clamp over, use a lower range, or pass the conductor through the jaw more than once.',
    none: 'At most {mostAmps:current} flows, under the {limitAmps:current} that counts as nothing. Move the device now, while the reading stands: light and loads change.',
    flows:
      'At least {leastAmps:current} flows. Do not open a plug, a fuse holder or a plain switch on this. Find what drives it.',
    cannotTell:
      'Up to {mostAmps:current} may flow, and only {limitAmps:current} counts as nothing. Use a clamp with a lower range, or wait for dark. Until then it counts as flowing.',
    notZeroed:
      'A clamp carries its own magnetism and the earth’s. Close it empty at this spot, press ZERO, and read again. Until then it counts as flowing.',
    largeZero:
      'A zero error of {offsetAmps:current} is large. Wipe the faces of the jaw, open and close it a few times away from cables, and zero again.',
    zeroUnknown: 'The zero was not taken, so the true error may be larger than stated here.',
    drifts:
      'The zero moves with temperature, with position, and after every large current. Take it at the spot, each time.',
    notTurned:
      'Both ways round should give opposite signs. {readAmps:current} and {turnedAmps:current} do not. Was the clamp really turned over, and did the load stay the same?',
    zerosDisagree:
      'The empty jaw says the zero is {zeroAmps:current}; the two ways round say {turnedZeroAmps:current}. Something changed between the readings. Take all of them again.',
  },
  leavesOut: [
    'A conductor off the middle of the jaw, or a second one near it: some per cent more.',
    'Ripple and pulsed current: a DC clamp shows the mean.',
    'A clamp out of calibration. Compare it with another on one cable.',
  ],
  search: [
    'clamp meter zero',
    'DC clamp offset',
    'reads amps with nothing in it',
    'is the current really 0',
    'two turns through the clamp',
    'clamp accuracy',
  ],
};
