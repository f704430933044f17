import { describe, expect, it } from 'vitest';
import { cellOpenVolts } from '../../src/plant/battery/open-circuit.ts';
import { newCircuit } from '../../src/plant/circuit/netlist.ts';
import { newAcCircuit, type Phasor, phasor, plus, sizeOf, solveAc } from '../../src/plant/circuit/phasor.ts';
import { solveCircuit } from '../../src/plant/circuit/solve.ts';
import { charge, voltsAt } from '../../src/plant/circuit/transient.ts';
import { airDensity } from '../../src/plant/heat/solve.ts';
import { copperOhm } from '../../src/plant/site-parts.ts';

const stiff: Phasor = { re: 1e-6, im: 0 };

interface House {
  sourceV: number;
  feederOhm?: number;
  neutralOhm?: number;
  a: Phasor;
  b: Phasor;
  both?: number;
  leg2Deg?: number;
}

/** Two legs, a run of three conductors, a load on each leg and one across both. */
function house({ sourceV, feederOhm = 1e-6, neutralOhm = feederOhm, a, b, both, leg2Deg = 180 }: House) {
  const c = newAcCircuit();
  c.source('s1', 'm', phasor(sourceV, 0), stiff);
  c.source('s2', 'm', phasor(sourceV, leg2Deg), stiff);
  c.impedance('m', 'ground', 1e-3);
  c.impedance('s1', 'a', feederOhm, 0, 'line1');
  c.impedance('s2', 'b', feederOhm, 0, 'line2');
  c.impedance('m', 'n', neutralOhm, 0, 'neutral');
  c.impedance('a', 'n', a.re, a.im);
  c.impedance('b', 'n', b.re, b.im);
  if (both !== undefined) c.impedance('a', 'b', both);
  const circuit = c.done();
  const point = solveAc(circuit);
  if (!point.ok) throw new Error(point.reason);
  const volts = (x: string, y: string) => {
    const [p, q] = [x, y].map((name) => point.volts[circuit.nodeOf.get(name)!]!);
    return Math.hypot(p!.re - q!.re, p!.im - q!.im);
  };
  const amps = (name: string) => sizeOf(point.amps(circuit.named.get(name)!));
  return { va: volts('a', 'n'), vb: volts('b', 'n'), rise: volts('n', 'm'), amps };
}
const ohm = (re: number, im = 0): Phasor => ({ re, im });

describe('split phase, cases of the handbook (7, 3h and its full network, run there in ngspice)', () => {
  it('full network', () => {
    const all = { sourceV: 121, feederOhm: 0.049, a: ohm(4.5), b: ohm(15), both: 24 };
    const sound = house(all);
    expect(sound.va).toBeCloseTo(118.33, 2);
    expect(sound.vb).toBeCloseTo(121.009, 2);
    expect(sound.rise).toBeCloseTo(0.893, 2);
    expect(sound.amps('line1')).toBeCloseTo(36.268, 2);
    expect(sound.amps('line2')).toBeCloseTo(18.04, 2);
    // 7h: the same with its neutral open.
    const open = house({ ...all, neutralOhm: 1e12 });
    expect(open.va).toBeCloseTo(55.342, 1);
    expect(open.vb).toBeCloseTo(184.474, 1);
    expect(open.amps('line1')).toBeCloseTo(22.29, 1);
  });

  it.each([
    ['7a lamps', ohm(144), ohm(72), 1e12, 160, 80],
    ['7b 1500 and 300 W', ohm(9.6), ohm(48), 1e12, 40, 200],
    ['7c 5 Ω', ohm(9.6), ohm(48), 5, 89.231, 150.769],
    ['7d 0.5 Ω', ohm(9.6), ohm(48), 0.5, 115.294, 124.706],
    ['7d 0.05 Ω', ohm(9.6), ohm(48), 0.05, 119.503, 120.497],
    ['7e unlike power factors', ohm(12), ohm(16, 12), 1e12, 94.54, 157.57],
  ])('%s', (_name, a, b, neutralOhm, va, vb) => {
    const { va: ours, vb: other } = house({ sourceV: 120, neutralOhm, a, b });
    expect(Math.abs(ours - va)).toBeLessThan(0.02);
    expect(Math.abs(other - vb)).toBeLessThan(0.02);
  });

  it.each([
    ['7f opposed', 180, phasor(20, 0), phasor(12, -36.8699), 12.649],
    ['7f in step', 0, phasor(20, 0), phasor(12, -36.8699), 30.463],
    ['7g opposed', 180, phasor(20, 0), phasor(12, 0), 8],
    ['7g in step', 0, phasor(20, 0), phasor(12, 0), 32],
    ['7g a third apart', 120, phasor(20, 0), phasor(12, 0), 17.436],
  ])('neutral current %s', (_name, leg2Deg, i1, i2, amps) => {
    const load = (i: Phasor): Phasor => {
      const size = 120 / sizeOf(i);
      const angle = Math.atan2(i.im, i.re);
      return { re: size * Math.cos(angle), im: -size * Math.sin(angle) };
    };
    const { amps: read } = house({ sourceV: 120, a: load(i1), b: load(i2), leg2Deg });
    expect(read('neutral')).toBeCloseTo(amps, 2);
    expect(sizeOf(plus(i1, { re: 0, im: 0 }))).toBeCloseTo(20, 9);
  });
});

