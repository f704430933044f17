import type { WorksheetWords } from '../../worksheet-words.ts';

const numbers = '{amps1:current} at {factor1:ratio}, {amps2:current} at {factor2:ratio}';
const result = '{neutralAmps:current}';

export const neutralCurrent: WorksheetWords = {
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
    amps1: { label: 'Amps of leg 1', symbol: 'I1', hint: 'Its 120 V loads alone.', limit: 'One panel.' },
    factor1: { label: 'Power factor, leg 1', hint: 'Lagging. A heater: 100 %.', limit: 'Lagging.' },
    amps2: { label: 'Amps of leg 2', symbol: 'I2', hint: 'One line only: 0.', limit: 'One panel.' },
    factor2: { label: 'Power factor, leg 2', limit: 'Lagging.' },
    ratedAmps: {
      label: 'What the neutral may carry',
      hint: 'Its own size decides, not the breaker.',
      limit: 'One conductor.',
    },
  },
  outputs: {
    verdict: {
      label: 'The neutral',
      verdicts: {
        within: 'Within what it may carry',
        over: 'More than it may carry',
        noRating: 'Not compared: no rating given',
      },
    },
    neutralAmps: { label: 'Amps in the neutral' },
    sumAmps: { label: 'Sum of the legs' },
    differenceAmps: { label: 'Difference of the legs' },
    heatTimes: { label: 'Heat, times that of the fuller leg' },
  },
  working: {
    opposed: {
      what: 'Opposed: the legs take from each other',
      formula: '|I1 − I2| with their angles',
      numbers,
      result,
    },
    third: {
      what: 'A third of a turn apart',
      formula: '√(I1² + I2² − I1·I2) for like power factors',
      numbers,
      result,
    },
    common: { what: 'In step: the legs add', formula: '|I1 + I2| with their angles', numbers, result },
    single: { what: 'One line: what goes out comes back', formula: 'I1', numbers: '{amps1:current}', result },
  },
  says: {
    over: 'The neutral carries {neutralAmps:current} and may carry {ratedAmps:current}. No breaker stands in a neutral: nothing trips, it burns.',
    single: 'Line and neutral carry the same. A difference goes by the ground.',
    common:
      'Legs in step: the neutral carries the sum, {sumAmps:current} at most. A shared-neutral pair wired for opposed legs is overloaded.',
    third: 'At 120 degrees two even legs give a neutral as full as each of them.',
    opposed: 'Opposed legs of like power factor leave only their difference, {differenceAmps:current}.',
    unlikeFactors: 'Unlike power factors: the neutral carries more than the plain difference.',
  },
  leavesOut: [
    'Third harmonics of electronic loads. They add in the neutral at 120 degrees.',
    'Loads from leg to leg: they use no neutral.',
  ],
  search: [
    'neutral current',
    'shared neutral',
    'multiwire branch circuit',
    'neutral overload',
    'unbalanced load',
    'MWBC',
  ],
};
