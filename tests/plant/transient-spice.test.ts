import { expect, it } from 'vitest';
import { type CapacitorRun, charge, voltsAt } from '../../src/plant/circuit/transient.ts';
import { randomFrom } from '../../src/plant/numeric/random.ts';
import { at, simulate } from '../spice/ngspice.ts';

const runs = 24;

it(`${runs} random pre-charges with a bleed and a load that wakes follow ngspice to 0.1 %`, async () => {
  let worst = 0;
  for (let seed = 1; seed <= runs; seed++) {
    const random = randomFrom(seed);
    const [sourceV, ohms, bleed] = [
      random.between(42, 57),
      random.between(10, 60),
      random.logBetween(80, 20_000),
    ];
    const [farads, watts] = [random.logBetween(2e-3, 0.06), random.chance(0.5) ? random.between(1, 15) : 0];
    const startV = random.chance(0.5) ? 0 : random.between(1, 40);
    // The load fades in between 19 and 21 V, as both can follow.
    const load = (v: number) => (v <= 19 ? 0 : ((v < 21 ? (v - 19) / 2 : 1) * watts) / v);
    const seconds = 6 * ohms * farads;
    const run: CapacitorRun = {
      farads,
      startV,
      into: (v) => (sourceV - v) / ohms - v / bleed - load(v),
      seconds,
    };
    const ours = charge(run);
    const deck = [
      'bus',
      `V1 a 0 DC ${sourceV}`,
      `R1 a b ${ohms}`,
      `C1 b 0 ${farads} IC=${startV}`,
      `R2 b 0 ${bleed}`,
      `B1 b 0 I = V(b) > 19 ? (V(b) < 21 ? (V(b)-19)/2 : 1) * ${watts}/V(b) : 0`,
      '.options reltol=1e-6',
      `.tran ${seconds / 2000} ${seconds} 0 ${seconds / 2000} uic`,
      '.end',
    ].join('\n');
    const waves = await simulate(deck);
    for (const share of [0.05, 0.1, 0.2, 0.4, 0.6, 0.8, 0.95]) {
      const theirs = at(waves, 'v(b)', share * seconds);
      worst = Math.max(worst, Math.abs(voltsAt(ours, share * seconds) - theirs) / Math.max(theirs, 1));
    }
  }
  console.info(`transient: ${runs} runs, worst ${worst.toExponential(1)}`);
  expect(worst).toBeLessThan(1e-3);
}, 60_000);
