import type { WorksheetWords } from '../../worksheet-words.ts';

export const legAngle: WorksheetWords = {
  inputs: {
    v12: {
      label: 'Leg to leg',
      symbol: 'V12',
      hint: 'Read this one first.',
      limit: 'For outputs of the 120 V class.',
    },
    v1: { label: 'Leg 1 to neutral', symbol: 'V1', limit: 'For outputs of the 120 V and 230 V class.' },
    v2: { label: 'Leg 2 to neutral', symbol: 'V2', limit: 'For outputs of the 120 V and 230 V class.' },
    ofReading: {
      label: 'Meter, part of reading',
      hint: 'From its data sheet, AC volts at 50 or 60 Hz.',
      limit: 'A worse meter tells no angle.',
    },
    countsVolts: {
      label: 'Meter, last digits in volts',
      hint: '3 counts of 0.1 V are 0.3 V.',
      limit: 'A worse meter tells no angle.',
    },
  },
  outputs: {
    verdict: {
      label: 'The legs',
      verdicts: {
        opposed: 'Opposed (half a turn)',
        third: 'A third of a turn apart',
        inPhase: 'In step',
        between: 'At no angle that an output has',
        cannotTell: 'This meter cannot tell',
        legDead: 'One leg is dead',
        doNotClose: 'These three cannot belong together',
      },
    },
    angle: { label: 'Angle, degrees' },
    angleLow: { label: 'At least, degrees' },
    angleHigh: { label: 'At most, degrees' },
    opposedVolts: { label: 'Leg to leg if opposed' },
    thirdVolts: { label: 'Leg to leg if a third apart' },
    gapVolts: { label: 'Leg to leg if in step' },
    errorVolts: { label: 'What the meter may be off, all three' },
  },
  working: {
    opposed: {
      what: 'Opposed legs add',
      formula: 'V1 + V2',
      numbers: '{v1:voltage} + {v2:voltage}',
      result: '{opposedVolts:voltage}',
    },
    third: {
      what: 'A third of a turn apart',
      formula: '√(V1² + V2² + V1·V2)',
      numbers: '√({v1:voltage}² + {v2:voltage}² + {v1:voltage} × {v2:voltage})',
      result: '{thirdVolts:voltage}',
    },
    inPhase: {
      what: 'Legs in step: the difference',
      formula: '|V1 − V2|',
      numbers: '|{v1:voltage} − {v2:voltage}|',
      result: '{gapVolts:voltage}',
    },
    angle: {
      what: 'Angle between the legs',
      formula: 'arccos((V1² + V2² − V12²) ÷ (2·V1·V2))',
      numbers: 'with {v12:voltage} between {v1:voltage} and {v2:voltage}',
      result: '{angle:plain}°, from {angleLow:plain}° to {angleHigh:plain}° by this meter',
    },
    error: {
      what: 'What three readings may be off together',
      formula: 'part of reading × volts + last digits, three times',
      numbers:
        '{ofReading:ratio} of {v1:voltage}, {v2:voltage} and {v12:voltage}, {countsVolts:voltage} each',
      result: '{errorVolts:voltage}',
    },
  },
  says: {
    opposed:
      'Leg to leg is what opposed legs make. It says nothing of the neutral: V1 + V2 = V12 holds on a lost one too.',
    third:
      'Two legs of a three-phase set: 208 V between them. Heaters for 240 V give three quarters of their watts.',
    inPhase:
      'Nothing stands between the legs. A neutral shared by both carries the sum, and a 240 V load gets nothing.',
    between:
      'No output has this angle. A back-fed leg, or a reading taken while the load changed. Read the three again.',
    cannotTell:
      'More than one angle lies within the meter’s error. Read with a better meter, or closer together.',
    legDead: 'One leg has next to nothing. An angle has no meaning: look for the lost leg.',
    doNotClose:
      'No three volts of one moment look like this. A lead on the wrong lug, or the load changed in between.',
    pastClosing:
      'Leg to leg reads {v12:voltage}, more than {opposedVolts:voltage}. Within the meter’s error that is the same: opposed.',
    nothing: 'With both legs at zero there is no angle.',
  },
  leavesOut: [
    'Which leg leads. Three magnitudes cannot tell.',
    'Harmonics. Use a meter that reads true r.m.s.',
  ],
  search: [
    'phase angle',
    'legs in phase',
    '120 degrees',
    '208 volts',
    '180 degrees',
    'split phase check',
    'leg to leg zero',
  ],
};
