import type { WorksheetWords } from '../../worksheet-words.ts';
import { bankWords } from './bank-words.ts';

export const autonomy: WorksheetWords = {
  inputs: {
    dayJoules: {
      label: 'Used in a day, out of the sockets',
      symbol: 'E',
      hint: 'From the inverter’s daily figure, or each load’s watts times its hours. Night loads count too.',
      limit: 'In kilowatt-hours.',
    },
    efficiency: {
      label: 'Efficiency, battery to AC',
      symbol: 'e',
      hint: '88 to 95 % is common.',
      limit: 'The figure on the front of a data sheet is the best it ever does.',
    },
    idleWatts: {
      label: 'Idle draw of all inverters',
      symbol: 'Pi',
      hint: 'Watts from the battery with no load, day and night. 0 when the efficiency already holds it.',
      limit: 'More than that is a load.',
    },
    poorDayJoules: {
      label: 'What the array still brings on a dark day',
      symbol: 'S',
      hint: 'Into the battery. Thick cloud leaves a tenth or less of a good day. 0 is the safe figure.',
      limit: 'In kilowatt-hours.',
    },
    wantedDays: {
      label: 'Days you want it to carry',
      symbol: 'd',
      hint: 'Two or three with a generator at hand, more without.',
      limit: 'Beyond two weeks a second source is the answer.',
    },
    ...bankWords,
  },
  outputs: {
    verdict: {
      label: 'The bank',
      verdicts: {
        holds: 'Carries the days you want',
        short: 'Does not carry the days you want',
        sunCarries: 'Is not drawn down: the dark day’s sun covers the day',
      },
    },
    heldDays: { label: 'Days it carries' },
    neededPacks: { label: 'Packs for the days you want' },
    neededJoules: { label: 'Energy on the labels for those days' },
    dayDrawnJoules: { label: 'Drawn from the battery in a day' },
    netJoules: { label: 'Of that, not covered by the dark day’s sun' },
    idleJoules: { label: 'Idle in a day' },
    nominalJoules: { label: 'Energy on the labels' },
    usableJoules: { label: 'Energy to use' },
  },
  working: {
    drawn: {
      what: 'Drawn from the battery in a day',
      formula: 'E ÷ e + 24 h × Pi',
      numbers: '{dayJoules:energy:kWh} ÷ {efficiency:ratio} + 24 h × {idleWatts:power}',
      result: '{dayDrawnJoules:energy:kWh}',
    },
    net: {
      what: 'Less what the dark day brings',
      formula: 'drawn − S',
      numbers: '{dayDrawnJoules:energy:kWh} − {poorDayJoules:energy:kWh}',
      result: '{netJoules:energy:kWh}',
    },
    nominal: {
      what: 'Energy on the labels',
      formula: 'n × Vc × Q × m',
      numbers: '{cells:count} × {cellVolts:voltage} × {packAh:charge} × {packs:count}',
      result: '{nominalJoules:energy:kWh}',
    },
    usable: {
      what: 'Energy to use',
      formula: 'label × h × u',
      numbers: '{nominalJoules:energy:kWh} × {healthShare:ratio} × {usableShare:ratio}',
      result: '{usableJoules:energy:kWh}',
    },
    held: {
      what: 'Days it carries',
      formula: 'energy to use ÷ net of a day',
      numbers: '{usableJoules:energy:kWh} ÷ {netJoules:energy:kWh}',
      result: '{heldDays:plain:1} days',
    },
    needed: {
      what: 'Energy on the labels for the days you want',
      formula: 'd × net ÷ (h × u)',
      numbers: '{wantedDays:count} × {netJoules:energy:kWh} ÷ ({healthShare:ratio} × {usableShare:ratio})',
      result: '{neededJoules:energy:kWh}',
    },
    packs: {
      what: 'In packs, rounded up',
      formula: 'needed ÷ one pack',
      numbers: '{neededJoules:energy:kWh} ÷ {packJoules:energy:kWh}',
      result: '{neededPacks:count}',
    },
  },
  says: {
    nothingDrawn: 'Nothing is drawn in a day. Type what is used, or the idle draw.',
    holds:
      'From full, the bank carries {heldDays:plain:1} days like this. It must be full when the weather turns.',
    short:
      'From full, the bank carries {heldDays:plain:1} days, not {wantedDays:count}. Use less on dark days, start the generator sooner, or have {neededPacks:count} packs.',
    sunCarries:
      'The sun of a dark day covers the whole draw. Look at that figure again: in the darkest week it is often near nothing.',
    idleHeavy:
      'Idle takes {idleJoules:energy:kWh} a day, more than a fifth of the draw. Turning the inverter off at night is worth more than a pack.',
    noSun: 'No sun at all is counted. That is the safe side.',
    refill:
      'Days in hand are worth nothing if the array cannot fill the bank again between them. Compare the array’s good day with the draw.',
  },
  leavesOut: [
    'How long the array takes to fill the bank again.',
    'Snow on the modules: that day brings nothing.',
    'Less capacity in the cold, unless you typed it.',
    'Loads that grow when the weather is bad: heating, lights, pumps.',
  ],
  search: [
    'days of autonomy',
    'cloudy days',
    'no sun',
    'battery bank size',
    'how many batteries do I need',
    'winter',
  ],
};
