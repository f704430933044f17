import { energyCellV, usualUsableShare } from './bank-energy.ts';

/** The fields of every worksheet that counts the energy of a bank. */
export const bankFields = {
  packAh: { kind: 'charge', min: 5, max: 2000, from: ['battery.packCapacityAh'] },
  packs: { kind: 'count', min: 1, max: 64, from: ['battery.packs'] },
  cells: { kind: 'count', min: 4, max: 20, from: ['battery.cellsInSeries'] },
  cellVolts: { kind: 'voltage', min: 2.5, max: 4, default: energyCellV },
  healthShare: { kind: 'ratio', min: 0.3, max: 1, default: 1 },
  usableShare: { kind: 'ratio', min: 0.1, max: 1, default: usualUsableShare },
} as const;
