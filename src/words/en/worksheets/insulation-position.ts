import type { WorksheetWords } from '../../worksheet-words.ts';

export const insulationPosition: WorksheetWords = {
  inputs: {
    vocVolts: {
      label: 'Volts pole to pole',
      symbol: 'Voc',
      hint: 'Red on +, black on −, isolator open, both poles off the inverter.',
      limit: 'A string in daylight.',
    },
    positiveVolts: {
      label: 'Positive pole to ground',
      symbol: 'a',
      hint: 'Red on +, black on the bonded frame. Keep the sign. Hold until it stands still.',
      limit: 'It cannot pass the string’s own volts.',
    },
    negativeVolts: {
      label: 'Negative pole to ground',
      symbol: 'c',
      hint: 'Red on −, black on the bonded frame. It should read negative. Take all three within a minute, in steady light.',
      limit: 'It cannot pass the string’s own volts.',
    },
    modules: { label: 'Modules in series', symbol: 'N', limit: 'Count them.' },
    vocRatedVolts: {
      label: 'String’s rated open-circuit volts',
      hint: 'Modules in series times the label’s Voc. It sets the test volts and the least resistance.',
      limit: 'From the labels, not from the meter.',
    },
    meterOhms: {
      label: 'Meter’s input resistance',
      symbol: 'Rm',
      hint: 'Usually 10 MΩ on DC volts. Not the low-impedance mode.',
      limit: 'On the meter’s data sheet.',
    },
    meterShare: {
      label: 'Meter’s error, per cent of reading',
      hint: 'On its data sheet.',
      limit: 'A meter worse than that proves nothing here.',
    },
    meterVolts: {
      label: 'Meter’s error, counts in volts',
      hint: 'Counts times the last digit on that range: 3 counts at 0.1 V is 0.3 V.',
      limit: 'More than 10 V is the wrong range.',
    },
    lightDrift: {
      label: 'How far the light may have moved',
      hint: '1 % in a clear sky. Measure pole to pole again at the end: the difference is this.',
      limit: 'With more, wait for steady light.',
    },
    ownLimitOhms: {
      label: 'Inverter’s own insulation limit',
      hint: 'In its manual. Leave empty if you do not know.',
      limit: 'Inverters ask for kilohms to megohms.',
    },
  },
  outputs: {
    verdict: {
      label: 'Insulation',
      verdicts: { sound: 'Sound', leak: 'Leaks to ground', cannotTell: 'These readings cannot tell' },
    },
    place: {
      label: 'Place of the fault',
      verdicts: {
        none: 'No place shows',
        positiveLead: 'On the positive lead, or its end of the string',
        negativeLead: 'On the negative lead, or its end of the string',
        between: 'Between modules',
      },
    },
    isoOhms: { label: 'If every reading were exact' },
    isoLowOhms: { label: 'Insulation resistance, at least' },
    isoHighOhms: { label: 'Insulation resistance, at most' },
    modulesFromPositive: { label: 'Modules from the positive end to the fault' },
    modulesLow: { label: 'No fewer than' },
    modulesHigh: { label: 'No more than' },
    leastOhms: { label: 'Least allowed' },
    testVolts: { label: 'Test volts for a proper tester' },
    alikeBelowOhms: { label: 'Leaks below this all look like a dead short here' },
    alikeAboveOhms: { label: 'Leaks above this cannot be told from none' },
  },
  working: {
    sum: {
      what: 'Both poles to ground, added without sign',
      formula: '|a| + |c|',
      numbers: '{a:voltage} + {c:voltage}',
      result: '{sumVolts:voltage}',
    },
    iso: {
      what: 'Insulation resistance',
      formula: 'Rm × (Voc ÷ (|a| + |c|) − 1)',
      numbers: '{meterOhms:resistance} × ({vocVolts:voltage} ÷ {sumVolts:voltage} − 1)',
      result: '{isoOhms:resistance}',
    },
    range: {
      what: 'Its range, when every reading is as wrong as it may be',
      formula: 'Voc and poles at the ends of their errors',
      numbers: 'meter and light',
      result: '{isoLowOhms:resistance} to {isoHighOhms:resistance}',
    },
    rangeOpen: {
      what: 'Its range, when every reading is as wrong as it may be',
      formula: 'Voc and poles at the ends of their errors',
      numbers: 'meter and light',
      result: 'at least {isoLowOhms:resistance}',
    },
    place: {
      what: 'Where the fault sits, counted from the positive end',
      formula: 'N × |a| ÷ (|a| + |c|)',
      numbers: '{modules:count} × {a:voltage} ÷ {sumVolts:voltage}',
      result: '{modulesFromPositive:plain:1} modules ({modulesLow:plain:1} to {modulesHigh:plain:1})',
    },
    least: {
      what: 'Least resistance for this string',
      formula: 'by 1.25 × rated Voc, or the inverter’s own limit if that is higher',
      numbers: '1.25 × {vocRatedVolts:voltage} = {testBasisVolts:voltage}',
      result: '{leastOhms:resistance}',
    },
  },
  says: {
    sound:
      'At least {isoLowOhms:resistance}, above the {leastOhms:resistance} asked for. Repeat it wet if the alarm comes on wet mornings.',
    leak: 'At most {isoHighOhms:resistance}, below the {leastOhms:resistance} asked for. Treat frame and rails as live. Find it and mend it; never raise the alarm’s limit.',
    cannotTell:
      'Somewhere from {isoLowOhms:resistance} up. The limit of {leastOhms:resistance} lies inside what the meter and the light leave open. A tester made for live arrays, at {testVolts:voltage}, settles it.',
    couldBeDeadShort:
      'With this meter and this light, everything below about {alikeBelowOhms:resistance} reads alike. It could be a dead short to ground.',
    positiveLead:
      'The positive pole sits near ground: look along the positive lead, its plugs and its conduit first.',
    negativeLead:
      'The negative pole sits near ground: look along the negative lead, its plugs and its conduit first.',
    between:
      'Count {modulesFromPositive:plain:1} modules from the positive end. Look at the plugs and leads there, from {modulesLow:plain:1} to {modulesHigh:plain:1}.',
    twoFaults:
      'One fault only. With two, the place is a mean of the two and means nothing: split the string in half and measure each half.',
    notANumber: 'One of the readings is not a number.',
    noVolts:
      'There are no volts pole to pole. Without light or with the modules held off, this method cannot see a leak.',
    noMeter: 'The meter’s input resistance must be above zero.',
    noModules: 'There must be at least one module.',
    negativeError: 'An error cannot be below zero.',
    reversed:
      'Positive reads {positiveVolts:voltage} and negative {negativeVolts:voltage} to ground: the string is reversed, or the two leads are swapped. Settle that before anything else.',
    sameSign:
      'Positive reads {positiveVolts:voltage} and negative {negativeVolts:voltage} to ground. One must be positive and the other negative. Is another string still joined, or the inverter still on?',
    moreThanVoc:
      'The two readings add to {sumVolts:voltage}, more than the {vocVolts:voltage} pole to pole. The light moved, or the inverter is still joined. Take all three again.',
  },
  leavesOut: [
    'Two faults in one string.',
    'Charge on long cables and on the modules’ frames: the reading creeps. Wait until it stands still.',
    'Surge protectors: unplug them, or you measure them.',
    'A running inverter without a transformer: the array then rides on AC and the readings mean nothing.',
  ],
  search: [
    'ground fault',
    'earth fault',
    'riso',
    'isolation fault',
    'insulation alarm',
    'leak to frame',
    'which module',
    'pole to ground',
  ],
};
