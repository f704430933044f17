import type { OutsideCheck } from '../outside-check.ts';

type Row = readonly [
  id: string,
  source: string,
  origin: OutsideCheck['origin'],
  what: string,
  published: number,
  worked: () => number | undefined,
  tolerance: OutsideCheck['tolerance'],
];

/** Outside checks of one worksheet, a row a check. */
export const checksOf = (worksheet: string, rows: readonly Row[]): OutsideCheck[] =>
  rows.map(([id, source, origin, what, published, worked, tolerance]) => ({
    id: `${worksheet}/${id}`,
    worksheet,
    source,
    origin,
    what,
    published,
    worked,
    tolerance,
  }));
