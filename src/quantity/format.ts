import type { QuantityKind, UnitSystem } from './kinds.ts';
import { findUnit, fromInside, type Unit, unitsOf, usualUnitOf } from './units.ts';
import { awgName, awgOfArea } from './wire.ts';

export interface FormatOptions {
  system?: UnitSystem;
  /** Significant figures; trailing zeros are dropped. Four for volts, three for the rest. */
  digits?: number;
  /** Show in this unit whatever the size of the value. */
  unit?: string;
}

/** Joins a number to its unit so that a line never breaks between them. */
const nbsp = '\u00a0';

/** A value from its inside unit to what a person reads: `412 V`, `−3.5 °F`, `25 Ω`, `4/0 AWG`. */
export function formatQuantity(value: number, kind: QuantityKind, options: FormatOptions = {}): string {
  const { number, unit } = showQuantity(value, kind, options);
  return unit === '' ? number : `${number}${nbsp}${unit}`;
}

/** The same as number and unit apart, for a form field or a meter window. */
export function showQuantity(
  value: number,
  kind: QuantityKind,
  options: FormatOptions = {},
): { number: string; unit: string } {
  const system = options.system ?? 'metric';
  if (kind === 'wireSize' && options.unit === undefined) {
    const gauge = system === 'us' ? awgOfArea(value) : undefined;
    if (gauge !== undefined) return { number: awgName(gauge), unit: 'AWG' };
  }
  const digits = options.digits ?? (kind === 'voltage' ? 4 : 3);
  const unit =
    options.unit === undefined ? pickUnit(value, kind, system, digits) : namedUnit(options.unit, kind);
  return { number: significant(fromInside(value, unit), kind === 'count' ? 15 : digits), unit: unit.symbol };
}

/** What was understood, with as many decimals as were typed, in the unit it was read in: `12.60 V`. */
export function formatAsTyped(value: number, resolution: number, unit: string, kind: QuantityKind): string {
  const shown = findUnit(unit, kind);
  if (kind === 'wireSize' || !shown)
    return formatQuantity(value, kind, { system: unit === 'AWG' ? 'us' : 'metric' });
  const decimals = Math.min(12, Math.max(0, Math.round(-Math.log10(resolution / shown.factor))));
  const number = withMinus(fromInside(value, shown).toFixed(decimals));
  return shown.symbol === '' ? number : `${number}${nbsp}${shown.symbol}`;
}

function namedUnit(symbol: string, kind: QuantityKind): Unit {
  const unit = unitsOf[kind].find((each) => each.symbol === symbol) ?? findUnit(symbol, kind);
  if (!unit) throw new Error(`${symbol} is no unit of ${kind}`);
  return unit;
}

/** The largest unit in which the rounded value is at least one; the usual one for zero and for temperatures. */
function pickUnit(value: number, kind: QuantityKind, system: UnitSystem, digits: number): Unit {
  const usual = namedUnit(usualUnitOf(kind === 'wireSize' ? 'area' : kind, system), kind);
  const shown = unitsOf[kind].filter((unit) => !unit.typedOnly && (unit.system ?? system) === system);
  if (value === 0 || shown.length < 2 || usual.offset !== 0) return usual;
  const fits = shown.filter((unit) => Math.abs(Number((value / unit.factor).toPrecision(digits))) >= 1);
  return fits.at(-1) ?? (shown[0] as Unit);
}

function significant(value: number, digits: number): string {
  const rounded = Number(value.toPrecision(digits));
  const exponent = rounded === 0 ? 0 : Math.floor(Math.log10(Math.abs(rounded)));
  const decimals = Math.min(20, Math.max(0, digits - 1 - exponent));
  const fixed = rounded.toFixed(decimals);
  return withMinus(fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed);
}

const withMinus = (digits: string): string =>
  /^-0*\.?0*$/.test(digits) ? digits.slice(1) : digits.replace('-', '−');
