import type { WorksheetWords } from '../../worksheet-words.ts';

export const preCharge: WorksheetWords = {
  inputs: {
    sourceVolts: {
      label: 'Battery volts',
      symbol: 'V',
      hint: 'At the battery side of the open main switch, today.',
      limit: 'This worksheet is for banks of the 48 V class and below.',
    },
    resistorOhms: {
      label: 'Pre-charge resistor',
      symbol: 'R',
      hint: 'Measure it cold and out of circuit.',
      limit: 'Below 1 Ω it limits nothing; above 1 kΩ it never gets there.',
    },
    capacitanceF: {
      label: 'Capacitance of all inverters on the bus',
      symbol: 'C',
      hint: 'Usually 5 to 30 mF for a 3 to 12 kW unit. Not printed? Take the high end; the fit below will tell.',
      limit: 'Are the units right? 20 mF is 20 000 µF.',
    },
    startVolts: {
      label: 'Bus volts before you start',
      symbol: 'V0',
      hint: 'At the inverter side of the open switch.',
      limit: 'It must be below the battery’s.',
    },
    standbyWatts: {
      label: 'Power drawn while it charges',
      symbol: 'P',
      hint: 'Electronics that wake as the bus rises. 0 when the inverter’s own switch is off.',
      limit: 'More than that is a load. Turn it off.',
    },
    pathOhms: {
      label: 'Resistance of battery, cable and switch',
      hint: '5 to 20 mΩ is usual. It sets the surge when the switch closes.',
      limit: 'Read the unit again: milliohms.',
    },
    ratedWatts: {
      label: 'Resistor’s rated power',
      hint: 'Printed on it. Leave empty if you do not know.',
      limit: 'A pre-charge part is rated for watts to some hundreds of watts.',
    },
    pulseJoules: {
      label: 'Resistor’s pulse energy rating',
      hint: 'From its data sheet. Without it, the usual overload test stands in: five times rated power for five seconds.',
      limit: 'In joules.',
    },
    readings: {
      label: 'Bus volts as they rise',
      hint: 'Time since the resistor went in, and the volts at that moment. Three or more, one of them when it has settled.',
    },
  },
  outputs: {
    verdict: {
      label: 'What the readings say',
      verdicts: {
        noReadings: 'No readings yet',
        charged: 'It reaches the battery’s volts',
        rising: 'Still rising: read again later',
        load: 'Held back by a load',
        short: 'Held down by a short',
      },
    },
    fiveTauS: { label: 'Ready after (5 time constants)' },
    tauS: { label: 'Time constant' },
    t95S: { label: 'Time to 95 %' },
    peakAmps: { label: 'First amps through the resistor' },
    peakWatts: { label: 'First watts in the resistor' },
    joules: { label: 'Heat in the resistor, each try' },
    residualVolts: { label: 'Volts still missing after 5 time constants' },
    closingAmps: { label: 'Surge on closing after 5 time constants' },
    closingAtPassAmps: { label: 'Surge on closing at the 95 % pass' },
    bareAmps: { label: 'Surge with no pre-charge' },
    greatestWatts: { label: 'Most power any load can draw through the resistor' },
    settlesVolts: { label: 'Bus settles at, with that power drawn' },
    leastOhms: { label: 'Smallest resistor that fits here' },
    mostOhms: { label: 'Largest resistor that fits here' },
    tries: { label: 'Tries before the resistor must cool' },
    coolPerTryS: { label: 'Cooling time for each try' },
    shortS: { label: 'Longest across a dead short' },
    seenTauS: { label: 'Time constant you saw' },
    seenVolts: { label: 'Where your readings settle' },
    seenCapacitanceF: { label: 'Capacitance your readings show' },
    loadOhms: { label: 'The load, as a resistance' },
    loadWatts: { label: 'The load, as power at that volts' },
  },
  working: {
    tau: {
      what: 'Time constant',
      formula: 'τ = R × C',
      numbers: '{resistorOhms:resistance} × {capacitanceF:capacitance}',
      result: '{tauS:time:s}',
    },
    fiveTau: {
      what: 'Ready: less than 1 % missing',
      formula: '5 × τ',
      numbers: '5 × {tauS:time:s}',
      result: '{fiveTauS:time:s}',
    },
    peakAmps: {
      what: 'First amps',
      formula: '(V − V0) ÷ R',
      numbers: '({sourceVolts:voltage} − {startVolts:voltage}) ÷ {resistorOhms:resistance}',
      result: '{peakAmps:current}',
    },
    peakWatts: {
      what: 'First watts',
      formula: '(V − V0)² ÷ R',
      numbers: '({sourceVolts:voltage} − {startVolts:voltage})² ÷ {resistorOhms:resistance}',
      result: '{peakWatts:power}',
    },
    joules: {
      what: 'Heat in the resistor, whatever its ohms',
      formula: '½ × C × (V − V0)²',
      numbers: '½ × {capacitanceF:capacitance} × ({sourceVolts:voltage} − {startVolts:voltage})²',
      result: '{joules:energy:J}',
    },
    residual: {
      what: 'Volts still missing after five time constants',
      formula: '(V − V0) × 0.0067',
      numbers: '({sourceVolts:voltage} − {startVolts:voltage}) × 0.0067',
      result: '{residualVolts:voltage:V}',
    },
    closing: {
      what: 'Surge when the switch closes over them',
      formula: 'missing volts ÷ path resistance',
      numbers: '{residualVolts:voltage:V} ÷ {pathOhms:resistance}',
      result: '{closingAmps:current}',
    },
    greatest: {
      what: 'Most power the resistor can pass on, at half the volts',
      formula: 'V² ÷ (4 × R)',
      numbers: '({sourceVolts:voltage})² ÷ (4 × {resistorOhms:resistance})',
      result: '{greatestWatts:power}',
    },
    settles: {
      what: 'Where the bus settles with that power drawn',
      formula: '(V + √(V² − 4 × R × P)) ÷ 2',
      numbers:
        '({sourceVolts:voltage} + √(({sourceVolts:voltage})² − 4 × {resistorOhms:resistance} × {standbyWatts:power})) ÷ 2',
      result: '{settlesVolts:voltage}',
    },
    loadOhms: {
      what: 'The load that holds it there, if it is a resistance',
      formula: 'R × v ÷ (V − v)',
      numbers:
        '{resistorOhms:resistance} × {seenVolts:voltage} ÷ ({sourceVolts:voltage} − {seenVolts:voltage})',
      result: '{loadOhms:resistance}',
    },
    loadWatts: {
      what: 'The power it draws there',
      formula: 'v × (V − v) ÷ R',
      numbers:
        '{seenVolts:voltage} × ({sourceVolts:voltage} − {seenVolts:voltage}) ÷ {resistorOhms:resistance}',
      result: '{loadWatts:power}',
    },
  },
  says: {
    charged:
      'The bus follows the curve to the battery’s volts. Now measure across the open switch, and both sides to battery negative, signed. Those three readings are the proof, not the seconds.',
    rising:
      'The readings end too early to tell charging from a load. Wait, and read again until two readings agree.',
    load: 'The bus settles at {seenVolts:voltage} and will not go further. Something draws about {loadWatts:power} behind the resistor ({loadOhms:resistance}). Do not close the switch. Take the resistor off, find the load, turn it off.',
    short:
      'The bus stays at {seenVolts:voltage}. Is the resistor hot? Then something behind it is shorted or reversed. Cold? Then a lead is off or the resistor is broken. Do not close the switch either way.',
    neverSettles:
      'This resistor can pass {greatestWatts:power} at most. With {standbyWatts:power} drawn behind it the bus never comes up. Turn the draw off, or take a smaller resistor.',
    stopsShort:
      'With {standbyWatts:power} drawn the bus stops at {settlesVolts:voltage}, short of the 95 % pass. Turn the draw off first.',
    noResistorFits:
      'No resistor here is gentle, soon enough and gets all the way at once. Turn off what draws, or charge the inverters one at a time.',
    resistorLow:
      '{resistorOhms:resistance} lets {peakAmps:current} through at first. From {leastOhms:resistance} up it stays within 3 A.',
    resistorHigh:
      '{resistorOhms:resistance} is slow for this bank, or will not carry the draw. {leastOhms:resistance} to {mostOhms:resistance} fits.',
    resistorTooSmall:
      'This resistor cannot take the heat of even one try: {joules:energy:J}. Take a larger one.',
    shortLimit:
      'Across a dead short this resistor lasts about {shortS:time}. If the volts do not rise in that time, take it off.',
    passIsNotAll:
      'Closing at the 95 % pass still drives {closingAtPassAmps:current} through the contacts. Where nothing draws, wait the full five time constants: {closingAmps:current}.',
    alreadyCharged:
      'The bus already stands at {startVolts:voltage}, at or above the battery’s {sourceVolts:voltage}. There is nothing to pre-charge. Find out what feeds it before you go on.',
    noSource: 'Battery volts must be above zero.',
    noResistor: 'The resistor must be above zero ohms.',
    noCapacitance: 'The capacitance must be above zero.',
    noRating: 'The rated power must be above zero.',
    negativeStandby: 'Power drawn cannot be below zero.',
    badReading:
      'One of the readings has no proper time or volts. Times count from the moment the resistor went in.',
    tooFewReadings: 'Two readings after the start are the least that make a curve. Take three or more.',
    timesNotRising: 'Each time must be later than the one before it.',
    negativeVolts:
      'A reading of {volts:voltage} is below zero: battery or leads are reversed. Take the resistor off. Nothing may be closed until both sides read positive.',
    aboveSource:
      'A reading of {volts:voltage} is above the battery’s {sourceVolts:voltage}. Something else feeds the bus, or the two were measured at different places.',
    standbyTooLarge:
      'With {standbyWatts:power} drawn, a resistor gentle enough ({leastOhms:resistance} or more) never brings the bus up. Turn the draw off.',
    bankTooLarge:
      'A bank of {capacitanceF:capacitance} takes more than 10 s through a resistor gentle enough ({leastOhms:resistance} or more).',
  },
  plot: {
    title: 'Bus volts while it charges',
    x: 'Time since the resistor went in',
    y: 'Bus volts',
    lines: {
      expected: 'Expected',
      fitted: 'Your readings, fitted',
      source: 'Battery',
      pass: '95 % pass',
      fiveTau: '5 time constants',
      reading: 'Reading',
    },
  },
  leavesOut: [
    'The battery’s own sag and its protection: they do not matter at a few amperes.',
    'Electronics that wake part of the way up. They bend the curve; the settled volts still tell their power.',
    'The capacitors’ own tolerance (usually ±20 %) and age.',
    'Heat from tries made before you opened this page.',
  ],
  search: [
    'precharge',
    'inrush',
    'spark on connecting',
    'capacitor',
    'resistor size',
    'time constant',
    'bms trips when I connect',
    'plateau',
  ],
};
