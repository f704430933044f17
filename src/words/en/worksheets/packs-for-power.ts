import type { WorksheetWords } from '../../worksheet-words.ts';

export const packsForPower: WorksheetWords = {
  inputs: {
    acWatts: {
      label: 'Continuous AC watts of all inverters',
      symbol: 'P',
      hint: 'Rated, or the most your loads take for more than a minute.',
      limit: 'One bank.',
    },
    surgeWatts: {
      label: 'Surge AC watts of all inverters',
      symbol: 'Ps',
      hint: 'For the seconds a motor starts. Leave empty if nothing surges.',
      limit: 'One bank.',
    },
    efficiency: {
      label: 'Efficiency, battery to AC',
      symbol: 'e',
      hint: 'At full load, often a few per cent under its best.',
      limit: 'The figure on the front of a data sheet is the best it ever does.',
    },
    idleWatts: {
      label: 'Idle draw of all inverters',
      symbol: 'Pi',
      hint: '0 when the efficiency already holds it.',
      limit: 'More than that is a load.',
    },
    lowVolts: {
      label: 'Lowest battery volts it works at',
      symbol: 'V',
      hint: 'The lowest the inverter runs on. Your own low cut, if it is set higher and sag is counted.',
      limit: 'Banks of the 48 V class and below.',
    },
    packAmps: { label: 'Continuous amps of one pack', symbol: 'I', limit: 'From its label.' },
    packPeakAmps: {
      label: 'Peak amps of one pack',
      symbol: 'Is',
      hint: 'And note for how many seconds.',
      limit: 'From its label.',
    },
    planShare: {
      label: 'Part of the continuous amps to plan with',
      symbol: 's',
      hint: '80 %: packs never share evenly.',
      limit: 'Never over the label.',
    },
    packs: { label: 'Packs fitted', symbol: 'm', limit: 'One bank.' },
  },
  outputs: {
    verdict: {
      label: 'The bank for this power',
      verdicts: {
        spare: 'Enough, also with one pack gone',
        enough: 'Enough, with none to spare',
        shortContinuous: 'Too few packs for continuous power',
        shortSurge: 'Too few packs for the surge',
        surgeUnknown: 'Enough for continuous power; the surge is not checked',
      },
    },
    neededPacks: { label: 'Packs needed' },
    neededContinuous: { label: 'For continuous power' },
    neededSurge: { label: 'For the surge' },
    neededWithOneGone: { label: 'To go on with one pack gone' },
    bankAmps: { label: 'Battery amps at the lowest volts' },
    surgeAmps: { label: 'Battery amps in a surge' },
    ampsPerPack: { label: 'Each pack, shared evenly' },
    ampsPerPackOneGone: { label: 'Each pack with one gone' },
    heldWatts: { label: 'AC watts the packs fitted hold' },
    heldWattsOneGone: { label: 'The same with one gone' },
  },
  working: {
    amps: {
      what: 'Battery amps at the lowest volts',
      formula: '(P ÷ e + Pi) ÷ V',
      numbers: '({acWatts:power} ÷ {efficiency:ratio} + {idleWatts:power}) ÷ {lowVolts:voltage}',
      result: '{bankAmps:current}',
    },
    continuous: {
      what: 'Packs for it, rounded up',
      formula: 'amps ÷ (I × s)',
      numbers: '{bankAmps:current} ÷ ({packAmps:current} × {planShare:ratio})',
      result: '{neededContinuous:count}',
    },
    surgeAmps: {
      what: 'Battery amps in a surge',
      formula: '(Ps ÷ e + Pi) ÷ V',
      numbers: '({surgeWatts:power} ÷ {efficiency:ratio} + {idleWatts:power}) ÷ {lowVolts:voltage}',
      result: '{surgeAmps:current}',
    },
    surge: {
      what: 'Packs for it, rounded up',
      formula: 'amps ÷ Is',
      numbers: '{surgeAmps:current} ÷ {packPeakAmps:current}',
      result: '{neededSurge:count}',
    },
    each: {
      what: 'Each pack, shared evenly',
      formula: 'amps ÷ m',
      numbers: '{bankAmps:current} ÷ {packs:count}',
      result: '{ampsPerPack:current}',
    },
    oneGone: {
      what: 'Each pack with one gone',
      formula: 'amps ÷ (m − 1)',
      numbers: '{bankAmps:current} ÷ {packsLeft:count}',
      result: '{ampsPerPackOneGone:current}',
    },
    held: {
      what: 'AC watts the packs fitted hold',
      formula: '(m × I × s × V − Pi) × e',
      numbers:
        '({packs:count} × {packAmps:current} × {planShare:ratio} × {lowVolts:voltage} − {idleWatts:power}) × {efficiency:ratio}',
      result: '{heldWatts:power}',
    },
  },
  says: {
    spare:
      'One pack can drop out and the rest still carry full power. Full power draws {bankAmps:current} at the lowest volts.',
    enough:
      'It is just enough. When one pack drops out, take load off before the rest trip in turn: {neededWithOneGone:count} packs would go on.',
    shortContinuous:
      'Full power draws {bankAmps:current} at the lowest volts. These packs hold {heldWatts:power}. Set the inverter’s limit to that, or have {neededPacks:count} packs.',
    shortSurge:
      'The surge draws {surgeAmps:current}. The packs’ protection will open in it, and everything goes dark. {neededSurge:count} packs hold it.',
    surgeUnknown:
      'The surge is not checked: the peak amps of a pack or the surge watts are missing. Read the pack’s label before a motor is started.',
    onlyOne: 'With a single pack there is no second: when it opens, the place is dark.',
    oneGoneTrips:
      'With one pack gone the rest would carry {ampsPerPackOneGone:current} each, over the {packAmps:current} of the label. One trip then takes the others with it.',
    lowest:
      'Amps are highest when volts are lowest. A bank that carries this when full can still trip at dawn.',
    peakSeconds:
      'A pack’s peak holds for the seconds on its label only. A slow motor start can outlast them.',
    peakUnderContinuous:
      'The peak of {packPeakAmps:current} is under the continuous {packAmps:current}. Read the label again.',
    surgeUnderRated:
      'The surge of {surgeWatts:power} is under the continuous {acWatts:power}. Read the label again.',
  },
  plot: {
    title: 'Battery amps by battery volts',
    x: 'Battery volts',
    y: 'Battery amps',
    lines: {
      continuous: 'Continuous power',
      surge: 'Surge',
      planned: 'All packs, the part you plan with',
      peak: 'All packs, peak',
    },
  },
  leavesOut: [
    'Uneven sharing beyond the part you plan with: measure it under load.',
    'Cable, fuse and switch: they have a worksheet of their own.',
    'Less current from cold cells, which many labels state.',
    'Charge amps, which have a limit of their own.',
  ],
  search: [
    'how many batteries for my inverter',
    'BMS trips on overload',
    'surge',
    'packs in parallel',
    'discharge current limit',
    'inverter shuts off starting the pump',
  ],
};
