import { awgAreaMm2 } from '../../../src/quantity/wire.ts';
import { codeAmps } from '../../../src/worksheets/pv/string-amps.ts';
import { stringCurrent } from '../../../src/worksheets/pv/string-current.ts';
import { ambientFactor } from '../../../src/worksheets/tables/nec-310-15.ts';
import { nec310_16, rowAreaMm2, tableAmps } from '../../../src/worksheets/tables/nec-310-16.ts';
import { ratingAtLeast } from '../../../src/worksheets/tables/standard-ratings.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'string-current';
const course = 'Published course on PV circuits under NEC 2023: strings of 11.2 A, 10 AWG at 90 °C in 45 °C';
const magazine =
  'Home Power magazine, PV circuit sizing and current calculations: three strings of 8.8 A, Sacramento, 75 °C lugs';
const answers = 'Published worked example of a PV source circuit under NEC 2023 § 690.8';
const openTables = 'Another open copy of NEC Tables 310.15(B)(2)(a) and 310.15(B)(16), 90 °C columns';
const openAluminium = 'Two other open copies of NEC Table 310.15(B)(16) that agree, aluminium columns';

type In = Parameters<typeof stringCurrent.compute>[0];

const usual: In = {
  iscAmps: 11.2,
  strings: 1,
  basis: 'nec-2023',
  areaMm2: awgAreaMm2(10),
  metal: 'copper',
  insulation: 'c90',
  termination: 'c75',
  ambientC: 45,
  conductors: 2,
  device: 'fitted',
  deviceAmps: undefined,
  seriesFuseAmps: undefined,
  usableAmps: undefined,
  shortCircuitAmps: undefined,
};

function outOf(change: Partial<In>) {
  const result = stringCurrent.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

const check = (
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number | undefined,
  tolerance: OutsideCheck['tolerance'] = 'rounded',
): OutsideCheck => ({ id, worksheet, source, origin: 'published', what, published, worked, tolerance });

export const stringCurrentChecks: OutsideCheck[] = [
  check('4f-maximum', course, 'maximum current of one string', 14, () => outOf({}).maximumAmps),
  check('4f-rated', course, 'rating of conductor and device', 17.5, () => outOf({}).ratedAmps),
  check('4f-fuse', course, 'next standard fuse', 20, () => outOf({}).leastDeviceAmps, 'exact'),
  check('4f-corrected', course, '10 AWG where it lies', 34.8, () => outOf({}).correctedAmps),
  check(
    '4g-maximum',
    course,
    'maximum current of three strings',
    42,
    () => outOf({ strings: 3 }).maximumAmps,
  ),
  check('4g-rated', course, 'rating for three strings', 52.5, () => outOf({ strings: 3 }).ratedAmps),
  check(
    'magazine-maximum',
    magazine,
    'maximum current of a source circuit',
    11,
    () => codeAmps(8.8, 1).maximumAmps,
  ),
  check(
    'magazine-rated',
    magazine,
    'ampacity asked for by 690.8(B)(1)',
    13.75,
    () => codeAmps(8.8, 1).ratedAmps,
  ),
  check(
    'magazine-size',
    magazine,
    'smallest conductor by 690.8(B)(1) [mm²]: 14 AWG',
    awgAreaMm2(14),
    () => outOf({ iscAmps: 8.8 }).plainMm2,
    'exact',
  ),
  check(
    'answers-156',
    answers,
    'both factors together',
    1.56,
    () => codeAmps(1, 1).ratedAmps,
    'threeFigures',
  ),
  // The 90 °C columns of somebody else's copy, row by row.
  ...(
    [
      [10, 1.15],
      [15, 1.12],
      [20, 1.08],
      [25, 1.04],
      [30, 1],
      [35, 0.96],
      [40, 0.91],
      [45, 0.87],
      [50, 0.82],
      [55, 0.76],
      [60, 0.71],
      [65, 0.65],
      [70, 0.58],
      [75, 0.5],
      [80, 0.41],
      [85, 0.29],
    ] as const
  ).map(([upToC, factor]) =>
    check(
      `ambient-90-${upToC}`,
      openTables,
      `factor up to ${upToC} °C`,
      factor,
      () => ambientFactor(upToC, 90),
      'exact',
    ),
  ),
  ...(
    [
      [8, 55],
      [6, 75],
      [4, 95],
      [3, 115],
      [2, 130],
      [1, 145],
      [0, 170],
      [-1, 195],
      [-2, 225],
      [-3, 260],
    ] as const
  ).map(([gauge, amps]) =>
    check(
      `ampacity-90-${gauge}`,
      openTables,
      `copper of gauge ${gauge}`,
      amps,
      () => tableAmps(awgAreaMm2(gauge), 'copper', 90),
      'exact',
    ),
  ),
  ...(
    [
      ['12 AWG', 12, 20, 25],
      ['10 AWG', 10, 30, 35],
      ['8 AWG', 8, 40, 45],
      ['6 AWG', 6, 50, 55],
      ['4 AWG', 4, 65, 75],
      ['2 AWG', 2, 90, 100],
      ['1/0', 0, 120, 135],
      ['2/0', -1, 135, 150],
      ['3/0', -2, 155, 175],
      ['4/0', -3, 180, 205],
    ] as const
  ).flatMap(([name, gauge, at75, at90]) => [
    check(
      `aluminium-75-${gauge}`,
      openAluminium,
      `${name} at 75 °C`,
      at75,
      () => tableAmps(awgAreaMm2(gauge), 'aluminium', 75),
      'exact',
    ),
    check(
      `aluminium-90-${gauge}`,
      openAluminium,
      `${name} at 90 °C`,
      at90,
      () => tableAmps(awgAreaMm2(gauge), 'aluminium', 90),
      'exact',
    ),
  ]),
  {
    id: '2c',
    worksheet,
    source:
      'NEC 2023 Tables 310.16, 310.15(B)(1)(1), 310.15(C)(1), worked: 10 AWG 90 °C, 60 °C ambient, six conductors',
    origin: 'worked apart',
    what: 'ampacity where it lies: 40 × 0.71 × 0.80',
    published: 22.72,
    worked: () => outOf({ ambientC: 60, conductors: 6 }).correctedAmps,
    tolerance: 'rounded',
  },
  {
    id: '2e',
    worksheet,
    source: 'NEC 240.6(A), worked: 39.6 A takes the next standard rating',
    origin: 'worked apart',
    what: 'rating',
    published: 40,
    worked: () => ratingAtLeast(39.6, '2020', 'breaker'),
    tolerance: 'exact',
  },
  {
    id: 'row-of-4-0',
    worksheet,
    source: 'NEC 2023 chapter 9 table 8, area column: 4/0 is 107.2 mm²',
    origin: 'published',
    what: 'area of the row that 230 A at 75 °C stands in',
    published: 107.2,
    worked: () => {
      const row = nec310_16.rows.find((each) => each.copper[1] === 230);
      return row && rowAreaMm2(row);
    },
    tolerance: 'codeTable',
  },
];
