import type { WorksheetWords } from '../../worksheet-words.ts';
import { bankWords } from './bank-words.ts';

export const runtime: WorksheetWords = {
  inputs: {
    ...bankWords,
    loadWatts: {
      label: 'Load, AC watts',
      symbol: 'P',
      hint: 'What really runs, as a steady mean. Read it on the inverter or on a plug-in meter.',
      limit: '0 shows what idle alone does.',
    },
    efficiency: {
      label: 'Efficiency, battery to AC',
      symbol: 'e',
      hint: 'At that load. 88 to 95 % is common; at a small load it is worse.',
      limit: 'The figure on the front of a data sheet is the best it ever does.',
    },
    idleWatts: {
      label: 'Idle draw of all inverters',
      symbol: 'Pi',
      hint: 'Watts from the battery with no load. 0 when the efficiency already holds it.',
      limit: 'More than that is a load.',
    },
  },
  outputs: {
    runtimeS: { label: 'It lasts' },
    usableJoules: { label: 'Energy to use, at the battery' },
    acJoules: { label: 'Of that, out of the sockets' },
    nominalJoules: { label: 'Energy on the labels' },
    drawnWatts: { label: 'Drawn from the battery' },
    idleShare: { label: 'Of that, idle' },
    sharePerHour: { label: 'Part of the label’s capacity an hour' },
  },
  working: {
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
    drawn: {
      what: 'Drawn from the battery',
      formula: 'P ÷ e + Pi',
      numbers: '{loadWatts:power} ÷ {efficiency:ratio} + {idleWatts:power}',
      result: '{drawnWatts:power}',
    },
    runtime: {
      what: 'It lasts',
      formula: 'energy to use ÷ drawn',
      numbers: '{usableJoules:energy:kWh} ÷ {drawnWatts:power}',
      result: '{runtimeS:time:h}',
    },
    ac: {
      what: 'Out of the sockets',
      formula: 'P × time',
      numbers: '{loadWatts:power} × {runtimeS:time:h}',
      result: '{acJoules:energy:kWh}',
    },
  },
  says: {
    nothingDrawn: 'Nothing is drawn, so it would last for ever. Type a load or an idle draw.',
    idleHeavy:
      'Idle is {idleShare:ratio} of what the battery gives here. A smaller load lasts less longer than you think; turning the inverter off at night is worth more.',
    fast: 'This takes {sharePerHour:ratio} of the label’s capacity an hour. At that pace the volts sag and the low cut comes before the energy is out. Check the pack’s amps as well.',
    asNew:
      'This counts the label’s whole capacity. An old bank, or a cold one, has less: type what a full discharge has shown.',
    estimate:
      'A plan, not a promise. Loads come and go, and the pack’s own electronics cut off when one cell is empty.',
  },
  plot: {
    title: 'How long it lasts',
    x: 'Load, AC watts',
    y: 'Hours',
    lines: { lasts: 'From full to the low cut', load: 'Your load' },
  },
  leavesOut: [
    'Sun or generator that comes in meanwhile.',
    'Standby of the packs’ own electronics, and self-discharge.',
    'Cells that have drifted apart: the first empty one ends it.',
    'Efficiency that changes with the load.',
  ],
  search: [
    'how long will my battery last',
    'runtime',
    'usable energy',
    'backup time',
    'kWh of the bank',
    'depth of discharge',
  ],
};
