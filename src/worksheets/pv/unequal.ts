/** A module's label at 1000 W/m² and 25 °C cell. */
export interface CurveLabel {
  readonly vocVolts: number;
  readonly vmpVolts: number;
  readonly iscAmps: number;
  readonly impAmps: number;
}

/** Like strings in parallel: `strings` of them, `modules` in series each. */
export interface StringGroup {
  readonly modules: number;
  readonly strings: number;
}

/** Amps of one module at a voltage; negative above its Voc, where current is pushed backwards through the cells. */
export type ModuleCurve = (volts: number) => number;

/** Beyond this exponent the diode carries all there is; it keeps numbers finite. */
const steepest = 60;
const halvings = 80;

/** (e^(v/c) − 1)/(e^(1/c) − 1) without overflow: 0 at 0 V, 1 at Voc. */
const diodeShare = (v: number, c: number): number =>
  (Math.exp(Math.min(steepest, (v - 1) / c)) * -Math.expm1(-v / c)) / -Math.expm1(-1 / c);

/** Steepness of the label's curve: a share of Voc, found so that the curve runs through the label's best point. */
export function steepnessOf(label: CurveLabel): number {
  const m = label.vmpVolts / label.vocVolts;
  const k = 1 - label.impAmps / label.iscAmps;
  // The share at the best point rises with c, from 0 towards m.
  let [low, high] = [1e-3, 1e3];
  for (let step = 0; step < halvings; step++) {
    const middle = Math.sqrt(low * high);
    if (diodeShare(m, middle) < k) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * The curve of a module by the explicit model through the label's three points (Rauschenbach 1980):
 * I = Isc·(1 − (e^(v/c) − 1)/(e^(1/c) − 1)), v = V/Voc. It is a single diode without resistances.
 * @param label whose best point lies above the straight line from Isc to Voc and below both.
 */
export function moduleCurve(label: CurveLabel): ModuleCurve {
  const c = steepnessOf(label);
  return (volts) => label.iscAmps * (1 - diodeShare(volts / label.vocVolts, c));
}

/** Amps of all groups together on one pair of conductors. */
export const groupAmps = (curve: ModuleCurve, groups: readonly StringGroup[], volts: number): number =>
  groups.reduce((sum, { modules, strings }) => sum + strings * curve(volts / modules), 0);

export interface Joined {
  /** Where nothing is drawn: strings hold each other there [V]. */
  readonly openVolts: number;
  /** Best point of all together. */
  readonly bestVolts: number;
  readonly bestWatts: number;
  /** What each group would give on a tracker of its own, added [W]. */
  readonly apartWatts: number;
}

const scanSteps = 400;

/** What strings of unequal length do on one input, in equal light, at 25 °C cell. */
export function joined(label: CurveLabel, groups: readonly StringGroup[]): Joined {
  const curve = moduleCurve(label);
  const longest = Math.max(...groups.map(({ modules }) => modules));
  const topVolts = 1.05 * longest * label.vocVolts;
  let [low, high] = [0, topVolts];
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    // Amps fall as volts rise, so one crossing is all there is.
    if (groupAmps(curve, groups, middle) > 0) low = middle;
    else high = middle;
  }
  const watts = (volts: number): number => volts * groupAmps(curve, groups, volts);
  let bestVolts = 0;
  // Unequal strings have two peaks: look at all of it before narrowing down.
  for (let step = 1; step <= scanSteps; step++) {
    const volts = (low * step) / scanSteps;
    if (watts(volts) > watts(bestVolts)) bestVolts = volts;
  }
  let width = low / scanSteps;
  while (width > 1e-7 * low) {
    const around = [bestVolts - width, bestVolts, bestVolts + width];
    bestVolts = around.reduce((best, volts) => (watts(volts) > watts(best) ? volts : best));
    width /= 2;
  }
  return {
    openVolts: low,
    bestVolts,
    bestWatts: watts(bestVolts),
    apartWatts: groups.reduce((sum, group) => sum + ownBest(label, curve, group), 0),
  };
}

/** Best power of one group alone: the label's point, which the model goes through but need not peak at. */
function ownBest(label: CurveLabel, curve: ModuleCurve, { modules, strings }: StringGroup): number {
  const one = (volts: number): number => volts * curve(volts);
  let best = label.vmpVolts;
  let width = label.vocVolts / 20;
  while (width > 1e-8 * label.vocVolts) {
    const around = [best - width, best, best + width];
    const better = around.reduce((top, volts) => (one(volts) > one(top) ? volts : top));
    if (better === best) width /= 2;
    best = better;
  }
  return modules * strings * one(best);
}
