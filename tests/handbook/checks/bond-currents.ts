import { bondCurrents, groundShare } from '../../../src/worksheets/ac/bond-currents.ts';
import { checksOf } from './check.ts';

const kuphaldt =
  'Kuphaldt, Lessons in Electric Circuits, volume I, current dividers: 1, 3 and 2 kΩ share 11 mA as 6, 2 and 3 mA';
const course = 'University circuits course, current divider: 60 and 120 Ω share 150 mA, 50 mA in the larger';

type Given = Parameters<typeof bondCurrents.compute>[0];
const given: Given = {
  loadAmps: 10,
  groundAmps: 0,
  lengthM: 304.8,
  neutralMm2: 13.3,
  groundMm2: 5.261,
  conductorC: 75,
  jointOhms: 0,
  ofReading: 0.02,
  zeroAmps: 0.05,
};
const bonds = (change: Partial<Given>) => {
  const result = bondCurrents.compute({ ...given, ...change });
  return result.ok ? result.out : undefined;
};
const parallel = (a: number, b: number) => (a * b) / (a + b);

export const bondCurrentsChecks = checksOf('bond-currents', [
  ['k-1k', kuphaldt, 'published', 'mA in 1 kΩ', 6, () => groundShare(11, parallel(3, 2), 1), 'fullPrecision'],
  ['k-3k', kuphaldt, 'published', 'mA in 3 kΩ', 2, () => groundShare(11, parallel(1, 2), 3), 'fullPrecision'],
  ['k-2k', kuphaldt, 'published', 'mA in 2 kΩ', 3, () => groundShare(11, parallel(1, 3), 2), 'fullPrecision'],
  ['ece', course, 'published', 'mA in 120 Ω', 50, () => groundShare(150, 60, 120), 'fullPrecision'],
  [
    'trench',
    'NEC chapter 9 table 8: 6 AWG 0.491 and 10 AWG 1.24 Ω a 1000 ft, divider worked by hand',
    'worked apart',
    'amps by the ground conductor',
    (10 * 0.491) / (0.491 + 1.24),
    () => bonds({})?.expectedAmps,
    'codeTable',
  ],
  [
    'volts',
    'NEC chapter 9 table 8: 6 AWG 0.491 Ω a 1000 ft, Ohm’s law',
    'worked apart',
    'volts, panel neutral to ground',
    4.91,
    () => bonds({})?.neutralVolts,
    'codeTable',
  ],
]);
