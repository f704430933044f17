import type { WorksheetWords } from '../../worksheet-words.ts';

export const stringWindow: WorksheetWords = {
  inputs: {
    vocVolts: {
      label: 'Module open-circuit volts',
      symbol: 'Voc',
      hint: 'On the label on its back, at 25 °C cell.',
      limit: 'No module on the market lies outside that.',
    },
    vmpVolts: {
      label: 'Module volts at maximum power',
      symbol: 'Vmp',
      hint: 'On the same label.',
      limit: 'It is always below Voc.',
    },
    vocPerC: {
      label: 'Voc temperature coefficient',
      symbol: 'b',
      hint: 'Negative, on the data sheet. If it is printed in V/°C, divide it by Voc and write it in per cent.',
      limit: 'Silicon loses 0.2 to 0.4 % per °C. Is the sign there?',
    },
    vmpPerC: {
      label: 'Vmp temperature coefficient',
      symbol: 'g',
      hint: 'Negative. Where the data sheet has none, take the one of Pmax: it promises a little too much, and the margin below covers that.',
      limit: 'Never take the one of Voc: it is far too kind when hot.',
    },
    modules: { label: 'Modules in series', symbol: 'N', limit: 'Count them; do not trust the drawing.' },
    recordLowC: {
      label: 'Record low air temperature',
      symbol: 'Tc',
      hint: 'The coldest ever here, not the usual winter. At dawn the cells are as cold as the air.',
      limit: 'The coldest hour sets the highest volts, so it cannot be above 25 °C.',
    },
    hotCellC: {
      label: 'Cell temperature on a hot afternoon',
      symbol: 'Th',
      hint: 'Air temperature plus 25 to 35 °C in full sun, more on a roof with no gap behind.',
      limit: 'Cells in sun stand between rating and about 95 °C.',
    },
    hotMargin: {
      label: 'Margin on hot working volts',
      symbol: 'm',
      hint: '2 to 3 % for a borrowed coefficient, tolerance and age.',
      limit: 'More than a tenth would hide a string that works.',
    },
    startVolts: {
      label: 'Tracker start volts',
      symbol: 'Vstart',
      hint: 'In the inverter’s manual.',
      limit: 'Read it again if it lies outside.',
    },
    trackLowVolts: { label: 'Tracking window, lowest volts', limit: 'Read it again if it lies outside.' },
    trackHighVolts: { label: 'Tracking window, highest volts', limit: 'Read it again if it lies outside.' },
    maxVolts: {
      label: 'Tracker absolute maximum volts',
      symbol: 'Vmax',
      hint: 'The figure it must never see. In a dwelling under the NEC, 600 V is the cap even where the tracker takes more.',
      limit: 'Read it again if it lies outside.',
    },
  },
  outputs: {
    verdict: {
      label: 'String and tracker',
      verdicts: {
        ok: 'Fits the window',
        nearMaximum: 'Close to the maximum when cold',
        overMaximum: 'Over the maximum when cold',
        startsNever: 'Does not start when hot',
        startsMarginal: 'Starts with nothing to spare when hot',
        belowTracking: 'Falls out of the tracking window when hot',
        aboveTracking: 'Works above the tracking window in mild weather',
      },
    },
    vocColdVolts: { label: 'Highest volts, by coefficient' },
    vocColdTableVolts: { label: 'Highest volts, by the code table' },
    vocHotVolts: { label: 'Open-circuit volts when hot' },
    vmpHotVolts: { label: 'Working volts when hot' },
    vmpHotSafeVolts: { label: 'Working volts when hot, with margin' },
    stopsStartingC: { label: 'Cell temperature above which it cannot start' },
    leastModules: { label: 'Fewest modules that work when hot' },
    mostModules: { label: 'Most modules when cold, by coefficient' },
    mostModulesTable: { label: 'Most modules when cold, by the code table' },
  },
  working: {
    vocCold: {
      what: 'Open-circuit volts on the coldest morning, by the module’s coefficient',
      formula: 'N × Voc × (1 + b × (Tc − 25 °C))',
      numbers:
        '{modules:count} × {vocVolts:voltage} × (1 + {vocPerC:temperatureCoefficient} × ({recordLowC:temperature:°C} − 25 °C))',
      result: '{vocColdVolts:voltage}',
    },
    vocColdTable: {
      what: 'The same by NEC 2020 Table 690.7(A)',
      formula: 'N × Voc × table factor',
      numbers: '{modules:count} × {vocVolts:voltage} × {factor:plain}',
      result: '{vocColdTableVolts:voltage}',
    },
    vocHot: {
      what: 'Open-circuit volts on a hot afternoon',
      formula: 'N × Voc × (1 + b × (Th − 25 °C))',
      numbers:
        '{modules:count} × {vocVolts:voltage} × (1 + {vocPerC:temperatureCoefficient} × ({hotCellC:temperature:°C} − 25 °C))',
      result: '{vocHotVolts:voltage}',
    },
    vmpHot: {
      what: 'Working volts on a hot afternoon',
      formula: 'N × Vmp × (1 + g × (Th − 25 °C))',
      numbers:
        '{modules:count} × {vmpVolts:voltage} × (1 + {vmpPerC:temperatureCoefficient} × ({hotCellC:temperature:°C} − 25 °C))',
      result: '{vmpHotVolts:voltage}',
    },
    vmpHotSafe: {
      what: 'The same with the margin off',
      formula: 'Vmp hot × (1 − m)',
      numbers: '{vmpHotVolts:voltage} × (1 − {hotMargin:ratio})',
      result: '{vmpHotSafeVolts:voltage}',
    },
    mostModules: {
      what: 'Most modules that stay under the maximum, by coefficient',
      formula: 'Vmax ÷ Voc cold of one, rounded down',
      numbers: '{maxVolts:voltage} ÷ {eachVolts:voltage}',
      result: '{mostModules:count}',
    },
    mostModulesTable: {
      what: 'The same by the code table',
      formula: 'Vmax ÷ Voc cold of one, rounded down',
      numbers: '{maxVolts:voltage} ÷ {eachVolts:voltage}',
      result: '{mostModulesTable:count}',
    },
    leastModules: {
      what: 'Fewest modules that start and track when hot: the larger of the two, rounded up',
      formula: '1.1 × Vstart ÷ Voc hot of one; lowest tracking volts ÷ Vmp hot of one',
      numbers:
        '{startMargin:plain} × {startVolts:voltage} ÷ {vocEachVolts:voltage}; {trackLowVolts:voltage} ÷ {vmpEachVolts:voltage}',
      result: '{leastModules:count}',
    },
  },
  says: {
    overMaximum:
      'On the coldest bright morning the string reaches {vocColdVolts:voltage}, above the tracker’s {maxVolts:voltage}. That can destroy the input. Leave the isolator open, opened at 0 A, and shorten the string before the next cold morning. A mild reading today proves nothing.',
    nearMaximum:
      'The coldest morning comes within a hair of {maxVolts:voltage} ({vocColdVolts:voltage} by coefficient). Weak labels and bright cloud edges can use that up. Check the data sheet once more, and prefer one module fewer.',
    startsNever:
      'At {hotCellC:temperature} cells the open string stands at {vocHotVolts:voltage}, under the start volts of {startVolts:voltage}. It will not start in the heat, though it may on a cool morning. The cure is a longer string, not a new inverter.',
    startsMarginal:
      'When hot the open string stands at {vocHotVolts:voltage}, less than a tenth above the start volts of {startVolts:voltage}. Haze, age or one weak module will stop it from starting.',
    belowTracking:
      'When hot the string works at about {vmpHotSafeVolts:voltage}, under the tracking window’s {trackLowVolts:voltage}. It starts and drops out, over and over.',
    aboveTracking:
      'Even at 25 °C cells the string would work at {vmpRatedVolts:voltage}, above the window’s {trackHighVolts:voltage}. The tracker holds it lower and power is lost. Nothing is harmed while the maximum is kept.',
    fits: 'This tracker takes {leastModules:count} to {mostModules:count} of these modules in series here.',
    noCountFits:
      'No number of these modules fits: hot weather needs {leastModules:count}, the coldest morning allows {mostModules:count}. Another module or another tracker is needed.',
    methodsPart:
      'The two methods part: {mostModules:count} modules by coefficient, {mostModulesTable:count} by the code table. The code lets you take the maker’s coefficient where the data sheet prints one (690.7(A)(1)). The permit office decides.',
    belowTable: 'The code table stops at −40 °C. Below that the module’s own coefficient must be used.',
    vmpAboveVoc:
      'Volts at maximum power must be below the open-circuit volts. Are the two label figures swapped?',
    windowUpsideDown: 'The lowest tracking volts must be below the highest. Are the two swapped?',
    startAboveMaximum: 'The start volts must be below the absolute maximum. Are the two swapped?',
    trackingAboveMaximum:
      'The tracking window cannot reach above the absolute maximum. Read both in the manual again.',
  },
  plot: {
    title: 'String volts over cell temperature against the tracker’s window',
    x: 'Cell temperature',
    y: 'String volts',
    lines: {
      voc: 'Open circuit',
      table: 'Open circuit by the code table',
      vmp: 'Working',
      maximum: 'Absolute maximum',
      trackHigh: 'Tracking, highest',
      start: 'Start',
      trackLow: 'Tracking, lowest',
      vocCold: 'Coldest morning',
      vocHot: 'Hot, open',
      vmpHot: 'Hot, working, with margin',
    },
  },
  leavesOut: [
    'Weak light: at dawn the string reads several per cent below this. Decide by the sheet, not by a dawn meter.',
    'Light above 1000 W/m² at the edge of a cloud lifts Voc by about a per cent.',
    'Shade, bypassed modules and a bad joint: they lower working volts and leave open-circuit volts as they are.',
    'Drop in the string’s cable. At start no current flows, so it does not matter there.',
    'Current limits of the tracker.',
  ],
  search: [
    'voc cold',
    'string too short',
    'string too long',
    'how many panels',
    'modules in series',
    'start voltage',
    'mppt window',
    '690.7',
    'tracker will not start',
  ],
};
