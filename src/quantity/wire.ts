/** A wire gauge number is counted from 0: 0 is 1/0, -1 is 2/0, -2 is 3/0, -3 is 4/0. */
export const awgGauges = [-3, -2, -1, 0, 1, 2, 3, 4, 6, 8, 10, 12, 14, 16, 18, 20] as const;

/** Metric sizes sold, in mm² (IEC 60228). */
export const metricAreasMm2 = [
  0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240,
] as const;

/** Area of 1000 circular mils in mm²: a circle 1 mil across has pi/4 square mils. */
const kcmilMm2 = (Math.PI / 4) * 25.4 ** 2 * 1e-3;

/**
 * Area in mm² of the metal of an AWG conductor, from the diameter law of ASTM B258
 * (d = 0.005 in · 92^((36 − n)/39)). The law holds for any whole `gauge` from -3 (4/0) to 40.
 */
export function awgAreaMm2(gauge: number): number {
  const diameterIn = 0.005 * 92 ** ((36 - gauge) / 39);
  return (Math.PI / 4) * (25.4 * diameterIn) ** 2;
}

/** How people write a gauge: 4/0, 1/0, 6. */
export const awgName = (gauge: number): string => (gauge <= 0 ? `${1 - gauge}/0` : String(gauge));

/** The gauge whose area lies within 1 % of `areaMm2`; neighbours are 26 % apart, so there is at most one. */
export function awgOfArea(areaMm2: number): number | undefined {
  return awgGauges.find((gauge) => Math.abs(awgAreaMm2(gauge) / areaMm2 - 1) < 0.01);
}

export type TypedWire = { form: 'awg'; gauge: number } | { form: 'kcmil'; kcmil: number };

/**
 * Reads a size written in American form: "4/0", "2/0 AWG", "AWG 6", "#6", "6 ga", "250 kcmil", "0000".
 * A bare number is nothing here, since only the caller knows whether it is a gauge or an area.
 */
export function readAmericanWire(text: string): TypedWire | undefined {
  const folded = text.normalize('NFKC').trim().toLowerCase().replaceAll('⁄', '/');
  const kcmil = /^(\d{2,4}) ?(kcmil|mcm)$/.exec(folded);
  if (kcmil) return { form: 'kcmil', kcmil: Number(kcmil[1]) };
  const body = folded
    .replace(/^(awg|#|no\.?) ?/, '')
    .replace(/ ?(awg|ga|gauge)$/, '')
    .trim();
  const aught = /^([1-4]) ?\/ ?0$/.exec(body);
  if (aught) return { form: 'awg', gauge: 1 - Number(aught[1]) };
  if (/^0{1,4}$/.test(body) && (body !== folded || body.length > 1))
    return { form: 'awg', gauge: 1 - body.length };
  if (body !== folded && /^\d{1,2}$/.test(body)) return { form: 'awg', gauge: Number(body) };
  return undefined;
}

export const wireAreaMm2 = (wire: TypedWire): number =>
  wire.form === 'awg' ? awgAreaMm2(wire.gauge) : wire.kcmil * kcmilMm2;
