import type { SiteSheet } from '../../site/sheet.ts';
import type { Random } from '../numeric/random.ts';

/** What a meter is set to; the words are the guides' own. */
export type MeterFunction =
  | 'dcVolts'
  | 'acVolts'
  | 'lowZVolts'
  | 'ohms'
  | 'continuity'
  | 'insulation'
  | 'frequency'
  | 'dcClamp'
  | 'acClamp'
  | 'temperature';

/** Half-width of a function's error: a share of the reading, and counts of the last digit. */
export interface Accuracy {
  ofReading: number;
  counts: number;
}

export interface MeterSpec {
  accuracy: Record<'dcVolts' | 'acVolts' | 'ohms' | 'dcClamp' | 'acClamp', Accuracy>;
  inputOhm: number;
  /** Input of the low-impedance mode; undefined: it has none. */
  lowZOhm: number | undefined;
  hasDcClamp: boolean;
  /** Where this meter lies inside its accuracy, for each function: -1 to 1, the same every time. */
  bias: Record<'dcVolts' | 'acVolts' | 'ohms' | 'dcClamp' | 'acClamp', number>;
  /** What the DC clamp shows round nothing after it was zeroed [A]. */
  clampZeroA: number;
  /** Reading to reading, in counts (standard deviation). */
  noiseCounts: number;
  /** Off: every reading is the physical value. */
  errs: boolean;
}

/** Full scales; a meter of 6000 counts picks the first that holds the reading. */
export const ranges: Record<'dcVolts' | 'acVolts' | 'ohms' | 'dcClamp' | 'acClamp', readonly number[]> = {
  dcVolts: [0.6, 6, 60, 600, 1000],
  acVolts: [6, 60, 600, 1000],
  ohms: [600, 6e3, 60e3, 600e3, 6e6, 40e6],
  dcClamp: [60, 600],
  acClamp: [60, 600],
};
export const countsOfScale = 6000;

/** Input of a usual low-impedance mode [Ω]. From memory: a few kilohms. */
const usualLowZOhm = 3000;

/** The meter of a sheet, somewhere inside its data sheet; or the same one without error. */
export function meterOf(sheet: SiteSheet, random: Random, errs: boolean): MeterSpec {
  const { meter } = sheet;
  const of = (name: keyof MeterSpec['accuracy'], fallback: Accuracy): Accuracy => ({
    ofReading: meter[name].ofReading ?? fallback.ofReading,
    counts: meter[name].counts ?? fallback.counts,
  });
  const bias = () => random.between(-1, 1);
  return {
    accuracy: {
      dcVolts: of('dcVolts', { ofReading: 0.005, counts: 2 }),
      acVolts: of('acVolts', { ofReading: 0.01, counts: 3 }),
      ohms: of('ohms', { ofReading: 0.009, counts: 3 }),
      dcClamp: of('dcClamp', { ofReading: 0.02, counts: 5 }),
      acClamp: of('acClamp', { ofReading: 0.02, counts: 5 }),
    },
    inputOhm: meter.inputOhm ?? 10e6,
    lowZOhm: meter.lowImpedance ? usualLowZOhm : undefined,
    hasDcClamp: meter.hasDcClamp,
    bias: { dcVolts: bias(), acVolts: bias(), ohms: bias(), dcClamp: bias(), acClamp: bias() },
    clampZeroA: errs ? random.between(-0.08, 0.08) : 0,
    noiseCounts: 0.4,
    errs,
  };
}
