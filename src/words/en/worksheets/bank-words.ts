import type { InputWords } from '../../worksheet-words.ts';

/** Words of the fields that every worksheet on a bank's energy shares. */
export const bankWords: Readonly<Record<string, InputWords>> = {
  packAh: { label: 'Capacity of one pack', symbol: 'Q', limit: 'From its label.' },
  packs: {
    label: 'Packs in parallel',
    symbol: 'm',
    hint: 'Only those that are on and answer.',
    limit: 'One bank.',
  },
  cells: {
    label: 'Cells in series',
    symbol: 'n',
    hint: '15 or 16 in the 48 V class: read the label.',
    limit: 'Packs of the 48 V class and below.',
  },
  cellVolts: {
    label: 'Volts of a cell that go with its amp-hours',
    symbol: 'Vc',
    hint: '3.2 V for lithium iron phosphate. Not its charging volts.',
    limit: 'A mean over the discharge, of one cell.',
  },
  healthShare: {
    label: 'Left of the label’s capacity',
    symbol: 'h',
    hint: '100 % is a new bank in a warm room. Age and cold take from it.',
    limit: 'Under 30 % the bank is at its end.',
  },
  usableShare: {
    label: 'Part of it that you use',
    symbol: 'u',
    hint: 'From full to your low cut. 80 to 95 % is common; the rest is in hand.',
    limit: 'Nothing gives more than it holds.',
  },
};
