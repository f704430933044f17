import type { WorksheetWords } from '../../worksheet-words.ts';

export const joinOutputs: WorksheetWords = {
  inputs: {
    topology: {
      label: 'How the legs of one unit stand',
      options: {
        'opposed-120-240': 'Opposed, 120/240 V',
        'wye-120-208': 'A third of a turn apart, 120/208 V',
        'common-120': 'In step, 120 V',
        'single-230': 'One line, 230 V',
      },
    },
    volts1: {
      label: 'Unit A, L1 to its own neutral',
      symbol: 'Va',
      hint: 'Output breakers open. Neutrals joined as the manual says.',
      limit: 'One leg to neutral.',
    },
    volts2: { label: 'Unit B, L1 to its own neutral', symbol: 'Vb', limit: 'One leg to neutral.' },
    highVolts: {
      label: 'L1 of A to L1 of B, highest in a minute',
      symbol: 'Vd',
      hint: 'Across the open breaker. Watch it, or use MIN/MAX.',
      limit: 'Two legs in series.',
    },
    lowVolts: { label: 'L1 of A to L1 of B, lowest in a minute', limit: 'Two legs in series.' },
    otherLegVolts: {
      label: 'L2 of A to L2 of B, highest',
      hint: 'One line only: leave empty.',
      limit: 'Two legs in series.',
    },
    heldS: { label: 'How long you watched it', limit: 'Longer tells no more.' },
    locked: {
      label: 'Both units say that they run in lock',
      options: { yes: 'Yes', no: 'No, or not known' },
    },
    ofReading: { label: 'Meter’s error, of reading', limit: 'Its data sheet.' },
    countsVolts: { label: 'Meter’s error, counts', limit: 'Its data sheet.' },
    rated1Watts: { label: 'Rated power of unit A', limit: 'One unit.' },
    rated2Watts: { label: 'Rated power of unit B', limit: 'One unit.' },
    unevenShare: {
      label: 'How unevenly they share',
      hint: 'One takes this much more than its half. 10 % is usual.',
      limit: 'More is a fault of sharing.',
    },
  },
  outputs: {
    verdict: {
      label: 'Joining',
      verdicts: {
        join: 'May be joined, by the units’ own instructions',
        off: 'An output is off: 0 V between them proves nothing',
        outOfBand: 'An output is not at its volts',
        doNotClose: 'The readings do not belong together',
        breathing: 'Not in lock: the volts swing',
        apart: 'Do not join: they stand apart',
        otherLegApart: 'Do not join: L2 stands apart',
        otherLegUnread: 'Read the other leg too',
        notLocked: 'Not yet: the units do not say that they are in lock',
        tooSoon: 'Not yet: watch it for a minute',
      },
    },
    angle: { label: 'Degrees apart' },
    angleHigh: { label: 'With the meter’s error, at most' },
    mostApartVolts: { label: 'Volts apart, at most' },
    swingVolts: { label: 'Swing within the minute' },
    errorVolts: { label: 'Meter’s error at that reading' },
    thirdVolts: { label: 'A third of a turn apart would read' },
    oppositeVolts: { label: 'Opposed would read' },
    togetherWatts: { label: 'Both together, for good' },
    aloneWatts: { label: 'Should one drop out, the other carries' },
  },
  working: {
    alike: {
      what: 'In step they differ by their volts alone',
      formula: '|Va − Vb|, limit 5 V with the meter’s error',
      numbers: '{mostApartVolts:voltage} + {errorVolts:voltage}, {volts1:voltage} and {volts2:voltage}',
      result: '{mostApartVolts:voltage}',
    },
    third: {
      what: 'A third of a turn apart',
      formula: '√(Va² + Vb² + Va·Vb)',
      numbers: '{volts1:voltage}, {volts2:voltage}',
      result: '{thirdVolts:voltage}',
    },
    opposite: {
      what: 'Opposed: L1 of one on L2 of the other',
      formula: 'Va + Vb',
      numbers: '{volts1:voltage} + {volts2:voltage}',
      result: '{oppositeVolts:voltage}',
    },
    angle: {
      what: 'Angle from the three readings',
      formula: 'cos θ = (Va² + Vb² − Vd²) ÷ (2·Va·Vb); for equal volts Vd = 2·V·sin(θ ÷ 2)',
      numbers: '{volts1:voltage}, {volts2:voltage}, {mostApartVolts:voltage}',
      result: '{angle:plain:0}°',
    },
    together: {
      what: 'Both together: the one that takes more reaches its rating first',
      formula: '2 × the smaller rating ÷ (1 + uneven)',
      numbers: '2 × {aloneWatts:power} ÷ (1 + {unevenShare:ratio})',
      result: '{togetherWatts:power}',
    },
  },
  says: {
    join: 'Like legs stand within 5 V of each other, steady, and both units are in lock. Close by the units’ own instructions, nobody’s face at the breaker.',
    off: 'Each output must stand at its volts first. Two dead outputs also differ by 0.',
    outOfBand:
      'One output is more than a tenth off its nominal volts. Find out why before you think of joining.',
    doNotClose:
      'No angle gives these three readings. Read them again, with both neutrals joined and on the same range.',
    breathing:
      'The volts between them swing by {swingVolts:voltage}: the units run free of each other. Check the link between them, their roles, and the order of start.',
    apart:
      'They stand {mostApartVolts:voltage} apart. Closed like this the breaker makes a short circuit between two inverters.',
    otherLegApart:
      'L1 agrees, L2 does not: {otherLegVolts:voltage} apart. One unit’s second leg stands elsewhere.',
    otherLegUnread: 'L1 agrees. Read L2 of A to L2 of B as well before anything is closed.',
    notLocked: 'The volts agree now. Without lock they may drift apart in the next minute.',
    tooSoon: 'Two free units agree for a moment too. Watch it for a whole minute.',
    legsCrossed: 'About 180°: L1 of one is L2 of the other. Wires crossed, or a unit set to the wrong leg.',
    roleThird: 'About 120°: a unit is set to a three-phase role.',
    likeToLike: 'Like to like only: L1 to L1, L2 to L2. Name them by this measurement, not by colour.',
    leaveOpen: 'Leave the output breakers open and locked.',
    oneLost:
      'Should one unit drop out, the other carries {aloneWatts:power} at most. Keep what must not stop within that.',
  },
  plot: {
    title: 'Volts between like legs by angle',
    x: 'Degrees apart',
    y: 'Volts apart',
    lines: { apart: 'Equal outputs', limit: 'May be joined up to', read: 'Your reading' },
  },
  leavesOut: [
    'Whether these units may be joined at all, and with which firmware: only their manual tells.',
    'Frequency: two units can agree for a minute and run apart in the next without lock.',
    'Currents that flow between two joined units at no load. Clamp them after closing.',
    'Units joined to a generator or the utility: that is their transfer switch’s task, never a breaker’s.',
  ],
  search: [
    'parallel inverters',
    'stack two inverters',
    'join outputs',
    'volts between like legs',
    'sync two units',
    'breaker slams when I join them',
    'phase angle between inverters',
  ],
};
