import { acNominal } from '../site/ac.ts';
import type { SiteSheet } from '../site/sheet.ts';
import type { AcSpec } from './ac/spec.ts';
import type { HeatSpec } from './heat/spec.ts';
import type { LinkSpec } from './link/spec.ts';
import type { Random } from './numeric/random.ts';
import { copperOhm, sampledLoads, soundPack, soundRun, soundTracker } from './site-parts.ts';
import type { PlantSpec, SourceSpec, UnitSpec } from './spec.ts';

/** The day, the house and the battery of one visit; what is not said is drawn. */
export interface Conditions {
  lightWm2?: number;
  airC?: number;
  roomC?: number;
  wet?: boolean;
  charge?: number;
}

/** Facts that a sheet may not have yet, and their place in it. */
type Sheet = SiteSheet & {
  outputFeeder?: { lengthM: number | null; areaMm2: number | null };
  inverter: SiteSheet['inverter'] & {
    fanAirflowM3s?: number | null;
    efficiency?: number | null;
    derateStartC?: number | null;
    fullPowerToM?: number | null;
  };
};

function soundUnit(sheet: Sheet, random: Random): UnitSpec {
  const { inverter, battery, parallelUnits } = sheet;
  return {
    ratedW: inverter.ratedW,
    legLimitW: inverter.legLimitW ?? inverter.ratedW / acNominal[inverter.topology].legs,
    idleW: inverter.idleW ?? 0.015 * inverter.ratedW,
    efficiency: inverter.efficiency ?? random.between(0.9, 0.95),
    busF: parallelUnits * (inverter.busCapacitanceF ?? (random.between(1.5, 3) * inverter.ratedW) / 1e6),
    bleedOhm: random.logBetween(2e3, 2e4) / parallelUnits,
    wakeV: 20,
    wakeW: 0,
    startV: inverter.dcMinV + random.between(0.5, 2),
    cutV: inverter.dcMinV,
    maxV: inverter.dcMaxV,
    regulatesFromV: inverter.dcMinV,
    insulationLimitOhm: inverter.insulationLimitOhm ?? 1e5,
    latched: [],
    linkRequired: false,
    chargeLimitA: battery.packs * battery.packContinuousA,
    chargeV: battery.cellsInSeries * battery.cellChargeV,
  };
}

const leg2Degrees = { 'opposed-120-240': 180, 'common-120': 0, 'wye-120-208': 120, 'single-230': 0 } as const;

function soundAc(sheet: Sheet, random: Random): AcSpec {
  const { inverter } = sheet;
  const nominal = acNominal[inverter.topology];
  const feeder = sheet.outputFeeder;
  // Inner impedance: 1 to 2 % of volts at rated current. From memory.
  const ratedOhm = (nominal.legToNeutralV ** 2 * nominal.legs) / inverter.ratedW;
  return {
    legs: nominal.legs,
    legV: nominal.legToNeutralV * random.between(0.985, 1.015),
    hz: inverter.frequencyHz,
    leg2Deg: leg2Degrees[inverter.topology],
    innerOhm: 0.01 * ratedOhm,
    innerReactOhm: 0.01 * ratedOhm,
    units: Array.from({ length: sheet.parallelUnits }, () => ({
      on: true,
      voltsShare: 1,
      aheadDeg: 0,
      line: [0.003, 0.003] as [number, number],
      neutral: 0.003,
    })),
    feederOhm: copperOhm(feeder?.lengthM ?? random.between(3, 25), feeder?.areaMm2 ?? 13.3, 30),
    feederReactOhm: 1e-4 * (feeder?.lengthM ?? 10),
    lineJoint: [random.between(0.0005, 0.003), random.between(0.0005, 0.003)],
    neutralJoint: random.between(0.0005, 0.003),
    pairNeutral: random.between(0.02, 0.1),
    farOhm: random.between(0.05, 0.25),
    loads: sampledLoads(inverter.ratedW, nominal.legs, random),
    bondAtUnit: 0.01,
    bondAtPanel: Number.POSITIVE_INFINITY,
    groundingOhm: random.between(0.02, 0.1),
    strayF: [random.logBetween(2e-9, 3e-8), random.logBetween(2e-9, 3e-8), random.logBetween(2e-9, 3e-8)],
    searchW: 0,
  };
}

function soundSource(sheet: Sheet, random: Random): SourceSpec {
  const { secondSource, inverter } = sheet;
  const { legToNeutralV } = acNominal[inverter.topology];
  const kind =
    secondSource.kind === 'none' ? 'none' : secondSource.kind === 'utility' ? 'utility' : 'generator';
  return {
    kind,
    legV: legToNeutralV * random.between(0.97, 1.03),
    hz: inverter.frequencyHz * (kind === 'generator' ? random.between(0.99, 1.04) : 1),
    innerOhm: 0.05 * (legToNeutralV ** 2 / (secondSource.ratedW ?? inverter.ratedW)),
    ratedW: secondSource.ratedW ?? inverter.ratedW,
    bonded: secondSource.neutralBonded ?? false,
    chargeA: sheet.battery.packs * sheet.battery.packContinuousA * random.between(0.2, 0.5),
    flips: false,
  };
}

