import type { WorksheetWords } from '../../worksheet-words.ts';

const cellLimit = 'Lithium iron phosphate cells only.';

export const runByVoltage: WorksheetWords = {
  inputs: {
    cells: {
      label: 'Cells in series',
      symbol: 'n',
      hint: '15 or 16: read the label.',
      limit: 'Packs of the 48 V class.',
    },
    chargeCellV: {
      label: 'Charge target of a cell',
      symbol: 'Vc',
      hint: '3.45 V is kind to the cells.',
      limit: cellLimit,
    },
    cellMaxV: { label: 'Cell volts at which the pack cuts off charge', symbol: 'Vx', limit: cellLimit },
    cellMinV: { label: 'Cell volts at which the pack cuts off discharge', symbol: 'Vn', limit: cellLimit },
    floatCellV: {
      label: 'Float of a cell',
      symbol: 'Vf',
      hint: '3.35 V holds it full and no more.',
      limit: 'Under 3.2 V it discharges, over 3.6 V it overcharges.',
    },
    cutCellV: {
      label: 'Low cut of a cell',
      symbol: 'Vl',
      hint: '3.0 to 3.1 V under light load leaves something in hand.',
      limit: 'Lower than that the pack decides.',
    },
    restartCellV: {
      label: 'Restart of a cell',
      symbol: 'Vr',
      hint: 'Above what the cells bounce back to with the load off.',
      limit: 'It must stand above the cut.',
    },
    labelChargeVolts: {
      label: 'Charge volts printed on the pack’s label',
      symbol: 'VL',
      hint: 'Checks the count of cells. Leave empty when there is none.',
      limit: 'Packs of the 48 V class.',
    },
    packs: { label: 'Packs that are on', symbol: 'm', hint: 'Only those that answer.', limit: 'One bank.' },
    packAmps: { label: 'Continuous amps of one pack', symbol: 'I', limit: 'From its label.' },
    chargeShare: {
      label: 'Part of that to charge with',
      symbol: 's',
      hint: 'Half is common while nobody reports the cells.',
      limit: 'Never over the label.',
    },
    unitMinVolts: { label: 'Lowest battery volts the inverter runs on', limit: 'From its label.' },
    unitMaxVolts: { label: 'Highest battery volts the inverter takes', limit: 'From its label.' },
  },
  outputs: {
    chargeVolts: { label: 'Charge (absorb) volts' },
    floatVolts: { label: 'Float volts' },
    cutVolts: { label: 'Low cut' },
    restartVolts: { label: 'Restart' },
    topVolts: { label: 'The pack cuts off charge at' },
    bottomVolts: { label: 'The pack cuts off discharge at' },
    chargeAmps: { label: 'Charge amps, all chargers together' },
    labelCellVolts: { label: 'The label’s charge volts, a cell' },
    verdict: {
      label: 'Inverter and pack',
      verdicts: {
        fits: 'The inverter can hold these limits',
        unitCutsFirst: 'The inverter stops above this low cut',
        unitTooLow: 'The charge volts are above what the inverter takes',
        otherCount: 'The label is for another count of cells',
      },
    },
  },
  working: {
    charge: {
      what: 'Charge, never nearer than 0.1 V a cell to the cut-off',
      formula: 'n × the smaller of Vc and Vx − 0.1',
      numbers: '{cells:count} × {chargeCellV:voltage}',
      result: '{chargeVolts:voltage}',
    },
    float: {
      what: 'Float, never above charge',
      formula: 'n × Vf',
      numbers: '{cells:count} × {floatCellV:voltage}',
      result: '{floatVolts:voltage}',
    },
    cut: {
      what: 'Low cut',
      formula: 'n × Vl',
      numbers: '{cells:count} × {cutCellV:voltage}',
      result: '{cutVolts:voltage}',
    },
    restart: {
      what: 'Restart',
      formula: 'n × Vr',
      numbers: '{cells:count} × {restartCellV:voltage}',
      result: '{restartVolts:voltage}',
    },
    amps: {
      what: 'Charge amps',
      formula: 'm × I × s',
      numbers: '{packs:count} × {packAmps:current} × {chargeShare:ratio}',
      result: '{chargeAmps:current}',
    },
    label: {
      what: 'What the label gives a cell',
      formula: 'VL ÷ n',
      numbers: '{labelChargeVolts:voltage} ÷ {cells:count}',
      result: '{labelCellVolts:voltage}',
    },
  },
  says: {
    'verdict-unitCutsFirst':
      'The inverter stops at {unitMinVolts:voltage}, above this cut of {cutVolts:voltage}. That is safe; the cut only comes earlier.',
    'verdict-unitTooLow':
      'The charge volts of {chargeVolts:voltage} are above the {unitMaxVolts:voltage} the inverter takes. Charge lower, and ask both makers if they belong together.',
    'verdict-otherCount':
      'The label’s charge volts give {labelCellVolts:voltage} a cell: it is for another count of cells. Count again before you set anything.',
    neverAbove: 'The pack cuts off at {topVolts:voltage}. That is its last defence, never a setting.',
    cold: 'With no link the inverter does not know how cold the cells are. Under the label’s lowest charging temperature, and always under freezing, set charge to 0 A by hand.',
    noSoc: 'Volts tell nothing fine of the charge between about 20 and 98 %. Watch the pack’s own screen.',
    labelWins: 'Where the pack’s label says less, the label wins.',
    cellsTurned:
      'The charge cut-off of {cellMaxV:voltage} is not above the discharge cut-off of {cellMinV:voltage}. Read the label again.',
    chargeOverCutOff:
      'A charge target of {chargeCellV:voltage} a cell is above the pack’s cut-off of {cellMaxV:voltage}. Never set that.',
    cutUnderPack:
      'A low cut of {cutCellV:voltage} a cell is not above the pack’s own {cellMinV:voltage}: the pack would go first, and everything with it.',
    restartUnderCut:
      'The restart of {restartCellV:voltage} a cell must stand above the cut of {cutCellV:voltage}, or it switches to and fro.',
    restartOverCharge:
      'The restart of {restartVolts:voltage} is not under the charge volts of {chargeVolts:voltage}: it would never start again.',
  },
  leavesOut: [
    'Cells that have drifted apart: one can be full or empty before the bank is. Look at the pack’s own screen.',
    'Volts lost in the cable under load: the inverter sees less than the posts.',
  ],
  search: [
    'no communication',
    'lithium without BMS',
    'user defined battery',
    'absorb volts',
    'low voltage cutoff',
    'charge settings',
  ],
};
