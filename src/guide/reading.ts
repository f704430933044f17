import type { ExpectContext, ScaleDef } from '../expected/context.ts';
import type { Scale } from '../expected/scale.ts';
import type { QuantityKind } from '../quantity/kinds.ts';
import type { MessageRef } from '../quantity/message.ts';
import { halfWidth, type MeterSpec, readingUncertainty } from '../quantity/meter.ts';
import { parseReading } from '../quantity/parse.ts';
import { cautiousMeter, meterSpecOf } from '../site/meter.ts';
import type { MeterFunction, SiteSheet } from '../site/sheet.ts';
import { judge } from './judge.ts';
import type { InstrumentMode, Reading } from './vocabulary.ts';

/** The accuracy a reading was judged with. `assumed`: the sheet does not know it, and a cautious figure stands in. */
export interface MeterUsed extends MeterSpec {
  assumed: boolean;
}

/** A typed reading, understood but not judged yet. */
export interface UnderstoodReading {
  value: number | 'overRange';
  /** Unit it was read in, typed or not. */
  unit: string;
  /** Worth of one step of the last digit typed, inside unit. */
  resolution: number;
  /** Expanded uncertainty (about 95 %), inside unit; 0 for over range. */
  uncertaintyU: number;
  meter: MeterUsed;
}

/** A typed reading and what it comes to on this site. */
export interface JudgedReading extends UnderstoodReading {
  outcome: string;
  /** The two zones that an undetermined reading may lie in. */
  between?: [string, string];
  scale: Scale;
}

export type ReadingResult<T> = { ok: true; reading: T } | { ok: false; problem: MessageRef };

/** The function of the meter that a mode uses; `undefined` where the sheet has no figure for it. */
const functionOf: Partial<Record<InstrumentMode, MeterFunction>> = {
  dcVolts: 'dcVolts',
  acVolts: 'acVolts',
  dcClamp: 'dcClamp',
  acClamp: 'acClamp',
  ohms: 'ohms',
  continuity: 'ohms',
};

/**
 * Accuracy taken where the sheet has none. A wide figure only ever makes more readings undetermined. A screen or a watch
 * is taken at one step of its last digit.
 */
const cautious: Record<InstrumentMode, MeterSpec> = {
  ...cautiousMeter,
  lowZVolts: { percentOfReading: 2, counts: 5 },
  continuity: { percentOfReading: 1.5, counts: 3 },
  insulation: { percentOfReading: 5, counts: 5 },
  frequency: { percentOfReading: 0.1, counts: 1 },
  temperature: { percentOfReading: 1, counts: 2, resolution: 1 },
  display: { percentOfReading: 0, counts: 1 },
  watch: { percentOfReading: 0, counts: 1 },
};

/** The accuracy of the instrument in this mode, as the sheet gives it or as caution takes it. */
export function meterFor(sheet: SiteSheet, mode: InstrumentMode): MeterUsed {
  const meterFunction = functionOf[mode];
  const known = meterFunction && meterSpecOf(sheet, meterFunction);
  return known ? { ...known, assumed: false } : { ...cautious[mode], assumed: true };
}

const directModes: readonly InstrumentMode[] = ['dcVolts', 'dcClamp', 'lowZVolts', 'display'];

/**
 * Worth of the last digit. People write 0 for the 0.0 or 0.00 on the meter: a bare zero volts is taken to a tenth, not to
 * a whole volt. Not so for amps: a clamp on its coarse range does show whole amperes, and a handle would move on it.
 */
const stepOf = (value: number, typed: number, kind: QuantityKind): number =>
  value === 0 && kind === 'voltage' ? Math.min(typed, 0.1) : typed;

/**
 * Reads what was typed for one reading. A minus is understood wherever direct current or a screen is read, and counts
 * only where the sign is asked for; elsewhere it is refused with a reason.
 */
export function understand(
  text: string,
  reading: Reading,
  kind: QuantityKind,
  sheet: SiteSheet,
): ReadingResult<UnderstoodReading> {
  const meter = meterFor(sheet, reading.mode);
  const parsed = parseReading(text, {
    kind,
    system: sheet.units,
    allowNegative: reading.signed === true || directModes.includes(reading.mode),
  });
  if (!parsed.ok) {
    if (!parsed.overRange || reading.mode === 'display' || reading.mode === 'watch')
      return { ok: false, problem: parsed.reason };
    return {
      ok: true,
      reading: { value: 'overRange', unit: '', resolution: 0, uncertaintyU: 0, meter },
    };
  }
  const magnitudeOnly = !reading.signed && (kind === 'voltage' || kind === 'current');
  const value = magnitudeOnly ? Math.abs(parsed.value) : parsed.value;
  const resolution = stepOf(value, parsed.resolution, kind);
  const uncertaintyU = readingUncertainty(value, meter, resolution).expanded;
  return { ok: true, reading: { value, unit: parsed.unit, resolution, uncertaintyU, meter } };
}

/**
 * Judges an understood reading on the band of this site. Where the band asks for it, the whole interval of the
 * instrument's specification stands for the uncertainty.
 */
export function judgeOn(reading: UnderstoodReading, scale: Scale): JudgedReading {
  const { value, meter, resolution } = reading;
  const uncertaintyU =
    scale.error === 'halfWidth' && value !== 'overRange'
      ? halfWidth(value, meter, resolution)
      : reading.uncertaintyU;
  return { ...reading, uncertaintyU, scale, ...judge(value, uncertaintyU, scale) };
}

/** The band of a reading on this site, or the facts that it still needs. */
export function bandFor(
  reading: Reading,
  scales: Readonly<Record<string, ScaleDef>>,
  context: ExpectContext,
): ReturnType<ScaleDef['build']> {
  const def = scales[reading.scale];
  if (!def) throw new Error(`there is no expected scale ${reading.scale}`);
  return def.build(context);
}
