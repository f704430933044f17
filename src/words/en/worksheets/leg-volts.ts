import type { WorksheetWords } from '../../worksheet-words.ts';

export const legVolts: WorksheetWords = {
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
    sourceVolts: {
      label: 'Volts of a leg at the source',
      symbol: 'E',
      hint: 'L1 to N at the inverter, under the same load.',
      limit: 'One leg to neutral.',
    },
    watts1: {
      label: 'Loads on leg 1',
      symbol: 'P1',
      hint: 'By nameplate, heaters and lamps best.',
      limit: 'One leg of one panel.',
    },
    factor1: {
      label: 'Power factor, leg 1',
      hint: 'A heater 100 %, a motor about 80 %, lagging.',
      limit: 'Lagging.',
    },
    watts2: {
      label: 'Loads on leg 2',
      symbol: 'P2',
      hint: 'Nothing on it: 0.',
      limit: 'One leg of one panel.',
    },
    factor2: { label: 'Power factor, leg 2', limit: 'Lagging.' },
    wattsAcross: {
      label: 'Loads from leg to leg',
      symbol: 'P12',
      hint: 'A 240 V heater; 0 when off.',
      limit: 'One panel.',
    },
    lengthM: { label: 'Feeder, one way', symbol: 'L', limit: '0 stands for a feeder too short to count.' },
    areaMm2: { label: 'Feeder conductor', symbol: 'A', limit: 'One conductor.' },
    conductorC: {
      label: 'Temperature of the copper',
      hint: 'Hand-warm is 40 °C.',
      limit: 'Insulation gives up near 120 °C.',
    },
    joint1Ohms: {
      label: 'Extra ohms in hot 1',
      hint: 'A sound run: 0.',
      limit: 'More is an open conductor.',
    },
    joint2Ohms: { label: 'Extra ohms in hot 2', limit: 'More is an open conductor.' },
    neutral: {
      label: 'The neutral',
      options: { sound: 'Sound', resistive: 'A poor joint', open: 'Open' },
    },
    neutralJointOhms: {
      label: 'Ohms of the poor joint',
      hint: 'Counts only for a poor joint.',
      limit: 'More is as good as open.',
    },
  },
  outputs: {
    verdict: {
      label: 'The legs',
      verdicts: {
        inBand: 'Both within 5 %',
        outOfBand: 'Out of their 5 %',
        destroys: 'One so high that it destroys what is plugged in',
      },
    },
    v1: { label: 'Leg 1 to neutral' },
    v2: { label: 'Leg 2 to neutral' },
    v12: { label: 'Leg to leg' },
    sumVolts: { label: 'The two legs added' },
    neutralVolts: { label: 'Panel neutral to ground, bond at the source' },
    i1: { label: 'Amps in hot 1' },
    i2: { label: 'Amps in hot 2' },
    neutralAmps: { label: 'Amps in the neutral' },
    conductorOhms: { label: 'One conductor, one way' },
    neutralOhms: { label: 'Neutral with its joint' },
    jointWatts: { label: 'Heat in the neutral’s joint' },
    v1Sound: { label: 'Leg 1 with a sound neutral' },
    v2Sound: { label: 'Leg 2 with a sound neutral' },
  },
  working: {
    conductor: {
      what: 'One conductor, one way',
      formula: 'L × r',
      numbers: '{lengthM:length} × {ohmsPerM:resistance}/m',
      result: '{conductorOhms:resistance}',
    },
    amps1: {
      what: 'Amps in hot 1',
      formula: 'from the whole network, each load at its own impedance',
      numbers: '{watts1:power} at {v1:voltage}',
      result: '{i1:current}',
    },
    neutralVolts: {
      what: 'Volts the neutral loses',
      formula: 'In × Rn',
      numbers: '{neutralAmps:current} × {neutralOhms:resistance}',
      result: '{neutralVolts:voltage}',
    },
    neutralOpen: {
      what: 'No way back: the two loads stand in series from leg to leg',
      formula: 'V1 = V12 × |Z1| ÷ |Z1 + Z2|',
      numbers: '{v12:voltage} shared between {watts1:power} and {watts2:power}',
      result: '{v1:voltage}',
    },
    noWayBack: {
      what: 'One line with no way back: nothing works, nothing rises',
      formula: 'V1 = what the meter’s own input lets through',
      numbers: '{watts1:power} on an open neutral',
      result: '{v1:voltage}',
    },
    legs: {
      what: 'The two legs added',
      formula: 'V1 + V2',
      numbers: '{v1:voltage} + {v2:voltage}',
      result: '{sumVolts:voltage}',
    },
  },
  says: {
    inBand: 'Both legs stay within 5 % with these loads. With others they may not.',
    outOfBand: 'A leg leaves its 5 %. Lights show it. Motors feel it.',
    destroys:
      'A leg this high destroys what is plugged in within seconds. Loads off first, at the output breaker.',
    nothingShows:
      'With nothing on, the meter’s own input holds the lost neutral in the middle: {v1:voltage} and {v2:voltage}. Good volts with no load prove nothing.',
    unlikeFactors:
      'Loads of unlike power factor: the legs add to {sumVolts:voltage}, more than leg to leg. They never add to less.',
    hotJoint: 'The joint gives off {jointWatts:power}. That much in one lug burns it.',
    commonSum:
      'Legs in step: the neutral carries the sum of both. It rises above neither leg; it drags both down.',
    soundRise:
      'Leg 2 stands above its source on a sound neutral. A long feeder does that: it is no fault of a joint.',
    oneLeg: 'One line has no second leg. Put 0 for the loads on leg 2.',
  },
  leavesOut: [
    'Loads with electronics: they draw more current as volts fall, and do not keep an impedance.',
    'Reactance of the feeder. On sizes up to 2/0 and house lengths it is the smaller part.',
    'Sag of the source itself: type its volts as they are under load.',
  ],
  search: [
    'open neutral',
    'lost neutral',
    'floating neutral',
    'one leg high one leg low',
    'unbalanced legs',
    'three-wire voltage drop',
    'neutral resistance',
    'see-saw',
  ],
};
