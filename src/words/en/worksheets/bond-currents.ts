import type { WorksheetWords } from '../../worksheet-words.ts';

export const bondCurrents: WorksheetWords = {
  inputs: {
    loadAmps: {
      label: 'Load current that must come home by the neutral',
      symbol: 'I',
      hint: 'One 120 V heater of 1 kW or more on one leg, all else off. Clamp its hot.',
      limit: 'One panel.',
    },
    groundAmps: {
      label: 'Amps in the ground conductor',
      symbol: 'Ie',
      hint: 'Clamp the ground conductor of the same run, away from the hots.',
      limit: 'One panel.',
    },
    lengthM: {
      label: 'Run, one way',
      symbol: 'L',
      hint: 'Between the two places of a bond.',
      limit: 'One run.',
    },
    neutralMm2: { label: 'Neutral', symbol: 'An', limit: 'One conductor.' },
    groundMm2: { label: 'Ground conductor', symbol: 'Ae', limit: 'One conductor.' },
    conductorC: { label: 'Temperature of the copper', limit: 'Insulation gives up near 120 °C.' },
    jointOhms: {
      label: 'Extra ohms in the neutral',
      hint: 'A sound run: 0.',
      limit: 'More is an open neutral.',
    },
    ofReading: { label: 'Clamp’s error, of reading', limit: 'Its data sheet.' },
    zeroAmps: {
      label: 'Clamp’s error near zero',
      hint: 'What it shows beside the conductor, closed on nothing.',
      limit: 'More is no clamp for this.',
    },
  },
  outputs: {
    verdict: {
      label: 'Bonds',
      verdicts: {
        oneBond: 'No second path: one bond, or none',
        secondBond: 'A second bond shares the neutral’s current',
        someCurrent: 'Some current, too little for a second bond here',
        cannotTell: 'This clamp cannot tell: more load is needed',
      },
    },
    expectedAmps: { label: 'A second bond would send by the ground' },
    errorAmps: { label: 'Clamp’s error at this reading' },
    neutralOhms: { label: 'Neutral, one way' },
    groundOhms: { label: 'Ground conductor, one way' },
    share: { label: 'Share of the load by the ground, two bonds' },
    neutralAmps: { label: 'Left in the neutral' },
    seenOhms: { label: 'Ohms of the other path, as it behaves' },
    neutralVolts: { label: 'Panel neutral to ground, one bond at the source' },
    sharedVolts: { label: 'Volts along the run with two bonds' },
    needAmps: { label: 'Load from which it can be told' },
  },
  working: {
    neutral: {
      what: 'Neutral, one way, with its joints',
      formula: 'L × rn + joints',
      numbers: '{lengthM:length} × {ohmsPerM:resistance}/m + {jointOhms:resistance}',
      result: '{neutralOhms:resistance}',
    },
    ground: {
      what: 'Ground conductor, one way',
      formula: 'L × re',
      numbers: '{lengthM:length} × {ohmsPerM:resistance}/m',
      result: '{groundOhms:resistance}',
    },
    expected: {
      what: 'With a second bond the two share the way home',
      formula: 'I × Rn ÷ (Rn + Re)',
      numbers:
        '{loadAmps:current} × {neutralOhms:resistance} ÷ ({neutralOhms:resistance} + {groundOhms:resistance})',
      result: '{expectedAmps:current}',
    },
    error: {
      what: 'What the clamp may be wrong by',
      formula: 'share of reading × Ie + error near zero',
      numbers: '{ofReading:ratio} × {groundAmps:current} + {zeroAmps:current}',
      result: '{errorAmps:current}',
    },
    seen: {
      what: 'Ohms of the other path, as it behaves',
      formula: '(I − Ie) × Rn ÷ Ie',
      numbers: '{neutralAmps:current} × {neutralOhms:resistance} ÷ {groundAmps:current}',
      result: '{seenOhms:resistance}',
    },
  },
  says: {
    oneBond:
      'A second bond would put {expectedAmps:current} in the ground conductor. There is none. That does not prove that one bond exists: prove it dead, by ohms, with the neutrals lifted.',
    secondBond:
      'Current of the load comes home by the ground conductor: {groundAmps:current} of about {expectedAmps:current} that a second bond would send. Metal that people touch carries it.',
    someCurrent:
      'The ground conductor carries {groundAmps:current}: too much for nothing, too little for a bond over this run ({expectedAmps:current}). Look for a leak, a bond by way of earth or a pipe, or a poor second bond.',
    cannotTell:
      'A second bond would send only {expectedAmps:current}, too near the clamp’s error. Put on {needAmps:current} or more, or use a leakage clamp.',
    findIt:
      'Isolate, lock and prove dead. Then look for a bond screw or strap in a sub-panel, a neutral on the ground bar, a generator with its own bond, an inverter’s relay. Never lift a neutral live.',
    bothStates:
      'Read it again on every source: on battery, on generator. A bond may come and go with a relay.',
    volts:
      'Second sign: with one bond at the source the panel’s neutral stands {neutralVolts:voltage} above its ground under this load. With a second bond in that panel it stands at 0.',
    moreThanLoad:
      'The ground conductor carries {groundAmps:current}, more than the {loadAmps:current} of the load. Something else feeds it: another load, another circuit, or the clamp is around a hot.',
  },
  leavesOut: [
    'Other ways home: earth between rods, pipes, conduit, shields of data leads.',
    'Leakage through filters and heaters: some milliamperes each.',
    'Reactance: it moves a little current from a far ground wire to one laid close.',
    'Aluminum conductors.',
  ],
  search: [
    'neutral ground bond',
    'two bonds',
    'second bond',
    'objectionable current',
    'current on ground wire',
    'bond screw in sub-panel',
    'GFCI trips bond',
  ],
};