describe('pre-charge (5, run there in ngspice)', () => {
  const into = (volts: number) => (51.2 - volts) / 33;
  const run = charge({ farads: 0.02, startV: 0, into, seconds: 5 });
  it.each([
    [0.66, 32.3646],
    [3.3, 50.855],
    [1.9772, 0.95 * 51.2],
    [3.0394, 0.99 * 51.2],
  ])('5b, 5c: at %s s', (atS, volts) => expect(voltsAt(run, atS)).toBeCloseTo(volts, 2));

  it('5e and 5g: to within 5 V of the source; bleeding down', () => {
    const up = charge({ farads: 0.02, startV: 0, into: (v) => (54.4 - v) / 33, seconds: 1.575 });
    expect(up.at(-1)!.volts).toBeCloseTo(49.4, 1);
    const down = charge({ farads: 0.02, startV: 58.4, into: (v) => -v / 10_000, seconds: 491.6 });
    expect(down.at(-1)!.volts).toBeCloseTo(5, 2);
  });

  it('5f: a closing switch of 10 mΩ is followed too, though it is 3000 times as quick', () => {
    const quick = charge({ farads: 0.02, startV: 48.64, into: (v) => (51.2 - v) / 0.01, seconds: 0.002 });
    expect(quick.at(-1)!.volts).toBeCloseTo(51.2 - 2.56 * Math.exp(-10), 3);
  });

  it.each([
    [19.8, true],
    [19.9, false],
  ])('5i: %s W behind 33 Ω at 51.2 V runs: %s', (watts, runs) => {
    const b = newCircuit();
    b.add({ kind: 'volts', a: b.node('v'), b: 0, volts: 51.2 });
    b.resistor('v', 'x', 33);
    b.add({ kind: 'power', a: b.node('x'), b: 0, watts, foldV: 10 });
    const point = solveCircuit(b.done());
    expect(point.ok).toBe(true);
    expect(point.ok && point.starved.length === 0).toBe(runs);
  });
});

describe('other figures', () => {
  it('9a: bias of a 485 pair, 5 V, 560 Ω each way, 60 Ω across', () => {
    const b = newCircuit();
    b.add({ kind: 'volts', a: b.node('s'), b: 0, volts: 5 });
    b.resistor('s', 'h', 560);
    b.resistor('l', 'ground', 560);
    b.resistor('h', 'l', 60);
    const c = b.done();
    const point = solveCircuit(c);
    const at = (name: string) => (point.ok ? point.volts[c.nodeOf.get(name)!]! : 0);
    expect(at('h') - at('l')).toBeCloseTo(0.2542, 4);
  });

  it('6g: open-circuit volts of 16 cells', () => {
    expect(16 * cellOpenVolts(0.3)).toBeCloseTo(52.44, 2);
    expect(16 * cellOpenVolts(0.9)).toBeCloseTo(53.474, 2);
  });

  it('10: air, and 1e: copper within 2 % of the tabled strand', () => {
    expect(airDensity(0, 20)).toBeCloseTo(1.2042, 3);
    expect(airDensity(1500, 30)).toBeCloseTo(0.9717, 3);
    expect(copperOhm(1000, 35, 20)).toBeGreaterThan(0.98 * 0.4926);
  });
});

describe('circuits with nothing to say', () => {
  it.each([
    [
      'an open circuit',
      (b: ReturnType<typeof newCircuit>) =>
        b.add({ kind: 'volts', a: b.node('a'), b: b.node('z'), volts: 53 }),
    ],
    [
      'a short',
      (b: ReturnType<typeof newCircuit>) => {
        b.add({ kind: 'volts', a: b.node('a'), b: 0, volts: 53 });
        b.resistor('a', 'ground', 0);
      },
    ],
    ['a floating island', (b: ReturnType<typeof newCircuit>) => b.resistor('a', 'z', 10)],
    ['nothing at all', (_b: ReturnType<typeof newCircuit>) => {}],
    [
      'a load with no source',
      (b: ReturnType<typeof newCircuit>) =>
        b.add({ kind: 'power', a: b.node('a'), b: 0, watts: 100, foldV: 30 }),
    ],
  ])('gives numbers for %s', (_name, build) => {
    const b = newCircuit();
    build(b);
    const point = solveCircuit(b.done());
    expect(point.ok).toBe(true);
    expect(point.ok && [...point.volts].every(Number.isFinite)).toBe(true);
  });

  it('names the contradiction of two ideal sources', () => {
    const b = newCircuit();
    b.add({ kind: 'volts', a: b.node('a'), b: 0, volts: 53 });
    b.add({ kind: 'volts', a: b.node('a'), b: 0, volts: 48 });
    expect(solveCircuit(b.done())).toEqual({ ok: false, reason: 'contradiction' });
  });
});
