import type { NecEdition } from '../tables/standard-ratings.ts';
import { ratingAtLeast } from '../tables/standard-ratings.ts';
import { codeAmps, nec690 } from './string-amps.ts';

/** Rules on string fuses that are carried, as data. */
export const fuseRules = {
  nec: {
    source: 'nec-2020',
    clause: '690.9(A), 690.9(B)',
    /** The other strings' current is the maximum circuit current of each. */
    stringFactor: nec690.maximumFactor,
    /** Against the module's maximum series fuse as printed. */
    moduleFactor: 1,
    /** No number of strings is let off without the sum. */
    neverUpTo: 0,
  },
  iec: {
    source: 'iec-60364-7-712',
    clause: '712.431',
    stringFactor: 1,
    /** A module bears 1.35 times the rating of the fuse on its label for as long as that fuse may take. */
    moduleFactor: 1.35,
    /** One string or two need none. */
    neverUpTo: 2,
  },
} as const;

export type FuseRule = keyof typeof fuseRules;

/**
 * Current that all the other sources can push backwards through one faulted string [A].
 * @param backfeedAmps what the inverter itself can feed back, 0 for most.
 */
export function faultAmps(rule: FuseRule, iscAmps: number, strings: number, backfeedAmps: number): number {
  return Math.max(0, strings - 1) * fuseRules[rule].stringFactor * iscAmps + backfeedAmps;
}

/** Whether each string needs a device of its own. */
export function needsFuse(
  rule: FuseRule,
  fault: number,
  strings: number,
  limits: { readonly seriesFuseAmps: number; readonly conductorAmps?: number },
): boolean {
  if (limits.conductorAmps !== undefined && fault > limits.conductorAmps) return true;
  const { neverUpTo, moduleFactor } = fuseRules[rule];
  return strings > neverUpTo && fault > moduleFactor * limits.seriesFuseAmps;
}

/** Smallest standard fuse for one string under the NEC [A]. */
export const leastStringFuse = (iscAmps: number, edition: NecEdition): number | undefined =>
  ratingAtLeast(codeAmps(iscAmps, 1).ratedAmps, edition, 'fuse');
