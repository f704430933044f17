/** A source of some volts behind some ohms [V, Ω > 0]. */
export interface Source {
  readonly volts: number;
  readonly ohms: number;
}

/**
 * Amps out of each of some sources joined at one pair of points, which together feed a load of so many amps; below zero
 * a source is being charged by the others. Millman's theorem.
 */
export function sourceAmps(sources: readonly Source[], loadAmps: number): readonly number[] {
  const conductance = sources.reduce((sum, { ohms }) => sum + 1 / ohms, 0);
  const short = sources.reduce((sum, { volts, ohms }) => sum + volts / ohms, 0);
  const jointVolts = (short - loadAmps) / conductance;
  return sources.map(({ volts, ohms }) => (volts - jointVolts) / ohms);
}

/** How the packs of a bank are joined: each with its own equal leads, or pack to pack with the take-off at one end or at both. */
export const bankWirings = ['equalLeads', 'bothEnds', 'oneEnd'] as const;
export type BankWiring = (typeof bankWirings)[number];

/**
 * Part of the bank's current that each of some equal packs carries, in the order of the bank, the pack at the positive
 * take-off first; they add up to 1.
 *
 * Pack to pack, the volts at neighbours differ by what the links between them lose, and with equal packs that is what
 * their currents differ by: iₖ₊₁ = iₖ − (r ÷ R) · (links that carry what lies beyond, less links that carry what lies before).
 * @param packOhms one pack with its own lead, > 0; @param linkOhms one link of one pole between neighbours, ≥ 0.
 */
export function wiredShares(
  packs: number,
  wiring: BankWiring,
  packOhms: number,
  linkOhms: number,
): readonly number[] {
  const ratio = wiring === 'equalLeads' ? 0 : linkOhms / packOhms;
  // Each current is a line in the first one: iₖ = fixed + slope · i₁, with the sum of all known to be 1.
  const lines = [{ fixed: 0, slope: 1 }];
  const upTo = { fixed: 0, slope: 1 };
  for (let pack = 1; pack < packs; pack++) {
    const last = lines[pack - 1]!;
    // Both poles taken off at the first pack: both links carry what lies beyond. At opposite ends: one of them does.
    const beyond = wiring === 'oneEnd' ? 2 : 1;
    const next = {
      fixed: last.fixed - ratio * (beyond - 2 * upTo.fixed),
      slope: last.slope + ratio * 2 * upTo.slope,
    };
    lines.push(next);
    upTo.fixed += next.fixed;
    upTo.slope += next.slope;
  }
  const first = (1 - upTo.fixed) / upTo.slope;
  return lines.map(({ fixed, slope }) => fixed + slope * first);
}
