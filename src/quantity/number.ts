import type { MessageRef } from './message.ts';

/** A plain decimal number as a person wrote it. */
export interface TypedNumber {
  value: number;
  /** Digits written after the decimal sign. */
  decimals: number;
}

export type NumberResult = { ok: true; number: TypedNumber } | { ok: false; reason: MessageRef };

/** Longest number worth reading: anything longer was pasted by mistake. */
const longest = 24;

/**
 * Reads digits with one comma or point, spaces or apostrophes only between groups of three.
 * "6,000" can be six or six thousand: `thousandsPlausible` says whether the larger can be meant; when it can,
 * neither is guessed. `typed` carries no sign and no unit.
 */
export function readNumber(typed: string, thousandsPlausible: (value: number) => boolean): NumberResult {
  const refuse = (id: string): NumberResult => ({
    ok: false,
    reason: { id, params: { typed: typed.slice(0, longest) } },
  });
  if (typed.length > longest) return refuse('quantity.notANumber');

  const joined = /^\d{1,3}([ '’]\d{3})+([.,]\d*)?$/.test(typed) ? typed.replace(/[ '’]/g, '') : typed;
  if (/[ '’]/.test(joined)) return refuse('quantity.spaceInside');
  const separators = joined.match(/[.,]/g) ?? [];
  if (separators.length > 1) return refuse('quantity.twoSeparators');
  if (!/^(\d+[.,]?\d*|[.,]\d+)$/.test(joined)) return refuse('quantity.notANumber');

  if (/^[1-9]\d{0,2},\d{3}$/.test(joined) && thousandsPlausible(Number(joined.replace(',', '')))) {
    return refuse('quantity.thousandsOrDecimal');
  }
  const plain = joined.replace(',', '.');
  const decimals = plain.includes('.') ? plain.length - plain.indexOf('.') - 1 : 0;
  return { ok: true, number: { value: Number(plain), decimals } };
}
