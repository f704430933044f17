import { give, type Result, refuse } from '../result.ts';
import { storedJoules } from './capacitor-charge.ts';

export interface ResistorNeed {
  /** Highest bank volts the resistor may meet [V], > 0. */
  readonly sourceVolts: number;
  /** Largest capacitance of all inverters on the bus [F], > 0. */
  readonly capacitanceF: number;
  /** Power drawn behind the resistor while it charges, such as standby electronics [W], >= 0. */
  readonly standbyWatts: number;
}

/** Limits of a comfortable pre-charge. Common practice. */
export const preChargeLimits = {
  /** Peak amps a clip lead, a small switch and the person's nerves take well. */
  mostAmps: 3,
  /** Five time constants within this [s]. */
  longestS: 10,
  /** The bus must come within this share of the source with the standby draw on. */
  reachShare: 0.95,
} as const;

export interface ResistorChoice {
  readonly leastOhms: number;
  readonly mostOhms: number;
  /** Sizes of the usual series between the two, least first. */
  readonly sizesOhms: readonly number[];
  /** Heat of one pre-charge, which the part must take as a pulse [J]. */
  readonly joulesPerTry: number;
}

/** Power resistors as sold: the E12 series (IEC 60063) over the range that serves here. */
const soldOhms = [1, 10, 100].flatMap((decade) =>
  [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2].map((step) =>
    Number((decade * step).toPrecision(2)),
  ),
);

/** The range of resistors that pre-charges this bus gently, soon enough, and all the way. */
export function chooseResistor(need: ResistorNeed): Result<ResistorChoice> {
  const { sourceVolts, capacitanceF, standbyWatts } = need;
  if (!(sourceVolts > 0)) return refuse('worksheet.pre-charge.noSource');
  if (!(capacitanceF > 0)) return refuse('worksheet.pre-charge.noCapacitance');
  if (!(standbyWatts >= 0)) return refuse('worksheet.pre-charge.negativeStandby');
  const { mostAmps, longestS, reachShare } = preChargeLimits;
  const leastOhms = sourceVolts / mostAmps;
  const soonEnoughOhms = longestS / (5 * capacitanceF);
  const allTheWayOhms =
    standbyWatts > 0 ? (reachShare * (1 - reachShare) * sourceVolts ** 2) / standbyWatts : Number.MAX_VALUE;
  const mostOhms = Math.min(soonEnoughOhms, allTheWayOhms);
  if (mostOhms < leastOhms) {
    return allTheWayOhms < leastOhms
      ? refuse('worksheet.pre-charge.standbyTooLarge', { standbyWatts, leastOhms })
      : refuse('worksheet.pre-charge.bankTooLarge', { capacitanceF, leastOhms });
  }
  return give({
    leastOhms,
    mostOhms,
    sizesOhms: soldOhms.filter((ohms) => ohms >= leastOhms && ohms <= mostOhms),
    joulesPerTry: storedJoules(capacitanceF, sourceVolts),
  });
}

export interface ResistorHeat {
  /** Heat one try leaves in the resistor [J]. */
  readonly joulesPerTry: number;
  /** Tries in a row before it must cool; 0 means the part is too small for even one. */
  readonly tries: number;
  /** Wait that gives one try back [s]. */
  readonly coolPerTryS: number;
  /** Longest it may stay across a dead short [s]; missing when it can stay for ever. */
  readonly shortS?: number;
}

/**
 * Overload a wirewound part is usually tested at: five times its rated power for five seconds.
 * From memory; the part's own pulse rating wins.
 */
export const usualOverload = { timesRated: 5, forS: 5 } as const;

/**
 * How often a resistor can be used in a row. Tries add up: the part sheds heat at about its rated power at best.
 * @param pulseJoules energy the part's data sheet lets it take in one pulse [J]; without it the usual overload
 *   test stands in.
 */
export function resistorHeat(
  need: Pick<ResistorNeed, 'sourceVolts' | 'capacitanceF'>,
  resistorOhms: number,
  ratedWatts: number,
  pulseJoules?: number,
): Result<ResistorHeat> {
  if (!(need.sourceVolts > 0)) return refuse('worksheet.pre-charge.noSource');
  if (!(need.capacitanceF > 0)) return refuse('worksheet.pre-charge.noCapacitance');
  if (!(resistorOhms > 0)) return refuse('worksheet.pre-charge.noResistor');
  if (!(ratedWatts > 0)) return refuse('worksheet.pre-charge.noRating');
  const allowedJoules = pulseJoules ?? usualOverload.timesRated * usualOverload.forS * ratedWatts;
  const joulesPerTry = storedJoules(need.capacitanceF, need.sourceVolts);
  const peakWatts = need.sourceVolts ** 2 / resistorOhms;
  return give({
    joulesPerTry,
    tries: Math.floor(allowedJoules / joulesPerTry),
    coolPerTryS: joulesPerTry / ratedWatts,
    ...(peakWatts > ratedWatts ? { shortS: allowedJoules / (peakWatts - ratedWatts) } : {}),
  });
}
