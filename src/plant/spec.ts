import type { AcSpec } from './ac/spec.ts';
import type { DcPathSpec, PackSpec } from './battery/spec.ts';
import type { HeatSpec } from './heat/spec.ts';
import type { LinkSpec } from './link/spec.ts';
import type { PvRun, Sky, TrackerSpec } from './pv/spec.ts';

/** What a unit remembers until somebody clears it. */
export type Latched = 'arc' | 'ground-fault';

/** What stands in a unit's event list. */
export type PlantEvent =
  | 'arc-latched'
  | 'ground-latched'
  | 'insulation'
  | 'over-volts'
  | 'battery-link'
  | 'low-battery'
  | 'overload';

export interface UnitSpec {
  ratedW: number;
  legLimitW: number;
  /** Power one unit draws from the battery, on, with no load. */
  idleW: number;
  /** Battery to AC, idle apart. */
  efficiency: number;
  /** Capacitance across the DC posts of all units together [F], and what discharges it, off [Ω]. */
  busF: number;
  bleedOhm: number;
  /** Electronics that wake at these volts while the bus charges, and what they draw. */
  wakeV: number;
  wakeW: number;
  /** Battery volts at which it starts, at which it stops, and above which it will not run. */
  startV: number;
  cutV: number;
  maxV: number;
  /** Below these battery volts the output no longer holds its nominal. */
  regulatesFromV: number;
  insulationLimitOhm: number;
  latched: Latched[];
  /** Settings: it charges or uses PV only with a live battery link; most charge current; volts it charges to. */
  linkRequired: boolean;
  chargeLimitA: number;
  chargeV: number;
}

export interface SourceSpec {
  kind: 'none' | 'generator' | 'utility';
  /** Leg volts at no load, frequency, inner impedance [Ω]. */
  legV: number;
  hz: number;
  innerOhm: number;
  /** What it can give for long [W]. */
  ratedW: number;
  bonded: boolean;
  /** Charge current the unit takes from it [A at the battery]. */
  chargeA: number;
  /** It stands at the edge of what the unit accepts and is dropped and taken again. */
  flips: boolean;
}

/** Everything a plant is. A fault is another value of some of this; nothing else makes a reading. */
export interface PlantSpec {
  siteId: string;
  sky: Sky;
  runs: PvRun[];
  trackers: TrackerSpec[];
  packs: PackSpec[];
  path: DcPathSpec;
  unit: UnitSpec;
  ac: AcSpec;
  source: SourceSpec;
  link: LinkSpec;
  /** By unit. */
  heat: HeatSpec[];
}

/** What hands have switched, and what time does. */
export interface PlantState {
  /** Since the visit began [s]. */
  atS: number;
  packOn: boolean[];
  mainOn: boolean;
  precharge: boolean;
  isolators: boolean[];
  parted: boolean[];
  unitOn: boolean;
  outputOn: boolean;
  acInOn: boolean;
  sourceRunning: boolean;
  loadsOn: boolean[];
  testW: [number, number];
  /** The load that is starting at this moment. */
  starting: number | undefined;
  /** Charging is held off or turned down by hand [A]; undefined: as set. */
  chargeHeldA: number | undefined;
  unitPlug: boolean;
  packPlug: boolean;
  /** Volts of the DC bus and of each tracker's input capacitors, where nothing else holds them. */
  busV: number;
  inputV: number[];
  /** How long each tracker could have started [s]. */
  readyS: number[];
}

export interface Plant {
  readonly spec: PlantSpec;
  readonly state: PlantState;
}

/** Everything closed and running, long since: how a plant is found. */
export const asFound = (spec: PlantSpec): PlantState => ({
  atS: 0,
  packOn: spec.packs.map(() => true),
  mainOn: true,
  precharge: false,
  isolators: spec.runs.map(() => true),
  parted: spec.runs.map(() => false),
  unitOn: true,
  outputOn: true,
  // A generator is plugged in when it is wanted.
  acInOn: spec.source.kind === 'utility',
  sourceRunning: spec.source.kind === 'utility',
  loadsOn: spec.ac.loads.map(() => true),
  testW: [0, 0],
  starting: undefined,
  chargeHeldA: undefined,
  unitPlug: true,
  packPlug: true,
  busV: 0,
  inputV: spec.trackers.map(() => 0),
  readyS: spec.trackers.map(() => Number.POSITIVE_INFINITY),
});
