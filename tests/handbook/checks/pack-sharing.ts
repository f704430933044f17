import { sourceAmps, wiredShares } from '../../../src/worksheets/battery-dc/parallel-packs.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'pack-sharing';
const millman =
  'Kuphaldt, Lessons in Electric Circuits vol. I ch. 10, Millman’s theorem: 28 V behind 4 Ω and 7 V behind 1 Ω into 2 Ω';
const banks = 'Article on joining four batteries in parallel: 0.02 Ω each, links of 0.0015 Ω, 100 A';
const practice = 'Common practice: two packs, 25 mΩ round the loop';

/** Amps that those two batteries give when 2 Ω across them draw so much that the joint stands at 8 V. */
const pair = (at: number): number =>
  sourceAmps(
    [
      { volts: 28, ohms: 4 },
      { volts: 7, ohms: 1 },
    ],
    8 / 2,
  )[at]!;
const loop = (volts: number): number =>
  sourceAmps(
    [
      { volts, ohms: 0.0125 },
      { volts: 0, ohms: 0.0125 },
    ],
    0,
  )[0]!;

const check = (
  id: string,
  source: string,
  origin: OutsideCheck['origin'],
  what: string,
  published: number,
  worked: () => number,
  tolerance: OutsideCheck['tolerance'],
): OutsideCheck => ({ id: `sharing-${id}`, worksheet, source, origin, what, published, worked, tolerance });

export const packSharingChecks: OutsideCheck[] = [
  check('28', millman, 'published', 'amps out of the 28 V battery', 5, () => pair(0), 'fullPrecision'),
  check(
    '7',
    millman,
    'published',
    'amps out of the 7 V battery: it is charged',
    -1,
    () => pair(1),
    'fullPrecision',
  ),
  check('joint', millman, 'published', 'volts at the joint', 8, () => 28 - 4 * pair(0), 'fullPrecision'),
  ...[35.9, 26.2, 20.4, 17.8].map((amps, at) =>
    check(
      `one-end-${at + 1}`,
      banks,
      'from memory',
      `amps of battery ${at + 1}, both cables on the first`,
      amps,
      () => 100 * wiredShares(4, 'oneEnd', 0.02, 0.0015)[at]!,
      'workedExample',
    ),
  ),
  ...[26.7, 23.2, 23.2, 26.7].map((amps, at) =>
    check(
      `both-ends-${at + 1}`,
      banks,
      'from memory',
      `amps of battery ${at + 1}, taken off at opposite ends`,
      amps,
      () => 100 * wiredShares(4, 'bothEnds', 0.02, 0.0015)[at]!,
      'workedExample',
    ),
  ),
  check('loop-1', practice, 'common practice', 'amps of 1 V', 40, () => loop(1), 'fullPrecision'),
  check('loop-3', practice, 'common practice', 'amps of 3 V', 120, () => loop(3), 'fullPrecision'),
];
