import type { WorksheetWords } from '../../worksheet-words.ts';

export const idleDraw: WorksheetWords = {
  inputs: {
    busVolts: {
      label: 'Battery volts',
      symbol: 'V',
      hint: 'At the inverter’s DC posts, at the same moment as the amps.',
      limit: 'For banks of the 48 V class and below.',
    },
    amps: {
      label: 'Battery amps with no load',
      symbol: 'I',
      hint: 'Clamp on one battery cable, zeroed on the spot, output breaker open, no PV, no charger.',
      limit: 'More than that is a load.',
    },
    ampsError: {
      label: 'Clamp’s error at so small a current',
      hint: 'Counts times the last digit. Two turns of cable through the jaw halve it.',
      limit: 'A clamp that coarse cannot see idle.',
    },
    windowS: {
      label: 'Hours of sun that can cover it',
      symbol: 'h',
      hint: 'Full-sun hours of a poor day, not daylight.',
      limit: 'In hours.',
    },
    chargePath: {
      label: 'Efficiency from array to battery and back',
      symbol: 'e',
      hint: '0.70 to 0.85 is common. 100 % shows the figure without losses.',
      limit: 'Nothing gives back more than it takes.',
    },
    nightS: {
      label: 'Hours without sun',
      hint: 'Dusk to the hour the array takes over.',
      limit: 'Up to a whole day.',
    },
    bankJoules: {
      label: 'Usable energy of the bank',
      hint: 'Ah × volts × the part you use.',
      limit: 'In kilowatt-hours.',
    },
    loadWatts: {
      label: 'A known load, its AC watts',
      symbol: 'Pac',
      hint: 'For the efficiency: a heater read on a plug-in meter. Leave empty to skip.',
      limit: 'Small loads tell nothing.',
    },
    loadedAmps: { label: 'Battery amps with that load', symbol: 'IL', limit: 'With the load on.' },
    loadedVolts: {
      label: 'Battery volts with that load',
      symbol: 'VL',
      hint: 'Empty: the volts above.',
      limit: 'With the load on.',
    },
  },
  outputs: {
    idleWatts: { label: 'Idle draw' },
    idleLowWatts: { label: 'No less than' },
    idleHighWatts: { label: 'No more than' },
    dayJoules: { label: 'Energy in a day' },
    arrayWatts: { label: 'Array it eats' },
    arrayLosslessWatts: { label: 'The same with no losses counted' },
    nightJoules: { label: 'Energy in a night' },
    nightShare: { label: 'Share of the bank in a night' },
    emptiesS: { label: 'Idle alone empties the bank in' },
    efficiency: { label: 'Efficiency the loaded reading implies' },
  },
  working: {
    idle: {
      what: 'Idle draw',
      formula: 'V × I',
      numbers: '{busVolts:voltage} × {amps:current}',
      result: '{idleWatts:power}',
    },
    day: {
      what: 'In a day',
      formula: '24 h × idle',
      numbers: '24 h × {idleWatts:power}',
      result: '{dayJoules:energy}',
    },
    array: {
      what: 'Array that covers it',
      formula: 'day ÷ (h × e)',
      numbers: '{dayJoules:energy} ÷ ({windowS:time} × {chargePath:ratio})',
      result: '{arrayWatts:power}',
    },
    night: {
      what: 'In a night',
      formula: 'idle × hours without sun',
      numbers: '{idleWatts:power} × {nightS:time}',
      result: '{nightJoules:energy}',
    },
    share: {
      what: 'Share of the bank',
      formula: 'night ÷ usable energy',
      numbers: '{nightJoules:energy} ÷ {bankJoules:energy}',
      result: '{nightShare:ratio}',
    },
    efficiency: {
      what: 'Efficiency of the inverter, idle taken off',
      formula: 'Pac ÷ (VL × IL − idle)',
      numbers: '{loadWatts:power} ÷ ({loadedVolts:voltage} × {loadedAmps:current} − {idleWatts:power})',
      result: '{efficiency:ratio}',
    },
  },
  says: {
    clampCoarse:
      'The clamp’s error is more than a quarter of this reading: idle lies between {idleLowWatts:power} and {idleHighWatts:power}. Pass the cable through the jaw twice, or use the shunt.',
    efficiencyLow:
      'An efficiency of {efficiency:ratio} is lower than an inverter has at a load worth reading. Is something else drawing from the bank, or the load’s watts read too low?',
    nightHeavy:
      'Idle alone takes {nightShare:ratio} of the bank each night. A search mode, or turning it off at night, is worth more here than another module.',
    lossesStand:
      'Without losses the array figure would be {arrayLosslessWatts:power}. Say which one you mean when you quote it.',
    moreOutThanIn:
      '{loadWatts:power} comes out, but only {inWatts:power} goes in and {idleWatts:power} of that is idle. Zero the clamp and read load and battery at the same moment.',
  },
  leavesOut: [
    'Standby of the battery’s own electronics, and its self-discharge.',
    'Loads that are “off” and still draw.',
    'Idle that changes with temperature and with fans.',
  ],
  search: [
    'idle consumption',
    'standby',
    'no-load draw',
    'battery drains overnight',
    'tare loss',
    'how much does the inverter use',
  ],
};
