import { give, type Result, refuse } from '../result.ts';

/** Three readings on an array cut off from the inverter on both poles, all within the same light. */
export interface PoleToGround {
  /** Pole to pole [V], > 0. */
  readonly vocVolts: number;
  /** Positive pole to ground, red on the pole [V]. */
  readonly positiveVolts: number;
  /** Negative pole to ground, red on the pole [V]. */
  readonly negativeVolts: number;
  /** Input resistance of the meter [Ω], > 0. */
  readonly meterOhms: number;
  /** Modules in series. */
  readonly modules: number;
  /** Half-width of one pole-to-ground reading [V], >= 0. */
  readonly poleErrorVolts: number;
  /** Half-width of the pole-to-pole reading, with what the light may have moved since [V], >= 0. */
  readonly vocErrorVolts: number;
}

/** A value with its worst-case range; `high` is missing when nothing bounds it from above. */
export interface Range {
  readonly value: number;
  readonly low: number;
  readonly high?: number;
}

export interface Insulation {
  /** All leakage to ground taken as one resistance [Ω]. */
  readonly isoOhms: Range;
  /** Modules between the positive end and the fault; missing when no leak shows. */
  readonly modulesFromPositive?: Range;
  /** Resistances below this read alike: all of them could be a dead short to ground [Ω]. */
  readonly alikeBelowOhms: number;
  /** Resistances above this cannot be told from no leak at all [Ω]. */
  readonly alikeAboveOhms: number;
}

/** No pole-to-ground reading is finer than this, whatever the meter promises [V]. */
const finestVolts = 1e-6;

/**
 * Insulation resistance and fault position from pole-to-ground volts: R_iso = R_m·(Voc/(|a| + |c|) − 1) and
 * k = N·|a|/(|a| + |c|). Exact for one leak anywhere and for two leaks, one at each pole (taken in parallel);
 * with two leaks inside the string the place is a mean of the two. Derived from the circuit; see the tests.
 */
export function insulationFrom(reading: PoleToGround): Result<Insulation> {
  const refusal = refuseReading(reading);
  if (refusal) return refusal;
  const { vocVolts, meterOhms, modules, vocErrorVolts } = reading;
  const poleErrorVolts = Math.max(reading.poleErrorVolts, finestVolts);
  const a = Math.abs(reading.positiveVolts);
  const c = Math.abs(reading.negativeVolts);
  const sum = a + c;
  const sumError = 2 * poleErrorVolts;
  const ohmsAt = (voc: number, poles: number): number => Math.max(0, meterOhms * (voc / poles - 1));

  const limits = {
    alikeBelowOhms: ohmsAt(vocVolts, Math.max(vocVolts - vocErrorVolts - sumError, finestVolts)),
    alikeAboveOhms: ohmsAt(vocVolts, sumError),
  };
  const lowOhms = ohmsAt(Math.max(0, vocVolts - vocErrorVolts), sum + sumError);
  if (sum <= sumError) {
    return give({ isoOhms: { value: Math.max(lowOhms, limits.alikeAboveOhms), low: lowOhms }, ...limits });
  }
  const isoOhms = {
    value: ohmsAt(vocVolts, sum),
    low: lowOhms,
    high: ohmsAt(vocVolts + vocErrorVolts, sum - sumError),
  };
  const place = (toPositive: number, toNegative: number): number =>
    (modules * toPositive) / (toPositive + toNegative);
  const modulesFromPositive = {
    value: place(a, c),
    low: place(Math.max(0, a - poleErrorVolts), c + poleErrorVolts),
    high: place(a + poleErrorVolts, Math.max(0, c - poleErrorVolts)),
  };
  return give({ isoOhms, modulesFromPositive, ...limits });
}

function refuseReading(reading: PoleToGround): ReturnType<typeof refuse> | undefined {
  const { vocVolts, positiveVolts, negativeVolts, meterOhms, modules, poleErrorVolts, vocErrorVolts } =
    reading;
  const all = [vocVolts, positiveVolts, negativeVolts, meterOhms, modules, poleErrorVolts, vocErrorVolts];
  if (!all.every(Number.isFinite)) return refuse('worksheet.insulation-position.notANumber');
  if (vocVolts <= 0) return refuse('worksheet.insulation-position.noVolts', { vocVolts });
  if (meterOhms <= 0) return refuse('worksheet.insulation-position.noMeter');
  if (modules <= 0) return refuse('worksheet.insulation-position.noModules');
  if (poleErrorVolts < 0 || vocErrorVolts < 0) return refuse('worksheet.insulation-position.negativeError');
  if (positiveVolts < -poleErrorVolts && negativeVolts > poleErrorVolts) {
    return refuse('worksheet.insulation-position.reversed', { positiveVolts, negativeVolts });
  }
  if (positiveVolts < -poleErrorVolts || negativeVolts > poleErrorVolts) {
    return refuse('worksheet.insulation-position.sameSign', { positiveVolts, negativeVolts });
  }
  const sumVolts = Math.abs(positiveVolts) + Math.abs(negativeVolts);
  if (sumVolts > vocVolts + vocErrorVolts + 2 * poleErrorVolts) {
    return refuse('worksheet.insulation-position.moreThanVoc', { sumVolts, vocVolts });
  }
  return undefined;
}

/**
 * Test volts and least insulation resistance of an array by 1.25 times its rated Voc.
 * IEC 62446-1:2016, table of minimum values. From memory.
 */
export const minimumInsulation = {
  source: 'iec-62446-1-2016',
  clause: 'table of minimum insulation resistance',
  rows: [
    { belowVolts: 120, testVolts: 250, leastOhms: 0.5e6 },
    { belowVolts: 500, testVolts: 500, leastOhms: 1e6 },
    { belowVolts: 1000, testVolts: 1000, leastOhms: 1e6 },
    { belowVolts: Number.POSITIVE_INFINITY, testVolts: 1500, leastOhms: 1e6 },
  ],
} as const;

export function minimumInsulationFor(vocRatedVolts: number): { testVolts: number; leastOhms: number } {
  const rows = minimumInsulation.rows;
  // Rows hold up to and including their upper edge, except the first.
  const row = rows.find((each, at) =>
    at === 0 ? 1.25 * vocRatedVolts < each.belowVolts : 1.25 * vocRatedVolts <= each.belowVolts,
  );
  const { testVolts, leastOhms } = row ?? rows[rows.length - 1]!;
  return { testVolts, leastOhms };
}
