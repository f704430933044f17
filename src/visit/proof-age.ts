import type { Effect } from '../safety/effects.ts';
import { type Energy, environmentEvents, hasDevice, hasZone } from '../safety/energy.ts';
import type { Device, Variant, Zone } from '../safety/plant.ts';

/**
 * Longest that a proof is taken for good (ours, safety rule I4): energy can come back past a lock, from a capacitor or a
 * source that is held by a tag alone.
 */
export const longestProofMs = 15 * 60_000;

/** When each proof that stands was given, in milliseconds since 1970, by what it proves. */
export type ProofTimes = Readonly<Record<string, number>>;

const keyOf = (effect: Effect): string | undefined => {
  if ('testerProved' in effect) return 'tester';
  if ('measuredDead' in effect) return `dead:${effect.measuredDead}`;
  if ('zeroShown' in effect) return `zero:${effect.zeroShown}`;
  if ('precharged' in effect) return 'precharged';
  return undefined;
};

function stands(key: string, energy: Energy): boolean {
  const [what, of] = key.split(':');
  if (what === 'tester') return energy.tester;
  if (what === 'dead') return hasZone(energy.proved | energy.measured, of as Zone);
  if (what === 'zero') return hasDevice(energy.zero, of as Device);
  return energy.precharged;
}

/** The proofs that stand after these effects, with their times. */
export function proofsAfter(
  times: ProofTimes,
  does: readonly Effect[],
  atMs: number,
  energy: Energy,
): ProofTimes {
  const next: Record<string, number> = { ...times };
  for (const effect of does) {
    const key = keyOf(effect);
    if (key) next[key] = atMs;
  }
  return Object.fromEntries(Object.entries(next).filter(([key]) => stands(key, energy)));
}

/** When the oldest proof that stands runs out; `undefined` when nothing is proved. */
export function proofEndsMs(times: ProofTimes): number | undefined {
  const given = Object.values(times);
  return given.length === 0 ? undefined : Math.min(...given) + longestProofMs;
}

/** The energy state with every proof void, as when one runs out. */
export function withoutProofs(energy: Energy, variant: Variant): Energy {
  const proved = { ...energy, tester: true };
  const expired = environmentEvents(proved, variant).find(({ event }) => event === 'proof-expires');
  if (!expired) throw new Error('the safety model has no expiry of proofs');
  return expired.energy;
}
