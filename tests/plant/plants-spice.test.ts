import { it } from 'vitest';
import { withPart } from '../../src/plant/circuit/netlist.ts';
import { linkCircuit } from '../../src/plant/link/build.ts';
import { randomFrom } from '../../src/plant/numeric/random.ts';
import { settle } from '../../src/plant/settle.ts';
import { expectAlike, plants } from './sample-plants.ts';
import { compareDc } from './witness.ts';

it('battery, path and inverter as a load: 130 plants and faults', async () => {
  await expectAlike('DC', plants(['a', 'c', 'e', 'f', 'g'], 130), (plant) =>
    compareDc(settle(plant).dc.circuit),
  );
}, 120_000);

it('data link, idle volts and ohms: 120 plants and faults', async () => {
  const random = randomFrom(7);
  await expectAlike('link', plants(['b'], 120), (plant) => {
    const on = random.chance(0.5);
    const circuit = linkCircuit(plant.spec.link, {
      unitPlug: random.chance(0.7),
      packPlug: random.chance(0.7),
      unitOn: on,
      packOn: on,
    });
    const [a, b] = ['unit.C-H', 'unit.C-L'].map((name) => circuit.nodeOf.get(name)!);
    // Powered: its own volts. Off: an ohmmeter's current through the pair.
    return compareDc(on ? circuit : withPart(circuit, { kind: 'amps', a: a!, b: b!, amps: 1e-3 }), 0);
  });
}, 120_000);

it('whole PV sides of sampled plants, all strings and trackers: 12 plants and faults', async () => {
  await expectAlike('PV of plants', plants(['a'], 12), (plant) => compareDc(settle(plant).pv.circuit));
}, 120_000);
