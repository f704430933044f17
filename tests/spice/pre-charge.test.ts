import { describe, expect, it } from 'vitest';
import {
  type ChargeCircuit,
  finalVolts,
  resistorJoules,
  voltsAt,
} from '../../src/worksheets/battery-dc/capacitor-charge.ts';
import { fitCharge } from '../../src/worksheets/battery-dc/charge-fit.ts';
import { plateauLoadOhms, plateauWatts, voltsUnderPower } from '../../src/worksheets/battery-dc/plateau.ts';
import { at, last, simulate, type Waves } from './ngspice.ts';

const deck = (circuit: ChargeCircuit, endS: number): string =>
  [
    'pre-charge',
    `V1 a 0 DC ${circuit.sourceVolts}`,
    `R1 a b ${circuit.resistorOhms}`,
    `C1 b 0 ${circuit.capacitanceF} IC=${circuit.startVolts ?? 0}`,
    ...(circuit.loadOhms === undefined ? [] : [`RL b 0 ${circuit.loadOhms}`]),
    `.tran ${endS / 2000} ${endS} 0 ${endS / 2000} uic`,
    '.end',
  ].join('\n');

/** Heat in the resistor, summed over the simulator's own points (trapezoids). */
function heatJoules(waves: Waves, circuit: ChargeCircuit): number {
  const times = waves.time!;
  const watts = times.map((_, i) => (waves['v(a)']![i]! - waves['v(b)']![i]!) ** 2 / circuit.resistorOhms);
  return times.reduce(
    (sum, time, i) => (i === 0 ? 0 : sum + ((watts[i]! + watts[i - 1]!) / 2) * (time - times[i - 1]!)),
    0,
  );
}

const circuits: { name: string; circuit: ChargeCircuit }[] = [
  { name: '51.2 V, 33 Ω, 20 mF', circuit: { sourceVolts: 51.2, resistorOhms: 33, capacitanceF: 0.02 } },
  { name: '54.4 V, 22 Ω, 8 mF', circuit: { sourceVolts: 54.4, resistorOhms: 22, capacitanceF: 0.008 } },
  { name: 'from 20 V', circuit: { sourceVolts: 53, resistorOhms: 47, capacitanceF: 0.012, startVolts: 20 } },
  {
    name: 'with a 60 Ω load',
    circuit: { sourceVolts: 51.2, resistorOhms: 33, capacitanceF: 0.02, loadOhms: 60 },
  },
  {
    name: 'with a 1 Ω short',
    circuit: { sourceVolts: 51.2, resistorOhms: 33, capacitanceF: 0.02, loadOhms: 1 },
  },
];

describe('pre-charge against ngspice', () => {
  it.each(circuits)('follows the curve: $name', async ({ circuit }) => {
    const endS = 6 * circuit.resistorOhms * circuit.capacitanceF;
    const waves = await simulate(deck(circuit, endS));
    for (const share of [0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 0.95]) {
      expect(Math.abs(at(waves, 'v(b)', share * endS) - voltsAt(circuit, share * endS))).toBeLessThan(0.005);
    }
    expect(Math.abs(last(waves, 'v(b)') - voltsAt(circuit, endS))).toBeLessThan(0.005);
  });

  it.each(circuits.slice(0, 3))('leaves the heat in the resistor: $name', async ({ circuit }) => {
    const waves = await simulate(deck(circuit, 12 * circuit.resistorOhms * circuit.capacitanceF));
    expect(heatJoules(waves, circuit) / resistorJoules(circuit)).toBeCloseTo(1, 3);
  });

  it.each(circuits.slice(3))('reads the load back from where it settles: $name', async ({ circuit }) => {
    const waves = await simulate(deck(circuit, 10));
    const settled = last(waves, 'v(b)');
    expect(settled).toBeCloseTo(finalVolts(circuit), 4);
    expect(
      plateauLoadOhms(circuit.sourceVolts, circuit.resistorOhms, settled)! / circuit.loadOhms!,
    ).toBeCloseTo(1, 4);
    expect(plateauWatts(circuit.sourceVolts, circuit.resistorOhms, settled)).toBeCloseTo(
      settled ** 2 / circuit.loadOhms!,
      4,
    );
  });

  it('finds the bank and the load from six readings of the simulated bus', async () => {
    const circuit = circuits[3]!.circuit;
    const waves = await simulate(deck(circuit, 5));
    const readings = [0.3, 0.6, 1, 1.5, 2.5, 4].map((tS) => ({
      tS,
      volts: Math.round(10 * at(waves, 'v(b)', tS)) / 10,
    }));
    const fit = fitCharge({ ...circuit, readings });
    if (!fit.ok) throw new Error(fit.reason.id);
    expect(fit.out.capacitanceF.value / circuit.capacitanceF).toBeCloseTo(1, 1);
    expect(fit.out.plateau.kind).toBe('load');
    expect('ohms' in fit.out.plateau && fit.out.plateau.ohms / circuit.loadOhms!).toBeCloseTo(1, 1);
  });

  it('settles where a load of constant power lets it', async () => {
    const [volts, ohms, watts] = [51.2, 33, 12];
    // Below 20 V the electronics are off, as real ones are; above it they draw constant power.
    const waves = await simulate(
      `power\nV1 a 0 DC ${volts}\nR1 a b ${ohms}\nC1 b 0 0.02 IC=0\nB1 b 0 I = V(b) > 20 ? ${watts}/V(b) : 0\n.tran 2m 8 0 2m uic\n.end`,
    );
    expect(last(waves, 'v(b)')).toBeCloseTo(voltsUnderPower(volts, ohms, watts)!, 2);
  });

  it('never climbs past half the source under more power than the resistor can carry', async () => {
    const [volts, ohms, watts] = [51.2, 33, 25];
    expect(voltsUnderPower(volts, ohms, watts)).toBeUndefined();
    const waves = await simulate(
      `power\nV1 a 0 DC ${volts}\nR1 a b ${ohms}\nC1 b 0 0.02 IC=40\nB1 b 0 I = ${watts}/(V(b) > 10 ? V(b) : 10) * (V(b) > 10 ? 1 : V(b)/10)\n.tran 2m 8 0 2m uic\n.end`,
    );
    expect(last(waves, 'v(b)')).toBeLessThan(volts / 2);
  });
});
