import { describe, expect, it } from 'vitest';
import { faultsOf, samplePlant } from '../../src/plant/faults/index.ts';
import { measure, type Probe } from '../../src/plant/meter/measure.ts';
import { type MeterFunction, meterOf } from '../../src/plant/meter/spec.ts';
import { randomFrom } from '../../src/plant/numeric/random.ts';
import { displays } from '../../src/plant/observe.ts';
import { type Act, advance, busCurve, operate, touchVolts } from '../../src/plant/operate.ts';
import { firstSubject } from '../../src/plant/places.ts';
import { settle } from '../../src/plant/settle.ts';
import type { Plant } from '../../src/plant/spec.ts';
import { sallowCreek } from '../../src/site/demo.ts';

const sound = (seed = 3): Plant =>
  samplePlant({ sheet: sallowCreek, fault: undefined, seed, conditions: { lightWm2: 800, charge: 0.5 } })!
    .plant;
const withFault = (cause: string, group: 'a' | 'd', seed = 3) =>
  samplePlant({ sheet: sallowCreek, fault: faultsOf(group).find((each) => each.cause === cause), seed })!
    .plant;

const exact = meterOf(sallowCreek, randomFrom(1), false);
function read(plant: Plant, probe: Probe, mode: MeterFunction): number {
  const { shown } = measure(plant, exact, probe, mode, firstSubject, randomFrom(1));
  return shown.kind === 'value' ? shown.value : Number.NaN;
}
const acting = (plant: Plant, ...acts: Act[]): Plant =>
  acts.reduce((now, act) => operate(now, act).plant, plant);
const off = (move: 'main' | 'unit'): Act => ({ move, on: false });

describe('what an act costs', () => {
  it('an isolator opened at full current is an arc, at rest it is not', () => {
    const plant = sound();
    const live = operate(plant, { move: 'isolator', run: 0, on: false }).consequences;
    expect(live).toContainEqual(expect.objectContaining({ kind: 'opened-under-current', what: 'isolator' }));
    const [arc] = live;
    expect(arc?.kind === 'opened-under-current' && arc.amps).toBeGreaterThan(5);
    const stopped = acting(plant, off('unit'));
    const amps = operate(stopped, { move: 'isolator', run: 0, on: false }).consequences.flatMap((each) =>
      each.kind === 'opened-under-current' ? [each.amps] : [],
    );
    expect(Math.max(0, ...amps)).toBeLessThan(0.05);
  });

  it('a reversed string is an arc even with the unit off', () => {
    const plant = acting(withFault('string-reversed', 'a'), off('unit'));
    const [arc] = operate(plant, { move: 'isolator', run: 0, on: false }).consequences;
    expect(arc?.kind === 'opened-under-current' && arc.amps).toBeGreaterThan(3);
  });

  it('the main closed on empty capacitors draws thousands of amperes, after pre-charge next to nothing', () => {
    const open = acting(
      sound(),
      { move: 'isolator', run: 0, on: false },
      { move: 'isolator', run: 1, on: false },
      off('unit'),
      off('main'),
    );
    const empty = acting(open, { move: 'bleed' });
    const inrush = (plant: Plant) =>
      operate(plant, { move: 'main', on: true }).consequences.flatMap((each) =>
        each.kind === 'inrush' ? [each.amps] : [],
      )[0]!;
    expect(inrush(empty)).toBeGreaterThan(2000);
    const charging = acting(empty, { move: 'precharge', on: true });
    const done = advance(charging, 5 * 25 * 0.02 + 5);
    expect(read(done, { red: 'S1+', black: 'S2+' }, 'dcVolts')).toBeLessThan(3);
    expect(inrush(done)).toBeLessThan(0.05 * inrush(empty));
  });

  it('a lifted neutral puts volts on the loads', () => {
    const plant = withFault('neutral-open-feeder', 'd');
    const { consequences } = operate(plant, { move: 'allLoads', on: true });
    expect(consequences).toContainEqual(expect.objectContaining({ kind: 'volts-on-loads' }));
  });

  it('a hand on the array side meets the string with the isolator open; on the battery side of an open main, the battery', () => {
    const plant = acting(sound(), off('unit'), off('main'), { move: 'isolator', run: 0, on: false });
    expect(touchVolts(plant, ['P1+', 'P1-'], firstSubject)).toBeGreaterThan(100);
    expect(touchVolts(plant, ['S1+', 'S1-'], firstSubject)).toBeGreaterThan(40);
    const dead = acting(plant, { move: 'bleed' });
    expect(touchVolts(dead, ['S2+', 'S2-', 'I+', 'I-'], firstSubject)).toBeLessThan(1);
    expect(touchVolts(dead, ['D-L1', 'D-N', 'D-L2'], firstSubject)).toBeLessThan(1);
  });
});

