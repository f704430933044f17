import { kindFacts, type QuantityKind, type UnitSystem } from './kinds.ts';
import type { MessageRef } from './message.ts';
import { readNumber } from './number.ts';
import {
  findUnit,
  foldUnit,
  fromInside,
  kindsNamed,
  toInside,
  type Unit,
  unitsOf,
  usualUnitOf,
} from './units.ts';
import { awgGauges, awgName, readAmericanWire, wireAreaMm2 } from './wire.ts';

export interface ParseOptions {
  kind: QuantityKind;
  /** Unit of a bare number; the usual one of `system` when missing. */
  unit?: string;
  system?: UnitSystem;
  /**
   * Whether a value below zero can be meant. Ask for it on every meter reading: a wrong sign is a finding, and
   * refusing it would hide a reversed lead. Kinds that go below zero by nature allow it unasked.
   */
  allowNegative?: boolean;
  /** Largest magnitude that can be meant, in the inside unit, where the kind's own limit does not suit. */
  maxMagnitude?: number;
}

/** A typed number understood, in the kind's inside unit. */
export interface ReadingValue {
  ok: true;
  value: number;
  /** What one step of the last digit typed is worth, in the inside unit. */
  resolution: number;
  /** The unit it was read in, typed or not: `V`, `mV`, `AWG`. */
  unit: string;
  unitTyped: boolean;
}

export interface ReadingRefusal {
  ok: false;
  reason: MessageRef;
  /** The meter showed that the value lies beyond its range: no number, but a finding where a step allows for it. */
  overRange: boolean;
}

export type ParsedReading = ReadingValue | ReadingRefusal;

const longestText = 60;
const overRangeText =
  /^[+-]? ?(o\.? ?l\.?|0\.l|0l|\.ol|ol\.|over ?load|over ?range|over ?limit|open|open circuit|-{2,5}|∞)( ?[a-zµμω°]{1,4})?$/i;

/**
 * Reads what a person typed for a reading or a fact: comma or point, spaces, any minus sign, unit or none.
 * Never gives NaN or an infinity: what cannot be read with certainty is refused with a reason.
 */
export function parseReading(text: string, options: ParseOptions): ParsedReading {
  const { kind } = options;
  const clean = foldUnit(text.replace(/[−–—﹣-]/g, '-')).replace(/^[-+] /, (sign) => sign.trim());
  if (clean === '') return refuse('quantity.empty');
  if (clean.length > longestText) return refuse('quantity.notANumber', { typed: `${clean.slice(0, 24)}…` });
  if (overRangeText.test(clean)) return { ok: false, overRange: true, reason: { id: 'quantity.overRange' } };
  if (kind === 'wireSize') return parseWire(clean, options);

  const split = /^([+-]?)((?:[.,]?\d)(?:[\d.,]|[ '’](?=\d))*)\s*(.*)$/.exec(clean);
  // A power of ten is not how a meter shows or a label prints a number, and it hides slips of any size.
  if (!split || /^e[+-]?\d/i.test(split[3] ?? '')) return refuse('quantity.notANumber', { typed: clean });
  const [sign, digits, unitText] = split.slice(1) as [string, string, string];
  const found = unitFor(unitText, options);
  if (!('factor' in found)) return found;

  const max = options.maxMagnitude ?? kindFacts[kind].maxMagnitude;
  const number = readNumber(digits, (thousands) => Math.abs(toInside(thousands, found)) <= max);
  if (!number.ok) return { ...number, overRange: false };
  const typed = sign === '-' ? -number.number.value : number.number.value;
  const value = toInside(typed, found);
  if (value < 0 && typed < 0 && !(options.allowNegative ?? kindFacts[kind].belowZero)) {
    return refuse('quantity.negative', { typed: clean });
  }
  if (!(Math.abs(value) <= max)) {
    return refuse('quantity.tooLarge', {
      typed: clean,
      max: Number(fromInside(max, found).toPrecision(4)),
      unit: found.symbol,
    });
  }
  if (kind === 'count' && !Number.isInteger(value)) return refuse('quantity.notWhole', { typed: clean });
  // Adding zero turns the minus zero of "-0" into zero, which prints and compares as people expect.
  return {
    ok: true,
    value: value + 0,
    resolution: 10 ** -number.number.decimals * found.factor,
    unit: found.symbol,
    unitTyped: unitText !== '',
  };
}

function unitFor(unitText: string, options: ParseOptions): Unit | ReadingRefusal {
  const { kind } = options;
  const usual = options.unit ?? usualUnitOf(kind, options.system ?? 'metric');
  const wanted = unitText === '' ? usual : unitText;
  const unit = findUnit(wanted, kind) ?? unitsOf[kind].find((each) => each.symbol === wanted);
  if (unit) return unit;
  const other = kindsNamed(unitText)[0];
  if (other)
    return refuse('quantity.wrongKind', { typedUnit: unitText, typedKind: other, kind, unit: usual });
  const caseOnly = unitsOf[kind].some(
    (each) => each.symbol.toLowerCase() === foldUnit(unitText).toLowerCase(),
  );
  if (caseOnly) return refuse('quantity.unitCase', { typedUnit: unitText });
  return refuse('quantity.unknownUnit', { typedUnit: unitText.slice(0, 24), kind, unit: usual });
}

function parseWire(clean: string, options: ParseOptions): ParsedReading {
  const usual = options.unit ?? usualUnitOf('wireSize', options.system ?? 'metric');
  const american = readAmericanWire(usual === 'AWG' && /^\d{1,2}$/.test(clean) ? `${clean} AWG` : clean);
  if (american) {
    if (american.form === 'awg' && !(awgGauges as readonly number[]).includes(american.gauge)) {
      return refuse('quantity.noSuchGauge', { typed: awgName(american.gauge) });
    }
    const unit = american.form === 'awg' ? 'AWG' : 'kcmil';
    return { ok: true, value: wireAreaMm2(american), resolution: 0, unit, unitTyped: /[a-z#]/i.test(clean) };
  }
  if (/^\d+ ?\/ ?\d+/.test(clean) || (usual === 'AWG' && /^[\d.,]+$/.test(clean)))
    return refuse('quantity.noSuchGauge', { typed: clean });
  const area = parseReading(clean, { ...options, kind: 'area', unit: 'mm²' });
  if (!area.ok || area.value > 0) return area;
  return refuse('quantity.noSuchGauge', { typed: clean });
}

function refuse(id: string, params?: Record<string, string | number>): ReadingRefusal {
  return { ok: false, overRange: false, reason: params ? { id, params } : { id } };
}