function soundLink(sheet: Sheet, random: Random): LinkSpec {
  const port = { alive: true, short: Number.POSITIVE_INFINITY, end: true };
  return {
    kind: sheet.dataLink.kind,
    unit: { ...port },
    pack: { ...port },
    lead: {
      high: random.between(0.01, 0.1),
      low: random.between(0.01, 0.1),
      crossed: false,
      stray: false,
      short: Number.POSITIVE_INFINITY,
      touchy: false,
      lengthM: sheet.dataLink.lengthM ?? random.between(1, 10),
    },
    extraEnds: 0,
    endOhm: random.between(118, 122),
    protocol: { unit: 1, pack: 1 },
    speed: { unit: 1, pack: 1 },
    revision: { unit: 1, pack: 1 },
    wrongSocket: false,
    addresses: Array.from({ length: sheet.battery.packs }, (_, i) => i + 1),
    chainBrokenAfter: undefined,
    noiseVPerA: random.between(0, 0.002),
    secondMaster: false,
    obeys: true,
    timeOutS: random.between(5, 60),
  };
}

function soundHeat(sheet: Sheet, roomC: number, random: Random): HeatSpec {
  const { inverter } = sheet;
  return {
    roomC,
    sunW: 0,
    altitudeM: sheet.altitudeM ?? 200,
    upright: true,
    fanRule: inverter.fanRule ?? 'temperature-or-load',
    fanStartC: inverter.fanStartC ?? 45,
    fanStartLoad: inverter.fanStartLoad ?? 0.5,
    fanMode: 'auto',
    baseSpeed: 0,
    // 10 W of rated power a litre a second: 6 % of it lost, 5 K of rise. From memory.
    fullM3s: inverter.fanAirflowM3s ?? inverter.ratedW * random.between(8e-6, 12e-6),
    fansWork: 1,
    fanScrapes: false,
    openShare: random.between(0.92, 1),
    recirculation: random.between(0, 0.05),
    overAnother: false,
    sensorOffC: random.between(-2, 2),
    driverStuck: false,
    terminalOhm: random.between(5e-5, 2e-4),
    terminalSide: random.pick(['dc', 'ac'] as const),
    derateStartC: inverter.derateStartC ?? 40,
    fullPowerToM: inverter.fullPowerToM ?? 2000,
  };
}

/**
 * A plant in good order, built as its sheet says: what the sheet does not know, and the day, are drawn from ranges.
 * Undefined when a module label of the sheet belongs to no possible module.
 */
export function soundPlant(sheet: SiteSheet, random: Random, given: Conditions = {}): PlantSpec | undefined {
  const { climate } = sheet;
  const low = climate.usualLowC ?? climate.recordLowC + 15;
  const airC = given.airC ?? random.between(low, climate.usualHighC);
  const roomC = given.roomC ?? Math.max(8, Math.min(38, airC + random.between(0, 8)));
  const runs = sheet.strings.map((_, index) => soundRun(sheet, index, random.fork(`run${index}`)));
  if (runs.some((run) => run === undefined)) return undefined;
  const charge = given.charge ?? random.between(0.35, 0.9);
  const cellC = Math.max(12, roomC - 2);
  return {
    siteId: sheet.id,
    sky: {
      lightWm2: given.lightWm2 ?? random.between(350, 1000),
      airC,
      cellRiseC: climate.hotCellRiseC ?? random.between(22, 34),
      wet: given.wet ?? random.chance(0.15),
    },
    runs: runs.flatMap((run) => (run ? [run] : [])),
    trackers: sheet.trackers.map((_, index) => soundTracker(sheet, index, random.fork(`tracker${index}`))),
    packs: Array.from({ length: sheet.battery.packs }, (_, i) =>
      soundPack(
        sheet,
        Math.min(1, charge + (i === 0 ? 0 : random.between(-0.01, 0.01))),
        cellC,
        random.fork(`pack${i}`),
      ),
    ),
    path: {
      fuse: sheet.fuse.fitted === false ? 1e-4 : random.between(0.0002, 0.0004),
      plusJoint: random.between(0.0002, 0.0005),
      minusJoint: random.between(0.0002, 0.0005),
      main: random.between(0.0001, 0.0005),
      mainWelded: false,
      cableOhm: copperOhm(sheet.batteryCable.lengthM ?? 1.8, sheet.batteryCable.areaMm2 ?? 70, 35),
      reversed: false,
      prechargeOhm: sheet.precharge.resistorOhm ?? 30,
    },
    unit: soundUnit(sheet, random.fork('unit')),
    ac: soundAc(sheet, random.fork('ac')),
    source: soundSource(sheet, random.fork('source')),
    link: soundLink(sheet, random.fork('link')),
    heat: Array.from({ length: sheet.parallelUnits }, (_, k) =>
      soundHeat(sheet, roomC, random.fork(`heat${k}`)),
    ),
  };
}
