import type { WorksheetWords } from '../../worksheet-words.ts';

export const linkEnds: WorksheetWords = {
  inputs: {
    resistors: {
      label: 'End resistors across the pair',
      symbol: 'n',
      hint: 'Two, one at each physical end, is right.',
      limit: 'More than eight is no link of this kind.',
    },
    endOhms: {
      label: 'Each end resistor',
      symbol: 'R',
      hint: '120 Ω on CAN and on most serial pairs.',
      limit: 'Outside that it ends no such cable.',
    },
    place: {
      label: 'Where the end resistors sit',
      options: { inside: 'Inside the devices at the ends', outside: 'In the cable or in plugs of their own' },
    },
    biasOhms: {
      label: 'Each bias resistor',
      symbol: 'Rb',
      hint: 'Serial pair only: one pulls up, one pulls down. Leave empty when there are none.',
      limit: 'Outside that it biases nothing.',
    },
    supplyVolts: {
      label: 'Supply of the bias resistors',
      symbol: 'Vs',
      hint: '5 V or 3.3 V in most devices.',
      limit: 'Logic supplies only.',
    },
    loadOhms: {
      label: 'All receivers together',
      symbol: 'Rr',
      hint: '12 kΩ for one unit load. Leave empty to skip.',
      limit: '375 Ω is the most a serial pair may carry.',
    },
    measuredOhms: {
      label: 'What the meter read, both plugs in',
      hint: 'Both devices off for more than a minute. Empty: the table alone.',
      limit: 'Over that, take it as open.',
    },
  },
  outputs: {
    bothInOhms: { label: 'Both plugs in, power off' },
    cableOhms: { label: 'One plug out, into the cable' },
    socketOhms: { label: 'One plug out, into its socket' },
    noneOhms: { label: 'With no end resistor' },
    oneOhms: { label: 'With one' },
    twoOhms: { label: 'With two' },
    threeOhms: { label: 'With three' },
    idleVolts: { label: 'Idle volts between the wires, power on' },
    measured: {
      label: 'Your reading says',
      verdicts: {
        shorted: 'A short',
        many: 'One resistor too many',
        good: 'Two resistors: sound',
        between: 'Neither one nor two: a bad contact, or something else across the pair',
        one: 'One resistor only',
        none: 'No resistor, or a broken pair',
        notRead: 'Not read yet',
      },
    },
    idle: {
      label: 'Bias',
      verdicts: {
        enough: 'Enough: 0.2 V or more',
        tooLittle: 'Under 0.2 V: idle is undefined',
        noBias: 'No bias resistors given',
      },
    },
  },
  working: {
    bothIn: {
      what: 'All side by side',
      formula: '1 ÷ (n ÷ R + 1 ÷ 2Rb + 1 ÷ Rr)',
      numbers: '{resistors:count} of {endOhms:resistance}, and what else is fitted',
      result: '{bothInOhms:resistance}',
    },
    cable: {
      what: 'Seen into the cable, one plug out',
      formula: 'one resistor less where it sits in the device',
      numbers: 'of {resistors:count}',
      result: '{cableOhms:resistance}',
    },
    table: {
      what: 'One, two and three resistors',
      formula: 'the same with 1, 2 and 3',
      numbers: '{oneOhms:resistance}, {twoOhms:resistance}',
      result: '{threeOhms:resistance}',
    },
    idle: {
      what: 'Idle volts',
      formula: 'Vs × Rp ÷ (2Rb + Rp)',
      numbers: '{supplyVolts:voltage:V}, Rb {biasOhms:resistance}',
      result: '{idleVolts:voltage}',
    },
  },
  says: {
    'measured-shorted': 'A short: part the plugs and read each side by itself. A dead port can be the short.',
    'measured-many': 'About 40 Ω is three resistors. Find the device in the middle that has one switched in.',
    'measured-good': 'Two resistors. It does not show which wire is which: a crossed pair reads the same.',
    'measured-between':
      'Two give {twoOhms:resistance}, one gives {oneOhms:resistance}. In between, look for a bad contact before you call a resistor missing.',
    'measured-one': 'One resistor is missing, or the wire to it is broken. Read from each end by itself.',
    'measured-none': 'No resistor answers: none is fitted, or the pair is broken between you and it.',
    'measured-notRead': 'Read it with both devices off and both plugs in.',
    open: 'Nothing stands across the pair: the meter shows over range.',
    idleLittle:
      'Idle stands at {idleVolts:voltage}, under the {threshold:voltage} a receiver needs. Noise then decides what it hears.',
    idleEnough:
      'Idle stands at {idleVolts:voltage}: at least the {threshold:voltage} that every receiver takes.',
    inside:
      'With a plug out, a sound link reads {endOhms:resistance} each way. About 60 Ω into the cable then means one too many.',
    outside: 'With a plug out the cable still reads as before, and the socket reads open: nothing is wrong.',
    powerOff:
      'Power on, an ohmmeter reads nonsense here and can harm a port. Both devices off, more than a minute.',
  },
  leavesOut: [
    'The resistance of the lead itself: a few tenths of an ohm on a short one.',
    'Devices whose end resistor is switched by software: off, they read open.',
  ],
  search: ['termination', 'terminator', '120 ohm', '60 ohm', 'end of line', 'CAN bus', 'RS-485', 'bias'],
};
