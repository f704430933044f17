import type { Contact } from '../pv/spec.ts';

/** Where a load hangs. `pair1`, `pair2`: two circuits of unlike legs on one shared neutral; `far`: the far socket's circuit. */
export type LoadPlace = '1' | '2' | '12' | 'pair1' | 'pair2' | 'far';

export interface AcLoad {
  id: string;
  at: LoadPlace;
  /** At nominal volts. */
  watts: number;
  powerFactor: number;
  /** How much more current it takes while it starts; 1 for what does not. */
  startTimes: number;
}

/** One inverter's AC side. */
export interface AcUnit {
  on: boolean;
  /** Its volts as a share of nominal, and its angle against the first unit's [°]. */
  voltsShare: number;
  aheadDeg: number;
  /** Its two output conductors and its neutral to the joint output. */
  line: [Contact, Contact];
  /** Middle of its own transformer to its neutral terminal. */
  neutral: Contact;
}

export interface AcSpec {
  legs: 1 | 2;
  legV: number;
  hz: number;
  /** Leg 2 against leg 1 [°]: 180 opposed, 0 in step, 120 a third apart. */
  leg2Deg: number;
  /** Inner impedance of one leg of one unit. */
  innerOhm: number;
  innerReactOhm: number;
  units: AcUnit[];
  /** One conductor of the run from output to panel, joints apart. */
  feederOhm: number;
  feederReactOhm: number;
  lineJoint: [Contact, Contact];
  neutralJoint: Contact;
  /** Neutral of the shared pair, and of the far circuit. */
  pairNeutral: Contact;
  farOhm: number;
  loads: AcLoad[];
  /** Ties of neutral to ground. */
  bondAtUnit: Contact;
  bondAtPanel: Contact;
  /** Grounding conductor between unit and panel. */
  groundingOhm: number;
  /** Capacitance of each leg and of neutral to ground: filters and cable [F]. */
  strayF: [number, number, number];
  /** The output waits for a load above this power by pulsing; 0: never. */
  searchW: number;
}

/** What feeds the joint output. */
export interface AcFeed {
  /** Volts of one leg at no load; 0: nothing. */
  legV: number;
  hz: number;
}
