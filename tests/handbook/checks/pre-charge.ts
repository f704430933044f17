import {
  type ChargeCircuit,
  closingAmps,
  resistorJoules,
  storedJoules,
  timeConstantS,
  timeToVolts,
  voltsAt,
} from '../../../src/worksheets/battery-dc/capacitor-charge.ts';
import {
  greatestWatts,
  plateauLoadOhms,
  voltsUnderPower,
} from '../../../src/worksheets/battery-dc/plateau.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'pre-charge';
const chart = 'US Army training manual MM0704, universal time constant chart';
const design =
  'Published reference design for a battery pre-charge unit, 2024: 50 Ω, five time constants in 0.5 s';
const handbook =
  'RC charging by e-functions (Kuphaldt, Lessons in Electric Circuits vol. I ch. 16), worked: 51.2 V, 33 Ω, 20 mF';

const bank: ChargeCircuit = { sourceVolts: 51.2, resistorOhms: 33, capacitanceF: 0.02 };
type Case = [
  id: string,
  source: string,
  what: string,
  published: number,
  worked: OutsideCheck['worked'],
  tolerance: OutsideCheck['tolerance'],
];
const from =
  (origin: OutsideCheck['origin']) =>
  (...[id, source, what, published, worked, tolerance]: Case): OutsideCheck => ({
    id,
    worksheet,
    source,
    origin,
    what,
    published,
    worked,
    tolerance,
  });
const printed = from('published');
const apart = from('worked apart');

const dischargeS = (ohms: number, toVolts: number): number | undefined =>
  timeToVolts({ sourceVolts: 0, resistorOhms: ohms, capacitanceF: 0.02, startVolts: 58.4 }, toVolts);

export const preChargeChecks: OutsideCheck[] = [
  ...(
    [
      [1, 0.632],
      [2, 0.865],
      [3, 0.95],
      [4, 0.982],
      [5, 0.993],
    ] as const
  ).map(([taus, share]) =>
    printed(
      `chart-${taus}`,
      chart,
      `share charged after ${taus} time constants`,
      share,
      () => voltsAt({ sourceVolts: 1, resistorOhms: 1, capacitanceF: 1 }, taus),
      'tenthOfPercent',
    ),
  ),
  printed(
    'tutorial-tau',
    'Published RC tutorial: 50 Ω and 160 µF',
    'time constant',
    0.008,
    () => timeConstantS({ ...bank, resistorOhms: 50, capacitanceF: 160e-6 }),
    'fullPrecision',
  ),
  printed(
    'tutorial-tau-large',
    'Published RC tutorial: 330 kΩ and 0.05 µF',
    'time constant',
    0.0165,
    () => timeConstantS({ ...bank, resistorOhms: 330e3, capacitanceF: 0.05e-6 }),
    'fullPrecision',
  ),
  printed(
    'design',
    design,
    'five time constants of 50 Ω and 2 mF',
    0.5,
    () => 5 * timeConstantS({ ...bank, resistorOhms: 50, capacitanceF: 0.002 }),
    'exact',
  ),
  apart('5a-tau', handbook, 'time constant', 0.66, () => timeConstantS(bank), 'rounded'),
  apart('5a-amps', handbook, 'first amps', 1.5515, () => bank.sourceVolts / bank.resistorOhms, 'rounded'),
  apart('5a-joules', handbook, 'energy in the resistor', 26.2144, () => resistorJoules(bank), 'rounded'),
  apart('5b-tau', handbook, 'volts after one time constant', 32.3646, () => voltsAt(bank, 0.66), 'rounded'),
  apart('5b-5tau', handbook, 'volts after five', 50.855, () => voltsAt(bank, 3.3), 'rounded'),
  apart('5c-95', handbook, 'time to 95 %', 1.9772, () => timeToVolts(bank, 0.95 * 51.2), 'rounded'),
  apart('5c-99', handbook, 'time to 99 %', 3.0394, () => timeToVolts(bank, 0.99 * 51.2), 'rounded'),
  apart(
    '5e',
    'RC charging, worked: 54.4 V, 33 Ω, 20 mF to within 5 V',
    'time until within 5 V of the source',
    1.575,
    () => timeToVolts({ ...bank, sourceVolts: 54.4 }, 49.4),
    'threeFigures',
  ),
  apart(
    '5f-5tau',
    handbook,
    'closing current at five time constants into 10 mΩ',
    34.5,
    () => closingAmps(51.2 - voltsAt(bank, 3.3), 0.01),
    'threeFigures',
  ),
  apart(
    '5f-3tau',
    handbook,
    'closing current at three time constants',
    254.9,
    () => closingAmps(51.2 - voltsAt(bank, 1.98), 0.01),
    'threeFigures',
  ),
  apart(
    '5f-bare',
    handbook,
    'closing current with no pre-charge',
    5120,
    () => closingAmps(51.2, 0.01),
    'exact',
  ),
  apart(
    '5g-50',
    'RC discharge, worked: 20 mF from 58.4 V through 10 kΩ',
    'time to 50 V',
    31.06,
    () => dischargeS(10_000, 50),
    'threeFigures',
  ),
  apart(
    '5g-5',
    'RC discharge, worked: 20 mF from 58.4 V through 10 kΩ',
    'time to 5 V',
    491.6,
    () => dischargeS(10_000, 5),
    'threeFigures',
  ),
  apart(
    '5g-1k',
    'RC discharge, worked: 20 mF from 58.4 V through 10 kΩ',
    'time to 5 V through 1 kΩ',
    49.16,
    () => dischargeS(1000, 5),
    'threeFigures',
  ),
  apart(
    '5h',
    'Energy of a charged capacitor, worked: 1.5 mF at 500 V',
    'energy',
    187.5,
    () => storedJoules(0.0015, 500),
    'exact',
  ),
  apart(
    '5i',
    'Maximum power transfer (Jacobi), worked: 51.2 V, 33 Ω',
    'greatest power through the resistor',
    19.859,
    () => greatestWatts(51.2, 33),
    'rounded',
  ),
  apart(
    '5i-22',
    'Maximum power transfer (Jacobi), worked: 54.4 V, 22 Ω',
    'greatest power through the resistor',
    33.6,
    () => greatestWatts(54.4, 22),
    'threeFigures',
  ),
  apart(
    '5i-half',
    'Maximum power transfer (Jacobi), worked: 51.2 V, 33 Ω',
    'bus volts at that power: half the source',
    25.6,
    () => voltsUnderPower(51.2, 33, 51.2 ** 2 / 132),
    'fullPrecision',
  ),
  apart(
    'plateau-half',
    'Voltage divider (Kuphaldt vol. I ch. 6): equal resistances halve the volts',
    'load that holds the bus at half',
    33,
    () => plateauLoadOhms(51.2, 33, 25.6),
    'fullPrecision',
  ),
];
