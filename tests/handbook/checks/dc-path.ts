import { awgAreaMm2 } from '../../../src/quantity/wire.ts';
import { cableResistance, dropVolts } from '../../../src/worksheets/battery-dc/cable-resistance.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'dc-path';
const footM = 0.3048;
const kftM = 304.8;
const perKft = (gauge: number, tempC: number): number =>
  cableResistance(awgAreaMm2(gauge), tempC).ohmsPerM * kftM;
const perKm = (areaMm2: number, tempC: number): number => cableResistance(areaMm2, tempC).ohmsPerM * 1000;
const drop = (amps: number, areaMm2: number, tempC: number, oneWayM: number): number =>
  dropVolts(amps, cableResistance(areaMm2, tempC).ohmsPerM, oneWayM);

const note2 = 'NEC 2023 chapter 9 table 8, note 2 (temperature) and the Ω/km column of the same table';
const texas =
  'Texas DOT illumination manual, voltage drop example: 8 AWG loop, 0.001308 Ω/ft, 200 ft, 1.04 A';
const training = 'Published training example: 16 AWG, 4.99 Ω per 1000 ft, 100 ft, 4 A, 24 V';
const kForm = 'K form of the drop equation, K = 12.9 at 75 °C: 12 AWG of 6530 cmil, 20 A, 100 ft';
const dropForm = 'Drop of a two-wire run from NEC 2023 chapter 9 table 8, worked';
const iecDrop = 'Drop of a two-wire run from IEC 60228:2004 class 5 at temperature, worked';

/** The other column of the same table, printed on its own: Ω/km at 75 °C. */
const necPerKm: readonly (readonly [number, number])[] = [
  [14, 10.3],
  [12, 6.5],
  [10, 4.07],
  [8, 2.551],
  [6, 1.608],
  [4, 1.01],
  [3, 0.802],
  [2, 0.634],
  [1, 0.505],
  [0, 0.399],
  [-1, 0.317],
  [-2, 0.2512],
  [-3, 0.1996],
];

export const dcPathChecks: OutsideCheck[] = [
  {
    id: 'two-cables',
    worksheet,
    source: 'Published battery wiring guide: two cables of 1.6 mΩ, 200 A',
    origin: 'published',
    what: 'volts lost in both',
    published: 0.64,
    worked: () => dropVolts(200, 0.0016, 1),
    tolerance: 'fullPrecision',
  },
  ...necPerKm.map(
    ([gauge, ohms]): OutsideCheck => ({
      id: `table8-km-${gauge}`,
      worksheet,
      source: note2,
      origin: 'published',
      what: `Ω/km of gauge ${gauge} at 75 °C`,
      published: ohms,
      worked: () => perKm(awgAreaMm2(gauge), 75),
      tolerance: 'twoColumns',
    }),
  ),
  {
    id: '1c',
    worksheet,
    source: note2,
    origin: 'published',
    what: '4/0 stranded at 25 °C, Ω per 1000 ft',
    published: 0.05098,
    worked: () => perKft(-3, 25),
    tolerance: 'codeTable',
  },
  {
    id: '1d',
    worksheet,
    source: note2,
    origin: 'published',
    what: '10 AWG stranded at 90 °C',
    published: 1.3001,
    worked: () => perKft(10, 90),
    tolerance: 'codeTable',
  },
  {
    id: '1e',
    worksheet,
    source: iecDrop,
    origin: 'worked apart',
    what: '35 mm² class 5 at 75 °C, Ω/km',
    published: 0.6737,
    worked: () => perKm(35, 75),
    tolerance: 'codeTable',
  },
  {
    id: '3a',
    worksheet,
    source: training,
    origin: 'published',
    what: 'volts lost',
    published: 4.0,
    worked: () => drop(4, awgAreaMm2(16), 75, 100 * footM),
    tolerance: 'workedExample',
  },
  // The example gives the loop's resistance: it must not be doubled. Its figure is that of a conductor near 25 °C.
  {
    id: '3b-loop',
    worksheet,
    source: texas,
    origin: 'published',
    what: 'loop resistance of 8 AWG, Ω/ft',
    published: 0.001308,
    worked: () => (2 * perKft(8, 25)) / 1000,
    tolerance: 'workedExample',
  },
  {
    id: '3b',
    worksheet,
    source: texas,
    origin: 'published',
    what: 'volts lost',
    published: 0.272,
    worked: () => drop(1.04, awgAreaMm2(8), 25, 200 * footM),
    tolerance: 'workedExample',
  },
  {
    id: '3c',
    worksheet,
    source: kForm,
    origin: 'published',
    what: 'volts lost',
    published: 7.9,
    worked: () => drop(20, awgAreaMm2(12), 75, 100 * footM),
    tolerance: 'kForm',
  },
  {
    id: '3c-8',
    worksheet,
    source: kForm,
    origin: 'published',
    what: 'volts lost in 8 AWG',
    published: 3.13,
    worked: () => drop(20, awgAreaMm2(8), 75, 100 * footM),
    tolerance: 'kForm',
  },
  {
    id: '3d',
    worksheet,
    source: dropForm,
    origin: 'worked apart',
    what: '4/0, 150 A, 10 ft, 75 °C',
    published: 0.1824,
    worked: () => drop(150, awgAreaMm2(-3), 75, 10 * footM),
    tolerance: 'threeFigures',
  },
  {
    id: '3d-cool',
    worksheet,
    source: dropForm,
    origin: 'worked apart',
    what: '4/0, 150 A, 10 ft, 25 °C',
    published: 0.1529,
    worked: () => drop(150, awgAreaMm2(-3), 25, 10 * footM),
    tolerance: 'threeFigures',
  },
  {
    id: '3e',
    worksheet,
    source: dropForm,
    origin: 'worked apart',
    what: '2/0, 125 A, 6 ft',
    published: 0.1451,
    worked: () => drop(125, awgAreaMm2(-1), 75, 6 * footM),
    tolerance: 'threeFigures',
  },
  {
    id: '3f',
    worksheet,
    source: dropForm,
    origin: 'worked apart',
    what: '10 AWG string, 9 A, 120 ft',
    published: 2.678,
    worked: () => drop(9, awgAreaMm2(10), 75, 120 * footM),
    tolerance: 'threeFigures',
  },
  {
    id: '3i',
    worksheet,
    source: iecDrop,
    origin: 'worked apart',
    what: '4 mm², 30 m, 9 A, 70 °C',
    published: 3.198,
    worked: () => drop(9, 4, 70, 30),
    tolerance: 'threeFigures',
  },
  {
    id: '3j',
    worksheet,
    source: iecDrop,
    origin: 'worked apart',
    what: '35 mm², 2 m, 120 A, 60 °C',
    published: 0.3077,
    worked: () => drop(120, 35, 60, 2),
    tolerance: 'threeFigures',
  },
];
