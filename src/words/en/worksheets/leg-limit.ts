import type { WorksheetWords } from '../../worksheet-words.ts';

export const legLimit: WorksheetWords = {
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
    ratedWatts: {
      label: 'Continuous power, all units together',
      symbol: 'P',
      limit: 'One site.',
    },
    legLimitWatts: {
      label: 'What one leg gives',
      symbol: 'L',
      hint: 'From the label. Empty: half of the whole.',
      limit: 'One leg of one site.',
    },
    leftShare: {
      label: 'Left of it after heat and height',
      symbol: 'd',
      hint: 'From the label’s derating. 100 % in a cool room near the sea.',
      limit: 'Less than a tenth is an inverter that is off.',
    },
    breakerAmps: {
      label: 'Output breaker, one pole',
      symbol: 'B',
      hint: 'The smallest between inverter and panel. Empty: not counted.',
      limit: 'One breaker.',
    },
    breakerKind: {
      label: 'Its listing',
      hint: 'Only a breaker in an assembly marked for it carries its whole rating for hours.',
      options: { standard: 'Ordinary: 80 % for good', full: 'Marked for 100 %' },
    },
    watts1: {
      label: 'Loads on leg 1, together',
      symbol: 'P1',
      hint: 'What runs at once.',
      limit: 'One leg.',
    },
    watts2: { label: 'Loads on leg 2, together', symbol: 'P2', limit: 'One leg.' },
    wattsAcross: {
      label: 'Loads from leg to leg, together',
      symbol: 'P12',
      hint: 'Half of each lands on either leg.',
      limit: 'One panel.',
    },
  },
  outputs: {
    verdict: {
      label: 'These loads',
      verdicts: {
        within: 'Within every limit',
        legOver: 'More than a leg of the inverter gives',
        breakerOver: 'More than the breaker carries for good',
        totalOver: 'More than the inverter gives as a whole',
      },
    },
    mostWatts: { label: 'Most for good, legs even' },
    limitedBy: {
      label: 'Limited by',
      verdicts: {
        inverterTotal: 'the inverter as a whole',
        inverterLeg: 'the inverter’s legs',
        breaker: 'the output breaker',
      },
    },
    legLimitEachWatts: { label: 'One leg of the inverter' },
    breakerLegWatts: { label: 'One pole of the breaker' },
    leg1Watts: { label: 'On leg 1' },
    leg2Watts: { label: 'On leg 2' },
    totalWatts: { label: 'Together' },
    fullerAmps: { label: 'Amps of the fuller leg' },
    spareWatts: { label: 'Room left on the fuller leg' },
    moveWatts: { label: 'To move over for even legs' },
    unevenShare: { label: 'Uneven by' },
  },
  working: {
    rated: {
      what: 'The whole, after heat and height',
      formula: 'P × d',
      numbers: '{ratedWatts:power} × {leftShare:ratio}',
      result: '{leftWatts:power}',
    },
    leg: {
      what: 'One leg of it',
      formula: 'L × d, or P ÷ 2 × d where the label is silent',
      numbers: 'of {ratedWatts:power} × {leftShare:ratio}',
      result: '{legLimitEachWatts:power}',
    },
    breaker: {
      what: 'One pole of the breaker, for good',
      formula: 'B × 80 % × V, or B × V where marked for 100 %',
      numbers: '{breakerAmps:current} × {share:ratio} × {legVolts:voltage}',
      result: '{breakerLegWatts:power}',
    },
    fuller: {
      what: 'The fuller leg',
      formula: '(own loads + half of those from leg to leg) ÷ V',
      numbers: '{fullerWatts:power} ÷ {legVolts:voltage}',
      result: '{fullerAmps:current}',
    },
  },
  says: {
    within: 'These loads fit. The fuller leg has {spareWatts:power} left.',
    legOver:
      'One leg is asked for more than its {legLimitEachWatts:power}. The inverter trips on that leg, with the other half idle.',
    breakerOver:
      'One leg is asked for more than the {breakerLegWatts:power} that its breaker carries for good. It trips after a while, warm.',
    totalOver:
      'Both legs fit, but together they ask for {totalWatts:power}: more than the inverter gives as a whole.',
    breakerLimits: 'The breaker, not the inverter, limits this site to {mostWatts:power} for good.',
    uneven: 'Moving {moveWatts:power} from the fuller leg to the other makes them even.',
    noBreaker: 'No breaker is typed, so none is counted. Read the one between inverter and panel.',
    halfTaken:
      'The label’s figure for one leg is not typed; half of the whole is taken. Some units give less.',
    oneLeg: 'One line has no second leg. Put 0 for the loads on leg 2.',
    nothingAcross: 'There are no volts from leg to leg here: no load can run on them. Put 0.',
  },
  leavesOut: [
    'Volt-amperes: motors and electronics take more of them than watts, and the inverter trips on amps.',
    'Starts: see the worksheet on motor start.',
    'The battery and its cable: they may end before the inverter does.',
    'At 120/208 V a load from leg to leg takes 15 % more amps of each leg than its half of the watts.',
  ],
  search: [
    'per leg limit',
    'one leg overload',
    'half the inverter',
    'trips at half load',
    'leg balance',
    'inverter nameplate per leg',
    'breaker limits',
  ],
};
