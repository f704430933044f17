import { describe, expect, it } from 'vitest';
import { groundShare } from '../../src/worksheets/ac/bond-currents.ts';
import { apartVolts } from '../../src/worksheets/ac/join-outputs.ts';
import { startOf } from '../../src/worksheets/ac/motor-start.ts';
import { threeWire } from '../../src/worksheets/ac/three-wire.ts';
import { simulateAc } from './ngspice.ts';

const hertz = 60;
const point = [`.ac lin 1 ${hertz} ${hertz}`, '.end'];
/** A load of so many ohms at a lagging power factor, between two nodes. */
const load = (name: string, from: string, to: string, ohms: number, factor: number): string[] => {
  const reactance = ohms * Math.sqrt(1 - factor ** 2);
  const resistance = ohms * factor;
  if (reactance < 1e-9) return [`R${name} ${from} ${to} ${resistance}`];
  return [
    `R${name} ${from} x${name} ${resistance}`,
    `L${name} x${name} ${to} ${reactance / (2 * Math.PI * hertz)}`,
  ];
};
const near = (ours: number, theirs: number | undefined, within = 1e-5) => {
  if (theirs === undefined) throw new Error('ngspice gave no such node');
  expect(Math.abs(ours - theirs), `${ours} against ${theirs}`).toBeLessThanOrEqual(
    within * Math.max(1, Math.abs(theirs)),
  );
};

describe('AC sums against ngspice', () => {
  it.each([
    [240, 240, 48, 0.6, 0.4],
    [120, 115, 60, 0.45, 0.15],
    [230, 230, 20, 0.9, 1.9],
    [240, 240, 50, 1, 0],
  ])('%s V, a motor of %s V and %s A held at %s, %s Ω of run', async (source, rated, amps, factor, loop) => {
    const ours = startOf({
      sourceVolts: source,
      motorVolts: rated,
      lockedAmps: amps,
      powerFactor: factor,
      loopOhms: loop,
    });
    const seen = await simulateAc(
      [
        'motor',
        `V1 a 0 DC 0 AC ${source}`,
        `RW a m ${Math.max(loop, 1e-9)}`,
        ...load('M', 'm', '0', rated / amps, factor),
        ...point,
      ].join('\n'),
    );
    near(ours.volts, seen['v(m)']);
    near(ours.amps, seen['i(v1)']);
  });

  it.each([
    [10, 0.16, 0.4],
    [25, 0.05, 0.02],
    [8, 1.2, 0.6],
  ])('%s A home by a neutral of %s Ω and a ground of %s Ω', async (amps, neutral, ground) => {
    const seen = await simulateAc(
      [
        'bonds',
        `I1 0 p DC 0 AC ${amps}`,
        `RN p 0 ${neutral}`,
        `RE p g ${ground}`,
        'VE g 0 DC 0 AC 0',
        ...point,
      ].join('\n'),
    );
    near(groundShare(amps, neutral, ground), seen['i(ve)']);
  });

  it.each([0, 3, 60, 120, 180])('two outputs %s degrees apart', async (degrees) => {
    const seen = await simulateAc(
      ['apart', 'VA a 0 DC 0 AC 120 0', `VB a d DC 0 AC 120 ${degrees}`, 'RD d 0 10meg', ...point].join('\n'),
    );
    near(apartVolts(120, degrees), seen['v(d)'], 1e-4);
  });

  it.each([
    [180, 0.05],
    [120, 0.05],
    [0, 0.3],
    [180, 5],
  ])('two legs %s degrees apart on one neutral of %s Ω', async (angle, neutralOhms) => {
    const ours = threeWire({
      legVolts: 120,
      angle,
      hot1Ohms: 0.05,
      hot2Ohms: 0.07,
      neutralOhms,
      load1: { watts: 1500, powerFactor: 0.8, volts: 120 },
      load2: { watts: 400, powerFactor: 1, volts: 120 },
      across: { watts: 0, powerFactor: 1, volts: 240 },
    });
    const seen = await simulateAc(
      [
        'legs',
        'V1 e1 0 DC 0 AC 120 0',
        `V2 e2 0 DC 0 AC 120 ${angle}`,
        'RH1 e1 a 0.05',
        'RH2 e2 b 0.07',
        `RN n 0 ${neutralOhms}`,
        ...load('1', 'a', 'n', (120 ** 2 * 0.8) / 1500, 0.8),
        ...load('2', 'b', 'n', 120 ** 2 / 400, 1),
        ...point,
      ].join('\n'),
    );
    near(ours.neutralVolts, seen['v(n)'], 1e-4);
    near(ours.i1, seen['i(v1)'], 1e-4);
    near(ours.i2, seen['i(v2)'], 1e-4);
  });
});
