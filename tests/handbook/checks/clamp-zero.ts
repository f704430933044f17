import { clampReading, turnedOver } from '../../../src/worksheets/battery-dc/clamp-zero.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'clamp-zero';
const note = 'Published application note on clamp meters: what ± (2 % + 2) and ± 3 % mean at 100 A';
const forum = 'Published discussion of a clamp of ± (2 % + 5 counts), last digit 0.1 A, at 0.1 A';
const digits = 'Published method of meter error: 2.000 V at ± (0.08 % + 2 counts)';
const bothWays = 'A sum of a term that keeps its sign and one that turns it, worked by hand';

const high = (amps: number, ofReading: number, counts: number, countAmps: number): number => {
  const reading = clampReading(amps, ofReading, counts, countAmps);
  return reading.amps + reading.errorAmps;
};
const low = (amps: number, ofReading: number, counts: number, countAmps: number): number => {
  const reading = clampReading(amps, ofReading, counts, countAmps);
  return reading.amps - reading.errorAmps;
};
const check = (
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number,
  tolerance: OutsideCheck['tolerance'] = 'fullPrecision',
): OutsideCheck => ({
  id: `clamp-${id}`,
  worksheet,
  source,
  origin: source === bothWays ? 'worked apart' : 'published',
  what,
  published,
  worked,
  tolerance,
});

export const clampZeroChecks: OutsideCheck[] = [
  check('high', note, 'at most, 100.0 A at ± (2 % + 2)', 102.2, () => high(100, 0.02, 2, 0.1)),
  check('low', note, 'at least', 97.8, () => low(100, 0.02, 2, 0.1)),
  check('share-high', note, 'at most, 100 A at ± 3 %', 103, () => high(100, 0.03, 0, 0.1)),
  check('share-low', note, 'at least', 97, () => low(100, 0.03, 0, 0.1)),
  check('gain', forum, 'the percent’s part at 0.1 A', 0.002, () => clampReading(0.1, 0.02, 0, 0.1).errorAmps),
  check('counts', forum, 'the counts’ part', 0.5, () => clampReading(0.1, 0, 5, 0.1).errorAmps),
  check('digits', digits, 'at most', 2.0036, () => high(2, 0.0008, 2, 0.001)),
  check('digits-low', digits, 'at least', 1.9964, () => low(2, 0.0008, 2, 0.001)),
  check(
    'both-ways',
    bothWays,
    'current of 1.7 A under a zero error of 0.4 A',
    1.7,
    () => turnedOver(2.1, -1.3).amps,
  ),
  check('both-ways-zero', bothWays, 'the zero error', 0.4, () => turnedOver(2.1, -1.3).zeroAmps),
];
