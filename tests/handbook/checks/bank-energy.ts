import {
  lastsS,
  neededJoules,
  nominalJoules,
  usableJoules,
} from '../../../src/worksheets/battery-dc/bank-energy.ts';
import { drawnWatts } from '../../../src/worksheets/battery-dc/idle.ts';
import type { OutsideCheck } from '../outside-check.ts';

const article = 'Published article on runtime estimates: 1200 Wh, 80 %, 90 %, 100 W';
const tool = 'Published discharge calculator, its test: 40 Ah at 12 V, 180 W, 60 %';
const energy = 'Energy is power times time (SI Brochure, 9th edition, table 4), worked: 280 Ah, 16 cells';
const sizing = 'Published battery sizing example: 10 kWh a day, 2 days, 80 %, 90 %';
const marine = 'Published marine battery example: 1860 Wh a day at 12 V, 50 % and 80 %';
const threeDays = 'Published deep-cycle bank worksheet: 6000 Wh a day, 3 days';

const kWh = 3.6e6;
const hour = 3600;
const bank280 = { cells: 16, cellVolts: 3.2, packAh: 280, packs: 1 };
const bank40 = { cells: 1, cellVolts: 12, packAh: 40, packs: 1 };

type Case = [
  id: string,
  source: string,
  origin: OutsideCheck['origin'],
  what: string,
  published: number,
  worked: () => number,
  tolerance: OutsideCheck['tolerance'],
];
const of =
  (worksheet: string) =>
  (...[id, source, origin, what, published, worked, tolerance]: Case): OutsideCheck => ({
    id: `${worksheet}-${id}`,
    worksheet,
    source,
    origin,
    what,
    published,
    worked,
    tolerance,
  });
const run = of('runtime');
const days = of('autonomy');

export const runtimeChecks: OutsideCheck[] = [
  run(
    'article-usable',
    article,
    'published',
    'Wh out of the sockets',
    864,
    () => (usableJoules(1200 * hour, 1, 0.8) * 0.9) / hour,
    'fullPrecision',
  ),
  run(
    'article-hours',
    article,
    'published',
    'hours at 100 W',
    8.64,
    () => lastsS(usableJoules(1200 * hour, 1, 0.8), drawnWatts(100, 0.9, 0)) / hour,
    'fullPrecision',
  ),
  run(
    'tool-lossless',
    tool,
    'published',
    'hours with no losses',
    2.667,
    () => lastsS(nominalJoules(bank40), drawnWatts(180, 1, 0)) / hour,
    'threeFigures',
  ),
  run(
    'tool-hours',
    tool,
    'published',
    'hours at 60 %',
    1.6,
    () => lastsS(nominalJoules(bank40), drawnWatts(180, 0.6, 0)) / hour,
    'fullPrecision',
  ),
  run(
    '6c',
    energy,
    'worked apart',
    'Wh on the label',
    14_336,
    () => nominalJoules(bank280) / hour,
    'rounded',
  ),
  run(
    '6c-usable',
    energy,
    'worked apart',
    'Wh to use at 90 %',
    12_902.4,
    () => usableJoules(nominalJoules(bank280), 1, 0.9) / hour,
    'rounded',
  ),
  run(
    '6d',
    energy,
    'worked apart',
    'hours at 1500 W, 92 %, 60 W idle on the DC side',
    7.633,
    () => lastsS(usableJoules(nominalJoules(bank280), 1, 0.9), drawnWatts(1500, 0.92, 60)) / hour,
    'codeTable',
  ),
];

export const autonomyChecks: OutsideCheck[] = [
  days(
    'sizing',
    sizing,
    'published',
    'kWh on the label',
    27.78,
    () => neededJoules(2, drawnWatts(10 * kWh, 0.9, 0), 1, 0.8) / kWh,
    'codeTable',
  ),
  days(
    'marine-50',
    marine,
    'published',
    'Ah at 12 V, half used',
    310,
    () => neededJoules(1, 1860 * hour, 1, 0.5) / (12 * hour),
    'fullPrecision',
  ),
  days(
    'marine-80',
    marine,
    'published',
    'Ah at 12 V, 80 % used',
    194,
    () => neededJoules(1, 1860 * hour, 1, 0.8) / (12 * hour),
    'threeFigures',
  ),
  days(
    'three-days',
    threeDays,
    'published',
    'Wh to use for the days',
    18_000,
    () => neededJoules(3, 6000 * hour, 1, 1) / hour,
    'exact',
  ),
];
