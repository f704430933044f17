import type { HeatLoad, HeatResult, HeatSpec } from './spec.ts';

/** Dry air: cp [J/(kg·K)]; density from the standard atmosphere (ASHRAE Handbook of Fundamentals 2017, ch. 1). */
const heatCapacity = 1006;
export function airDensity(altitudeM: number, tempC: number): number {
  const pressure = 101_325 * (1 - 2.25577e-5 * altitudeM) ** 5.2559;
  return pressure / (287.055 * (tempC + 273.15));
}

/** Air that still moves by its own warmth, as a share of the fans' full flow. From memory. */
const naturalShare = 0.08;
/** Heatsink to air [W/K]: by the fans at full flow, and by itself, fins upright or not. From memory. */
const forcedWK = 14;
const naturalWK = { upright: 4, askew: 2 } as const;
/** A lug's rise per watt in it [K/W]. From memory. */
const lugKPerW = 5;
/** How far above its start temperature the fans reach full speed. From memory. */
const fanBandC = 15;
const leastSpeed = 0.3;
/** Speed that a quiet setting holds them to. From memory. */
const quietSpeed = 0.35;
/** Power given up per degree of inlet above the label, per 100 m above it, and per degree of heatsink past its own limit. */
const derate = { perC: 0.03, per100M: 0.01, sinkC: 90, perSinkC: 0.05 } as const;

interface Air {
  inletC: number;
  outletC: number;
  sinkC: number;
  flowM3s: number;
}

/** Temperatures with the fans at a speed. */
function airAt(spec: HeatSpec, lossW: number, turning: number): Air {
  const share = Math.max(naturalShare, turning) * spec.openShare;
  const flowM3s = spec.fullM3s * share;
  const watts = lossW + spec.sunW;
  const density = airDensity(spec.altitudeM, spec.roomC);
  const rise = watts / (density * heatCapacity * flowM3s);
  // What comes back in carries its share of the rise with it, again and again: a geometric series.
  const inletC = spec.roomC + (rise * spec.recirculation) / (1 - spec.recirculation);
  const outletC = inletC + rise;
  const mass = (density / airDensity(0, spec.roomC)) * share;
  const conductance = (spec.upright ? naturalWK.upright : naturalWK.askew) + forcedWK * mass ** 0.8;
  return { inletC, outletC, sinkC: (inletC + outletC) / 2 + watts / conductance, flowM3s };
}

function lawful(spec: HeatSpec, shownC: number, loadShare: number): number {
  const byTemp =
    shownC < spec.fanStartC ? 0 : leastSpeed + ((1 - leastSpeed) * (shownC - spec.fanStartC)) / fanBandC;
  const byLoad = loadShare < spec.fanStartLoad ? 0 : leastSpeed + (1 - leastSpeed) * Math.min(1, loadShare);
  const rules = {
    temperature: byTemp,
    load: byLoad,
    'temperature-or-load': Math.max(byTemp, byLoad),
    always: 1,
  };
  return Math.min(1, Math.max(spec.baseSpeed, rules[spec.fanRule]));
}

/** Where fans and temperatures settle, given long enough. The law answers heat and the fans take it away: one balance. */
export function solveHeat(spec: HeatSpec, load: HeatLoad): HeatResult {
  const current = spec.terminalSide === 'dc' ? load.dcA : load.acA;
  const jointW = current ** 2 * spec.terminalOhm;
  const shownFor = (sinkC: number) => sinkC + spec.sensorOffC + 0.3 * jointW * lugKPerW;
  const askedAt = (turning: number): number => {
    if (spec.driverStuck || spec.fanMode === 'full') return 1;
    const asked = lawful(spec, shownFor(airAt(spec, load.lossW, turning).sinkC), load.loadShare);
    return spec.fanMode === 'quiet' ? Math.min(asked, quietSpeed) : asked;
  };
  // More air, cooler, less asked: what is asked less what turns falls, and is nothing once.
  let [low, high] = [0, 1];
  for (let round = 0; round < 40; round++) {
    const middle = (low + high) / 2;
    if (askedAt(middle * spec.fansWork) > middle) low = middle;
    else high = middle;
  }
  const asked = low < 1e-6 ? 0 : high;
  const turning = asked * spec.fansWork;
  const air = airAt(spec, load.lossW, turning);
  const shownC = shownFor(air.sinkC);
  const powerShare =
    1 -
    derate.perC * Math.max(0, air.inletC - spec.derateStartC) -
    (derate.per100M * Math.max(0, spec.altitudeM - spec.fullPowerToM)) / 100 -
    derate.perSinkC * Math.max(0, shownC - derate.sinkC);
  const twinC = spec.roomC + 8 * load.loadShare;
  return {
    ...air,
    shownC,
    asked,
    turning,
    terminalC: twinC + jointW * lugKPerW,
    twinC,
    powerShare: Math.min(1, Math.max(0, powerShare)),
  };
}
