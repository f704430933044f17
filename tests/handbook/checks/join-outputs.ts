import { abs, type Complex, complex, subtract } from 'mathjs';
import { apartVolts, joinOutputs } from '../../../src/worksheets/ac/join-outputs.ts';
import { checksOf } from './check.ts';

const reference =
  'Engineering reference on synchronizing: volts across open contacts by angle, equal sources';
const oracle = 'mathjs 15.2, complex numbers';

type Given = Parameters<typeof joinOutputs.compute>[0];
const given: Given = {
  topology: 'opposed-120-240',
  volts1: 120,
  volts2: 120,
  highVolts: 0,
  lowVolts: 0,
  otherLegVolts: 0,
  heldS: 60,
  locked: 'yes',
  ofReading: 0.01,
  countsVolts: 0.3,
  rated1Watts: undefined,
  rated2Watts: undefined,
  unevenShare: 0.1,
};
const joined = (change: Partial<Given>) => {
  const result = joinOutputs.compute({ ...given, ...change });
  return result.ok ? result.out : undefined;
};
const between = (a: number, b: number, degrees: number) =>
  Number(abs(subtract(complex(a, 0), complex({ r: b, phi: (degrees * Math.PI) / 180 })) as Complex));

export const joinOutputsChecks = checksOf('join-outputs', [
  ...(
    [
      [5, 0.087],
      [10, 0.174],
      [20, 0.347],
      [30, 0.518],
      [45, 0.765],
      [60, 1],
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: the figure as it is printed
      [90, 1.414],
      [120, 1.732],
      [150, 1.932],
      [180, 2],
    ] as const
  ).map(
    ([degrees, share]) =>
      [
        `apart-${degrees}`,
        reference,
        'published',
        `share of one output’s volts at ${degrees}°`,
        share,
        () => apartVolts(1, degrees),
        degrees < 15 ? 'workedExample' : 'threeFigures',
      ] as const,
  ),
  [
    'angle-60',
    reference,
    'published',
    'degrees, outputs apart by their own volts',
    60,
    () => joined({ highVolts: 120, lowVolts: 120 })?.angle,
    'rounded',
  ],
  [
    'unlike',
    oracle,
    'worked apart',
    'degrees of 118 and 123 V that stand as far apart as at 25°',
    25,
    () => {
      const apart = between(118, 123, 25);
      return joined({ volts1: 118, volts2: 123, highVolts: apart, lowVolts: apart })?.angle;
    },
    'fullPrecision',
  ],
  [
    'share',
    'Worked by hand: two units of 6 kW, one takes a tenth more than its half',
    'worked apart',
    'watts together for good',
    12_000 / 1.1,
    () => joined({ rated1Watts: 6000, rated2Watts: 6000 })?.togetherWatts,
    'fullPrecision',
  ],
]);
