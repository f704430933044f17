import * as z from 'zod/mini';
import { orUnknown, quantity, shortText } from './field.ts';

/** How the AC output's legs stand to each other and to neutral. */
export const acTopologies = ['opposed-120-240', 'common-120', 'wye-120-208', 'single-230'] as const;
export const secondSourceKinds = ['none', 'generator-manual', 'generator-auto', 'utility'] as const;
export const codeBases = ['us-nec', 'iec', 'other'] as const;
export const unitSystems = ['us', 'metric'] as const;
export const mainSwitchKinds = ['switch', 'breaker'] as const;
export const linkKinds = ['none', 'can', 'serial-485'] as const;
export const fanRules = ['temperature', 'load', 'temperature-or-load', 'always'] as const;
export const mountings = ['open-rack', 'roof-gap', 'roof-flush'] as const;
export const meterCategories = ['II', 'III', 'IV'] as const;

const climate = z.strictObject({
  /** Lowest air temperature ever recorded here: it sets the highest string volts. */
  recordLowC: quantity('temperature', -60, 25),
  /** Air temperature of an ordinary cold morning. */
  usualLowC: orUnknown(quantity('temperature', -60, 40)),
  /** Air temperature of an ordinary hot afternoon. */
  usualHighC: quantity('temperature', -10, 55),
  /** How far module cells stand above the air in full sun; the mounting decides when unknown. */
  hotCellRiseC: orUnknown(quantity('temperatureDifference', 5, 60)),
});

const battery = z.strictObject({
  /** Cells in series in one pack: 15 or 16 in most packs sold as 48 V. */
  cellsInSeries: quantity('count', 12, 20),
  /** Packs in parallel. */
  packs: quantity('count', 1, 32),
  /** Rated charge of one pack. */
  packCapacityAh: quantity('charge', 5, 2000),
  /** Lowest cell volts from which the label allows charging; below it the pack is out of service. */
  cellRecoverMinV: orUnknown(quantity('voltage', 1, 3.2)),
  /** Cell volts at which the pack disconnects on discharge. */
  cellMinV: quantity('voltage', 1.5, 3.4),
  /** Cell volts at which charging should end. */
  cellChargeV: quantity('voltage', 3, 4.3),
  /** Cell volts at which the pack disconnects on charge. */
  cellMaxV: quantity('voltage', 3, 4.4),
  /** Continuous current of one pack. */
  packContinuousA: quantity('current', 5, 1000),
  /** Peak current of one pack, for the seconds on its label. */
  packPeakA: orUnknown(quantity('current', 5, 2000)),
  /** Resistance of one pack between its posts. */
  packResistanceOhm: orUnknown(quantity('resistance', 0.0005, 0.5, 'mΩ')),
  /** Lowest and highest cell temperature at which the label allows charging. */
  chargeMinC: orUnknown(quantity('temperature', -30, 20)),
  chargeMaxC: orUnknown(quantity('temperature', 25, 80)),
});

const mainSwitch = z.strictObject({
  /** What opens the battery circuit. */
  kind: z.enum(mainSwitchKinds),
  /** Rated current. */
  ratedA: orUnknown(quantity('current', 10, 2000)),
  /** Rated DC volts. */
  ratedV: orUnknown(quantity('voltage', 12, 1500)),
  /** Rated to break its current as DC. Unknown counts as no. */
  loadBreak: orUnknown(z.boolean()),
  /** Breaks in one direction only. Unknown counts as yes. */
  polarised: orUnknown(z.boolean()),
  /** Takes a lock when open. Unknown counts as no. */
  lockable: orUnknown(z.boolean()),
});

const fuse = z.strictObject({
  /** A fuse stands in the main battery lead. */
  fitted: orUnknown(z.boolean()),
  /** Rated current. */
  ratedA: orUnknown(quantity('current', 10, 2000)),
  /** Short-circuit current it can break at battery volts. */
  interruptingA: orUnknown(quantity('current', 100, 200_000)),
});

const packBreaker = z.strictObject({
  /** Each pack has a breaker or fuse of its own. */
  fitted: orUnknown(z.boolean()),
  /** Rated current. */
  ratedA: orUnknown(quantity('current', 5, 2000)),
  /** Rated to break its current as DC. Unknown counts as no. */
  loadBreak: orUnknown(z.boolean()),
  /** Breaks in one direction only. Unknown counts as yes. */
  polarised: orUnknown(z.boolean()),
});

const batteryCable = z.strictObject({
  /** One way, battery to inverter. */
  lengthM: orUnknown(quantity('length', 0.1, 50)),
  /** Metal area of one conductor. */
  areaMm2: orUnknown(quantity('wireSize', 1, 500)),
});

