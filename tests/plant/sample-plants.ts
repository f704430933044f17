import { expect } from 'vitest';
import type { Fault } from '../../src/plant/faults/fault.ts';
import { faultsOf, samplePlant } from '../../src/plant/faults/index.ts';
import type { Plant } from '../../src/plant/spec.ts';
import { sampleSites } from './sites.ts';
import type { Compared } from './witness.ts';

/** Plants of every site with the faults of some groups, in turn, healthy ones among them. */
export function plants(groups: readonly Fault['group'][], count: number): Plant[] {
  const list: (Fault | undefined)[] = [undefined, ...groups.flatMap(faultsOf)];
  const found: Plant[] = [];
  for (let seed = 1; found.length < count; seed++) {
    const sheet = sampleSites[seed % sampleSites.length]!;
    const sampled = samplePlant({ sheet, fault: list[seed % list.length], seed });
    if (sampled) found.push(sampled.plant);
  }
  return found;
}

/** Compares every plant's circuit, one after the other (ngspice is one engine), and holds the worst to 0.1 %. */
export async function expectAlike(
  name: string,
  list: readonly Plant[],
  compare: (plant: Plant) => Promise<Compared>,
): Promise<void> {
  const worst: Compared = { worstVolts: 0, worstAmps: 0 };
  for (const plant of list) {
    const { worstVolts, worstAmps } = await compare(plant);
    worst.worstVolts = Math.max(worst.worstVolts, worstVolts);
    worst.worstAmps = Math.max(worst.worstAmps, worstAmps);
  }
  console.info(
    `${name}: ${list.length} circuits, worst volts ${worst.worstVolts.toExponential(1)}, amps ${worst.worstAmps.toExponential(1)}`,
  );
  expect(worst.worstVolts).toBeLessThan(1e-3);
  expect(worst.worstAmps).toBeLessThan(1e-3);
}
