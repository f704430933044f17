import { awgAreaMm2 } from '../../quantity/wire.ts';

/** Temperature column of the table: the insulation's rating, or that of the lugs the conductor ends in. */
export const ampacityColumns = [60, 75, 90] as const;
export type AmpacityColumn = (typeof ampacityColumns)[number];
export type ConductorMetal = 'copper' | 'aluminium';

type Amps = readonly [at60: number, at75: number, at90: number];

interface AmpacityRow {
  /** Gauge number (0 is 1/0, −3 is 4/0), or thousands of circular mils above 4/0. */
  readonly gauge?: number;
  readonly kcmil?: number;
  readonly copper: Amps;
  readonly aluminium?: Amps;
}

/**
 * Ampacity of insulated conductors at 30 °C ambient, not more than three that carry current in a raceway, a cable or
 * the earth. NEC 2023 Table 310.16. Copies from before 2011 print other figures in the smallest rows (14 AWG 20 A at
 * 60 °C, 1 AWG 150 A at 90 °C): never take those.
 */
export const nec310_16 = {
  source: 'nec-2023',
  clause: 'Table 310.16',
  /** What the same table is called by edition. */
  clauseByEdition: { '2017': 'Table 310.15(B)(16)', '2020': 'Table 310.16', '2023': 'Table 310.16' },
  ambientC: 30,
  /** Smallest first. A step table: a size between two rows takes the smaller one. */
  rows: [
    { gauge: 14, copper: [15, 20, 25] },
    { gauge: 12, copper: [20, 25, 30], aluminium: [15, 20, 25] },
    { gauge: 10, copper: [30, 35, 40], aluminium: [25, 30, 35] },
    { gauge: 8, copper: [40, 50, 55], aluminium: [35, 40, 45] },
    { gauge: 6, copper: [55, 65, 75], aluminium: [40, 50, 55] },
    { gauge: 4, copper: [70, 85, 95], aluminium: [55, 65, 75] },
    { gauge: 3, copper: [85, 100, 115], aluminium: [65, 75, 85] },
    { gauge: 2, copper: [95, 115, 130], aluminium: [75, 90, 100] },
    { gauge: 1, copper: [110, 130, 145], aluminium: [85, 100, 115] },
    { gauge: 0, copper: [125, 150, 170], aluminium: [100, 120, 135] },
    { gauge: -1, copper: [145, 175, 195], aluminium: [115, 135, 150] },
    { gauge: -2, copper: [165, 200, 225], aluminium: [130, 155, 175] },
    { gauge: -3, copper: [195, 230, 260], aluminium: [150, 180, 205] },
    { kcmil: 250, copper: [215, 255, 290], aluminium: [170, 205, 230] },
    { kcmil: 300, copper: [240, 285, 320], aluminium: [195, 230, 260] },
    { kcmil: 350, copper: [260, 310, 350], aluminium: [210, 250, 280] },
    { kcmil: 400, copper: [280, 335, 380], aluminium: [225, 270, 305] },
    { kcmil: 500, copper: [320, 380, 430], aluminium: [260, 310, 350] },
  ] as readonly AmpacityRow[],
} as const;

const mm2PerKcmil = (Math.PI / 4) * 25.4 ** 2 * 1e-3;

/** Metal area of a row [mm²]. */
export const rowAreaMm2 = (row: AmpacityRow): number =>
  row.gauge === undefined ? (row.kcmil ?? 0) * mm2PerKcmil : awgAreaMm2(row.gauge);

/** Sizes of one metal in the table [mm²], smallest first. */
export const ampacitySizesMm2 = (metal: ConductorMetal): readonly number[] =>
  nec310_16.rows.filter((row) => row[metal] !== undefined).map(rowAreaMm2);

/**
 * Ampacity of a conductor by one column [A], no factors. A metric or odd size takes the largest row that is not larger;
 * `undefined` below the smallest row of that metal.
 * @param areaMm2 metal area [mm²]; areas printed to three figures count as their row.
 */
export function tableAmps(
  areaMm2: number,
  metal: ConductorMetal,
  column: AmpacityColumn,
): number | undefined {
  const row = nec310_16.rows.findLast(
    (each) => each[metal] !== undefined && rowAreaMm2(each) <= areaMm2 * 1.005,
  );
  return row?.[metal]?.[ampacityColumns.indexOf(column)];
}
