import type { WorksheetWords } from '../../worksheet-words.ts';
import { stringWindow } from './string-window.ts';

const { vocVolts, vmpVolts, vocPerC, vmpPerC, recordLowC, hotCellC, hotMargin } = stringWindow.inputs;
const { startVolts, trackLowVolts, trackHighVolts, maxVolts } = stringWindow.inputs;

export const stringLength: WorksheetWords = {
  inputs: {
    vocVolts: vocVolts!,
    vmpVolts: vmpVolts!,
    vocPerC: vocPerC!,
    vmpPerC: vmpPerC!,
    iscAmps: {
      label: 'Module short-circuit amps',
      symbol: 'Isc',
      hint: 'On the label on its back.',
      limit: 'No module on the market lies outside that.',
    },
    impAmps: {
      label: 'Module amps at maximum power',
      symbol: 'Imp',
      hint: 'On the same label.',
      limit: 'It is always below Isc.',
    },
    recordLowC: recordLowC!,
    hotCellC: hotCellC!,
    hotMargin: hotMargin!,
    startVolts: startVolts!,
    trackLowVolts: trackLowVolts!,
    trackHighVolts: trackHighVolts!,
    maxVolts: {
      ...maxVolts!,
      hint: 'The figure it must never see. Another meaning of “maximum input” is watts.',
    },
    place: {
      label: 'Code and place',
      options: {
        dwelling: 'NEC, one- or two-family dwelling: 600 V cap',
        elsewhere: 'NEC, elsewhere',
        otherCode: 'Another code: its cap and its table are not checked',
      },
      hint: 'Your local code and its edition govern.',
    },
    usableAmps: {
      label: 'Amps the tracker will use',
      hint: 'Over it power is left unused. Leave empty when unknown.',
      limit: 'Read it again if it lies outside.',
    },
    shortCircuitAmps: {
      label: 'Tracker maximum short-circuit amps',
      hint: 'Over it the input can be destroyed. A different figure from the one above.',
      limit: 'Read it again if it lies outside.',
    },
    modules: {
      label: 'Modules at hand',
      hint: 'To split them into equal strings on this tracker. May stay empty.',
      limit: 'Count one tracker at a time.',
    },
  },
  outputs: {
    verdict: {
      label: 'Strings on this tracker',
      verdicts: {
        fits: 'There is a length that fits',
        tableSaysFewer: 'The code table allows fewer than the coefficient',
        none: 'No length fits',
      },
    },
    least: { label: 'Fewest modules in series' },
    most: { label: 'Most when cold, by coefficient' },
    mostTable: { label: 'Most when cold, by the code table' },
    leastToStart: { label: 'Fewest that start when hot' },
    leastToTrack: { label: 'Fewest that stay in the tracking window when hot' },
    mostTracking: { label: 'Most that work inside the tracking window at 25 °C' },
    capVolts: { label: 'Volts it must stay under' },
    vocColdEach: { label: 'One module cold, by coefficient' },
    vocColdTableEach: { label: 'One module cold, by the code table' },
    vocHotEach: { label: 'One module hot, open' },
    vmpHotEach: { label: 'One module hot, working, with margin' },
    mostStrings: { label: 'Most strings in parallel on this input' },
    length: { label: 'Your modules: in series' },
    strings: { label: 'Your modules: strings' },
    leftOver: { label: 'Your modules: left over' },
  },
  working: {
    vocCold: {
      what: 'One module on the coldest morning, by its coefficient',
      formula: 'Voc × (1 + b × (Tc − 25 °C))',
      numbers:
        '{vocVolts:voltage} × (1 + {vocPerC:temperatureCoefficient} × ({recordLowC:temperature:°C} − 25 °C))',
      result: '{vocColdEach:voltage}',
    },
    vocColdTable: {
      what: 'The same by NEC 2020 Table 690.7(A)',
      formula: 'Voc × table factor',
      numbers: '{vocVolts:voltage} × {factor:plain}',
      result: '{vocColdTableEach:voltage}',
    },
    most: {
      what: 'Most modules by coefficient, rounded down',
      formula: 'volts cap ÷ Voc cold of one',
      numbers: '{capVolts:voltage} ÷ {vocColdEach:voltage}',
      result: '{most:count}',
    },
    mostTable: {
      what: 'Most modules by the table, rounded down',
      formula: 'volts cap ÷ Voc cold of one',
      numbers: '{capVolts:voltage} ÷ {vocColdTableEach:voltage}',
      result: '{mostTable:count}',
    },
    vocHot: {
      what: 'One module on a hot afternoon, open',
      formula: 'Voc × (1 + b × (Th − 25 °C))',
      numbers:
        '{vocVolts:voltage} × (1 + {vocPerC:temperatureCoefficient} × ({hotCellC:temperature:°C} − 25 °C))',
      result: '{vocHotEach:voltage}',
    },
    leastToStart: {
      what: 'Fewest modules that start, rounded up',
      formula: '1.1 × Vstart ÷ Voc hot of one',
      numbers: '{startMargin:plain} × {startVolts:voltage} ÷ {vocHotEach:voltage}',
      result: '{leastToStart:count}',
    },
    vmpHot: {
      what: 'One module on a hot afternoon, working, margin off',
      formula: 'Vmp × (1 + g × (Th − 25 °C)) × (1 − m)',
      numbers:
        '{vmpVolts:voltage} × (1 + {vmpPerC:temperatureCoefficient} × ({hotCellC:temperature:°C} − 25 °C)) × (1 − {hotMargin:ratio})',
      result: '{vmpHotEach:voltage}',
    },
    leastToTrack: {
      what: 'Fewest modules that track, rounded up',
      formula: 'lowest tracking volts ÷ Vmp hot of one',
      numbers: '{trackLowVolts:voltage} ÷ {vmpHotEach:voltage}',
      result: '{leastToTrack:count}',
    },
    mostStrings: {
      what: 'Most strings under the short-circuit limit, rounded down',
      formula: 'limit ÷ (1.25 × Isc)',
      numbers: '{shortCircuitAmps:current} ÷ (1.25 × {iscAmps:current})',
      result: '{mostStrings:count}',
    },
    split: {
      what: 'Your modules in equal strings, as few left over as can be',
      formula: 'strings × length + left over',
      numbers: '{strings:count} × {length:count} + {leftOver:count}',
      result: '{modules:count}',
    },
  },
  says: {
    fits: 'Put {least:count} to {most:count} of these modules in series. The longer string loses less in the cable; the shorter one keeps further from the maximum.',
    fitsOne:
      'Only {least:count} of these modules in series fit: one fewer fails in the heat, one more in the cold. Check every label figure twice.',
    tableSaysFewer:
      'The module’s coefficient allows {most:count}, the code table {mostTable:count}. The code lets you take the maker’s coefficient where the data sheet prints one (690.7(A)(1)). Ask the permit office which it accepts; the table is the safe answer.',
    tableLeavesNone:
      'By coefficient {least:count} to {most:count} fit. By the code table only {mostTable:count} are allowed, and that is too few for hot weather. Ask the permit office whether it accepts the maker’s coefficient (690.7(A)(1)); if not, another module or tracker is needed.',
    none: 'No number of these modules fits: hot weather needs {least:count}, the coldest morning allows {most:count}. Another module or another tracker is needed.',
    startAsks:
      'Starting on a hot afternoon sets the fewest: {leastToStart:count}. A tenth above the start volts is in it.',
    trackingAsks: 'Staying in the tracking window on a hot afternoon sets the fewest: {leastToTrack:count}.',
    capped:
      'The dwelling’s cap of {capVolts:voltage} is lower than the tracker’s {maxVolts:voltage}, and governs.',
    notChecked: 'Not checked: the cap and the cold table of your code. Only the tracker’s own maximum is.',
    belowTable: 'The code table stops at −40 °C. Below that only the module’s own coefficient serves.',
    aboveTracking:
      'More than {mostTracking:count} in series would work above the tracking window’s {trackHighVolts:voltage} in mild weather. Nothing is harmed, but power is left behind.',
    oneStringTooMuch:
      'Even one string can push more than the input’s {shortCircuitAmps:current} short-circuit limit: 1.25 × {iscAmps:current}. Do not connect it.',
    oneString: 'All {modules:count} modules go into one string.',
    split:
      'Your {modules:count} modules make {strings:count} strings of {length:count}. All strings on one input must be equal.',
    splitLeft:
      'Your {modules:count} modules make {strings:count} × {length:count}, with {leftOver:count} left over. Never put the odd ones into one of the strings. Give them an input of their own.',
    noSplit: 'Your {modules:count} modules cannot make even one string for this tracker.',
    vmpAboveVoc: stringWindow.says.vmpAboveVoc!,
    impAboveIsc:
      'Amps at maximum power must be below the short-circuit amps. Are the two label figures swapped?',
    windowUpsideDown: stringWindow.says.windowUpsideDown!,
    startAboveMaximum: stringWindow.says.startAboveMaximum!,
    trackingAboveMaximum: stringWindow.says.trackingAboveMaximum!,
  },
  plot: {
    title: 'String volts over modules in series against the tracker’s limits',
    x: 'Modules in series',
    y: 'String volts',
    lines: {
      vocCold: 'Cold, open, by coefficient',
      vocColdTable: 'Cold, open, by the code table',
      vocHot: 'Hot, open',
      vmpHot: 'Hot, working',
      maximum: 'Must stay under',
      start: 'Start, with a tenth',
      trackLow: 'Tracking, lowest',
      most: 'Most',
      least: 'Fewest',
    },
  },
  leavesOut: [
    'Shade. Longer strings bear one shaded module better.',
    'Light above 1000 W/m² at the edge of a cloud lifts Voc by about a per cent.',
    'Optimisers and shutdown devices at the modules: their own limits come first.',
    'The power limit of the tracker. Too many watts are only left unused.',
    'Fuses for strings in parallel: see the worksheet on parallel strings.',
  ],
  search: [
    'how many panels in series',
    'string sizing',
    'string length',
    'modules per string',
    '690.7',
    'min max modules',
    'split panels into strings',
  ],
};
