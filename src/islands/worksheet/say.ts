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
    return kind === 'plain' ? plain(value) : show(value, kind as QuantityKind, units, { unit });
  });
}

/** A number as a person reads it; a count that stands for a place between two keeps its fraction. */
export function show(
  value: number,
  kind: QuantityKind,
  units: UnitSystem,
  options: { unit?: string; digits?: number } = {},
): string {
  if (kind === 'count' && options.digits !== undefined) return plain(value, options.digits);
  return formatQuantity(value, kind, { system: units, ...options });
}

const plain = (value: number, digits = 3): string =>
  Number(value.toPrecision(digits)).toString().replace('-', '−');

/** The last part of a message's id: `overMaximum` of `worksheet.string-window.overMaximum`. */
export const lastPart = (id: string): string => id.slice(id.lastIndexOf('.') + 1);
