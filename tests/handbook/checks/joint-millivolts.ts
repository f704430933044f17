import { jointOhms, jointWatts, limitBeside } from '../../../src/worksheets/battery-dc/joint-millivolts.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'joint-millivolts';
const school = 'Published battery course: 200 A through 0.01 Ω and 0.02 Ω of corrosion';
const neta = 'ANSI/NETA, 50 % over the lowest of like connections, as quoted: the lowest times 1.5';
const joule = 'Joule’s law (Kuphaldt, Lessons in Electric Circuits vol. I ch. 2), worked: 1 mΩ at 150 A';

const check = (
  id: string,
  source: string,
  what: string,
  published: number,
  worked: () => number,
): OutsideCheck => ({
  id: `joint-${id}`,
  worksheet,
  source,
  origin: source === joule ? 'worked apart' : 'published',
  what,
  published,
  worked,
  tolerance: 'fullPrecision',
});

export const jointChecks: OutsideCheck[] = [
  check('school-10', school, 'ohms behind 2.0 V at 200 A', 0.01, () => jointOhms(2, 200)),
  check('school-20', school, 'ohms behind 4.0 V at 200 A', 0.02, () => jointOhms(4, 200)),
  check('neta', neta, 'most that a joint may have beside one of 20 µΩ', 30e-6, () => limitBeside(20e-6)),
  check('joule', joule, 'heat', 22.5, () => jointWatts(0.001, 150)),
  check('joule-volts', joule, 'heat by volts and amps', 300, () => jointWatts(jointOhms(2, 150), 150)),
];
