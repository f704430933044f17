import { it } from 'vitest';
import { settle } from '../../src/plant/settle.ts';
import { compareAc } from './ac-witness.ts';
import { expectAlike, plants } from './sample-plants.ts';

// In a file of its own: an engine that has answered in complex numbers answers stale in real ones.
it('AC legs, neutral, ground and loads as phasors: 170 plants and faults', async () => {
  await expectAlike('AC', plants(['c', 'd', 'm'], 170), (plant) =>
    compareAc(settle(plant).ac.circuit, plant.spec.ac.hz),
  );
}, 120_000);
