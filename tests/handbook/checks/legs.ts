import { legAngleOf } from '../../../src/worksheets/ac/leg-angle.ts';
import { legVolts } from '../../../src/worksheets/ac/leg-volts.ts';
import { neutralCurrent } from '../../../src/worksheets/ac/neutral-current.ts';
import { threeWire } from '../../../src/worksheets/ac/three-wire.ts';
import type { OutsideCheck } from '../outside-check.ts';

const slides = 'Published slides on the open neutral: lamps of 100 W and 200 W on 120 V legs';
const series = 'Open neutral: two impedances in series on 240 V, worked by the divider';
const millman = 'Resistive neutral: Millman’s theorem, worked by hand';
const simulator = 'Circuit simulator ngspice 39, three-wire network';
const dropCase = 'Three-wire drop, 6 AWG by NEC chapter 9 table 8, worked by the leg formulas';
const phasors = 'Phasor sums of two currents, worked in ngspice 39 and by hand';
const threeVolts =
  'Common practice: legs of 120.2 and 120.2 V with 240.9 V across are opposed within meter accuracy';
const trench = 'Long sound feeder: L·r·(2·I1 − I2) and L·r·(2·I2 − I1), worked by hand';

type Given = Parameters<typeof legVolts.compute>[0];
const given: Given = {
  topology: 'opposed-120-240',
  sourceVolts: 120,
  watts1: 0,
  factor1: 1,
  watts2: 0,
  factor2: 1,
  wattsAcross: 0,
  lengthM: 0,
  areaMm2: 13.3,
  conductorC: 75,
  joint1Ohms: 0,
  joint2Ohms: 0,
  neutral: 'sound',
  neutralJointOhms: 1,
};
const legs = (change: Partial<Given>) => {
  const result = legVolts.compute({ ...given, ...change });
  return result.ok ? result.out : undefined;
};
/** Nameplate watts of a resistance on 120 V. */
const watts = (ohms: number) => 120 ** 2 / ohms;
const amps = (topology: Given['topology'], factor2: number, amps1 = 20, amps2 = 12) => {
  const result = neutralCurrent.compute({
    topology,
    amps1,
    factor1: 1,
    amps2,
    factor2,
    ratedAmps: undefined,
  });
  return result.ok ? result.out.neutralAmps : undefined;
};
/** Feeder conductors of 0.049 Ω with loads of 4.5 and 15 Ω, and 24 Ω between the legs, on 121 V. */
const network = (neutralOhms: number | undefined) =>
  threeWire({
    legVolts: 121,
    angle: 180,
    hot1Ohms: 0.049,
    hot2Ohms: 0.049,
    neutralOhms,
    load1: { watts: watts(4.5), powerFactor: 1, volts: 120 },
    load2: { watts: watts(15), powerFactor: 1, volts: 120 },
    across: { watts: 240 ** 2 / 24, powerFactor: 1, volts: 240 },
  });

const check = (
  worksheet: string,
  id: string,
  source: string,
  origin: OutsideCheck['origin'],
  what: string,
  published: number,
  worked: () => number | undefined,
  tolerance: OutsideCheck['tolerance'],
): OutsideCheck => ({ id, worksheet, source, origin, what, published, worked, tolerance });

/** 12 Ω and 16 + j12 Ω: 1200 W at unity, and 720 VA at 0.8. */
const unlike = () => legs({ neutral: 'open', watts1: 1200, watts2: 576, factor2: 0.8 });
const sixAwg = { lengthM: 30.48, areaMm2: 13.3 } as const;
/** A load that draws these amps whatever its volts: the resistance that does so is found by halving. */
const drawing = (i1: number, i2: number) => {
  let [w1, w2] = [i1 * 120, i2 * 120];
  for (let turn = 0; turn < 40; turn++) {
    const out = legs({ ...sixAwg, watts1: w1, watts2: w2 });
    if (!out?.i1) return out;
    w1 *= i1 / out.i1;
    w2 *= i2 === 0 ? 1 : i2 / (out.i2 ?? 1);
  }
  return legs({ ...sixAwg, watts1: w1, watts2: w2 });
};

