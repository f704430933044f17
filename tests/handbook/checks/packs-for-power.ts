import { inverterAmps } from '../../../src/worksheets/battery-dc/idle.ts';
import { packsNeeded } from '../../../src/worksheets/battery-dc/packs-needed.ts';
import type { OutsideCheck } from '../outside-check.ts';

const worksheet = 'packs-for-power';
const guide = 'Published guide to matching an inverter to 48 V, 100 A packs: 3000 W, 46 V, 80 %';
const table =
  'Published table of packs by inverter: surge ÷ 97 % ÷ 48 V, packs of 95 A continuous and 218 A peak';

const published = (
  id: string,
  source: string,
  what: string,
  figure: number,
  worked: () => number,
  tolerance: OutsideCheck['tolerance'],
): OutsideCheck => ({
  id: `packs-${id}`,
  worksheet,
  source,
  origin: 'published',
  what,
  published: figure,
  worked,
  tolerance,
});

export const packsForPowerChecks: OutsideCheck[] = [
  published('amps-46', guide, 'battery amps', 81.52, () => inverterAmps(3000, 0.8, 0, 46), 'rounded'),
  ...([1, 2, 3] as const).map((packs) =>
    published(
      `guide-${packs}`,
      guide,
      `packs for ${packs * 3000} W`,
      packs,
      () => packsNeeded(inverterAmps(packs * 3000, 0.8, 0, 46), 100),
      'exact',
    ),
  ),
  published(
    'surge-11',
    table,
    'amps in a surge of 11 400 W',
    245,
    () => inverterAmps(11_400, 0.97, 0, 48),
    'threeFigures',
  ),
  published(
    'surge-17',
    table,
    'amps in a surge of 17 100 W',
    367,
    () => inverterAmps(17_100, 0.97, 0, 48),
    'threeFigures',
  ),
  published(
    'table-two',
    table,
    'packs for 160 A and that surge',
    2,
    () => Math.max(packsNeeded(160, 95), packsNeeded(inverterAmps(11_400, 0.97, 0, 48), 218)),
    'exact',
  ),
  published(
    'table-three',
    table,
    'packs for 240 A and that surge',
    3,
    () => Math.max(packsNeeded(240, 95), packsNeeded(inverterAmps(17_100, 0.97, 0, 48), 218)),
    'exact',
  ),
];
