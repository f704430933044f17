import type { QuantityKind } from '../quantity/kinds.ts';
import type { Effect } from '../safety/effects.ts';
import type { Device, Zone } from '../safety/plant.ts';
import type { Promised } from '../safety/promises.ts';

/**
 * The words a guide or a procedure is written in. A machine file is plain data in these words: it says how a diagnosis
 * moves and nothing else. What people read stands in the content block of the same id.
 */

/** Kebab-case, the same in the machine, in the content block and in the address. */
export type StepId = string;

/**
 * What the plant must be like while a step is done. It is printed on the step's plate, it bars a jump to the step when
 * it does not hold, and the prover refuses a path that reaches the step without it.
 */
export type PlantState =
  /** Nothing claimed: read, think, ask. */
  | 'any'
  /** As found, nothing switched: every source may be live. */
  | 'asFound'
  /** Battery and PV closed, inverter on. */
  | 'running'
  /** Inverter on, output breaker open: no load. */
  | 'noLoad'
  /** The PV isolators open and locked; array side live in any light. */
  | 'pvOpen'
  /** Battery live up to its open, locked main switch; PV and AC input locked off; inverter off. */
  | 'mainOpen'
  /** Main switch closed, inverter off or on without load; PV and AC input still locked off. */
  | 'batteryOnly'
  /** Every source open and locked: not yet proved dead. */
  | 'lockedOut'
  /** Locked out and proved dead where the step works. */
  | 'dead';

export type StepKind =
  /** Use eyes, ears, nose; touch nothing. */
  | 'look'
  /** A question that only the person can answer. */
  | 'choose'
  /** A fact of the site sheet decides; asked of the person where the sheet does not know. */
  | 'sheet'
  /** A worksheet on the site's numbers decides; the working is shown. */
  | 'workOut'
  /** Read a screen. Never proof of dead, polarity, pre-charge or zero current. */
  | 'display'
  /** Put probes, clamp or sensor somewhere and type what the meter shows. */
  | 'measure'
  /** A hold point: each item met before the next step opens. */
  | 'hold'
  /** Move a handle, a switch, a plug of the generator lead. */
  | 'operate'
  /** Hands on conductors, proved dead. */
  | 'touch'
  /** Work on conductors that are always live. */
  | 'handleLive'
  /** Take stored charge out through a rated resistor. */
  | 'discharge'
  /** Wait a stated time. */
  | 'wait'
  /** Choose the next pair of settings to try of a grid, both sides typed as printed on the equipment. */
  | 'pair'
  /** Do a whole procedure. */
  | 'perform'
  /** The cause, and the readings it rests on. */
  | 'verdict'
  | 'end';

/** What the meter is set to. */
export type InstrumentMode =
  | 'dcVolts'
  | 'acVolts'
  | 'lowZVolts'
  | 'dcClamp'
  | 'acClamp'
  | 'ohms'
  | 'continuity'
  | 'insulation'
  | 'frequency'
  | 'temperature'
  | 'display'
  | 'watch';

/** One number asked for in a step. */
export interface Reading {
  /** Test point id, drawn on the plant drawing; `display` and `clock` for screens and watches. */
  point: string;
  /** Which expected band judges it: an id in `src/expected`. */
  scale: string;
  mode: InstrumentMode;
  /** The sign is asked for and judged. */
  signed?: boolean;
  /** Red and black, where they differ from the test point's own rule. */
  red?: string;
  black?: string;
  /** How many time-stamped values are taken (a rising voltage); 1 unless said. */
  series?: number;
}

/** Where an outcome leads. A bare string is a step of this machine. */
export interface Outcome {
  to: StepId;
  /** What taking this outcome does or shows, in order. */
  does?: readonly Effect[];
  /** Taken at most `max` times in a run, then `otherwise`. Every loop has one. */
  limit?: { counter: string; max: number; otherwise: StepId };
}

/** A row of a step with several readings: the first row whose pattern fits is taken. */
export interface Row extends Outcome {
  /** The outcome's id: its words stand under this id in the content block. */
  id: string;
  /** Reading id → zone or zones of its scale (or `undetermined`). Readings not named may be anything. */
  when: Readonly<Record<string, string | readonly string[]>>;
}

/** One item of a hold point. */
export interface HoldItem {
  id: string;
  /** Met by a recorded reading of this step that was judged to one of these zones; otherwise by its own confirmation. */
  reading?: { step: StepId; reading: string; zones: readonly string[] };
}

interface StepBase {
  kind: StepKind;
  /** Printed on the plate and held by the prover; `any` unless said. */
  state?: PlantState;
  /** Where hands or probes are. */
  at?: readonly Zone[];
  /** Hazard statements shown before the action, the most severe first. */
  hazards?: readonly string[];
  /** Protective equipment by id. */
  ppe?: readonly string[];
  /** Tools by id. */
  tools?: readonly string[];
  /** Facts of the site sheet without which the step cannot be judged. */
  facts?: readonly string[];
  /** Rough minutes. */
  minutes?: number;
  /** "I can't do this" and "not sure"; the machine's `escape` unless said. */
  cant?: StepId | Outcome;
  unsure?: StepId | Outcome;
  /** The step shows whether what was tried after a verdict cured: outcomes that say it did, and that say it did not. */
  retest?: { cured?: readonly string[]; failed?: readonly string[] };
}

