import type { WorksheetWords } from '../../worksheet-words.ts';
import { fuseBasisSays } from './nec-basis.ts';
import { stringCurrent } from './string-current.ts';
import { stringLength } from './string-length.ts';

const { vocVolts, vmpVolts, iscAmps, impAmps } = stringLength.inputs;

export const parallelStrings: WorksheetWords = {
  inputs: {
    vocVolts: vocVolts!,
    vmpVolts: vmpVolts!,
    iscAmps: iscAmps!,
    impAmps: impAmps!,
    modules: { label: 'Modules in series', symbol: 'N', limit: 'Count them; do not trust the drawing.' },
    strings: { label: 'Strings of that length', symbol: 'n', limit: 'On this one input.' },
    otherModules: {
      label: 'Modules in series in the other strings',
      hint: 'Only when some strings are longer or shorter. May stay empty.',
      limit: 'Same module, other length.',
    },
    otherStrings: { label: 'Other strings', hint: '0 when all are equal.', limit: 'On this one input.' },
    basis: {
      ...stringCurrent.inputs.basis!,
      options: {
        'nec-2023': 'NEC 2023',
        'nec-2020': 'NEC 2020',
        'nec-2017': 'NEC 2017',
        iec: 'IEC 60364-7-712',
        other: 'Another code: not checked',
      },
    },
    seriesFuseAmps: {
      label: 'Maximum series fuse of the module',
      hint: 'On the module’s label. Without it the need for fuses is not checked.',
      limit: 'Labels print 10 to 40 A.',
    },
    conductorAmps: {
      label: 'What one string’s wires may carry',
      hint: 'After heat and company: see string current. May stay empty.',
      limit: 'One string’s wires, not the run after the combiner.',
    },
    backfeedAmps: {
      label: 'Amps the inverter can feed back into the array',
      hint: 'In the inverter’s manual. 0 for most.',
      limit: 'Read it again if it lies outside.',
    },
  },
  outputs: {
    fuses: {
      label: 'A fuse in each string',
      verdicts: {
        needed: 'Needed',
        notNeeded: 'Not needed',
        noFuseFits: 'Needed, and no standard fuse fits this module',
        notChecked: 'Not checked',
      },
    },
    match: {
      label: 'The strings together',
      verdicts: {
        equal: 'Equal: nothing lost',
        smallLoss: 'Unequal, little lost',
        loss: 'Unequal: harvest is lost',
        oneString: 'One string alone',
      },
    },
    faultAmps: { label: 'The others can push into a faulted string' },
    bearsAmps: { label: 'Module and wires bear' },
    leastFuseAmps: { label: 'Smallest standard fuse' },
    mostFuseAmps: { label: 'Largest fuse the module allows' },
    lossShare: { label: 'Lost by joining them' },
    lossWatts: { label: 'Lost in full sun' },
    bestVolts: { label: 'Best volts together' },
    bestWatts: { label: 'Best power together' },
    openVolts: { label: 'Volts when nothing is drawn' },
    backAmps: { label: 'Backwards through each shorter string then' },
    coldRiskVolts: { label: 'Open volts of the longest string alone, 25 °C' },
  },
  working: {
    fault: {
      what: 'What the others can push into one faulted string',
      formula: '(strings − 1) × factor × Isc + feed back',
      numbers: '{others:count} × {factor:plain} × {iscAmps:current} + {backfeedAmps:current}',
      result: '{faultAmps:current}',
    },
    bears: {
      what: 'What module and wires bear: the smaller',
      formula: 'factor × maximum series fuse; wires',
      numbers: '{factor:plain} × {seriesFuseAmps:current}',
      result: '{bearsAmps:current}',
    },
    fuse: {
      what: 'Smallest standard fuse (690.9(B), 240.6(A))',
      formula: 'next rating at or above 1.25 × 1.25 × Isc',
      numbers: '{ratedAmps:current}, up',
      result: '{leastFuseAmps:current}',
    },
    open: {
      what: 'Volts at which the amps of all strings add to nothing',
      formula: 'sum of all amps = 0',
      numbers: 'label curve: {vocVolts:voltage}, {vmpVolts:voltage}, {iscAmps:current}, {impAmps:current}',
      result: '{openVolts:voltage}',
    },
    back: {
      what: 'Backwards through one of the shorter strings at those volts',
      formula: 'label curve past its own Voc',
      numbers: 'at {openVolts:voltage}',
      result: '{backAmps:current}',
    },
    loss: {
      what: 'Lost by joining: best power together against each on its own',
      formula: '1 − together ÷ apart',
      numbers: '1 − {bestWatts:power} ÷ {apartWatts:power}',
      result: '{lossShare:ratio}',
    },
  },
  says: {
    ...fuseBasisSays,
    needed:
      'The other strings can push {faultAmps:current} into a faulted one, and it bears {bearsAmps:current}. Each string needs a fuse of its own, DC rated for the cold volts.',
    notNeeded:
      'What the other sources can push into one string stays within what it bears. No string fuses are needed by this rule.',
    noFuseFits:
      'Each string needs a fuse, the smallest standard one is {leastFuseAmps:current}, and the module allows {mostFuseAmps:current} at most. Fewer strings on one input, or another module.',
    codeNotCarried:
      'Your code is not carried here, so the need for fuses is not checked. Ask the permit office.',
    seriesFuseUnknown:
      'The module’s maximum series fuse is not known, so the need for fuses is not checked. It is on the label on its back.',
    iecSize:
      'The fuse’s rating is not sized here under IEC. The module’s and the fuse maker’s sheets give it; PV fuses (gPV) only.',
    equal: 'All strings are equal. In equal light they share evenly and nothing is lost.',
    oneString: 'One string alone has nobody to push into it but the inverter.',
    smallLoss:
      'The strings are unequal and lose {lossShare:ratio} together in equal light. Joined, they also hide each other’s faults.',
    loss: 'Joined, the strings lose {lossShare:ratio}, {lossWatts:power} in full sun: the short one cannot follow the volts of the long one. Give it a tracker of its own, or make all lengths equal.',
    backwards:
      'When nothing is drawn the long strings push {backAmps:current} backwards through each short one, in every bright hour with a full battery. Isolator open at the inverter does not stop it: they are joined before it.',
    conductorUnknown:
      'What one string’s wires may carry is not known, so the fault is not checked against them.',
    holderIsNoSwitch:
      'Joined strings feed each other with the isolator open. Never pull a plug or open a fuse holder under current.',
    noCurve:
      'A module’s best point lies far outside the straight line from Isc to Voc: 75 to 88 % of Voc at 88 to 97 % of Isc. Look at the four label figures again.',
    noVoltsRatio:
      'Volts at maximum power are 75 to 88 % of Voc on any module’s label. Look at the two again.',
    noAmpsRatio: 'Amps at maximum power are 88 to 97 % of Isc on any module’s label. Look at the two again.',
  },
  plot: {
    title: 'Amps over volts of strings joined on one input, full sun, 25 °C',
    x: 'Volts',
    y: 'Amps',
    lines: {
      together: 'Together',
      first: 'First strings',
      others: 'The others',
      zero: 'No current',
      best: 'Best point',
      open: 'Nothing drawn',
    },
  },
  leavesOut: [
    'Strings that face different ways: amps add, and lengths still must be equal.',
    'Different modules: unlike volts lose as unlike lengths do.',
    'Shade, and trackers caught at the lower of two peaks.',
    'Resistances inside the modules. They make backward amps a little smaller than shown.',
    'Blocking diodes: none are assumed.',
    'Whether the input bears all strings: see string current.',
  ],
  search: [
    'parallel strings',
    'string fuse needed',
    'do I need fuses',
    'reverse current',
    'backfeed',
    'unequal strings',
    'different length strings',
    'combiner',
    '690.9',
  ],
};