const precharge = z.strictObject({
  /** Resistance of the pre-charge resistor. */
  resistorOhm: orUnknown(quantity('resistance', 1, 1000)),
  /** Power it is rated for. */
  ratedW: orUnknown(quantity('power', 1, 2000)),
  /** Energy of one pulse it is rated for. */
  ratedEnergyJ: orUnknown(quantity('energy', 0.1, 100_000, 'J')),
});

const inverter = z.strictObject({
  /** Continuous AC power of one unit. */
  ratedW: quantity('power', 200, 50_000),
  /** Short-time AC power of one unit. */
  surgeW: orUnknown(quantity('power', 200, 100_000)),
  /** Continuous AC power of one leg of one unit. */
  legLimitW: orUnknown(quantity('power', 100, 50_000)),
  /** Power drawn from the battery by one unit, on, with no load. */
  idleW: orUnknown(quantity('power', 0, 1000)),
  /** Capacitance across the DC posts of one unit. */
  busCapacitanceF: orUnknown(quantity('capacitance', 1e-5, 1, 'mF')),
  /** Lowest and highest battery volts it runs on. */
  dcMinV: quantity('voltage', 20, 60),
  dcMaxV: quantity('voltage', 40, 100),
  /** Waiting time for stored charge printed on its label. */
  storedChargeWaitS: orUnknown(quantity('time', 0, 3600)),
  /** How the output legs stand to each other. */
  topology: z.enum(acTopologies),
  /** Output frequency. */
  frequencyHz: z.literal([50, 60]),
  /** The PV side may be closed only when the battery is. Unknown counts as yes. */
  batteryFirst: orUnknown(z.boolean()),
  /** Insulation resistance of the array below which it refuses to start. */
  insulationLimitOhm: orUnknown(quantity('resistance', 1000, 1e8, 'kΩ')),
  /** What turns the fans on. */
  fanRule: orUnknown(z.enum(fanRules)),
  /** Heatsink temperature at which the fans start. */
  fanStartC: orUnknown(quantity('temperature', 0, 100)),
  /** Part of rated load at which the fans start. */
  fanStartLoad: orUnknown(quantity('ratio', 0, 1)),
  /** Air that one unit's fans move at full speed, in place. */
  fanAirflowM3s: orUnknown(quantity('airflow', 0.002, 1)),
  /** Battery to AC at the loads it usually carries, idle draw not counted. */
  efficiency: orUnknown(quantity('ratio', 0.7, 0.995)),
  /** Air temperature at its inlet from which the label takes power away. */
  derateStartC: orUnknown(quantity('temperature', 20, 80)),
  /** Height above the sea up to which the label gives full power. */
  fullPowerToM: orUnknown(quantity('altitude', 0, 6000)),
});

const tracker = z.strictObject({
  /** As marked on the unit or its cover. */
  name: shortText(24),
  /** String volts at which it starts. */
  startV: quantity('voltage', 10, 1000),
  /** Lowest and highest string volts at which it tracks. */
  trackMinV: quantity('voltage', 10, 1000),
  trackMaxV: quantity('voltage', 10, 1500),
  /** String volts it must never see. */
  maxV: quantity('voltage', 20, 1500),
  /** Input current it will use: more is left unused. */
  usableA: quantity('current', 1, 200),
  /** Short-circuit current it must never be connected to. */
  shortCircuitMaxA: orUnknown(quantity('current', 1, 300)),
  /** Time from enough volts to start, on its label or in its settings. */
  startDelayS: orUnknown(quantity('time', 0, 3600)),
});

const pvIsolator = z.strictObject({
  /** A switch stands between string and inverter. */
  fitted: orUnknown(z.boolean()),
  /** Rated DC volts. */
  ratedV: orUnknown(quantity('voltage', 12, 1500)),
  /** Rated current. */
  ratedA: orUnknown(quantity('current', 1, 400)),
  /** Rated to break its current as DC. Unknown counts as no. */
  loadBreak: orUnknown(z.boolean()),
  /** Breaks in one direction only. Unknown counts as yes. */
  polarised: orUnknown(z.boolean()),
});

const pvString = z.strictObject({
  /** As marked at the isolator. */
  name: shortText(24),
  /** Name of the tracker it lands on. */
  tracker: shortText(24),
  /** Modules in series. */
  modulesInSeries: quantity('count', 1, 40),
  /** Equal strings joined in parallel on this pair of conductors. */
  parallel: quantity('count', 1, 12),
  /** Module label, at 1000 W/m² and 25 °C cell: open-circuit volts. */
  vocV: quantity('voltage', 5, 200),
  /** Volts at maximum power. */
  vmpV: quantity('voltage', 5, 200),
  /** Short-circuit current. */
  iscA: quantity('current', 0.5, 30),
  /** Current at maximum power. */
  impA: quantity('current', 0.5, 30),
  /** Change of open-circuit volts per degree: negative. */
  vocPerC: quantity('temperatureCoefficient', -0.006, -0.0005),
  /** Change of maximum power per degree: negative. */
  pmaxPerC: quantity('temperatureCoefficient', -0.008, -0.0005),
  /** Change of volts at maximum power per degree: negative. The one of power stands in when unknown. */
  vmpPerC: orUnknown(quantity('temperatureCoefficient', -0.008, -0.0005)),
  /** Change of short-circuit current per degree. */
  iscPerC: orUnknown(quantity('temperatureCoefficient', -0.001, 0.002)),
  /** One way, array to inverter. */
  lengthM: orUnknown(quantity('length', 0.5, 1000)),
  /** Metal area of one conductor. */
  areaMm2: orUnknown(quantity('wireSize', 0.5, 120)),
  /** How freely air passes behind the modules. */
  mounting: orUnknown(z.enum(mountings)),
  isolator: pvIsolator,
  /** Devices at the modules that hold them off until told to run. */
  shutdownDevices: orUnknown(z.boolean()),
});

