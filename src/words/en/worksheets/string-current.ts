import type { WorksheetWords } from '../../worksheet-words.ts';
import { pvBasisSays } from './nec-basis.ts';

const columns = { c60: '60 °C', c75: '75 °C', c90: '90 °C' };

export const stringCurrent: WorksheetWords = {
  inputs: {
    iscAmps: {
      label: 'Module short-circuit amps',
      symbol: 'Isc',
      hint: 'On the label on its back, not the amps at maximum power.',
      limit: 'No module on the market lies outside that.',
    },
    strings: {
      label: 'Strings in parallel on this conductor',
      symbol: 'n',
      hint: '1 for the wires of one string, all of them after the combiner.',
      limit: 'Count strings, not modules.',
    },
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
    areaMm2: {
      label: 'Conductor size',
      hint: 'As 10 AWG or 6 mm². A metric size takes the AWG row below it.',
      limit: 'The ampacity table starts at 14 AWG.',
    },
    metal: { label: 'Metal', options: { copper: 'Copper', aluminium: 'Aluminium' } },
    insulation: {
      label: 'Rating of the insulation',
      options: columns,
      hint: 'PV wire, USE-2, THWN-2, XHHW-2: 90 °C. In a wet place the wet rating counts.',
    },
    termination: {
      label: 'Lowest rating of the lugs at both ends',
      options: columns,
      hint: 'Printed at the terminal. Not marked, and 100 A or less: 60 °C.',
    },
    ambientC: {
      label: 'Hottest air around the conductor',
      hint: 'Wires behind modules and conduit on a roof: far above the air. Free air under an array 15 to 20 °C more (common practice).',
      limit: 'Above 85 °C no insulation of the table may carry anything.',
    },
    conductors: {
      label: 'Conductors that carry current in the same raceway',
      hint: 'Two for each string in it. In free air: 2.',
      limit: 'Equipment ground does not count.',
    },
    device: {
      label: 'Fuse or breaker on this conductor',
      options: { fitted: 'Yes', none: 'No' },
      hint: 'One or two strings often need none: see the worksheet on parallel strings.',
    },
    deviceAmps: {
      label: 'Its rating',
      hint: 'Leave empty to size it.',
      limit: 'DC rated, for the cold volts of the string.',
    },
    seriesFuseAmps: {
      label: 'Maximum series fuse of the module',
      hint: 'On the module’s label. Counts on the wires of one string; leave empty after the combiner.',
      limit: 'Labels print 10 to 40 A.',
    },
    usableAmps: {
      label: 'Amps the tracker will use',
      hint: 'Over it power is left unused. May stay empty.',
      limit: 'Read it again if it lies outside.',
    },
    shortCircuitAmps: {
      label: 'Tracker maximum short-circuit amps',
      hint: 'Over it the input can be destroyed. May stay empty.',
      limit: 'Read it again if it lies outside.',
    },
  },
  outputs: {
    verdict: {
      label: 'Conductor and protection',
      verdicts: {
        fits: 'Conductor and device fit',
        tooSmall: 'The conductor is too small',
        tooHot: 'Too hot for this insulation',
        notProtected: 'The device does not protect this conductor',
        deviceTooSmall: 'The device is too small and will open for nothing',
        deviceOverModule: 'The device is larger than the module allows',
        overTracker: 'Over the tracker’s short-circuit limit',
        notChecked: 'Not checked: this code is not carried here',
      },
    },
    totalIscAmps: { label: 'Short-circuit amps together' },
    maximumAmps: { label: 'Maximum circuit current' },
    ratedAmps: { label: 'What conductor and device must be rated for' },
    plainAmps: { label: 'Conductor, no factors' },
    correctedAmps: { label: 'Conductor, corrected where it lies' },
    smallestMm2: { label: 'Smallest conductor: the larger of the two rules' },
    plainMm2: { label: 'Smallest by rule 1' },
    correctedMm2: { label: 'Smallest by rule 2' },
    leastDeviceAmps: { label: 'Smallest standard device' },
    mostDeviceAmps: { label: 'Largest device that protects this conductor' },
  },
  working: {
    total: {
      what: 'Short-circuit amps together',
      formula: 'n × Isc',
      numbers: '{strings:count} × {iscAmps:current}',
      result: '{totalIscAmps:current}',
    },
    maximum: {
      what: 'Maximum circuit current: light above 1000 W/m² (690.8(A)(1))',
      formula: '1.25 × Isc together',
      numbers: '1.25 × {totalIscAmps:current}',
      result: '{maximumAmps:current}',
    },
    rated: {
      what: 'Rule 1: current that flows for hours, no factors (690.8(B)(1), 690.9(B))',
      formula: '1.25 × maximum current',
      numbers: '1.25 × {maximumAmps:current}',
      result: '{ratedAmps:current}',
    },
    plain: {
      what: 'The conductor for rule 1: the smaller of insulation column and lug column',
      formula: 'insulation; lugs',
      numbers: '{insulationAmps:current}; {terminationAmps:current}',
      result: '{plainAmps:current}, must be {ratedAmps:current} or more',
    },
    corrected: {
      what: 'The conductor for rule 2: where it lies (690.8(B)(2))',
      formula: 'insulation column × heat × company',
      numbers: '{tableAmps:current} × {ambientFactor:plain} × {bundlingFactor:plain}',
      result: '{correctedAmps:current}, must be {maximumAmps:current} or more',
    },
    smallest: {
      what: 'Smallest conductor: the larger of the two, never both multiplied; larger still where the device asks',
      formula: 'rule 1; rule 2',
      numbers: '{plainMm2:wireSize}; {correctedMm2:wireSize}',
      result: '{smallestMm2:wireSize}',
    },
    device: {
      what: 'Smallest device: the next standard rating (240.6(A))',
      formula: 'next rating at or above rule 1',
      numbers: '{ratedAmps:current}, up',
      result: '{leastDeviceAmps:current}',
    },
  },
  says: {
    ...pvBasisSays,
    fits: 'Both rules are met: {plainAmps:current} against {ratedAmps:current} without factors, {correctedAmps:current} against {maximumAmps:current} where it lies.',
    tooSmall:
      'This conductor does not meet both rules: {plainAmps:current} against {ratedAmps:current} without factors, {correctedAmps:current} against {maximumAmps:current} where it lies. It can overheat in its raceway on every sunny day.',
    nextSize: 'The smallest that does, protected as typed, is {smallestMm2:wireSize}.',
    noSize: 'No size of the table does, protected as typed. Look at heat, company and device first.',
    tooHot:
      'At {ambientC:temperature} this insulation may carry nothing. Move the conductor out of the heat or take a higher rating.',
    notProtected:
      'A device of {deviceAmps:current} lets this conductor burn before it opens: it protects up to {mostDeviceAmps:current}. Take the larger conductor, not the smaller fuse.',
    deviceTooSmall:
      'A device of {deviceAmps:current} is under {ratedAmps:current}. It ages and opens on a bright day with nothing wrong.',
    deviceOverModule:
      'The module’s label allows a fuse of {seriesFuseAmps:current} at most, and this is {deviceAmps:current}. A fault would burn inside a module before the fuse opens. Fewer strings in parallel or another module.',
    overTracker:
      'The strings can push {trackerAmps:current} (1.25 × {totalIscAmps:current}) into an input that bears {shortCircuitAmps:current}. A fault inside would not be contained. Take strings off this input.',
    notChecked:
      'Only the NEC is carried here, so the conductor and its device are not checked. Your code has its own factors: find them there, and do not take these.',
    seriesFuseUnknown:
      'The module’s maximum series fuse is not known, so the device is not checked against it.',
    noDevice:
      'With no device the strings’ own current is all that can flow, unless other strings or the inverter can feed back. Check that on the worksheet on parallel strings.',
    clips:
      'The strings can give more than the {usableAmps:current} that the tracker uses. Nothing is harmed by that; the rest is left unused in full sun.',
    trackerUnknown: 'The tracker’s short-circuit limit is not known, so it is not checked.',
    bothRules:
      'Rule 1 and rule 2 stand side by side. Whoever multiplies 156 % and the heat factors pays for copper that the code does not ask for.',
    noRow: 'The table has no row for that conductor. Copper starts at 14 AWG, aluminium at 12 AWG.',
  },
  plot: {
    title: 'What this conductor may carry over the heat around it',
    x: 'Air around the conductor',
    y: 'Amps',
    lines: {
      corrected: 'Conductor where it lies (rule 2)',
      maximum: 'Rule 2 asks for',
      plain: 'Conductor without factors (rule 1)',
      rated: 'Rule 1 asks for',
      here: 'Here',
    },
  },
  leavesOut: [
    'Drop: a conductor that may carry the current can still lose too much on a long run.',
    'The 33 °C that the code adds for raceways lying on a roof: add it to the air yourself.',
    'The volts of wire, fuse and holder against the string’s cold volts.',
    'Whether a device is needed at all: see parallel strings.',
    'Devices listed for 100 % of their rating, and modules with electronics of their own (690.8(A) has other rules).',
    'Amendments of your state or county.',
  ],
  search: [
    '690.8',
    '690.9',
    '156 %',
    'pv wire size',
    'string fuse size',
    'conductor ampacity',
    'max series fuse',
    'Isc times 1.25',
    'combiner fuse',
  ],
};
