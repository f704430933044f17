import { awgAreaMm2 } from '../../../src/quantity/wire.ts';
import {
  cableResistance,
  dropVolts,
  type Metal,
} from '../../../src/worksheets/battery-dc/cable-resistance.ts';
import { conductorTempC, yearOfHeatJ } from '../../../src/worksheets/pv/run-loss.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'pv-run';
const footM = 0.3048;
const table8 = 'NEC 2017 chapter 9 table 8, the Ω/km column for aluminium, printed on its own';
const modelica =
  'Modelica Buildings library, ECM aluminium cables at 45 °C (open data, after a cable maker’s table)';
const necFactors =
  'NEC 2023 Table 310.15(B)(1)(1): at the corrected ampacity the conductor stands at its rating';
const worked = 'Drop of a two-wire run from the printed table, worked';

const perKm = (areaMm2: number, tempC: number, metal: Metal): number =>
  cableResistance(areaMm2, tempC, metal).ohmsPerM * 1000;
const drop = (
  amps: number,
  areaMm2: number,
  tempC: number,
  oneWayM: number,
  metal: Metal = 'plain',
): number => dropVolts(amps, cableResistance(areaMm2, tempC, metal).ohmsPerM, oneWayM);

export const pvRunChecks: OutsideCheck[] = [
  ...(
    [
      [12, 10.69],
      [10, 6.679],
      [8, 4.204],
      [6, 2.652],
      [4, 1.666],
      [3, 1.32],
      [2, 1.045],
      [1, 0.829],
      [0, 0.66],
      [-1, 0.523],
      [-2, 0.413],
      [-3, 0.328],
    ] as const
  ).map(
    ([gauge, ohms]): OutsideCheck => ({
      id: `run-al-${gauge}`,
      worksheet,
      source: table8,
      origin: 'published',
      what: `aluminium of gauge ${gauge} at 75 °C`,
      published: ohms,
      worked: () => perKm(awgAreaMm2(gauge), 75, 'aluminium'),
      tolerance: 'twoColumns',
    }),
  ),
  ...(
    [
      [16, 2.105],
      [25, 1.32],
      [120, 0.278],
    ] as const
  ).map(
    ([areaMm2, ohms]): OutsideCheck => ({
      id: `run-modelica-${areaMm2}`,
      worksheet,
      source: modelica,
      origin: 'published',
      what: `aluminium of ${areaMm2} mm² at 45 °C, Ω/km`,
      published: ohms,
      worked: () => perKm(areaMm2, 45, 'aluminium'),
      tolerance: 'threeFigures',
    }),
  ),
  // I × factor is the ampacity at that ambient; the squared rise must bring the metal back to its rating.
  ...(
    [
      [45, 0.87],
      [50, 0.82],
      [60, 0.71],
      [70, 0.58],
    ] as const
  ).map(
    ([ambientC, factor]): OutsideCheck => ({
      id: `run-temp-${ambientC}`,
      worksheet,
      source: necFactors,
      origin: 'worked apart',
      what: `rise of 10 AWG at ${factor} of its 40 A in ${ambientC} °C`,
      published: 90,
      worked: () => {
        // Just below, where the cap at the rating does not act.
        const amps = 0.99 * 40 * factor;
        const areaMm2 = awgAreaMm2(10);
        const tempC = conductorTempC({ amps, lengthM: 1, areaMm2, metal: 'plain', insulation: 90, ambientC });
        return tempC === undefined ? undefined : ambientC + (tempC - ambientC) / 0.99 ** 2;
      },
      tolerance: 'about',
    }),
  ),
  {
    id: 'run-3f',
    worksheet,
    source: worked,
    origin: 'worked apart',
    what: '10 AWG, 9 A, 120 ft, 75 °C',
    published: 2.678,
    worked: () => drop(9, awgAreaMm2(10), 75, 120 * footM),
    tolerance: 'threeFigures',
  },
  {
    id: 'run-3i',
    worksheet,
    source: worked,
    origin: 'worked apart',
    what: '4 mm² class 5, 9 A, 30 m, 70 °C',
    published: 3.198,
    worked: () => drop(9, 4, 70, 30),
    tolerance: 'threeFigures',
  },
  {
    id: 'run-al-drop',
    worksheet,
    source: worked,
    origin: 'worked apart',
    what: '2 AWG aluminium, 20 A, 500 ft, 75 °C: 2 × 20 × 0.319 × 0.5',
    published: 6.38,
    worked: () => drop(20, awgAreaMm2(2), 75, 500 * footM, 'aluminium'),
    tolerance: 'rounded',
  },
  {
    id: 'run-k-form',
    worksheet,
    source: 'K form of the drop equation, K = 12.9 at 75 °C: 12 AWG of 6530 cmil, 20 A, 100 ft',
    origin: 'published',
    what: '2 × K × I × L ÷ cmil',
    published: 7.9,
    worked: () => drop(20, awgAreaMm2(12), 75, 100 * footM),
    tolerance: 'kForm',
  },
  {
    id: 'run-clear-days',
    worksheet,
    source: 'Calculus: mean of sin² over mean of sin on a clear day is π ÷ 4',
    origin: 'worked apart',
    what: 'heat of 1 W at full sun over 1000 h of clear sky [Wh]',
    published: 785.398,
    worked: () => {
      const steps = Array.from({ length: 20_000 }, (_, step) => Math.sin((Math.PI * (step + 0.5)) / 20_000));
      const squareShare = steps.reduce((sum, g) => sum + g * g, 0) / steps.reduce((sum, g) => sum + g, 0);
      return yearOfHeatJ(1, 1000 * 3600, squareShare) / 3600;
    },
    tolerance: 'rounded',
  },
];
