import { idleVolts, pairOhms } from '../../../src/worksheets/link/pair-ohms.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'link-ends';
const tia = 'TIA-485-A: end resistors and receivers of a serial pair';
const iso = 'Published article on the CAN physical layer: ohms between the wires, power off (ISO 11898-2)';
const modbus = 'Modbus over serial line V1.02: fail-safe bias, worked apart and in a circuit simulator';

const ohms = (
  id: string,
  source: string,
  what: string,
  published: number,
  parts: Parameters<typeof pairOhms>[0],
  tolerance: OutsideCheck['tolerance'] = 'about',
  origin: OutsideCheck['origin'] = 'from memory',
): OutsideCheck => ({
  id: `link-${id}`,
  worksheet,
  source,
  origin,
  what,
  published,
  worked: () => pairOhms(parts),
  tolerance,
});

const bias = (id: string, published: number, supply: number, biasOhms: number): OutsideCheck => ({
  id: `link-${id}`,
  worksheet,
  source: modbus,
  origin: 'worked apart',
  what: `idle volts, ${supply} V and two of ${biasOhms} Ω`,
  published,
  worked: () => idleVolts({ resistors: 2, endOhms: 120, biasOhms }, supply),
  tolerance: 'about',
});

const end = { endOhms: 120 };

export const linkEndsChecks: OutsideCheck[] = [
  ohms('can-two', iso, 'two end resistors', 60, { ...end, resistors: 2 }, 'exact', 'published'),
  ohms('can-one', iso, 'one end resistor', 120, { ...end, resistors: 1 }, 'exact', 'published'),
  ohms('can-three', iso, 'three end resistors', 40, { ...end, resistors: 3 }, 'exact', 'published'),
  ohms('serial-load', tia, 'two and one receiver of 12 kΩ', 59.7, { ...end, resistors: 2, loadOhms: 12_000 }),
  ohms('serial-bias', modbus, 'two and bias of 560 Ω, supply off', 56.9, {
    ...end,
    resistors: 2,
    biasOhms: 560,
  }),
  bias('bias-560', 0.2542, 5, 560),
  bias('bias-450', 0.3125, 5, 450),
  bias('bias-650', 0.2206, 5, 650),
];
