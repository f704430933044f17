import type { SiteSheet } from '../../site/sheet.ts';
import { airDensity, airRiseC } from '../../worksheets/heat/air.ts';
import { lossWatts } from '../../worksheets/heat/loss.ts';
import type { ExpectContext } from '../context.ts';

/** Sheet silent: battery to AC at ordinary loads. Common practice, 90 to 95 %. */
const usualEfficiency = 0.92;
/** The same for charging. Common practice, 93 to 97 %. */
export const chargeEfficiency = 0.95;
/** What either efficiency may really be, up or down: load and heat move it. Common practice. */
const efficiencyWithin = 0.02;
const mostEfficient = 0.99;
/** Sheet silent: idle draw as a share of rated power. Common practice, 1 to 2 %. */
const usualIdleShare = 0.015;
/** A cell under charge or a light load [V]. Common practice. */
const workingCellVolts = 3.35;
/** Power lost for each 100 m above the height of full power. Common practice, about 1 %. */
const lostPer100M = 0.01;
/** Sheet silent: heatsink temperature at which fans start [°C]. Common practice, 40 to 50. */
const usualFanStartC = 45;
/** Sheet silent: inlet air from which labels take power away [°C]. Common practice, 40 to 50. */
const usualDerateC = 40;

/** What is left of one unit's rating at the site's height, where full power reaches up to the given one [W]. */
export const allowedWattsOf = ({ inverter }: SiteSheet, altitudeM: number, fullToM: number): number =>
  inverter.ratedW * Math.max(0, 1 - (lostPer100M * Math.max(0, altitudeM - fullToM)) / 100);

/** Idle draw of one unit [W], and whether it is only a usual figure. */
export const idleOf = ({ inverter }: SiteSheet): { watts: number; assumed: boolean } =>
  inverter.idleW === null
    ? { watts: usualIdleShare * inverter.ratedW, assumed: true }
    : { watts: inverter.idleW, assumed: false };

export const fanStartOf = ({ inverter }: SiteSheet): number => inverter.fanStartC ?? usualFanStartC;
export const derateStartOf = ({ inverter }: SiteSheet): number => inverter.derateStartC ?? usualDerateC;
export const bankVoltsOf = ({ battery }: SiteSheet): number => battery.cellsInSeries * workingCellVolts;

/** Where a run reads the load, the latest place first. */
const loadBlocks = ['retest-numbers', 'eased', 'numbers'];

/** What goes through one unit, as last read off its screen. */
export function throughputOf({ sheet, readings }: ExpectContext): { acWatts: number; chargeWatts: number } {
  const block = loadBlocks.find((each) => readings[`${each}.watts`] !== undefined) ?? 'numbers';
  return {
    acWatts: Math.max(0, readings[`${block}.watts`] ?? 0),
    chargeWatts: Math.max(0, readings[`${block}.charge`] ?? 0) * bankVoltsOf(sheet),
  };
}

/** The heat one unit makes at the load last read [W]: the likeliest figure, and what it may really be. */
export function lossOf(context: ExpectContext): { low: number; likely: number; high: number } {
  const { sheet, outcomes } = context;
  const { acWatts, chargeWatts } = throughputOf(context);
  const efficiency = sheet.inverter.efficiency ?? usualEfficiency;
  const idleWatts = idleOf(sheet).watts;
  const at = (off: number, watts: number) =>
    lossWatts({
      acWatts: watts,
      efficiency: Math.min(mostEfficient, efficiency + off),
      chargeWatts,
      chargeEfficiency: Math.min(mostEfficient, chargeEfficiency + off),
      idleWatts,
    });
  // With a generator on, the loads may come straight from it and make no heat here.
  const passed = outcomes['charge-from'] === 'ac-source';
  return {
    low: at(efficiencyWithin, passed ? 0 : acWatts),
    likely: at(0, acWatts),
    high: at(-efficiencyWithin, acWatts),
  };
}

/** The heat one unit makes at its rated power [W]. */
export function ratedLossOf(sheet: SiteSheet): number {
  return lossWatts({
    acWatts: sheet.inverter.ratedW,
    efficiency: sheet.inverter.efficiency ?? usualEfficiency,
    chargeWatts: 0,
    chargeEfficiency,
    idleWatts: idleOf(sheet).watts,
  });
}

/** The latest of several places where a run reads the same thing. */
export const latest = ({ readings }: ExpectContext, ids: readonly string[]): number | undefined =>
  ids.map((id) => readings[id]).find((each) => each !== undefined);

export const roomOf = (context: ExpectContext) => latest(context, ['retest-room.air', 'room-air.air']);
export const inletOf = (context: ExpectContext) =>
  latest(context, ['retest-inlet.air', 'inlet-air.air', 'retest-room.air', 'room-air.air']);

/** The inlet last read, against the temperature from which the label takes power away. */
export function inletAtLimit(context: ExpectContext): 'at-limit' | 'below' | 'not-read' {
  const inletC = latest(context, ['retest-inlet.air', 'inlet-air.air']);
  if (inletC === undefined) return 'not-read';
  return inletC >= derateStartOf(context.sheet) ? 'at-limit' : 'below';
}

/** Rise of the air for a loss at this height [°C]. */
export const riseFor = (watts: number, airflowM3s: number, altitudeM: number, inletC: number): number =>
  airRiseC(watts, airflowM3s, airDensity(altitudeM, inletC));
