import { formatQuantity } from '../quantity/format.ts';
import type { QuantityKind } from '../quantity/kinds.ts';

/** An uncertainty beside its value, in the value's own unit. Of a temperature it is a difference: 1 °C is 1.8 °F, not 33.8. */
export function uncertaintyText(u: number, kind: QuantityKind, unit: string): string {
  const difference = kind === 'temperature' ? 'temperatureDifference' : kind;
  return formatQuantity(u, difference, { digits: 2, ...(unit === '' ? {} : { unit }) });
}
