import type { WorksheetWords } from '../../worksheet-words.ts';

const letters = Object.fromEntries('ABCDEFGHJKLMNPRSTUV'.split('').map((letter) => [letter, letter]));

export const motorStart: WorksheetWords = {
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
    connection: {
      label: 'Where the motor is connected',
      options: { leg: 'One line and neutral', across: 'From leg to leg' },
    },
    motorVolts: {
      label: 'Rated volts of the motor',
      symbol: 'Vm',
      hint: 'On its plate, as it is wired now.',
      limit: 'Single phase, up to 240 V class.',
    },
    lockedAmps: {
      label: 'Locked-rotor amps',
      symbol: 'LRA',
      hint: 'On the plate of most pumps and compressors. Empty: the code letter is taken.',
      limit: 'One motor.',
    },
    letter: {
      label: 'Code letter',
      hint: 'Marked “code” on the plate. Not the design letter.',
      options: { none: 'None', ...letters },
    },
    ratedWatts: {
      label: 'Rated power of the motor',
      hint: 'Shaft power from the plate. Needed with a code letter.',
      limit: 'One motor of a house or a shop.',
    },
    startFactor: {
      label: 'Power factor while it starts',
      hint: '40 to 70 % is usual.',
      limit: 'A motor at rest is far from a heater.',
    },
    sourceVolts: {
      label: 'Volts at the inverter while it starts',
      symbol: 'E',
      hint: 'Lowest seen at the output. Not known: what it reads now.',
      limit: 'Between the two it is connected to.',
    },
    lengthM: { label: 'Run, one way', symbol: 'L', limit: 'One run.' },
    areaMm2: { label: 'Conductor', symbol: 'A', limit: 'One conductor.' },
    conductorC: { label: 'Temperature of the copper', limit: 'Insulation gives up near 120 °C.' },
    surgeVa: {
      label: 'Surge of all units together',
      symbol: 'S',
      hint: 'For the seconds a start lasts. Volt-amperes; a label in watts often means the same.',
      limit: 'One site.',
    },
    runningVa: {
      label: 'What runs beside it',
      hint: 'On the same leg for a motor on one leg.',
      limit: 'One site.',
    },
    efficiency: { label: 'Battery to AC', symbol: 'η', limit: 'Less than half is a fault.' },
    batteryVolts: {
      label: 'Battery volts while it starts',
      symbol: 'Vb',
      hint: 'The lowest you allow.',
      limit: 'Banks of the 48 V class and below.',
    },
  },
  outputs: {
    verdict: {
      label: 'The start',
      verdicts: {
        starts: 'The inverter and the run allow it',
        overSurge: 'More than the inverter’s surge',
        dips: 'Too few volts reach the motor',
        both: 'More than the surge, and too few volts at the motor',
        surgeUnknown: 'Volts are enough; the surge is not known',
      },
    },
    startVa: { label: 'Asked of the inverter at the first moment' },
    motorShare: { label: 'Volts at the motor, of its rated' },
    lockedAtMost: { label: 'Locked-rotor amps' },
    lockedAtLeast: { label: 'Low end of its code letter' },
    loopOhms: { label: 'Run, out and back' },
    startVolts: { label: 'Volts at the motor' },
    startAmps: { label: 'Amps in the run' },
    torqueShare: { label: 'Starting torque left' },
    roomVa: { label: 'Surge it can use' },
    askedVa: { label: 'With what runs beside it' },
    batteryAmps: { label: 'Amps of the battery' },
    longestM: { label: 'Longest run that leaves 85 %' },
  },
  working: {
    plate: {
      what: 'Locked-rotor amps from the plate',
      formula: 'LRA',
      numbers: 'at {motorVolts:voltage}',
      result: '{lockedAtMost:current}',
    },
    letter: {
      what: 'Locked-rotor amps from the high end of the letter',
      formula: 'VA a horsepower × horsepower ÷ Vm',
      numbers: '{vaPerHp:apparentPower} × {horsepower:plain} ÷ {motorVolts:voltage}',
      result: '{lockedAtMost:current}',
    },
    loop: {
      what: 'The run, out and back',
      formula: '2 × L × r',
      numbers: '2 × {lengthM:length} × {ohmsPerM:resistance}/m',
      result: '{loopOhms:resistance}',
    },
    volts: {
      what: 'Volts at the motor, which at rest is an impedance Vm ÷ LRA',
      formula: 'E × |Zm| ÷ |Zm + Rloop|, with their angles',
      numbers: '{sourceVolts:voltage} × {motorOhms:resistance} against {loopOhms:resistance}',
      result: '{startVolts:voltage}',
    },
    torque: {
      what: 'Torque goes with the square of the volts',
      formula: '(V ÷ Vm)²',
      numbers: '({startVolts:voltage} ÷ {motorVolts:voltage})²',
      result: '{torqueShare:ratio}',
    },
    va: {
      what: 'Asked of the inverter',
      formula: 'E × I',
      numbers: '{sourceVolts:voltage} × {startAmps:current}',
      result: '{startVa:apparentPower}',
    },
    battery: {
      what: 'Amps of the battery: it sags on watts, not on volt-amperes',
      formula: '(watts of the start + what runs) ÷ (η × Vb)',
      numbers: 'at {startFactor:ratio}, ÷ ({efficiency:ratio} × {batteryVolts:voltage})',
      result: '{batteryAmps:current}',
    },
  },
  says: {
    starts:
      'The start asks for {askedVa:apparentPower} and leaves the motor {motorShare:ratio} of its volts. Prove it ten times, spaced as its label allows, at the lowest charge you plan for.',
    overSurge:
      'The start asks for {askedVa:apparentPower}; {roomVa:apparentPower} is there. The output collapses or trips.',
    dips: 'Only {motorShare:ratio} of its volts reach the motor: {torqueShare:ratio} of its starting torque. It hums, heats and may not turn.',
    both: 'The start asks for {askedVa:apparentPower} where {roomVa:apparentPower} is there, and only {motorShare:ratio} of its volts reach the motor.',
    surgeUnknown:
      'The motor gets {motorShare:ratio} of its volts. Type the inverter’s surge to see whether it can give {askedVa:apparentPower}.',
    fromLetter:
      'A letter is a range: this motor draws {lockedAtLeast:current} to {lockedAtMost:current}. The high end counts here. An inrush clamp tells the truth.',
    shorter:
      'With this conductor the run may be {longestM:length} at most. A larger one, or the motor wired for the higher volts, cures it.',
    sourceLow: 'The volts at the inverter are too low by themselves. No conductor cures that.',
    oneLegHasHalf:
      'On one leg only that leg’s surge counts: {roomVa:apparentPower}. Some units give a leg less than half.',
    softStart:
      'An electronic soft starter or a variable drive cuts the amps, where the motor allows one. Many two-wire well pumps do not. A start capacitor gives torque; it does not cut the amps.',
    voltAmps: 'Compare volt-amperes with volt-amperes. The inverter trips on amps, whatever the watts.',
    noData: 'Type the locked-rotor amps, or pick the code letter and type the rated power.',
    noUpperEnd: 'Letter V has no upper end. Type the locked-rotor amps.',
    nothingAcross: 'There are no volts from leg to leg here. Choose one line and neutral.',
  },
  plot: {
    title: 'Volts at the motor in its first moment',
    x: 'Run, one way',
    y: 'Volts at the motor',
    lines: { start: 'At the motor', least: '85 % of its rated volts', here: 'This run' },
  },
  leavesOut: [
    'The inverter’s own sag: type the volts it holds.',
    'The first half wave, which can be twice as high.',
    'How long the start lasts, and what the driven machine asks for.',
    'Three-phase motors and drives.',
    'Reactance of the run: the smaller part up to 2/0.',
  ],
  search: [
    'motor start',
    'locked rotor amps',
    'LRA',
    'code letter',
    'well pump trips inverter',
    'inrush',
    'surge',
    'compressor start',
    'lights dim when the pump starts',
  ],
};
