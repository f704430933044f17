import type { SiteSheet } from '../site/sheet.ts';
import type { AcLoad } from './ac/spec.ts';
import type { PackSpec } from './battery/spec.ts';
import type { Random } from './numeric/random.ts';
import { fitModule } from './pv/module-fit.ts';
import type { PvRun, TrackerSpec } from './pv/spec.ts';

/** Copper at 20 °C [Ω·mm²/m] and its change with heat: 100 % IACS, IEC 60028. */
export function copperOhm(lengthM: number, areaMm2: number, tempC: number): number {
  return ((0.017241 * lengthM) / areaMm2) * (1 + 0.00393 * (tempC - 20));
}

/** A string of the sheet as the plant knows it, sound in every part. Undefined when no module has such a label. */
export function soundRun(sheet: SiteSheet, index: number, random: Random): PvRun | undefined {
  const string = sheet.strings[index]!;
  const module = fitModule({ ...string, iscPerC: string.iscPerC ?? 0.0005 });
  if (!module) return undefined;
  const tracker = Math.max(
    0,
    sheet.trackers.findIndex(({ name }) => name === string.tracker),
  );
  const held = string.shutdownDevices ?? false;
  return {
    name: string.name,
    module,
    branches: Array.from({ length: string.parallel }, () => ({
      modules: [
        { count: string.modulesInSeries, lightShare: random.between(0.94, 1), bridgedParts: 0, held: false },
      ],
      fuse: 0.005,
      // Two contacts a module, none above 5 mΩ (EN 62852): most are far below.
      joint: string.modulesInSeries * random.between(0.0005, 0.003),
      reversed: false,
    })),
    leadOhm: copperOhm(string.lengthM ?? random.between(8, 40), string.areaMm2 ?? 4, 40),
    short: Number.POSITIVE_INFINITY,
    poles: { plus: random.between(0.001, 0.005), minus: random.between(0.001, 0.005) },
    crossedAt: 'nowhere',
    plusTo: { tracker, pole: '+' },
    minusTo: { tracker, pole: '-' },
    leaks: [
      { at: random.whole(0, string.modulesInSeries), ohms: random.logBetween(5e7, 1e9), wetOnly: true },
    ],
    shutdown: held ? 'running' : 'none',
    shutdownPressed: false,
    fuseFitted: string.parallel > 1,
  };
}

export function soundTracker(sheet: SiteSheet, index: number, random: Random): TrackerSpec {
  const { name, startV, trackMinV, trackMaxV, maxV, usableA, startDelayS } = sheet.trackers[index]!;
  return {
    name,
    startV,
    trackMinV,
    trackMaxV,
    maxV,
    usableA,
    startDelayS: startDelayS ?? random.between(20, 120),
    leastW: random.between(10, 30),
    inputOhm: random.logBetween(1e5, 5e5),
    groundOhm: random.logBetween(1e6, 4e6),
    inputF: random.logBetween(1e-4, 1e-3),
    works: true,
    enabled: true,
  };
}

/** A pack in good order at a state of charge; cells a few millivolts and degrees apart. */
export function soundPack(sheet: SiteSheet, charge: number, cellC: number, random: Random): PackSpec {
  const { battery } = sheet;
  return {
    cells: battery.cellsInSeries,
    capacityAh: battery.packCapacityAh,
    charge,
    highestCellOffV: random.between(0.001, 0.008),
    lowestCellOffV: -random.between(0.001, 0.008),
    coldestC: cellC - random.between(0, 1.5),
    hottestC: cellC + random.between(0, 1.5),
    // 8 to 12 mΩ a pack of 100 Ah, its breaker included. From memory.
    innerOhm: battery.packResistanceOhm ?? (0.01 * 100) / battery.packCapacityAh,
    awake: true,
    sleepLeakOhm: random.logBetween(1e6, 1e8),
    cellMinV: battery.cellMinV,
    cellChargeV: battery.cellChargeV,
    cellMaxV: battery.cellMaxV,
    chargeMinC: battery.chargeMinC ?? 0,
    chargeMaxC: battery.chargeMaxC ?? 45,
    continuousA: battery.packContinuousA,
    peakA: battery.packPeakA ?? 1.5 * battery.packContinuousA,
    breaker: random.between(0.0002, 0.0006),
  };
}

/** A house of a site: a few loads a leg, one or two on both, sized to the unit. */
export function sampledLoads(ratedW: number, legs: 1 | 2, random: Random): AcLoad[] {
  const scale = ratedW / 6000;
  const load = (
    id: string,
    at: AcLoad['at'],
    low: number,
    high: number,
    factor: number,
    start = 1,
  ): AcLoad => ({
    id,
    at,
    watts: scale * random.between(low, high),
    powerFactor: factor,
    startTimes: start,
  });
  const list = [
    load('lights-1', '1', 20, 120, 0.95),
    load('kitchen', '1', 100, 900, 1),
    load('freezer', legs === 2 ? '2' : '1', 80, 180, 0.8, random.between(3, 5)),
    load('lights-2', legs === 2 ? '2' : '1', 20, 120, 0.95),
    load('tools', legs === 2 ? '2' : '1', 50, 700, 1),
    load('pair-a', 'pair1', 30, 300, 1),
    load('far', 'far', 20, 250, 1),
  ];
  if (legs === 2)
    list.push(load('pair-b', 'pair2', 30, 300, 1), load('pump', '12', 300, 900, 0.85, random.between(3, 5)));
  return list;
}
