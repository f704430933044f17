import { necColdFactor } from '../tables/nec-690-7.ts';
import { leastInSeries, mostInSeries } from './fitting-count.ts';
import { vmpAt, vocAt } from './string-volts.ts';

/** A module's label and the two ends of its year. */
export interface ModuleHere {
  readonly vocVolts: number;
  readonly vmpVolts: number;
  /** Fractions per °C, negative. */
  readonly vocPerC: number;
  readonly vmpPerC: number;
  readonly recordLowC: number;
  readonly hotCellC: number;
  /** Taken off hot working volts. */
  readonly hotMargin: number;
}

/** What one module does at both ends of the year [V]. */
export interface ModuleEnds {
  readonly vocColdEach: number;
  /** By NEC 690.7(A)'s table; missing below −40 °C, where it stops. */
  readonly vocColdTableEach?: number;
  readonly vocHotEach: number;
  readonly vmpHotEach: number;
}

export function endsOf(module: ModuleHere): ModuleEnds {
  const { vocVolts, vocPerC, recordLowC, hotCellC } = module;
  const factor = necColdFactor(recordLowC);
  return {
    vocColdEach: vocAt(vocVolts, vocPerC, recordLowC),
    vocColdTableEach: factor === undefined ? undefined : vocVolts * factor,
    vocHotEach: vocAt(vocVolts, vocPerC, hotCellC),
    vmpHotEach: (1 - module.hotMargin) * vmpAt(module.vmpVolts, module.vmpPerC, hotCellC),
  };
}

/** How many modules in series each limit asks for or allows. */
export interface CountLimits {
  /** Fewest that start when hot. */
  readonly leastToStart: number;
  /** Fewest that stay in the tracking window when hot. */
  readonly leastToTrack: number;
  /** Most under the maximum when cold, by coefficient and by the code's table. */
  readonly most: number;
  readonly mostTable?: number;
  /** Most that work inside the tracking window at 25 °C: more is harmless but held lower. */
  readonly mostTracking: number;
}

/**
 * @param startVolts volts that a hot open string must reach, margin in.
 * @param maxVolts the lower of the tracker's maximum and the code's cap.
 */
export function countLimits(
  ends: ModuleEnds,
  vmpVolts: number,
  tracker: { startVolts: number; trackLowVolts: number; trackHighVolts: number; maxVolts: number },
): CountLimits {
  const { vocColdTableEach } = ends;
  return {
    leastToStart: leastInSeries(tracker.startVolts, ends.vocHotEach),
    leastToTrack: leastInSeries(tracker.trackLowVolts, ends.vmpHotEach),
    most: mostInSeries(tracker.maxVolts, ends.vocColdEach),
    mostTable: vocColdTableEach === undefined ? undefined : mostInSeries(tracker.maxVolts, vocColdTableEach),
    mostTracking: mostInSeries(tracker.trackHighVolts, vmpVolts),
  };
}

/** Equal strings made of the modules at hand. */
export interface Split {
  readonly length: number;
  readonly strings: number;
  readonly leftOver: number;
}

/**
 * The split into equal strings that uses most modules, and of those the longest: fewer amps in every metre of cable.
 * `undefined` when no length between the two makes one string.
 */
export function bestSplit(
  modules: number,
  least: number,
  most: number,
  mostStrings: number,
): Split | undefined {
  let best: Split | undefined;
  for (let length = Math.max(1, least); length <= most; length++) {
    const strings = Math.min(mostStrings, Math.floor(modules / length));
    const split = { length, strings, leftOver: modules - strings * length };
    if (strings >= 1 && (best === undefined || split.leftOver <= best.leftOver)) best = split;
  }
  return best;
}