export const legVoltsChecks: OutsideCheck[] = [
  check(
    'leg-volts',
    '7a-1',
    slides,
    'published',
    'lightly loaded leg',
    160,
    () => legs({ neutral: 'open', watts1: 100, watts2: 200 })?.v1,
    'rounded',
  ),
  check(
    'leg-volts',
    '7a-2',
    slides,
    'published',
    'heavily loaded leg',
    80,
    () => legs({ neutral: 'open', watts1: 100, watts2: 200 })?.v2,
    'rounded',
  ),
  check(
    'leg-volts',
    '7b-1',
    series,
    'worked apart',
    '1500 W leg',
    40,
    () => legs({ neutral: 'open', watts1: 1500, watts2: 300 })?.v1,
    'rounded',
  ),
  check(
    'leg-volts',
    '7b-2',
    series,
    'worked apart',
    '300 W leg',
    200,
    () => legs({ neutral: 'open', watts1: 1500, watts2: 300 })?.v2,
    'rounded',
  ),
  check(
    'leg-volts',
    '7c-1',
    millman,
    'worked apart',
    '5 Ω in the neutral, loaded leg',
    89.23,
    () => legs({ neutral: 'resistive', neutralJointOhms: 5, watts1: 1500, watts2: 300 })?.v1,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7c-2',
    millman,
    'worked apart',
    '5 Ω in the neutral, light leg',
    150.77,
    () => legs({ neutral: 'resistive', neutralJointOhms: 5, watts1: 1500, watts2: 300 })?.v2,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7d-1',
    millman,
    'worked apart',
    '0.5 Ω, loaded leg',
    115.294,
    () => legs({ neutral: 'resistive', neutralJointOhms: 0.5, watts1: 1500, watts2: 300 })?.v1,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7d-2',
    millman,
    'worked apart',
    '0.05 Ω, light leg',
    120.497,
    () => legs({ neutral: 'resistive', neutralJointOhms: 0.05, watts1: 1500, watts2: 300 })?.v2,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7e-1',
    simulator,
    'worked apart',
    '12 Ω leg beside 16 + j12 Ω, neutral open',
    94.54,
    () => unlike()?.v1,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7e-2',
    simulator,
    'worked apart',
    '16 + j12 Ω leg',
    157.57,
    () => unlike()?.v2,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7e-sum',
    simulator,
    'worked apart',
    'the two added: more than 240',
    252.1,
    () => unlike()?.sumVolts,
    'decivolt',
  ),
  check(
    'leg-volts',
    '7h-1',
    simulator,
    'worked apart',
    'network with its neutral open, leg 1',
    55.342,
    () => network(undefined).v1,
    'centivolt',
  ),
  check(
    'leg-volts',
    '7h-2',
    simulator,
    'worked apart',
    'network with its neutral open, leg 2',
    184.474,
    () => network(undefined).v2,
    'centivolt',
  ),
  check(
    'leg-volts',
    '3-net-1',
    simulator,
    'worked apart',
    'sound network, leg 1',
    118.33,
    () => network(0.049).v1,
    'centivolt',
  ),
  check(
    'leg-volts',
    '3-net-2',
    simulator,
    'worked apart',
    'sound network, leg 2',
    121.009,
    () => network(0.049).v2,
    'centivolt',
  ),
  check(
    'leg-volts',
    '3-net-n',
    simulator,
    'worked apart',
    'sound network, neutral rise',
    0.893,
    () => network(0.049).neutralVolts,
    'centivolt',
  ),
  check(
    'leg-volts',
    '3h-1',
    dropCase,
    'worked apart',
    '40 A and 20 A, leg 1',
    117.054,
    () => drawing(40, 20)?.v1,
    'centivolt',
  ),
  check(
    'leg-volts',
    '3h-2',
    dropCase,
    'worked apart',
    '40 A and 0 A, leg 2 rises',
    121.964,
    () => drawing(40, 0)?.v2,
    'centivolt',
  ),
  check(
    'leg-volts',
    'trench-rise',
    trench,
    'worked apart',
    '0.16 Ω, 30 A on leg 1: rise of leg 2',
    4.8,
    () =>
      threeWire({
        legVolts: 120,
        angle: 180,
        hot1Ohms: 0.16,
        hot2Ohms: 0.16,
        neutralOhms: 0.16,
        load1: { watts: 120 ** 2 / (110.4 / 30), powerFactor: 1, volts: 120 },
        load2: { watts: 0, powerFactor: 1, volts: 120 },
        across: { watts: 0, powerFactor: 1, volts: 240 },
      }).v2 - 120,
    'centivolt',
  ),
];

