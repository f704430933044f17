import type { ModuleParams } from './de-soto.ts';

/** A contact's resistance [Ω]; `Infinity` is open. */
export type Contact = number;

/** Equal modules in a row, from plus to minus. */
export interface ModuleRun {
  count: number;
  /** Light on them as a share of the sky's: shade, dirt. */
  lightShare: number;
  /** Parts of each module bridged by a shorted bypass diode, of three. */
  bridgedParts: number;
  /** Their shutdown device holds them off: this many volts each through its own resistance. */
  held: boolean;
}

/** One string of modules in series with its own fuse, of one or more that join in the combiner. */
export interface PvBranch {
  modules: ModuleRun[];
  fuse: Contact;
  /** Everything in the branch that conducts worse than its wire: plugs, splices. */
  joint: Contact;
  /** Plus and minus exchanged where it joins the others or the run. */
  reversed: boolean;
}

/** Where a run's conductor lands at the unit. */
export interface Landing {
  tracker: number;
  pole: '+' | '-';
}

/** A path from somewhere in the first branch to ground. */
export interface Leak {
  /** Modules from the plus end: 0 is the plus conductor, the module count the minus conductor. */
  at: number;
  ohms: number;
  /** Only there when it is wet. */
  wetOnly: boolean;
}

/** A run from the array to its tracker: one string of the site sheet. */
export interface PvRun {
  name: string;
  module: ModuleParams;
  branches: PvBranch[];
  /** Resistance of one conductor, one way, of the part from combiner to isolator. */
  leadOhm: number;
  /** Two conductors touching between combiner and isolator; `Infinity` when they do not. */
  short: Contact;
  /** Poles of the isolator while its handle is on. */
  poles: { plus: Contact; minus: Contact };
  /** Conductors exchanged between isolator and unit, or at the isolator's array side. */
  crossedAt: 'nowhere' | 'isolator' | 'unit';
  plusTo: Landing;
  minusTo: Landing;
  leaks: Leak[];
  /** Devices at the modules that hold them off until told to run. */
  shutdown: 'none' | 'running' | 'holding';
  /** Someone has pressed the button that makes them hold; otherwise their own signal or supply has failed. */
  shutdownPressed: boolean;
  /** A fuse is fitted at the combiner. */
  fuseFitted: boolean;
}

export interface TrackerSpec {
  name: string;
  startV: number;
  trackMinV: number;
  trackMaxV: number;
  maxV: number;
  usableA: number;
  startDelayS: number;
  /** Less than this and it gives up and waits [W]. */
  leastW: number;
  /** Resistance of the input at rest, plus to minus, and of each pole to ground. */
  inputOhm: number;
  groundOhm: number;
  /** Input capacitance [F]. */
  inputF: number;
  /** The power stage works. */
  works: boolean;
  /** Settings let it use the sun. */
  enabled: boolean;
}

export interface Sky {
  /** Irradiance in the modules' plane [W/m²]. */
  lightWm2: number;
  airC: number;
  /** How far cells stand above the air at 1000 W/m². */
  cellRiseC: number;
  wet: boolean;
}

/** Cell temperature: the air's, and a rise in proportion to the light (Ross, 1976). */
export const cellTemp = ({ airC, cellRiseC, lightWm2 }: Sky): number => airC + (cellRiseC * lightWm2) / 1000;

export const moduleCount = (run: PvRun): number =>
  run.branches[0]!.modules.reduce((sum, { count }) => sum + count, 0);
