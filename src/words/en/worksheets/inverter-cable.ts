import type { WorksheetWords } from '../../worksheet-words.ts';

export const inverterCable: WorksheetWords = {
  inputs: {
    basis: {
      label: 'Code',
      options: {
        'nec-2023': 'NEC 2023',
        'nec-2020': 'NEC 2020',
        'nec-2017': 'NEC 2017',
        other: 'Another code: not checked',
      },
      hint: 'Your local code and its edition govern. Ask the permit office.',
    },
    acWatts: {
      label: 'Continuous AC watts on this cable',
      symbol: 'P',
      hint: 'Rated watts of the inverters that this cable feeds: one of them, if each has its own.',
      limit: 'One cable.',
    },
    efficiency: {
      label: 'Efficiency, battery to AC',
      symbol: 'e',
      hint: 'At full load, some per cent under its best.',
      limit: 'The figure on the front of a data sheet is the best it ever does.',
    },
    idleWatts: {
      label: 'Idle draw',
      symbol: 'Pi',
      hint: '0 when the efficiency already holds it.',
      limit: 'More than that is a load.',
    },
    lowVolts: {
      label: 'Lowest battery volts the inverter runs on',
      symbol: 'V',
      hint: 'From its label, not the bank’s nominal volts.',
      limit: 'Banks of the 48 V class and below.',
    },
    areaMm2: {
      label: 'Cable size, one conductor',
      hint: 'As 4/0 AWG or 70 mm². A metric size takes the AWG row below it. Copper only.',
      limit: 'The ampacity table starts at 14 AWG.',
    },
    runs: {
      label: 'Conductors in parallel on each pole',
      symbol: 'k',
      hint: 'Same length, size, lugs. From 1/0 AWG up only.',
      limit: 'More than that belongs on bars.',
    },
    lengthM: {
      label: 'Cable length, one way',
      symbol: 'L',
      limit: 'One way; the worksheet counts out and back.',
    },
    insulation: {
      label: 'Rating of the insulation',
      options: { c75: '75 °C', c90: '90 °C' },
      hint: 'A cable with no such marking is not one this table knows.',
    },
    termination: {
      label: 'Lowest rating of the lugs and devices at its ends',
      options: { c60: '60 °C', c75: '75 °C' },
      hint: 'Printed at the terminal. Not marked, and 100 A or less: 60 °C.',
    },
    ambientC: {
      label: 'Hottest air around the cable',
      hint: 'Behind the inverter it is the air that leaves it.',
      limit: 'Above 85 °C no insulation of the table may carry anything.',
    },
    conductors: {
      label: 'Conductors that carry current in the same conduit',
      hint: 'Plus and minus count two. In free air: 2.',
      limit: 'Equipment ground does not count.',
    },
    fuseAmps: {
      label: 'Fuse or breaker fitted',
      symbol: 'F',
      hint: 'Leave empty to size it.',
      limit: 'DC rated, above the bank’s full volts.',
    },
    interruptingAmps: {
      label: 'Short-circuit amps it can break, on DC',
      hint: 'Printed as AIC or kA, for DC at these volts. An AC figure does not count. Empty: not known.',
      limit: 'Read it again if it lies outside.',
    },
    fullVolts: {
      label: 'Bank volts when full',
      symbol: 'Vf',
      hint: 'Cells in series times 3.65 V.',
      limit: 'Banks of the 48 V class and below.',
    },
    packs: { label: 'Packs in parallel', symbol: 'm', limit: 'One bank.' },
    packOhms: {
      label: 'Resistance of one pack',
      symbol: 'R',
      hint: 'Post to post, from its data sheet. Empty: not known.',
      limit: 'In milliohms.',
    },
    packShortAmps: {
      label: 'Short-circuit amps on the pack’s label',
      symbol: 'Is',
      hint: 'Stands before the figure worked out from its resistance. May be empty.',
      limit: 'Packs give some hundreds to some thousands.',
    },
  },
  outputs: {
    cable: {
      label: 'Cable',
      verdicts: {
        fits: 'Carries it',
        thin: 'Too thin',
        tooHot: 'Too hot for this insulation',
        noParallel: 'Too small to run in parallel',
        notChecked: 'Not checked: this code is not carried here',
      },
    },
    fuse: {
      label: 'Fuse or breaker',
      verdicts: {
        fits: 'Fits current and cable',
        tooSmall: 'Too small: it opens for nothing',
        tooLarge: 'Too large: it does not protect the cable',
        toChoose: 'To be chosen',
        notChecked: 'Not checked',
      },
    },
    breaking: {
      label: 'Breaking a dead short',
      verdicts: {
        breaks: 'It can break it',
        close: 'Too close to rely on',
        cannot: 'It cannot break it',
        notChecked: 'Not checked: a figure is missing',
      },
    },
    amps: { label: 'Battery amps at rated power and lowest volts' },
    ratedAmps: { label: 'What cable and fuse must be rated for' },
    plainAmps: { label: 'Cable, no factors' },
    correctedAmps: { label: 'Cable, corrected where it lies' },
    leastFuseAmps: { label: 'Smallest standard fuse' },
    mostFuseAmps: { label: 'Largest fuse that protects this cable' },
    smallestMm2: { label: 'Smallest cable for it, each conductor' },
    shortAmps: { label: 'Dead short at the bank’s posts' },
    packBreakAmps: { label: 'Each pack’s own device must break' },
    dropVolts: { label: 'Volts lost in the cable' },
    dropShare: { label: 'Of the lowest volts' },
  },
  working: {
    amps: {
      what: 'Battery amps at rated power and lowest volts',
      formula: '(P ÷ e + Pi) ÷ V',
      numbers: '({acWatts:power} ÷ {efficiency:ratio} + {idleWatts:power}) ÷ {lowVolts:voltage}',
      result: '{amps:current}',
    },
    rated: {
      what: 'Rule 1: it flows for hours, no factors',
      formula: '1.25 × amps',
      numbers: '{factor:plain} × {amps:current}',
      result: '{ratedAmps:current}',
    },
    plain: {
      what: 'Cable for rule 1: the smaller of insulation and lugs by Table 310.16, times k',
      formula: 'not under rule 1',
      numbers: '{plainAmps:current} for {ratedAmps:current}',
      result: '{plainAmps:current}',
    },
    corrected: {
      what: 'Cable for rule 2: insulation’s column, ambient and bundling factors, times k',
      formula: 'not under the amps themselves',
      numbers: 'factors {ambientFactor:plain:2} × {bundlingFactor:plain:2}, for {amps:current}',
      result: '{correctedAmps:current}',
    },
    least: {
      what: 'Smallest standard fuse (240.6(A))',
      formula: 'next rating not under rule 1',
      numbers: '{ratedAmps:current}, rounded up',
      result: '{leastFuseAmps:current}',
    },
    most: {
      what: 'Largest fuse that protects this cable (240.4)',
      formula: 'next rating above the smaller ampacity',
      numbers: '{usableAmps:current}, rounded up',
      result: '{mostFuseAmps:current}',
    },
    short: {
      what: 'Dead short at the bank’s posts, cable left out',
      formula: 'm × Vf ÷ R',
      numbers: '{packs:count} × {fullVolts:voltage} ÷ {packOhms:resistance:mΩ}',
      result: '{shortAmps:current}',
    },
    shortLabel: {
      what: 'Dead short at the bank’s posts, by the label',
      formula: 'm × Is',
      numbers: '{packs:count} × {packShortAmps:current}',
      result: '{shortAmps:current}',
    },
    drop: {
      what: 'Volts lost, out and back, copper at 75 °C',
      formula: '2 × L × r × amps ÷ k',
      numbers: '2 × {oneWayOhms:resistance:mΩ} in {lengthM:length} × {amps:current} ÷ {runs:count}',
      result: '{dropVolts:voltage}',
    },
  },
  says: {
    'cable-thin':
      'The cable is too thin. It must be rated for {ratedAmps:current} with no factors and still carry {amps:current} where it lies.',
    'cable-tooHot': 'At this temperature the insulation may carry nothing. Lay the cable elsewhere.',
    'cable-noParallel':
      'Conductors under 1/0 AWG may not run in parallel. One of them can end up with all of the current.',
    'cable-notChecked':
      'Cable and fuse are not checked: this code is not carried here. The amps and the dead short are physics and hold under any code.',
    byHeat:
      'It is the heat around it that makes it too thin. Cooler air or fewer conductors together would help.',
    'fuse-tooSmall':
      'A fuse under {ratedAmps:current} opens in an hour of full power, or ages until it does. {leastFuseAmps:current} is the smallest standard rating.',
    'fuse-tooLarge':
      'With {fuseAmps:current} the cable can burn before the fuse opens. Fit a smaller fuse, or a thicker cable.',
    'fuse-toChoose':
      'A fuse of {leastFuseAmps:current} or the next above, and none above what protects the cable. DC rated, and of a kind that breaks the dead short.',
    'fuse-notChecked': 'The fuse is not checked against the cable.',
    'breaking-breaks':
      'A dead short at the bank drives about {shortAmps:current}; the device is made to break {interruptingAmps:current}. That must be its figure for DC.',
    'breaking-close':
      'A dead short at the bank drives about {shortAmps:current}, worked out from a resistance that may be printed too high. The {interruptingAmps:current} of the device leave too little in hand. Ask for the pack’s short-circuit current, or fit a device with a higher DC breaking capacity.',
    'breaking-cannot':
      'A dead short at the bank drives about {shortAmps:current}, more than the {interruptingAmps:current} the device can break. It would burst and go on burning. Fit one with a higher DC breaking capacity before this bank is used.',
    'breaking-notChecked':
      'Whether the device can break a dead short is not checked: its DC breaking capacity or the pack’s resistance is missing. Packs give thousands of amperes, and more with each in parallel. Find the figure before you rely on the device.',
    nextSize: 'The smallest that fits here is {smallestMm2:wireSize}, each conductor.',
    noSize: 'No size of the table fits. Use conductors in parallel, split the load, or use bars.',
    eachPack:
      'Each pack needs a device of its own that breaks {packBreakAmps:current}: the others feed a short in it. A pack’s electronics are not a fuse.',
    drop: 'The cable loses {dropShare:ratio} of the volts at full power: {dropVolts:voltage}. Shorter or thicker, or the inverter cuts off early.',
    surge:
      'A surge of some seconds is the fuse’s time curve to bear. A slow fuse of this rating does; check its data sheet.',
    local:
      'Your local code, the labels and the manual of the equipment govern. The fuse goes as near the bank’s post as can be.',
    tooManyAmps:
      'That is {amps:current} at the lowest volts. Over {mostAmps:current} it is bars and an engineer’s work. Are the watts those of this one cable?',
    voltsTurned:
      'The full volts of {fullVolts:voltage} are under the lowest volts of {lowVolts:voltage}. Read both again.',
  },
  plot: {
    title: 'Amps by battery volts',
    x: 'Battery volts',
    y: 'Amps',
    lines: {
      flows: 'What flows at full power',
      rated: 'What cable and fuse must be rated for',
      cable: 'Cable, no factors',
      corrected: 'Cable, corrected',
      fuse: 'Fuse',
    },
  },
  leavesOut: [
    'Cables the table does not know, such as marine or welding cable: their own data sheets rule, where your code allows them.',
    'Charge current above the inverter’s draw: check it the same way.',
    'Inductance and time of a short: a fuse’s own curves.',
    'Equipment ground, conduit fill, bending room, torque.',
  ],
  search: [
    'battery cable size',
    'what fuse for my inverter',
    'class T fuse',
    'AIC',
    'interrupting rating',
    'short circuit current of lithium battery',
    '4/0 cable',
    'ampacity',
  ],
};
