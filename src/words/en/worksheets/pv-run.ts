import type { WorksheetWords } from '../../worksheet-words.ts';
import { pvBasisSays } from './nec-basis.ts';
import { stringCurrent } from './string-current.ts';

const { basis, termination, conductors } = stringCurrent.inputs;

export const pvRun: WorksheetWords = {
  inputs: {
    impAmps: {
      label: 'Working amps of the run',
      symbol: 'I',
      hint: 'Imp of one module × strings in parallel.',
      limit: 'One pair of conductors.',
    },
    iscAmps: {
      label: 'Short-circuit amps of the run',
      symbol: 'Isc',
      hint: 'Isc of one module × strings in parallel. The code sizes by this one.',
      limit: 'One pair of conductors.',
    },
    volts: {
      label: 'Working volts',
      symbol: 'V',
      hint: 'Vmp of one module × modules in series.',
      limit: 'Read the label again if it lies outside.',
    },
    lengthM: {
      label: 'Length, one way',
      symbol: 'L',
      hint: 'Along the trench, with the rise at both ends. The worksheet counts out and back.',
      limit: 'Pace it, do not guess it.',
    },
    areaMm2: {
      label: 'Conductor size',
      hint: 'As 6 AWG or 16 mm².',
      limit: 'The ampacity table starts at 14 AWG.',
    },
    metal: {
      label: 'Metal',
      options: { plain: 'Copper, plain', tinned: 'Copper, tinned', aluminium: 'Aluminium' },
      hint: 'PV wire is usually tinned.',
    },
    insulation: {
      label: 'Rating of the insulation, wet',
      options: { c75: '75 °C', c90: '90 °C' },
      hint: 'A conduit in the ground is a wet place.',
    },
    termination: termination!,
    earthC: {
      label: 'Hottest earth or air around it',
      symbol: 'Ta',
      hint: 'Earth at knee depth: summer air less 5 to 10 °C (common practice). The hottest metre of the run counts.',
      limit: 'Above 60 °C it is no trench.',
    },
    conductors: conductors!,
    basis: basis!,
    dropLimit: {
      label: 'Most drop you accept',
      hint: '2 % is usual for PV (common practice). No code demands it.',
      limit: 'Under 0.2 % the copper costs more than the roof.',
    },
    sunS: {
      label: 'Hours of full sun a year',
      symbol: 'H',
      hint: 'Peak sun hours a day × 365: 4 a day make 1460 h.',
      limit: 'Deserts reach 2600 h.',
    },
    squareShare: {
      label: 'Share of that heat which mixed weather leaves',
      symbol: 's',
      hint: '65 % (common practice); 79 % where every day is clear.',
      limit: 'At 100 % the sun would be full or off.',
    },
    price: {
      label: 'What a kWh is worth to you',
      hint: 'What the generator’s kWh costs, in your money. May stay empty.',
      limit: 'Per kWh, not per month.',
    },
  },
  outputs: {
    verdict: {
      label: 'The run',
      verdicts: {
        fits: 'Carries the current, and loses what you accept',
        tooSmall: 'Too small for the current',
        dropHigh: 'Carries the current, but loses more than you accept',
        dropHighNotChecked: 'Loses more than you accept; ampacity not checked',
        notChecked: 'Loses what you accept; ampacity not checked',
      },
    },
    dropVolts: { label: 'Drop at full sun' },
    dropShare: { label: 'Drop, share of working volts' },
    conductorC: { label: 'The metal at full sun' },
    ohms: { label: 'Resistance, out and back' },
    heatWatts: { label: 'Heat in the trench at full sun' },
    heatYearJ: { label: 'Heat over a year' },
    heatShare: { label: 'Heat, share of the year’s harvest' },
    costYear: { label: 'Cost of the heat over a year' },
    correctedAmps: { label: 'Conductor, corrected where it lies' },
    plainAmps: { label: 'Conductor, no factors' },
    codeMm2: { label: 'Smallest by the code' },
    dropMm2: { label: 'Smallest by drop' },
    smallestMm2: { label: 'Smallest by both' },
    nextMm2: { label: 'Next size up from yours' },
    savesYearJ: { label: 'It saves over a year' },
    savesMoney: { label: 'Worth over a year' },
  },
  working: {
    ohms: {
      what: 'Resistance out and back, the metal at {conductorC:temperature}',
      formula: '2 × L × r',
      numbers: '2 × {lengthM:length:m} × {ohmsPerM:resistance}/m',
      result: '{ohms:resistance}',
    },
    drop: {
      what: 'Drop',
      formula: 'I × resistance',
      numbers: '{impAmps:current} × {ohms:resistance}',
      result: '{dropVolts:voltage}',
    },
    share: {
      what: 'Share of working volts',
      formula: 'drop ÷ V',
      numbers: '{dropVolts:voltage} ÷ {volts:voltage}',
      result: '{dropShare:ratio}',
    },
    heat: {
      what: 'Heat at full sun',
      formula: 'I × drop',
      numbers: '{impAmps:current} × {dropVolts:voltage}',
      result: '{heatWatts:power}',
    },
    year: {
      what: 'Heat over a year: it goes with the square of the light',
      formula: 'heat × H × s',
      numbers: '{heatWatts:power} × {sunS:time:h} × {squareShare:ratio}',
      result: '{heatYearJ:energy:kWh}',
    },
    heatShare: {
      what: 'Share of the year’s harvest',
      formula: 'heat ÷ (I × V × H)',
      numbers: '{heatYearJ:energy:kWh} ÷ ({impAmps:current} × {volts:voltage} × {sunS:time:h})',
      result: '{heatShare:ratio}',
    },
    cost: {
      what: 'Cost over a year',
      formula: 'heat × price',
      numbers: '{heatYearJ:energy:kWh} × {price:plain:2}',
      result: '{costYear:plain:2}',
    },
    ampacity: {
      what: 'The code’s two rules (690.8(B)), side by side',
      formula: 'no factors against 1.5625 × Isc; corrected against 1.25 × Isc',
      numbers:
        '{plainAmps:current} against {ratedAmps:current}; {correctedAmps:current} against {maximumAmps:current}',
      result: 'both must reach',
    },
    smallest: {
      what: 'Smallest conductor: the larger of code and drop',
      formula: 'code; drop',
      numbers: '{codeMm2:wireSize}; {dropMm2:wireSize}',
      result: '{smallestMm2:wireSize}',
    },
    smallestDrop: {
      what: 'Smallest conductor by drop alone',
      formula: 'first size at or under the drop you accept',
      numbers: '{dropLimit:ratio} of {volts:voltage}',
      result: '{dropMm2:wireSize}',
    },
  },
  says: {
    ...pvBasisSays,
    fits: 'The run loses {dropVolts:voltage} at full sun, {dropShare:ratio}, and carries what the code asks.',
    tooSmall:
      'The conductor does not carry what the code asks: {plainAmps:current} against {ratedAmps:current} without factors, {correctedAmps:current} against {maximumAmps:current} where it lies. Drop does not matter until that is right.',
    tooHot: 'At {earthC:temperature} this insulation may carry nothing. Move the run out of the heat.',
    dropHigh:
      'The run loses {dropVolts:voltage} at full sun, {dropShare:ratio} of the volts. Nothing is unsafe in that; it is harvest left in the trench.',
    dropHighNotChecked:
      'The run loses {dropVolts:voltage} at full sun, {dropShare:ratio} of the volts. Ampacity is not checked: only the NEC is carried here, and your own code governs.',
    notChecked:
      'The drop is as you accept. Ampacity is not checked: only the NEC is carried here, and your own code governs.',
    larger: 'Take {smallestMm2:wireSize} or larger.',
    noSize:
      'No single conductor of the table serves. More modules in series, fewer amps: a longer string is the cheapest copper.',
    next: 'The next size, {nextMm2:wireSize}, would save {savesYearJ:energy:kWh} a year. Digging costs the same for both.',
    nextMoney:
      'The next size, {nextMm2:wireSize}, would save {savesYearJ:energy:kWh} a year, worth {savesMoney:plain:2} to you. Digging costs the same for both.',
    aluminium:
      'Aluminium needs lugs marked for it, a brushed and greased end, and a torque wrench. Most PV terminals take copper only: change to copper in a box at both ends.',
    trench:
      'Before you dig, have the buried lines marked. Depth, warning tape and conduit are your local code’s. One spare conduit costs little today.',
    impAboveIsc: 'Working amps must be below the short-circuit amps. Are the two swapped?',
    noRow: 'The ampacity table has no row for {areaMm2:area}. Copper starts at 14 AWG, aluminium at 12 AWG.',
    moreThanAll:
      'This run would lose {dropVolts:voltage}, all of its {volts:voltage}. Is the length or the size a slip?',
  },
  plot: {
    title: 'Drop at full sun over conductor size, copper and aluminium',
    x: 'Conductor area',
    y: 'Drop, share of working volts',
    lines: { copper: 'Copper', aluminium: 'Aluminium', limit: 'Accepted', here: 'Yours' },
  },
  leavesOut: [
    'Joints, plugs, fuses and switches: a few millivolts each when sound.',
    'Drop on open-circuit volts: no current, no drop. The tracker’s start does not suffer.',
    'Clipping: hours in which the tracker holds the array back lose less in the trench.',
    'Several circuits side by side in one trench warm each other beyond the count in one raceway.',
    'Burial depth, conduit fill, pulling, mechanical protection, surge protection at both ends.',
    'The device that protects the run: see string current.',
  ],
  search: [
    'voltage drop',
    'long run',
    'trench',
    'how thick a wire',
    'wire size for distance',
    'aluminum wire',
    'aluminium cable',
    'pv cable loss',
    'buried cable',
  ],
};
