import { type Ampacity, ampacityOf, type ConductorInPlace } from '../tables/ampacity.ts';
import { ampacitySizesMm2, type ConductorMetal, tableAmps } from '../tables/nec-310-16.ts';
import {
  type NecEdition,
  nextSizeUpToAmps,
  ratingAtLeast,
  ratingAtMost,
  smallConductorCap,
} from '../tables/standard-ratings.ts';

/**
 * The PV rules of the NEC as data. The numbers are the same in the editions carried; the clauses moved.
 * The factors stand for light above 1000 W/m² and for current that flows for hours.
 */
export const nec690 = {
  source: 'nec-2020',
  maximumFactor: 1.25,
  continuousFactor: 1.25,
  clauseByEdition: {
    '2017': { maximum: '690.8(A)(1)', conductor: '690.8(B)', device: '690.9(B)' },
    '2020': { maximum: '690.8(A)(1)(a)', conductor: '690.8(B)', device: '690.9(B)(1)' },
    '2023': { maximum: '690.8(A)(1)(a)', conductor: '690.8(B)', device: '690.9(B)(1)' },
  },
} as const;

/** Code bases a PV worksheet offers; under `other` nothing of the code is checked. */
export const codeBases = ['nec-2023', 'nec-2020', 'nec-2017', 'other'] as const;
export type CodeBasis = (typeof codeBases)[number];
export const editionOf = (basis: CodeBasis): NecEdition | undefined =>
  basis === 'other' ? undefined : (basis.slice(4) as NecEdition);

/** The two currents that a conductor is judged by [A]. */
export interface ConductorAmps {
  /** Maximum circuit current: what a conductor must bear where it lies. */
  readonly maximumAmps: number;
  /** What conductor and device must be rated for, no factors. */
  readonly ratedAmps: number;
}

/** What the code makes of the short-circuit current of strings in parallel on one conductor [A]. */
export interface CodeAmps extends ConductorAmps {
  /** All strings together, from the labels. */
  readonly iscAmps: number;
}

export function codeAmps(iscEach: number, strings: number): CodeAmps {
  const iscAmps = iscEach * strings;
  const maximumAmps = nec690.maximumFactor * iscAmps;
  return { iscAmps, maximumAmps, ratedAmps: nec690.continuousFactor * maximumAmps };
}

/** A hair of rounding error does not cost a size. */
const hair = 1e-9;

/** How a conductor meets the two rules of 690.8(B); they stand side by side and are never multiplied. */
export interface ConductorRules {
  readonly ampacity: Ampacity;
  /** Rule 1, no factors: the smaller of its insulation's and its lugs' column against `ratedAmps`. */
  readonly plainAmps: number;
  readonly meetsPlain: boolean;
  /** Rule 2: after correction and adjustment against `maximumAmps`. */
  readonly meetsCorrected: boolean;
}

/** `undefined` where the table has no row for the conductor, or it is too hot for its insulation. */
export function conductorRules(amps: ConductorAmps, place: ConductorInPlace): ConductorRules | undefined {
  const ampacity = ampacityOf(place);
  if (!ampacity) return undefined;
  const plainAmps = Math.min(ampacity.tableAmps, ampacity.terminationAmps);
  return {
    ampacity,
    plainAmps,
    meetsPlain: plainAmps + hair >= amps.ratedAmps,
    meetsCorrected: ampacity.correctedAmps + hair >= amps.maximumAmps,
  };
}

/** The largest device that protects a conductor: the next standard size above its ampacity, small sizes capped. */
export function largestDevice(
  ampacity: Ampacity,
  areaMm2: number,
  metal: ConductorMetal,
  edition: NecEdition,
): number | undefined {
  const amps = Math.min(ampacity.correctedAmps, ampacity.terminationAmps);
  const next =
    amps < nextSizeUpToAmps ? ratingAtLeast(amps, edition, 'fuse') : ratingAtMost(amps, edition, 'fuse');
  const cap = smallConductorCap(areaMm2, metal);
  return next === undefined || cap === undefined ? next : Math.min(next, cap);
}

/** Smallest table size [mm²] that meets rule 1, rule 2, and both with a device on it. */
export interface SmallestSizes {
  readonly plainMm2?: number;
  readonly correctedMm2?: number;
  readonly protectedMm2?: number;
}

export function smallestSizes(
  amps: ConductorAmps,
  place: Omit<ConductorInPlace, 'areaMm2'>,
  device: { readonly amps: number; readonly edition: NecEdition } | undefined,
): SmallestSizes {
  const sizes = ampacitySizesMm2(place.metal);
  const first = (fits: (rules: ConductorRules, areaMm2: number) => boolean): number | undefined =>
    sizes.find((areaMm2) => {
      const rules = conductorRules(amps, { ...place, areaMm2 });
      return rules !== undefined && fits(rules, areaMm2);
    });
  return {
    plainMm2: sizes.find((areaMm2) => {
      const columns = [place.insulation, place.termination].map((column) =>
        tableAmps(areaMm2, place.metal, column),
      );
      return columns.every((each) => each !== undefined && each + hair >= amps.ratedAmps);
    }),
    correctedMm2: first((rules) => rules.meetsCorrected),
    protectedMm2: first((rules, areaMm2) => {
      if (!rules.meetsPlain || !rules.meetsCorrected) return false;
      if (device === undefined) return true;
      const most = largestDevice(rules.ampacity, areaMm2, place.metal, device.edition);
      return most !== undefined && most + hair >= device.amps;
    }),
  };
}
