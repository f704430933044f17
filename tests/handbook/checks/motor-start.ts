import { abs, add, type Complex, complex, divide, multiply, unit } from 'mathjs';
import { lockedAmpsOf, motorStart, startOf } from '../../../src/worksheets/ac/motor-start.ts';
import { codeLetterVa } from '../../../src/worksheets/tables/nec-430-7-b.ts';
import { checksOf } from './check.ts';

const calculator =
  'Published motor starting example, NEC table 430.7(B): 10 hp, code G, 59.5 kVA at the middle of its range';
const table = 'Engineering reference, locked-rotor code letters of motors';
const torque = 'Reference on motor starting: at 15 % sag starting torque has fallen to 72 %';
const oracle = 'mathjs 15.2, complex numbers and units';

/** Watts of so many horsepower by the library's own unit. */
const watts = (hp: number) => unit(hp, 'hp').toNumber('W');
const locked = (volts: number, letter: string, hp: number) => {
  const found = lockedAmpsOf(volts, undefined, letter, watts(hp));
  return typeof found === 'string' ? undefined : found;
};
/** Volts at the motor by complex division: E·Zm ÷ (Zm + R). */
const byLibrary = (source: number, rated: number, amps: number, factor: number, loop: number) => {
  const motor = complex({ r: rated / amps, phi: Math.acos(factor) });
  return Number(abs(multiply(source, divide(motor, add(motor, loop))) as Complex));
};

type Given = Parameters<typeof motorStart.compute>[0];
const given: Given = {
  topology: 'opposed-120-240',
  connection: 'across',
  motorVolts: 240,
  lockedAmps: 50,
  letter: 'none',
  ratedWatts: undefined,
  startFactor: 1,
  sourceVolts: 240,
  lengthM: 30.48,
  areaMm2: 3.3088,
  conductorC: 75,
  surgeVa: 12_000,
  runningVa: 0,
  efficiency: 0.9,
  batteryVolts: 48,
};
const start = (change: Partial<Given>) => {
  const result = motorStart.compute({ ...given, ...change });
  return result.ok ? result.out : undefined;
};

export const motorStartChecks = checksOf('motor-start', [
  [
    'ten-hp',
    calculator,
    'published',
    'VA with the rotor held, middle of the range',
    59_500,
    () => {
      const found = locked(460, 'G', 10);
      return found && (460 * (found.from + found.to)) / 2;
    },
    'threeFigures',
  ],
  ...(
    [
      ['B', 3.15],
      ['F', 5],
      ['G', 5.6],
      ['H', 6.3],
      ['J', 7.1],
      ['K', 8],
      ['L', 9],
      ['M', 10],
      ['P', 12.5],
      ['V', 22.4],
    ] as const
  ).map(
    ([letter, kva]) =>
      [
        `letter-${letter}`,
        table,
        'published',
        `low end of letter ${letter}, VA a horsepower`,
        kva * 1000,
        () => codeLetterVa(letter)?.from,
        'fullPrecision',
      ] as const,
  ),
  [
    'torque-sheet',
    torque,
    'published',
    'share of torque on a source that sags 15 %',
    0.72,
    () => start({ sourceVolts: 0.85 * 240, lengthM: 0 })?.torqueShare,
    'workedExample',
  ],
  [
    'drop-heater',
    'NEC chapter 9 table 8, 12 AWG: 100 ft out and back, and 4.8 Ω, worked by hand',
    'worked apart',
    'volts at 240 V',
    (240 * 4.8) / (4.8 + 0.396),
    () => start({})?.startVolts,
    'codeTable',
  ],
  [
    'phasor',
    oracle,
    'worked apart',
    '230 V, 45 A, 0.6, 0.4 Ω loop',
    byLibrary(240, 230, 45, 0.6, 0.4),
    () =>
      startOf({ sourceVolts: 240, motorVolts: 230, lockedAmps: 45, powerFactor: 0.6, loopOhms: 0.4 }).volts,
    'fullPrecision',
  ],
]);