const outputFeeder = z.strictObject({
  /** One way, inverter output to load panel. */
  lengthM: orUnknown(quantity('length', 0.2, 2000)),
  /** Metal area of one conductor; the neutral's where it differs. */
  areaMm2: orUnknown(quantity('wireSize', 1, 500)),
});

const secondSource = z.strictObject({
  /** What else can feed the AC side. */
  kind: z.enum(secondSourceKinds),
  /** Continuous power. */
  ratedW: orUnknown(quantity('power', 100, 100_000)),
  /** It joins its own neutral to ground. */
  neutralBonded: orUnknown(z.boolean()),
});

const dataLink = z.strictObject({
  /** The link between battery and inverter. */
  kind: z.enum(linkKinds),
  /** Length of its lead. */
  lengthM: orUnknown(quantity('length', 0.1, 1200)),
});

/** The accuracy of one function of the meter, as its data sheet gives it; null while unknown. */
const accuracy = z.strictObject({
  /** Part of the reading, as a fraction: 0.005 for "0.5 %". */
  ofReading: orUnknown(quantity('ratio', 0, 0.2)),
  /** Counts of the last digit. */
  counts: orUnknown(quantity('count', 0, 100)),
});

const meter = z.strictObject({
  dcVolts: accuracy,
  acVolts: accuracy,
  ohms: accuracy,
  dcClamp: accuracy,
  acClamp: accuracy,
  /** A clamp that reads DC is at hand. */
  hasDcClamp: z.boolean(),
  /** Measurement category of meter and leads. */
  category: orUnknown(z.enum(meterCategories)),
  /** Volts to earth at that category: the lower of meter and leads. */
  categoryV: orUnknown(quantity('voltage', 50, 2000)),
  /** It has a low-impedance volts mode. */
  lowImpedance: orUnknown(z.boolean()),
  /** Resistance of its ordinary volts input. */
  inputOhm: orUnknown(quantity('resistance', 1e4, 1e9, 'MΩ')),
});

/**
 * Every fact of one install, in the inside units of `src/quantity/kinds.ts`. `null` means *not known* and is
 * allowed only where a guide can do without, takes the safe side, or asks when it needs the fact.
 */
export const sheetSchema = z.strictObject({
  format: z.literal('faultwright-site'),
  version: z.literal(1),
  /** Names the site in storage: letters, digits and hyphens. */
  id: z.string().check(z.regex(/^[a-z0-9](?:[a-z0-9-]{0,62}[a-z0-9])?$/)),
  /** What people call the place. */
  name: shortText(80),
  /** The figures are made up, to try the guides on. */
  invented: z.boolean(),
  /** Units shown, and taken for a bare number. */
  units: z.enum(unitSystems),
  /** The electrical code that governs here. */
  codeBasis: z.enum(codeBases),
  /** Height above the sea. */
  altitudeM: orUnknown(quantity('altitude', -430, 6000)),
  climate,
  battery,
  mainSwitch,
  fuse,
  packBreaker,
  batteryCable,
  precharge,
  inverter,
  /** Inverter units that share this battery and this output. */
  parallelUnits: quantity('count', 1, 16),
  trackers: z.array(tracker).check(z.maxLength(12)),
  strings: z.array(pvString).check(z.maxLength(24)),
  secondSource,
  /** The run from output to load panel. A sheet written before it was asked for does not know it. */
  outputFeeder: z._default(outputFeeder, { lengthM: null, areaMm2: null }),
  dataLink,
  meter,
  /** Anything else worth knowing on the next visit. */
  notes: z.string().check(z.maxLength(2000)),
});

export type SiteSheet = z.infer<typeof sheetSchema>;
export type PvString = SiteSheet['strings'][number];
export type Tracker = SiteSheet['trackers'][number];
export type AcTopology = SiteSheet['inverter']['topology'];
export type MeterFunction = 'dcVolts' | 'acVolts' | 'ohms' | 'dcClamp' | 'acClamp';
