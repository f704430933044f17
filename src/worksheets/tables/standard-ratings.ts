import { awgAreaMm2 } from '../../quantity/wire.ts';
import type { ConductorMetal } from './nec-310-16.ts';

/** Editions of the NEC that the worksheets carry. */
export const necEditions = ['2017', '2020', '2023'] as const;
export type NecEdition = (typeof necEditions)[number];

/**
 * Standard ampere ratings of fuses and breakers. NEC 240.6(A). Other ratings are sold and allowed; "the next standard
 * size up" counts only these.
 */
export const nec240_6 = {
  source: 'nec-2023',
  clause: '240.6(A)',
  rows: [
    15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400,
    450, 500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
  ],
  /** Fuses only, every edition. */
  fusesToo: [1, 3, 6, 10, 601],
  /** New in that edition, breakers too. */
  addedIn: { '2017': [], '2020': [], '2023': [10] },
} as const;

/** Every standard rating of an edition [A], smallest first. */
export function standardRatings(edition: NecEdition, device: 'fuse' | 'breaker'): readonly number[] {
  const all = [
    ...nec240_6.rows,
    ...nec240_6.addedIn[edition],
    ...(device === 'fuse' ? nec240_6.fusesToo : []),
  ];
  return [...new Set<number>(all)].toSorted((a, b) => a - b);
}

/** A hair of rounding error does not cost a size. */
const hair = 1e-9;

/** The smallest standard rating that is not below a current; `undefined` above the largest. */
export function ratingAtLeast(
  amps: number,
  edition: NecEdition,
  device: 'fuse' | 'breaker',
): number | undefined {
  return standardRatings(edition, device).find((rating) => rating >= amps - hair);
}

/** The largest standard rating that is not above a current; `undefined` below the smallest. */
export function ratingAtMost(
  amps: number,
  edition: NecEdition,
  device: 'fuse' | 'breaker',
): number | undefined {
  return standardRatings(edition, device).findLast((rating) => rating <= amps + hair);
}

/** The largest overcurrent device on small conductors, whatever their ampacity. NEC 240.4(D); the aluminium rows from memory. */
export const nec240_4D = {
  source: 'nec-2023',
  clause: '240.4(D)',
  rows: [
    { gauge: 14, copper: 15 },
    { gauge: 12, copper: 20, aluminium: 15 },
    { gauge: 10, copper: 30, aluminium: 25 },
  ] as readonly { gauge: number; copper: number; aluminium?: number }[],
} as const;

/** Cap of 240.4(D) [A] for a conductor; `undefined` where the clause does not reach. */
export function smallConductorCap(areaMm2: number, metal: ConductorMetal): number | undefined {
  if (areaMm2 * 1.005 >= awgAreaMm2(8)) return undefined;
  return nec240_4D.rows.findLast(
    (row) => row[metal] !== undefined && awgAreaMm2(row.gauge) <= areaMm2 * 1.005,
  )?.[metal];
}

/** Above this the next standard size up is no longer allowed. NEC 240.4(B), (C). */
export const nextSizeUpToAmps = 800;
