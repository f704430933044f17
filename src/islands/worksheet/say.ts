import { formatQuantity } from '../../quantity/format.ts';
import type { QuantityKind, UnitSystem } from '../../quantity/kinds.ts';

/** Fills the gaps of a sentence, `{name:kind}` or `{name:kind:unit}`, with numbers in the reader's units. */
export function fill(
  template: string,
  params: Readonly<Record<string, string | number>>,
  units: UnitSystem,
): string {
  return template.replace(/\{(\w+):(\w+)(?::([^}]+))?\}/g, (_, name: string, kind: string, unit?: string) => {
    const value = params[name];
    if (typeof value !== 'number') throw new Error(`no number "${name}" for "${template}"`);
    if (kind === 'plain') return unit === undefined ? plain(value) : withDecimals(value, Number(unit));
    return show(value, kind as QuantityKind, units, { unit });
  });
}

/** A number as a person reads it; a count that stands for a place between two keeps its fraction. */
export function show(
  value: number,
  kind: QuantityKind,
  units: UnitSystem,
  options: { unit?: string; decimals?: number } = {},
): string {
  if (options.decimals !== undefined) return withDecimals(value, options.decimals);
  return formatQuantity(value, kind, { system: units, unit: options.unit });
}

const plain = (value: number): string => Number(value.toPrecision(3)).toString().replace('-', '−');

const withDecimals = (value: number, decimals: number): string => value.toFixed(decimals).replace('-', '−');

/** The last part of a message's id: `overMaximum` of `worksheet.string-window.overMaximum`. */
export const lastPart = (id: string): string => id.slice(id.lastIndexOf('.') + 1);
