import { land } from '../../../src/worksheets/ac/spread-legs.ts';
import { checksOf } from './check.ts';

const circuits = (amps: readonly number[], shares: readonly (number | undefined)[] = []) =>
  amps.map((each, at) => ({ name: `${at}`, amps: each, poles: undefined, shares: shares[at] }));
const landed = (amps: readonly number[], shares?: readonly (number | undefined)[]) => {
  const found = land(circuits(amps, shares));
  return found.kind === 'landed' ? found : undefined;
};
const fuller = (amps: readonly number[]) => {
  const found = landed(amps);
  return found && Math.max(found.amps1, found.amps2);
};
const sets =
  'Burkardt, weights of the test sets of the partition problem; the fuller side at best is half of their sum';
const differencing =
  'Published example that the largest differencing method misses, {8, 7, 6, 5, 4}: 8 + 7 is 6 + 5 + 4';
const greedy =
  'Published counter-example to the greedy method, nine numbers from 1 to 41: difference 0 exists';

export const spreadLegsChecks = checksOf('spread-legs', [
  ['p01', sets, 'worked apart', '{19, 17, 13, 9, 6}', 32, () => fuller([19, 17, 13, 9, 6]), 'exact'],
  [
    'p02',
    sets,
    'worked apart',
    'nine weights from 114 to 506',
    1419,
    () => fuller([484, 114, 205, 288, 506, 503, 201, 127, 410]),
    'exact',
  ],
  [
    'p03',
    sets,
    'worked apart',
    'ten weights from 62 to 1003',
    2640,
    () => fuller([771, 121, 281, 854, 885, 734, 486, 1003, 83, 62]),
    'exact',
  ],
  [
    'p04',
    sets,
    'worked apart',
    'ten weights from 2 to 10',
    27,
    () => fuller([2, 10, 3, 8, 5, 7, 9, 5, 3, 2]),
    'exact',
  ],
  [
    'p05',
    sets,
    'worked apart',
    'nine weights from 1 to 4',
    11,
    () => fuller([3, 4, 3, 1, 3, 2, 3, 2, 1]),
    'exact',
  ],
  ['differencing', differencing, 'worked apart', 'fuller leg', 15, () => fuller([8, 7, 6, 5, 4]), 'exact'],
  [
    'greedy',
    greedy,
    'published',
    'fuller leg',
    107,
    () => fuller([1, 11, 16, 19, 20, 30, 36, 40, 41]),
    'exact',
  ],
]);
