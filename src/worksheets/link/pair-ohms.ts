/** A pair of data wires as a meter sees it: end resistors, bias resistors and receivers side by side. */

/** An end resistor [Ω]. ISO 11898-2 and TIA-485-A, from memory. */
export const usualEndOhms = 120;
/** Least idle volts between the wires of a serial pair that every receiver takes as idle [V]. TIA-485-A, from memory. */
export const serialThresholdVolts = 0.2;

/** Where the readings of a pair with both plugs in divide [Ω]. Two resistors read 50 to 65; common practice. */
export const pairLimits = { shorted: 5, many: 50, good: 65, between: 100, one: 135 } as const;
export const pairZones = ['shorted', 'many', 'good', 'between', 'one', 'none'] as const;
export type PairZone = (typeof pairZones)[number];

export interface PairParts {
  /** End resistors across the pair: 0 or more. */
  resistors: number;
  /** Each of them [Ω]. */
  endOhms: number;
  /** Each of two bias resistors, one from either wire to the supply or its return [Ω]. */
  biasOhms?: number | undefined;
  /** All receivers together [Ω]. */
  loadOhms?: number | undefined;
}

/** Resistance between the wires with the supply off, its two rails joined through it [Ω]; `undefined` when open. */
export function pairOhms({ resistors, endOhms, biasOhms, loadOhms }: PairParts): number | undefined {
  const siemens =
    resistors / endOhms +
    (biasOhms === undefined ? 0 : 1 / (2 * biasOhms)) +
    (loadOhms === undefined ? 0 : 1 / loadOhms);
  return siemens > 0 ? 1 / siemens : undefined;
}

/** Idle volts that two bias resistors leave between the wires [V]: a divider of the supply. */
export function idleVolts(parts: PairParts & { biasOhms: number }, supplyVolts: number): number {
  const across = pairOhms({ ...parts, biasOhms: undefined });
  return across === undefined ? supplyVolts : (supplyVolts * across) / (2 * parts.biasOhms + across);
}

/** Which stretch a reading between the wires falls in. */
export function pairZone(ohms: number): PairZone {
  const found = (Object.keys(pairLimits) as (keyof typeof pairLimits)[]).find(
    (zone) => ohms <= pairLimits[zone],
  );
  return found ?? 'none';
}
