import type { SiteSheet } from '../../site/sheet.ts';
import type { Random } from '../numeric/random.ts';
import type { Subject } from '../places.ts';
import type { Conditions } from '../site.ts';
import type { Plant, PlantSpec, PlantState } from '../spec.ts';

/** The thirteen symptom groups of the product. */
export const groups = {
  a: 'pv-no-start',
  b: 'battery-link',
  c: 'fans-heat',
  d: 'uneven-legs',
  e: 'no-power-up',
  f: 'drains-overnight',
  g: 'low-voltage-cut',
  h: 'overload-trips',
  i: 'ground-faults',
  j: 'source-refused',
  k: 'pv-makes-less',
  l: 'displays-disagree',
  m: 'units-out-of-step',
} as const;
export type Group = keyof typeof groups;

/** How often within its own group. From memory. */
export type Frequency = 'common' | 'occasional' | 'rare';

/** A plant that may still be changed. */
export interface Draft {
  spec: PlantSpec;
  state: PlantState;
}

/** What a fault is made with. */
export interface Making {
  sheet: SiteSheet;
  subject: Subject;
  random: Random;
}

/** How bad it is: what was drawn, by name, for the record. */
export type Severity = Readonly<Record<string, number | string>>;

/**
 * One cause, as a change of a sound plant's parameters. Every reading and every look follows from those; none is
 * written here. To add one: an entry with its ranges in the file of its group.
 */
export interface Fault {
  /** Number in the fault list (`a6`); several forms of one cause share it. */
  id: string;
  /** The page that names it: `content/en/causes/<cause>.mdx`. */
  cause: string;
  group: Group;
  frequency: Frequency;
  /** Plants on which it can be; every plant unless said. */
  fits?(sheet: SiteSheet): boolean;
  /** Day and battery that the complaint needs; the rest is drawn. */
  conditions?(making: Making): Conditions;
  /** Changes the draft, and says how bad it made it. */
  make(draft: Draft, making: Making): Severity;
}

/** A plant with what was done to it. */
export interface Sampled {
  plant: Plant;
  fault: Fault | undefined;
  severity: Severity;
}
