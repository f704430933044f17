import type { WorksheetWords } from '../../worksheet-words.ts';

export const restVoltage: WorksheetWords = {
  inputs: {
    cells: {
      label: 'Cells in series',
      symbol: 'n',
      hint: '15 or 16: read the label. The wrong count makes nonsense of all of it.',
      limit: 'Lithium iron phosphate packs of the 48 V class and below.',
    },
    volts: {
      label: 'Volts at the pack’s posts, at rest',
      symbol: 'V',
      hint: 'No charge, no load: under 1 A by a zeroed clamp.',
      limit: 'Packs of the 48 V class and below.',
    },
    voltsError: {
      label: 'Meter’s error',
      symbol: 'a',
      hint: '0.5 % of 53 V is already 0.27 V. A display’s own volts: 0.3 V.',
      limit: 'More than that is no measurement.',
    },
    restS: {
      label: 'Rested for',
      hint: 'With nothing flowing. Two hours tell a little, a night tells more.',
      limit: 'Up to ten days.',
    },
    before: {
      label: 'Before that it was',
      options: { unknown: 'Not known, or both', charged: 'Charged', discharged: 'Discharged' },
      hint: 'After a charge the volts still fall, after a discharge they still rise.',
    },
    curveError: {
      label: 'How far your cells may lie from this curve, a cell',
      symbol: 'b',
      hint: '30 mV unless you have your own cells’ curve. Half the gap between charging and discharging is in it.',
      limit: 'Less than 5 mV is known of no cell in the field.',
    },
  },
  outputs: {
    verdict: {
      label: 'What the volts say',
      verdicts: {
        underService: 'Under 2.5 V a cell: out of service',
        nearlyEmpty: 'Nearly empty',
        low: 'Low',
        middle: 'Somewhere in the middle: volts cannot tell',
        nearlyFull: 'Nearly full, or full',
        notAtRest: 'Not at rest: it is being charged, or just was',
      },
    },
    leastCharge: { label: 'Charge, at least' },
    mostCharge: { label: 'Charge, at most' },
    width: { label: 'Left open' },
    cellVolts: { label: 'A cell, on average' },
    leastCellVolts: { label: 'A cell at true rest, at least' },
    mostCellVolts: { label: 'A cell at true rest, at most' },
    settlingVolts: { label: 'A cell may still move by' },
    tenthVolts: { label: 'Ten per cent of charge in the middle is, at the posts' },
  },
  working: {
    cell: {
      what: 'A cell, on average',
      formula: 'V ÷ n',
      numbers: '{volts:voltage} ÷ {cells:count}',
      result: '{cellVolts:voltage}',
    },
    least: {
      what: 'At true rest, at least',
      formula: 'cell − a ÷ n − b − what it may still fall',
      numbers:
        '{cellVolts:voltage} − {voltsError:voltage} ÷ {cells:count} − {curveError:voltage:mV} − {fallVolts:voltage:mV}',
      result: '{leastCellVolts:voltage}',
    },
    most: {
      what: 'At true rest, at most',
      formula: 'cell + a ÷ n + b + what it may still rise',
      numbers:
        '{cellVolts:voltage} + {voltsError:voltage} ÷ {cells:count} + {curveError:voltage:mV} + {riseVolts:voltage:mV}',
      result: '{mostCellVolts:voltage}',
    },
    charge: {
      what: 'Charge, read off the curve at both ends',
      formula: 'curve at least … curve at most',
      numbers: '{leastCellVolts:voltage} … {mostCellVolts:voltage}',
      result: '{leastCharge:ratio} … {mostCharge:ratio}',
    },
    tenth: {
      what: 'What 10 % in the middle is worth',
      formula: 'n × (curve at 60 % − curve at 50 %)',
      numbers: '{cells:count} cells',
      result: '{tenthVolts:voltage}',
    },
  },
  says: {
    underService:
      'At {cellVolts:voltage} a cell the pack is under its service limit. Do not charge it. Its maker decides whether it may be used again.',
    nearlyEmpty:
      'At most {mostCharge:ratio} is left, and the volts fall fast from here. Charge it, unless the cells are below the label’s lowest charging temperature.',
    low: 'Between {leastCharge:ratio} and {mostCharge:ratio}. Low, and that much the volts can say.',
    middle:
      'Anything between {leastCharge:ratio} and {mostCharge:ratio}. The curve is flat here: ten per cent of charge is {tenthVolts:voltage} at the posts. Do not write down a per cent.',
    nearlyFull:
      'At least {leastCharge:ratio}, if it truly rested. How near to full, volts do not say: charge it until the amps taper off.',
    notAtRest:
      'No cell rests at {cellVolts:voltage}. That is a charging voltage. Stop the charge, let it rest for hours, and read again.',
    twoPacks:
      'Two packs that show these same volts can differ by {width:ratio} in charge. Before you join them, charge each to full on its own.',
    shortRest: 'The rest is short. The volts are still moving, and the band above allows for that.',
    counting: 'Charge is known by counting amp-hours from a full charge. Volts only tell the ends.',
  },
  plot: {
    title: 'Rest volts by charge',
    x: 'Charge',
    y: 'Volts at the posts',
    lines: { rest: 'Rest volts', least: 'At least', read: 'Read', most: 'At most' },
  },
  leavesOut: [
    'Cells that differ: the mean of sixteen hides one that is empty. Look at the pack’s own screen.',
    'Other chemistries. This is lithium iron phosphate only.',
    'A cold pack: its volts settle much more slowly.',
    'Age, which moves the curve’s ends.',
  ],
  search: [
    'battery percentage from voltage',
    'state of charge',
    'voltage chart',
    'resting voltage',
    'what does 52.8 V mean',
    'SOC',
    'open circuit voltage',
  ],
};