const exact = (volts: number) => volts * 0;
const best = (v1: number, v2: number, v12: number, error = exact) => {
  const found = legAngleOf({ v1, v2, v12, error });
  return 'best' in found ? found.best : undefined;
};

export const legAngleChecks: OutsideCheck[] = [
  check(
    'leg-angle',
    'angle-nominal',
    'ANSI C84.1, nominal system 208Y/120: three phases a third of a turn apart',
    'published',
    'degrees between two of its legs',
    120,
    () => best(120, 120, 208),
    'threeFigures',
  ),
  check(
    'leg-angle',
    'angle-208',
    'Law of cosines, 120/120/208 V, worked by hand',
    'worked apart',
    'degrees',
    120.147,
    () => best(120, 120, 208),
    'rounded',
  ),
  check(
    'leg-angle',
    'angle-240',
    'Law of cosines, 120/120/240 V, worked by hand',
    'worked apart',
    'degrees',
    180,
    () => best(120, 120, 240),
    'rounded',
  ),
  check(
    'leg-angle',
    'angle-close',
    threeVolts,
    'common practice',
    'degrees, taken as opposed',
    180,
    () => best(120.2, 120.2, 240.9, (volts) => 0.01 * volts + 0.3),
    'rounded',
  ),
];

export const neutralCurrentChecks: OutsideCheck[] = [
  check(
    'neutral-current',
    'shared-sum',
    'Published text on multiwire circuits: 15 A and 15 A of one phase put 30 A on a shared neutral',
    'published',
    'neutral amps',
    30,
    () => amps('common-120', 1, 15, 15),
    'rounded',
  ),
  check(
    'neutral-current',
    '7f-opposed',
    phasors,
    'worked apart',
    '20 A and 12 A at 0.8, opposed',
    12.649,
    () => amps('opposed-120-240', 0.8),
    'rounded',
  ),
  check(
    'neutral-current',
    '7f-common',
    phasors,
    'worked apart',
    '20 A and 12 A at 0.8, in step',
    30.463,
    () => amps('common-120', 0.8),
    'rounded',
  ),
  check(
    'neutral-current',
    '7g-opposed',
    phasors,
    'worked apart',
    '20 A and 12 A, opposed',
    8,
    () => amps('opposed-120-240', 1),
    'rounded',
  ),
  check(
    'neutral-current',
    '7g-common',
    phasors,
    'worked apart',
    '20 A and 12 A, in step',
    32,
    () => amps('common-120', 1),
    'rounded',
  ),
  check(
    'neutral-current',
    '7g-third',
    phasors,
    'worked apart',
    '20 A and 12 A, a third apart',
    17.436,
    () => amps('wye-120-208', 1),
    'rounded',
  ),
  check(
    'neutral-current',
    'single',
    'One line: Kirchhoff’s current law',
    'worked apart',
    '20 A out, 20 A back',
    20,
    () => amps('single-230', 1),
    'rounded',
  ),
];
