import type { WorksheetWords } from '../../worksheet-words.ts';

export const spreadLegs: WorksheetWords = {
  inputs: {
    topology: {
      label: 'How the legs stand',
      options: {
        'opposed-120-240': 'Opposed, 120/240 V',
        'wye-120-208': 'A third of a turn apart, 120/208 V',
        'common-120': 'In step, 120 V',
        'single-230': 'One line, 230 V',
      },
    },
    circuits: {
      label: 'Circuits',
      hint: 'What each draws when everything that runs together runs. Two circuits on one neutral carry the same number in the last box.',
      columns: {
        name: { label: 'Name' },
        amps: { label: 'Amps', limit: 'One branch.' },
        poles: { label: 'Poles', limit: '1, or 2 from leg to leg. Empty is 1.' },
        shares: { label: 'Shared neutral', limit: 'Any number, the same on both circuits of the pair.' },
      },
    },
    legAmps: {
      label: 'What one leg may carry',
      hint: 'Inverter or breaker, the smaller.',
      limit: 'One leg.',
    },
  },
  outputs: {
    verdict: {
      label: 'The legs',
      verdicts: {
        even: 'Even within 20 %',
        uneven: 'No landing is more even than this',
        over: 'One leg is over, however they land',
      },
    },
    leg1: { label: 'Leg 1' },
    leg2: { label: 'Leg 2' },
    both: { label: 'From leg to leg' },
    amps1: { label: 'Amps on leg 1' },
    amps2: { label: 'Amps on leg 2' },
    differenceAmps: { label: 'Difference' },
    unevenShare: { label: 'Uneven by' },
    neutralAmps: { label: 'In the feeder’s neutral, like power factors' },
    asListedAmps: { label: 'Difference when landed turn about, as listed' },
  },
  working: {
    leg1: {
      what: 'Leg 1',
      formula: 'its circuits, and those from leg to leg',
      numbers: 'as listed above',
      result: '{amps1:current}',
    },
    leg2: {
      what: 'Leg 2',
      formula: 'its circuits, and those from leg to leg',
      numbers: 'as listed above',
      result: '{amps2:current}',
    },
    difference: {
      what: 'Difference: the least of all landings that keep shared neutrals apart',
      formula: '|leg 1 − leg 2|',
      numbers: '|{amps1:current} − {amps2:current}|',
      result: '{differenceAmps:current}',
    },
    neutral: {
      what: 'Feeder’s neutral, legs opposed',
      formula: '|leg 1 − leg 2|',
      numbers: '|{amps1:current} − {amps2:current}|',
      result: '{neutralAmps:current}',
    },
    neutralSum: {
      what: 'Feeder’s neutral, legs in step',
      formula: 'leg 1 + leg 2',
      numbers: '{amps1:current} + {amps2:current}',
      result: '{neutralAmps:current}',
    },
    neutralThird: {
      what: 'Feeder’s neutral, a third of a turn apart',
      formula: '√(a² + b² − a·b), without the loads from leg to leg',
      numbers: 'of {amps1:current} and {amps2:current}',
      result: '{neutralAmps:current}',
    },
  },
  says: {
    even: 'Landed so, the legs differ by {differenceAmps:current}. No other landing does better.',
    uneven:
      'The legs still differ by {differenceAmps:current}, and no other landing does better. A large circuit has to be split, or run at another time.',
    over: 'Even at its best one leg carries more than {legAmps:current}. Not everything can run at once.',
    pairs:
      'Circuits that share a neutral stand on opposite legs here. Keep them so, on one two-pole breaker: both open together.',
    lonePair:
      'Shared neutral {number:plain} has one circuit only. Find the other: on the same leg the two burn their neutral.',
    gained: 'Landed turn about, as listed, the difference would be {asListedAmps:current}.',
    sameTime:
      'Count what runs at the same time. A freezer and a saw that never meet do not balance each other.',
    nothing: 'No circuit is listed. Type at least one, with its amps.',
    oneLeg: 'One line has no second leg to spread over.',
    inStep:
      'The legs stand in step: there is no opposite leg for a shared neutral. Give each circuit its own neutral first.',
    nothingAcross: 'The legs stand in step: nothing runs from leg to leg.',
    tooManyShare: 'Shared neutral {number:plain} has more than two circuits. Two legs allow two.',
    acrossShares:
      'Row {number:plain} runs from leg to leg and shares a neutral too. List its 120 V part as a circuit of its own.',
  },
  leavesOut: [
    'Time of day: two landings may be even on paper and uneven at noon.',
    'At 120/208 V, loads from leg to leg: their amps stand at an angle to those of the legs, and add to a little less.',
    'Power factor, and how full each circuit’s conductor is.',
    'Places in the panel: which slots feed which leg. Measure leg to leg before you trust the pattern.',
  ],
  search: [
    'balance the panel',
    'spread circuits over two legs',
    'leg balance',
    'move breakers',
    'shared neutral pair',
    'panel schedule',
    'multiwire branch circuit legs',
  ],
};