describe('capacitors and time', () => {
  it('keep the bus up after the main has opened, and lose it by the bleed', () => {
    const plant = acting(
      sound(),
      { move: 'isolator', run: 0, on: false },
      { move: 'isolator', run: 1, on: false },
      off('unit'),
      off('main'),
    );
    const volts = read(plant, { red: 'I+', black: 'I-' }, 'dcVolts');
    expect(volts).toBeGreaterThan(40);
    const later = read(advance(plant, 60), { red: 'I+', black: 'I-' }, 'dcVolts');
    expect(later).toBeLessThan(0.9 * volts);
  });

  it('stop on a plateau when something draws behind the resistor', () => {
    const plant = acting(
      sound(),
      { move: 'isolator', run: 0, on: false },
      { move: 'isolator', run: 1, on: false },
      off('unit'),
      off('main'),
      { move: 'bleed' },
      { move: 'precharge', on: true },
    );
    const loaded: Plant = { ...plant, spec: { ...plant.spec, unit: { ...plant.spec.unit, bleedOhm: 60 } } };
    const end = busCurve(loaded, 30).at(-1)!.volts;
    expect(end / (53 * (60 / 85))).toBeGreaterThan(0.97);
    expect(end / (53 * (60 / 85))).toBeLessThan(1.03);
  });

  it('a tracker waits its start delay after the unit comes on', () => {
    const plant = acting(sound(), off('unit'), { move: 'unit', on: true });
    expect(settle(plant).pv.trackers[0]!.doing).toBe('delay');
    expect(settle(advance(plant, 300)).pv.trackers[0]!.doing).toBe('running');
  });
});

describe('the meter', () => {
  it('loads what it touches: a ghost falls on low impedance', () => {
    const plant = acting(withFault('isolator-open', 'a', 1), off('unit'));
    const ghost = Math.abs(read(plant, { red: 'P2+', black: 'PG' }, 'dcVolts'));
    const low = Math.abs(read(plant, { red: 'P2+', black: 'PG' }, 'lowZVolts'));
    expect(low).toBeLessThanOrEqual(ghost + 1e-9);
    expect(low).toBeLessThan(0.05);
  });

  it('reads nothing of DC in AC and the other way round, and is harmed by ohms on live parts', () => {
    const plant = sound();
    expect(read(plant, { red: 'P1+', black: 'P1-' }, 'acVolts')).toBe(0);
    expect(read(plant, { red: 'D-L1', black: 'D-N' }, 'dcVolts')).toBe(0);
    expect(measure(plant, exact, { red: 'I+', black: 'I-' }, 'ohms', firstSubject, randomFrom(1)).harm).toBe(
      'ohms-on-live',
    );
  });

  it('stays inside its data sheet, repeats with its seed, and rounds to its counts', () => {
    const plant = sound();
    const meter = meterOf(sallowCreek, randomFrom(9), true);
    const probe = { red: 'P1+', black: 'P1-' };
    const truth = read(plant, probe, 'dcVolts');
    for (let seed = 0; seed < 50; seed++) {
      const one = measure(plant, meter, probe, 'dcVolts', firstSubject, randomFrom(seed)).shown;
      const two = measure(plant, meter, probe, 'dcVolts', firstSubject, randomFrom(seed)).shown;
      expect(one).toEqual(two);
      expect(one.kind === 'value' && Math.abs(one.value - truth)).toBeLessThan(0.005 * truth + 4 * 0.1);
    }
  });

  it('links: 60 Ω with both ends in and everything off, 120 with one plug out', () => {
    const plant = acting(sound(), off('unit'), { move: 'pack', pack: 0, on: false });
    const pair = { red: 'C-H', black: 'C-L' };
    expect(read(plant, pair, 'ohms')).toBeGreaterThan(55);
    expect(read(plant, pair, 'ohms')).toBeLessThan(65);
    const out = acting(plant, { move: 'unitPlug', on: false });
    expect(read(out, pair, 'ohms')).toBeGreaterThan(110);
    expect(read(out, { red: 'lead.C-H', black: 'lead.C-L' }, 'ohms')).toBeGreaterThan(110);
  });
});

it('held back means held back: a load added by hand is answered by the sun', () => {
  const plant = withFault('held-back', 'a', 2);
  const before = displays(plant, firstSubject).pvW!;
  const after = displays(acting(plant, { move: 'test', leg: 0, watts: 1500 }), firstSubject).pvW!;
  expect(after - before).toBeGreaterThan(400);
});