/** A step whose outcome is chosen, decided by the sheet or worked out, or that has only `done`. */
export interface PlainStep extends StepBase {
  kind: 'look' | 'choose' | 'sheet' | 'workOut' | 'operate' | 'touch' | 'handleLive' | 'discharge' | 'wait';
  outcomes: Readonly<Record<string, StepId | Outcome>>;
  /** `sheet`: the question, an id in `src/guide/questions.ts`; `workOut`: the work, an id of a `WorkDef` in `src/expected`. */
  ask?: string;
  /** `wait`: how long, from `src/expected/waits`. */
  wait?: string;
  /** `operate`: the device is one that is moved while it may carry current; the site's rating decides if it may. */
  device?: Device;
}

/** A step that asks for numbers. `outcomes` by zone when there is one reading, `rows` when there are several. */
export interface ReadingStep extends StepBase {
  kind: 'measure' | 'display';
  readings: Readonly<Record<string, Reading>>;
  outcomes?: Readonly<Record<string, StepId | Outcome>>;
  rows?: readonly Row[];
  /** Measured with conductors live: meter, leads and clamp rated for the zone, jacks checked, equipment worn. */
  energised?: boolean;
  /** This step is the dead test of this zone: every pair and each pole to earth, DC and AC. */
  proves?: Zone;
}

/** A hold point has one way on (`done`) and one way out (`cant`). */
export interface HoldStep extends StepBase {
  kind: 'hold';
  items: readonly HoldItem[];
  outcomes: Readonly<{ done: StepId | Outcome }>;
}

/**
 * A grid of settings at two devices, tried pair by pair (`pairing.ts`). The person hands in the lists once and a pair each
 * time; the outcome follows from what that changes. Every pair tried with no link leaves only `all-tried`.
 */
export interface PairStep extends StepBase {
  kind: 'pair';
  /** The step of this machine whose outcome says what came of a try. */
  result: StepId;
  outcomes: Readonly<Record<'at-inverter' | 'at-pack' | 'all-tried', StepId | Outcome>>;
}

/** A whole procedure, inlined. Each of its endings leads somewhere here. */
export interface PerformStep extends StepBase {
  kind: 'perform';
  procedure: string;
  endings: Readonly<Record<string, StepId | Outcome>>;
}

/** A step and the outcomes of it, one of which must have been the last one taken there. */
export interface Because {
  step: StepId;
  outcomes: readonly string[];
}

/** Names the cause (or causes that read the same) and the outcomes that every path to it must hold. */
export interface VerdictStep extends StepBase {
  kind: 'verdict';
  causes: readonly string[];
  because: readonly Because[];
  outcomes: Readonly<Record<string, StepId | Outcome>>;
}

/** How a run ends. */
export type EndResult =
  | 'done'
  | 'fixed'
  | 'healthy'
  | 'referred'
  | 'leftIsolated'
  | 'leftGuarded'
  | 'unresolved';

/** What the plant is left like; a run that ends must be in one of those listed. */
export type Leaves = 'untouched' | 'restored' | 'isolated' | 'guarded';

export interface EndStep extends StepBase {
  kind: 'end';
  result: EndResult;
  leaves: readonly Leaves[];
  /** `guarded` and `isolated`: what is confirmed before walking away. */
  items?: readonly HoldItem[];
  /** What a procedure that performs this one may rely on here. */
  promises?: readonly Promised[];
}

export type Step = PlainStep | ReadingStep | HoldStep | PairStep | PerformStep | VerdictStep | EndStep;

/** A guide or a procedure. */
export interface Machine {
  id: string;
  kind: 'guide' | 'procedure';
  /** Raised when a change would make an old visit's answers mean something else. */
  version: number;
  /** Energy states from which it may be begun. */
  begins: readonly PlantState[];
  start: StepId;
  /** Where "I can't do this" and "not sure" lead unless the step says otherwise. */
  escape: StepId;
  /** Where smoke, smell, hissing, a tingle or water leads from every step. */
  stop: StepId;
  /** Facts of the site sheet that the run cannot do without. */
  facts?: readonly string[];
  /** The run is about one PV string of the site, asked for when it begins. */
  subject?: 'pvString';
  /**
   * What rules a cause out: any one of its lists, each entry of which must hold. It is written down and not taken from
   * the verdicts, for an answer that does not speak for a cause need not speak against it. A cause without a list is
   * never ruled out.
   */
  against?: Readonly<Record<string, readonly (readonly Because[])[]>>;
  steps: Readonly<Record<StepId, Step>>;
}

/** A scale's zones as an author needs them; bands with numbers are in `src/expected`. */
export interface ScaleShape {
  id: string;
  kind: QuantityKind;
  zones: readonly string[];
}
