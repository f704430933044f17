import type { WorksheetWords } from '../../worksheet-words.ts';

export const packSharing: WorksheetWords = {
  inputs: {
    packAmps: {
      label: 'Amps of each pack',
      hint: 'One clamp, zeroed on the spot, one pack after the other, under one steady load. In the order of the bank, the pack at the positive take-off first. Plus while discharging, minus while charging.',
      columns: { amps: { label: 'Amps', symbol: 'Ik', limit: 'One pack.' } },
    },
    clampError: {
      label: 'Clamp’s error at those amps',
      hint: 'Percent of reading and counts together.',
      limit: 'A clamp that coarse cannot compare packs.',
    },
    labelAmps: { label: 'Continuous amps of one pack', symbol: 'I', limit: 'From its label.' },
    wiring: {
      label: 'How the packs are joined',
      options: {
        equalLeads: 'Each by its own leads of equal length to one bar',
        bothEnds: 'Pack to pack, taken off at opposite ends',
        oneEnd: 'Pack to pack, both cables on the first pack',
      },
    },
    packOhms: {
      label: 'Resistance of one pack with its own lead',
      symbol: 'R',
      hint: '10 to 25 mΩ is usual: cells, its electronics, lead and breaker.',
      limit: 'In milliohms.',
    },
    linkOhms: {
      label: 'One link between neighbours, one pole',
      symbol: 'r',
      hint: 'A short 2/0 link with its two lugs is about 0.3 mΩ.',
      limit: 'In milliohms.',
    },
    apartVolts: {
      label: 'Volts between two packs before you join them',
      symbol: 'D',
      hint: 'Measured straight from plus to plus, with the minuses joined. May be empty.',
      limit: 'More than that is a different pack.',
    },
  },
  outputs: {
    verdict: {
      label: 'The packs',
      verdicts: {
        even: 'Share evenly',
        asWired: 'Share unevenly, as they are wired',
        uneven: 'Share unevenly, and the wiring does not explain it',
        silent: 'One of them carries nothing',
        backwards: 'One of them runs the other way',
      },
    },
    mostPack: { label: 'The busiest pack is number' },
    mostShare: { label: 'Part of the busiest' },
    leastShare: { label: 'Part of the laziest' },
    fairShare: { label: 'An even part' },
    wiredMostShare: { label: 'Busiest, by the wiring' },
    wiredLeastShare: { label: 'Laziest, by the wiring' },
    totalAmps: { label: 'All packs together' },
    paperAmps: { label: 'Continuous amps of the bank on paper' },
    bankAmps: { label: 'Continuous amps of the bank as it shares' },
    joiningAmps: { label: 'Current at the moment of joining' },
  },
  working: {
    total: {
      what: 'All packs together',
      formula: 'I1 + I2 + …',
      numbers: '{packs:count} readings',
      result: '{totalAmps:current}',
    },
    fair: {
      what: 'An even part',
      formula: '1 ÷ packs',
      numbers: '1 ÷ {packs:count}',
      result: '{fairShare:ratio}',
    },
    most: {
      what: 'Part of the busiest',
      formula: 'its amps ÷ all',
      numbers: '{mostAmps:current} ÷ {totalAmps:current}',
      result: '{mostShare:ratio}',
    },
    bank: {
      what: 'What the bank gives before the busiest reaches its label',
      formula: 'I ÷ part of the busiest',
      numbers: '{labelAmps:current} ÷ {mostShare:ratio}',
      result: '{bankAmps:current}',
    },
    wired: {
      what: 'Parts by the wiring: neighbours differ by what their links lose',
      formula: 'Ik − Ik+1 = (r ÷ R) × what the links between them carry',
      numbers: '{linkOhms:resistance:mΩ} ÷ {packOhms:resistance:mΩ}, {packs:count} packs',
      result: '{wiredMostShare:ratio} … {wiredLeastShare:ratio}',
    },
    joining: {
      what: 'Current at the moment of joining',
      formula: 'D ÷ (R + R)',
      numbers: '{apartVolts:voltage} ÷ (2 × {packOhms:resistance:mΩ})',
      result: '{joiningAmps:current}',
    },
  },
  says: {
    even: 'Each pack is within a tenth of its part. Write these amps down: they are what the next visit compares with.',
    asWired:
      'The links make the pack nearest the cables work hardest: {mostShare:ratio} where {fairShare:ratio} would be even. Take plus off at one end and minus at the other, or give each pack its own equal leads to a bar.',
    uneven:
      'Pack {mostPack:count} carries {mostShare:ratio}, where {fairShare:ratio} would be even. Look for a bad joint on the lazy pack, unequal leads, or packs at different charge. Millivolts across each joint, at this load, find the first two.',
    silent:
      'One pack carries nothing. Its electronics are off or tripped, its breaker is open, or a lead is off. The others carry its part: {bankAmps:current} is all the bank gives now.',
    backwards:
      'One pack is being charged by the others while the bank discharges, or the other way round. They are not at the same charge, or one reading has the wrong sign. Turn every clamp the same way and read again before you believe it.',
    overLabel:
      'A pack is over the {labelAmps:current} of its label. Take load off now: when it trips, the rest get its part and follow.',
    join: 'Joined with that difference, about {joiningAmps:current} flow at once. Join rested packs within 0.1 V only, charged alike.',
    joinTrips:
      'Joined with that difference, about {joiningAmps:current} flow at once, over the label. An arc, and tripped or burnt electronics. Charge both to full first, apart.',
    ends: 'Sharing shifts near full and near empty, where the volts rise and fall fast. Judge it in the middle, after some minutes of steady load.',
    fewPacks: 'Sharing takes at least two packs. Type the amps of each.',
    littleCurrent:
      'At {totalAmps:current} in all, the clamp’s error hides who carries what. Load the bank to half of full or more.',
  },
  plot: {
    title: 'Amps of each pack',
    x: 'Pack',
    y: 'Amps',
    lines: { read: 'Read', wired: 'By the wiring', fair: 'Even', label: 'Label of one pack' },
  },
  leavesOut: [
    'Packs of different size or age: an even part is not theirs.',
    'Charge that differs: in the flat middle it hardly shows in the volts, and works for hours.',
    'Each pack’s own electronics, which may hold its current back.',
  ],
  search: [
    'one battery works harder',
    'uneven discharge',
    'parallel packs',
    'current sharing',
    'diagonal wiring',
    'busbar',
    'master pack drains first',
  ],
};
