import type { WorksheetWords } from '../../worksheet-words.ts';

export const commonNeutral: WorksheetWords = {
  inputs: {
    breaker1Amps: {
      label: 'Breaker of hot 1',
      symbol: 'B1',
      hint: 'The one that feeds the first hot of this neutral.',
      limit: 'One breaker of one panel.',
    },
    breaker2Amps: { label: 'Breaker of hot 2', symbol: 'B2', limit: 'One breaker of one panel.' },
    sourceAmps: {
      label: 'Most the source gives at 120 V, for good',
      symbol: 'S',
      hint: 'All units on this output together, or a generator or utility that passes through: the larger. Empty: the breakers alone set the end.',
      limit: 'One site.',
    },
    areaMm2: { label: 'The neutral’s size', symbol: 'A', limit: 'The table ends at 500 kcmil.' },
    metal: { label: 'Its metal', options: { copper: 'Copper', aluminium: 'Aluminum' } },
    insulation: {
      label: 'Rating of its insulation',
      hint: 'Printed on it. Not known: 60 °C.',
      options: { '60': '60 °C', '75': '75 °C', '90': '90 °C' },
    },
    termination: {
      label: 'Rating of the lugs',
      hint: 'Up to 100 A take 60 °C, unless both ends are marked higher.',
      options: { '60': '60 °C', '75': '75 °C' },
    },
    ambientC: { label: 'Hottest air around it', limit: 'No insulation here is rated above 90 °C.' },
    conductors: {
      label: 'Conductors that carry current in the same raceway',
      hint: 'In step the neutral counts: two hots and a neutral are three.',
      limit: 'Two hots and their neutral are the least.',
    },
    codeBasis: {
      label: 'Code that governs',
      options: { 'us-nec': 'NEC', iec: 'IEC based', other: 'Another' },
    },
  },
  outputs: {
    verdict: {
      label: 'The neutral',
      verdicts: {
        within: 'Good for both hots in step',
        over: 'Too small for both hots in step',
        notChecked: 'Not checked: no tables here for this code',
      },
    },
    neutralAmps: { label: 'It can be asked for' },
    goodForAmps: { label: 'It is good for' },
    opposedAmps: { label: 'The same circuits on opposed legs' },
    needMm2: { label: 'Smallest size that is good for it' },
    mostEachAmps: { label: 'Largest two equal breakers this neutral allows' },
    heatTimes: { label: 'Heat, times that on opposed legs' },
  },
  working: {
    sum: {
      what: 'In step both hots come home by the neutral',
      formula: 'B1 + B2',
      numbers: '{breaker1Amps:current} + {breaker2Amps:current}',
      result: '{neutralAmps:current}',
    },
    source: {
      what: 'In step, no more than the source gives',
      formula: 'the smaller of B1 + B2 and S',
      numbers: '{breaker1Amps:current} + {breaker2Amps:current}, or {sourceAmps:current}',
      result: '{neutralAmps:current}',
    },
    opposed: {
      what: 'On opposed legs it never carries more than the fuller hot',
      formula: 'the larger of B1 and B2, at most S',
      numbers: '{breaker1Amps:current}, {breaker2Amps:current}',
      result: '{opposedAmps:current}',
    },
    heat: {
      what: 'Heat goes with the square',
      formula: '(in step ÷ opposed)²',
      numbers: '({neutralAmps:current} ÷ {opposedAmps:current})²',
      result: '{heatTimes:plain:1}',
    },
    good: {
      what: 'What it is good for',
      formula:
        'the smaller of: its insulation’s column × both factors; the lugs’ column. 14 to 10 AWG: no more than their breaker',
      numbers: '{areaMm2:wireSize} at {ambientC:temperature}, {conductors:plain} conductors',
      result: '{goodForAmps:current}',
    },
    half: {
      what: 'Two equal breakers that it allows, at most',
      formula: 'good for ÷ 2',
      numbers: '{goodForAmps:current} ÷ 2',
      result: '{halfAmps:current}',
    },
  },
  says: {
    within:
      'With both hots full and in step this neutral carries {neutralAmps:current} and is good for {goodForAmps:current}.',
    over: 'With both hots in step this neutral can carry {neutralAmps:current} and is good for {goodForAmps:current}. Do not set the legs in step on this wiring.',
    notChecked:
      'The tables here are the NEC’s. Take the ampacity of your own code, and compare it with {neutralAmps:current}.',
    resize:
      'A neutral of {needMm2:wireSize} is good for it, of the same metal, in the same place. Or give each hot a neutral of its own.',
    noSize: 'No size in the table is good for it here. Give each hot a neutral of its own.',
    smaller: 'Or two breakers of {mostEachAmps:current} at most on this pair.',
    nothingTrips:
      'Nothing stands in a neutral that would trip. Every shared neutral of the house counts by itself: the feeder’s and each pair’s.',
    noRow:
      'The table has no figure for {areaMm2:wireSize} at {ambientC:temperature} with this insulation and metal.',
  },
  leavesOut: [
    'Harmonics of electronic loads: they add to the neutral in step too.',
    'Surge: seconds above the source’s rating. Heat of a conductor takes minutes.',
    'Lugs and bars of the panel: read their own rating.',
    'Rules of your code on what may be fed from a single 120 V supply. Some forbid shared neutrals there whatever their size.',
  ],
  search: [
    'neutral size',
    'both legs common',
    'both legs in step',
    'shared neutral on 120 V inverter',
    'multiwire branch circuit 120 only',
    'neutral overload',
    'parallel the legs',
  ],
};
