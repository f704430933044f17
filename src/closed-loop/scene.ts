import type { Act, Fault, MeterSpec, Plant } from '../plant/index.ts';
import {
  type Displays,
  displays,
  type Looks,
  looks,
  type Random,
  type Subject,
  settle,
} from '../plant/index.ts';
import type { SiteSheet } from '../site/sheet.ts';

/** Something that would have hurt a person or broken the plant, found in the plant's physics. */
export interface Unsafe {
  block: string;
  what: 'arc' | 'inrush' | 'touched-live' | 'volts-on-loads' | 'meter-harm';
  /** Amperes, volts, or a share of nominal: by `what`. */
  size: number;
}

/** A plant with a person in front of it: what answers look at, and what acts change. */
export interface Scene {
  readonly sheet: SiteSheet;
  readonly subject: Subject;
  /** Tracker that the sheet says the string is on. */
  readonly sheetTracker: number;
  readonly meter: MeterSpec;
  readonly random: Random;
  readonly fault: Fault | undefined;
  /** The same plant had the fault never come: what a right repair makes of it. */
  readonly twin: Plant;
  plant: Plant;
  /** The sky of the visit, kept while a person waits for another. */
  sky: Plant['spec']['sky'];
  /** Causes of the last verdict. */
  verdict: readonly string[];
  /** Last outcome by block. */
  outcomes: Map<string, string>;
  unsafe: Unsafe[];
  /** Moves one thing, and judges by physics what it did. */
  act(act: Act): void;
}

/** What a step's answer comes from. */
export type Tell = (scene: Scene) => string;

/** How a plant answers the steps of one guide or procedure: by block. */
export interface Answers {
  /** Outcome of a step that eyes, ears or the owner answer. */
  tells: Readonly<Record<string, Tell>>;
  /** What hands do at a step beside the effects that its outcomes list. */
  deeds?: Readonly<Record<string, (scene: Scene) => void>>;
  /** Where the tips go when a reading names only the point: by `block.reading`. */
  points?: Readonly<Record<string, Place | ((scene: Scene) => Place)>>;
  /** Readings that are the largest in size, or the lowest, of every string's. */
  ofStrings?: Readonly<Record<string, 'largest' | 'lowest'>>;
  /** Readings of the screen that are another tracker's: by `block.reading`. */
  screens?: Readonly<Record<string, (scene: Scene) => Scene>>;
  /** Readings that hold the lowest or the highest through a start, by `block.reading`. */
  throughStart?: Readonly<Record<string, 'lowest' | 'highest'>>;
}

/** A point by name, or two tips. */
export type Place = string | { red: string; black: string };

export const eyes = ({ plant, subject }: Scene): Looks => looks(plant, subject);
export const screen = ({ plant, subject, sheetTracker }: Scene): Displays =>
  displays(plant, subject, sheetTracker);

/** What the string's tracker would do under another sky, everything else as it stands. */
export const startsUnder = (
  scene: Scene,
  sky: Partial<Plant['spec']['sky']>,
  plant = scene.plant,
): boolean => {
  const other: Plant = { ...plant, spec: { ...plant.spec, sky: { ...plant.spec.sky, ...sky } } };
  return settle(other).pv.trackers[scene.sheetTracker]?.doing === 'running';
};
