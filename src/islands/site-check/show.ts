import { formatQuantity } from '../../quantity/format.ts';
import type { QuantityKind, UnitSystem } from '../../quantity/kinds.ts';
import type { FactValue } from '../../site/fact-paths.ts';
import { factOf } from '../../site/facts.ts';
import { sheetCheckWords as words } from '../../words/en/sheet-check.ts';

/** A figure in the site's units; a short pulse of energy in joules, which resistors are sold by. */
export const shown = (value: number, kind: QuantityKind, units: UnitSystem): string =>
  formatQuantity(value, kind, { system: units, ...(kind === 'energy' ? { unit: 'J' } : {}) });

/** A share as a whole per cent, never rounded to nothing where it is something. */
export const shownShare = (share: number): string => {
  const percent = 100 * Math.abs(share);
  return `${percent >= 10 ? percent.toFixed(0) : percent.toFixed(1)} %`;
};

/** The value of a fact as a person reads it. */
export function shownFact(id: string, value: FactValue, units: UnitSystem): string {
  if (value === null) return words.unknown;
  if (typeof value === 'boolean') return value ? words.yes : words.no;
  const { answer } = factOf(id);
  return typeof value === 'number' && answer.type === 'number'
    ? formatQuantity(value, answer.kind, {
        system: units,
        ...(answer.unit === undefined ? {} : { unit: answer.unit }),
      })
    : String(value);
}
