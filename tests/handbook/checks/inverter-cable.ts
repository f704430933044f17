import { awgAreaMm2, wireAreaMm2 } from '../../../src/quantity/wire.ts';
import {
  cableRules,
  prospectiveAmps,
  ratedCircuitAmps,
  smallestCableMm2,
} from '../../../src/worksheets/battery-dc/battery-circuit.ts';
import { inverterAmps } from '../../../src/worksheets/battery-dc/idle.ts';
import { ratingAtLeast } from '../../../src/worksheets/tables/standard-ratings.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'inverter-cable';
const training = 'Published training on PV wiring: 2500 W inverter, 85 %, 22 V';
const parallel = 'Published battery cable article: 533 A continuous, two runs of 400 kcmil, 700 A breaker';
const seminar = 'Published code seminar: 10 AWG, 90 °C, at 120 °F';
const course = 'Published course on PV components (NEC 2023): 7600 W at 240 V';
const tables = 'NEC 2023 tables 310.16 and 310.15, 240.6(A), multiplied out by hand';
const source = 'Published text on short circuits: 12 V behind 0.02 Ω';
const telecom = 'Published calculation for a telecom rack: seven strings of four 12 V blocks, 3.16 mΩ each';

type Case = [
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number | undefined,
  tolerance: OutsideCheck['tolerance'],
];
const check = (...[id, from, what, published, worked, tolerance]: Case): OutsideCheck => ({
  id: `cable-${id}`,
  worksheet,
  source: from,
  origin: from === tables ? 'worked apart' : 'published',
  what,
  published,
  worked,
  tolerance,
});

const free = { runs: 1, insulation: 90, termination: 75, conductors: 2 } as const;
const usable = (gauge: number, ambientC: number): number | undefined => {
  const rules = cableRules(1, { ...free, areaMm2: awgAreaMm2(gauge), ambientC }, '2023');
  return rules && Math.min(rules.correctedAmps, rules.plainAmps);
};
const fuse = (amps: number): number | undefined => ratingAtLeast(ratedCircuitAmps(amps), '2023', 'fuse');
const kcmil = (areaMm2: number | undefined): number | undefined =>
  areaMm2 === undefined ? undefined : areaMm2 / wireAreaMm2({ form: 'kcmil', kcmil: 1 });

export const inverterCableChecks: OutsideCheck[] = [
  check(
    'training',
    training,
    'amps at the lowest volts',
    134,
    () => inverterAmps(2500, 0.85, 0, 22),
    'threeFigures',
  ),
  check(
    'training-125',
    training,
    'amps the cable must be rated for',
    167,
    () => ratedCircuitAmps(inverterAmps(2500, 0.85, 0, 22)),
    'threeFigures',
  ),
  check(
    'parallel-rated',
    parallel,
    'amps the cable must be rated for',
    666,
    () => ratedCircuitAmps(533),
    'threeFigures',
  ),
  check('parallel-device', parallel, 'device', 700, () => fuse(533), 'exact'),
  check(
    'parallel-size',
    parallel,
    'thousands of circular mils of each of two runs',
    400,
    () => kcmil(smallestCableMm2(533, { ...free, runs: 2, insulation: 75, ambientC: 30 }, 700, '2023')),
    'rounded',
  ),
  check(
    'seminar',
    seminar,
    'amps after correction',
    32.8,
    () =>
      cableRules(1, { ...free, areaMm2: awgAreaMm2(10), ambientC: (120 - 32) / 1.8 }, '2023')?.correctedAmps,
    'fullPrecision',
  ),
  check('course-amps', course, 'amps', 31.67, () => inverterAmps(7600, 1, 0, 240), 'threeFigures'),
  check('course-device', course, 'device', 40, () => fuse(7600 / 240), 'exact'),
  check('2a', tables, '4/0 at 45 °C on 75 °C lugs', 226.2, () => usable(-3, 45), 'fullPrecision'),
  check('2b', tables, '2/0 at 50 °C on 75 °C lugs', 159.9, () => usable(-1, 50), 'fullPrecision'),
  check(
    '8c',
    tables,
    'fuse for 6000 W, 92 %, 60 W idle, 50 V',
    175,
    () => fuse(inverterAmps(6000, 0.92, 60, 50)),
    'exact',
  ),
  check(
    '8d',
    tables,
    'fuse for 8000 W, 90 %, 44 V: 250 A is too small',
    300,
    () => fuse(inverterAmps(8000, 0.9, 0, 44)),
    'exact',
  ),
  check('short', source, 'amps into a dead short', 600, () => prospectiveAmps(12, 0.02, 1), 'fullPrecision'),
  check(
    'telecom',
    telecom,
    'amps of the whole rack',
    26_600,
    () => prospectiveAmps(48, 4 * 0.00316, 7),
    'workedExample',
  ),
];
