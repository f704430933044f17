import { expect, it } from 'vitest';
import { type Random, randomFrom } from '../../src/plant/numeric/random.ts';
import { type PvCircuitInput, pvCircuit, type TrackerLoad } from '../../src/plant/pv/build.ts';
import { fitModule } from '../../src/plant/pv/module-fit.ts';
import type { PvRun, TrackerSpec } from '../../src/plant/pv/spec.ts';
import { compareDc } from './witness.ts';

/** Small strings: ngspice gets every third of every module as parts of its own. */
function randomRun(random: Random, index: number): PvRun {
  const vocV = random.between(30, 50);
  const module = fitModule({
    vocV,
    vmpV: vocV * random.between(0.82, 0.84),
    iscA: 10,
    impA: random.between(9.2, 9.5),
    vocPerC: -0.0029,
    iscPerC: 0.0005,
  })!;
  const count = random.whole(1, 4);
  const other = random.whole(0, 2);
  const row = () => ({ count, lightShare: random.between(0.8, 1), bridgedParts: 0, held: false });
  const branches = Array.from({ length: random.whole(1, 2) }, () => ({
    modules: [
      row(),
      ...(other > 0
        ? [{ ...row(), count: other, bridgedParts: random.whole(0, 3), lightShare: random.between(0.1, 1) }]
        : []),
    ],
    fuse: random.chance(0.1) ? Number.POSITIVE_INFINITY : 0.005,
    joint: random.chance(0.4) ? random.logBetween(0.5, 5000) : 0.01,
    reversed: false,
  }));
  const reversed = random.chance(0.15);
  for (const branch of branches) branch.reversed = reversed;
  return {
    name: `run${index}`,
    module,
    branches,
    leadOhm: random.between(0.02, 0.4),
    short: random.chance(0.1) ? random.logBetween(0.01, 1) : Number.POSITIVE_INFINITY,
    poles: { plus: random.chance(0.1) ? Number.POSITIVE_INFINITY : 0.005, minus: 0.005 },
    crossedAt: random.pick(['nowhere', 'nowhere', 'nowhere', 'isolator', 'unit'] as const),
    plusTo: { tracker: 0, pole: '+' },
    minusTo: { tracker: random.chance(0.1) ? 1 : 0, pole: '-' },
    leaks: random.chance(0.5)
      ? [{ at: random.whole(0, count), ohms: random.logBetween(0.1, 1e6), wetOnly: false }]
      : [],
    shutdown: 'none',
    shutdownPressed: false,
    fuseFitted: true,
  };
}

const tracker = (random: Random): TrackerSpec => ({
  name: 'T',
  startV: 50,
  trackMinV: 30,
  trackMaxV: 400,
  maxV: 500,
  usableA: 30,
  startDelayS: 0,
  leastW: 10,
  inputOhm: random.logBetween(1e5, 1e6),
  groundOhm: random.logBetween(1e6, 4e6),
  inputF: 1e-4,
  works: true,
  enabled: true,
});

function randomPv(seed: number): PvCircuitInput {
  const random = randomFrom(seed);
  const run = randomRun(random, 0);
  // Forward volts only hold a string that stands the right way round: a reversed one meets the input's diode instead.
  const upright = !run.branches[0]!.reversed && run.crossedAt === 'nowhere';
  const load: TrackerLoad =
    upright && random.chance(0.6) ? { at: 'volts', volts: random.between(5, 120) } : { at: 'rest' };
  return {
    runs: [run],
    trackers: [tracker(random), tracker(random)],
    sky: {
      lightWm2: random.chance(0.05) ? 0 : random.logBetween(20, 1100),
      airC: random.between(-20, 35),
      cellRiseC: 30,
      wet: true,
    },
    isolators: [random.chance(0.8)],
    parted: [false],
    loads: [load, { at: 'rest' }],
  };
}

const pvPlants = 150;

it(`${pvPlants} random PV strings and faults agree with ngspice, module part by module part`, async () => {
  const worst = { volts: 0, amps: 0 };
  for (let seed = 1; seed <= pvPlants; seed++) {
    const { worstVolts, worstAmps } = await compareDc(pvCircuit(randomPv(seed)));
    worst.volts = Math.max(worst.volts, worstVolts);
    worst.amps = Math.max(worst.amps, worstAmps);
  }
  console.info(`PV: worst ${JSON.stringify(worst)}`);
  expect(worst.volts).toBeLessThan(1e-3);
  expect(worst.amps).toBeLessThan(1e-3);
}, 120_000);
