import type { WorksheetWords } from '../../worksheet-words.ts';
import { cellTemperature } from './cell-temperature.ts';
import { stringLength } from './string-length.ts';

const { vocVolts, vmpVolts, iscAmps, impAmps, vocPerC, vmpPerC } = stringLength.inputs;
const { airC, windMs, mounting } = cellTemperature.inputs;

export const pvNow: WorksheetWords = {
  inputs: {
    vocVolts: vocVolts!,
    vmpVolts: vmpVolts!,
    iscAmps: iscAmps!,
    impAmps: impAmps!,
    vocPerC: vocPerC!,
    vmpPerC: vmpPerC!,
    iscPerC: {
      label: 'Isc temperature coefficient',
      symbol: 'α',
      hint: 'Small and positive, on the data sheet. 0.05 %/°C is usual.',
      limit: 'Amps hardly move with heat.',
    },
    cells: {
      label: 'Cells in series in one module',
      hint: '60 or 72. A module of 120 or 144 half cells counts as 60 or 72. Voc ÷ 0.68 is near it.',
      limit: 'Count cells in series, not all of them.',
    },
    modules: { label: 'Modules in series', symbol: 'N', limit: 'Count them; do not trust the drawing.' },
    strings: {
      label: 'Strings in parallel at the place you clamp',
      symbol: 'n',
      limit: 'Count those behind the clamp only.',
    },
    irradiance: {
      label: 'Light on the modules’ face',
      symbol: 'G',
      hint: 'In the plane of the array. Hard shadows: 700 or more. Soft shadows: 300 to 600. No shadow: under 250.',
      limit: 'Under 100 W/m² nothing can be told. Wait for light.',
    },
    lightBy: {
      label: 'How you know the light',
      options: { meter: 'Meter or reference cell', eye: 'By eye' },
    },
    airC: { ...airC!, hint: 'In the shade, this minute.' },
    windMs: { ...windMs!, hint: 'Leaves move: 3 m/s, 7 mph.' },
    mounting: mounting!,
    backC: {
      label: 'Back of a module, measured',
      hint: 'A probe under tape, middle of the array. Better than air and wind; may stay empty.',
      limit: 'No sound module is hotter.',
    },
    readOpenVolts: {
      label: 'Your reading: volts, isolator open',
      hint: 'On the array side, no current. May stay empty.',
      limit: 'Within the meter’s rating.',
    },
    readVolts: {
      label: 'Your reading: volts, running',
      hint: 'On the display or at the input. May stay empty.',
      limit: 'Within the meter’s rating.',
    },
    readAmps: {
      label: 'Your reading: amps, running',
      hint: 'DC clamp, zeroed, on one conductor. May stay empty.',
      limit: 'One pair of conductors.',
    },
  },
  outputs: {
    verdict: {
      label: 'Readings against weather',
      verdicts: {
        noReading: 'Nothing read yet: here is what to expect',
        asExpected: 'As this weather gives',
        openLow: 'Open volts too low',
        openHigh: 'Open volts too high',
        heldBack: 'Held back by the tracker: no fault',
        workingLow: 'Working volts too low',
        workingHigh: 'Working volts too high for this weather',
        ampsLow: 'Amps too low for this light',
        ampsHigh: 'Amps above what this light gives',
      },
    },
    openVolts: { label: 'Expected, isolator open' },
    openLowVolts: { label: 'At least' },
    openHighVolts: { label: 'At most' },
    workVolts: { label: 'Expected, running' },
    workLowVolts: { label: 'Running, at least' },
    workHighVolts: { label: 'Running, at most' },
    workAmps: { label: 'Expected amps, running' },
    workLowAmps: { label: 'Amps, at least' },
    workHighAmps: { label: 'Amps, at most' },
    shortAmps: { label: 'Short-circuit amps' },
    watts: { label: 'Expected power' },
    cellC: { label: 'Likely cell temperature' },
    cellLowC: { label: 'Coolest the cells may be' },
    cellHighC: { label: 'Hottest the cells may be' },
    missingModules: { label: 'Volts missing, in modules' },
  },
  working: {
    cellModels: {
      what: 'Cell temperature: the middle of the published models',
      formula: 'see the worksheet on cell temperature',
      numbers:
        '{irradiance:irradiance}, {airC:temperature}, {windMs:speed}: {cellLowC:temperature} to {cellHighC:temperature}',
      result: '{cellC:temperature}',
    },
    cellBack: {
      what: 'Cell temperature from the back of a module',
      formula: 'back + a little for the light',
      numbers: '{backC:temperature:°C} + {deltaC:temperatureDifference:°C}',
      result: '{cellC:temperature:°C}',
    },
    open: {
      what: 'Open-circuit volts: heat, and the logarithm of the light',
      formula: 'N × (Voc × (1 + b × (T − 25 °C)) + Vt × ln(G ÷ 1000 W/m²))',
      numbers:
        '{modules:count} × ({vocVolts:voltage} × (1 + {vocPerC:temperatureCoefficient} × ({cellC:temperature:°C} − 25 °C)) + {thermalVolts:voltage} × ln {suns:plain})',
      result: '{openVolts:voltage}',
    },
    work: {
      what: 'Working volts: heat only',
      formula: 'N × Vmp × (1 + g × (T − 25 °C))',
      numbers:
        '{modules:count} × {vmpVolts:voltage} × (1 + {vmpPerC:temperatureCoefficient} × ({cellC:temperature:°C} − 25 °C))',
      result: '{workVolts:voltage}',
    },
    amps: {
      what: 'Working amps: they go with the light',
      formula: 'n × Imp × G ÷ 1000 W/m² × (1 + α × (T − 25 °C))',
      numbers:
        '{strings:count} × {impAmps:current} × {suns:plain} × (1 + {iscPerC:temperatureCoefficient} × ({cellC:temperature:°C} − 25 °C))',
      result: '{workAmps:current}',
    },
    watts: {
      what: 'Power',
      formula: 'working volts × working amps',
      numbers: '{workVolts:voltage} × {workAmps:current}',
      result: '{watts:power}',
    },
    bands: {
      what: 'The bands: how well light and cell are known, and 5 % for label and meter',
      formula: 'coolest cells in the brightest light; hottest cells in the dimmest',
      numbers: 'light ± {lightShare:ratio}, label ± {agreeShare:ratio}',
      result: '{openLowVolts:voltage} to {openHighVolts:voltage} open',
    },
  },
  says: {
    noReading:
      'Expect {openVolts:voltage} with the isolator open, {workVolts:voltage} and {workAmps:current} running. Type what you read.',
    asExpected: 'What you read lies in the band for this weather. Look elsewhere.',
    openLow:
      'Open volts should be {openLowVolts:voltage} at the least; you read {readOpenVolts:voltage}. About {missingModules:plain:1} modules’ worth is missing.',
    wholeModules:
      'Whole modules are missing: miscounted, bypassed, or a leak to ground that takes part of the string. Compare with a sister string in the same minute.',
    lessThanOne:
      'Less than a module is missing: a bypass diode shorted takes a third of one. Or the cells are hotter than thought: measure the back of a module.',
    openHigh:
      'Open volts should be {openHighVolts:voltage} at the most; you read {readOpenVolts:voltage}. More modules than you think, or cells cooler than you think. Check the cold maximum before anything else.',
    heldBack:
      'Volts above the best point with few amps: the tracker holds the array back. The battery is full, the loads are small, or a setting limits it. The array is sound.',
    workingLow:
      'Working volts should be {workLowVolts:voltage} at the least; you read {readVolts:voltage}. Shade on part of the string, a bypassed module, or a tracker caught at the wrong peak.',
    workingHigh:
      'Working volts should be {workHighVolts:voltage} at the most; you read {readVolts:voltage}. Often the tracker holds back: look at the amps and at the battery.',
    ampsLow:
      'In this light {workLowAmps:current} should flow at the least; you read {readAmps:current}. Dirt, shade, a string that is off, or a tracker that holds back. Is the light really what you typed?',
    ampsHigh:
      'You read {readAmps:current}, and this light gives {workHighAmps:current} at the most. The light is brighter than typed, or more strings lie behind the clamp.',
    byEye:
      'Light by eye is good to about a third. Volts bear that; amps do not. To judge amps, use a meter or a sister string.',
    sameMinute: 'Read weather, volts and amps within the same minute.',
    noVolts: 'In this light and heat a module of that label has no volts. Check the coefficients.',
    vmpAboveVoc:
      'Volts at maximum power must be below the open-circuit volts. Are the two label figures swapped?',
    impAboveIsc:
      'Amps at maximum power must be below the short-circuit amps. Are the two label figures swapped?',
  },
  plot: {
    title: 'String volts over light at this cell temperature',
    x: 'Light on the modules',
    y: 'String volts',
    lines: { open: 'Open', work: 'Running at its best', openNow: 'Open, now', workNow: 'Running, now' },
  },
  leavesOut: [
    'Age and dirt: old modules give 0.5 % less a year, dirt 2 to 10 % of the amps.',
    'Shade on part of a module.',
    'A tracker that is limited by its amps or watts.',
    'Drop in the string’s cable.',
    'Light from the back of modules that take it.',
  ],
  search: [
    'expected volts',
    'expected amps',
    'is my string ok',
    'low voltage string',
    'low amps',
    'what should my panels read',
    'irradiance',
    'compare to weather',
  ],
};
