import { type Moment, measure, type Probe, type Taken } from './meter/measure.ts';
import { show } from './meter/show.ts';
import type { MeterFunction, MeterSpec } from './meter/spec.ts';
import type { Random } from './numeric/random.ts';
import { type ThermometerPlace, temperature } from './observe.ts';
import type { Subject } from './places.ts';
import type { Plant } from './spec.ts';

/** A known live source that a tester is proved on: a fixed output that has nothing to do with the plant. */
const provingSource = { dc: 51.2, ac: 120 } as const;

/** Where another string, another tracker's terminals or the second unit is, for points that compare. */
function otherRun(plant: Plant, subject: Subject): number {
  const own = plant.spec.runs[subject.run]?.plusTo.tracker;
  const other = plant.spec.runs.findIndex((run, i) => i !== subject.run && run.plusTo.tracker !== own);
  return other < 0 ? subject.run : other;
}

/** Terminals of the tracker a run ought to be on and of the next, in the sheet's order. */
const otherTracker = (plant: Plant, own: number): number =>
  (own + 1) % Math.max(1, plant.spec.trackers.length);

/**
 * Probe of a point that guides name and the drawing has no pair for; undefined when there is none. `tracker-across` and
 * `tracker-back` are plus of this input to minus of the next, and the other way round.
 */
export function extraProbe(plant: Plant, point: string, sheetTracker: number): Probe | undefined {
  const next = otherTracker(plant, sheetTracker);
  const probes: Readonly<Record<string, Probe>> = {
    tracker: { red: `T${sheetTracker}+`, black: `T${sheetTracker}-` },
    'tracker-across': { red: `T${sheetTracker}+`, black: `T${next}-` },
    'tracker-back': { red: `T${next}+`, black: `T${sheetTracker}-` },
    fuse: { red: 'fuse-in', black: 'fuse-out' },
    array: { clamp: 'array' },
    run: { red: 'C+', black: 'C-' },
    'run-plus': { red: 'C+', black: 'G' },
    'run-minus': { red: 'C-', black: 'G' },
    'pack-breaker': { red: 'B+', black: 'bus+' },
    'unit-dc': { red: 'I+', black: 'I-' },
    'unit-switch': { red: 'S1+', black: 'S2+' },
    'unit-out': { red: 'O-L1', black: 'O-N' },
    'unit-neutral': { red: 'O-N', black: 'G' },
    'OD-L1': { red: 'O-L1', black: 'D-L1' },
    'OD-L2': { red: 'O-L2', black: 'D-L2' },
    ghost: { red: 'O-L1', black: 'O-N' },
    'link-unit': { red: 'unit.C-H', black: 'unit.C-L' },
    'link-lead': { red: 'lead.C-H', black: 'lead.C-L' },
    'link-far': { red: 'far.C-H', black: 'far.C-L' },
    'link-pack': { red: 'pack.C-H', black: 'pack.C-L' },
    'link-unit-high': { red: 'unit.C-H', black: 'unit.ref' },
    'link-unit-low': { red: 'unit.C-L', black: 'unit.ref' },
    'link-pack-high': { red: 'pack.C-H', black: 'pack.ref' },
    'link-pack-low': { red: 'pack.C-L', black: 'pack.ref' },
    'wire-same': { red: 'lead.C-H', black: 'far.C-H' },
    'wire-same-low': { red: 'lead.C-L', black: 'far.C-L' },
    'wire-crossed': { red: 'lead.C-H', black: 'far.C-L' },
    'wire-stray': { red: 'lead.C-S', black: 'far.C-H' },
  };
  return Object.hasOwn(probes, point) ? probes[point] : undefined;
}

const thermometer: readonly string[] = [
  'module',
  'room',
  'inlet',
  'outlet',
  'outlet-below',
  'case',
  'jacket',
  'jacket-twin',
];

export interface Asked {
  /** A point by name, or two tips or a clamp given outright (from the drawing's pairs). */
  point: string;
  probe?: Probe | undefined;
  mode: MeterFunction;
  moment?: Moment;
}

/** Who asks, with what, and about which string. */
export interface Asker {
  meter: MeterSpec;
  subject: Subject;
  /** Tracker that the sheet says this string is on. */
  sheetTracker: number;
  random: Random;
}

/**
 * One reading as a person takes it: points of the drawing by their probe, and the further points above. `sister-P1` is
 * P1 of a string on another tracker. Undefined: a point that only eyes or a clock can answer.
 */
export function answerReading(plant: Plant, asked: Asked, asker: Asker): Taken | undefined {
  const { meter, subject, sheetTracker, random } = asker;
  const { point, mode, moment = 'steady' } = asked;
  if (mode === 'temperature')
    return thermometer.includes(point)
      ? {
          shown: {
            kind: 'value',
            value: temperature(plant, point as ThermometerPlace, subject, random, meter.errs),
            resolution: 0.1,
          },
        }
      : undefined;
  if (point === 'proving-source') {
    const ac = mode === 'acVolts';
    return {
      shown: show(meter, ac ? 'acVolts' : 'dcVolts', ac ? provingSource.ac : provingSource.dc, random),
    };
  }
  // Frames and grounding conductors are one node: nothing stands between them.
  if (point === 'frame' || point === 'two-grounds' || point === 'ground-contact')
    return { shown: show(meter, mode === 'acVolts' ? 'acVolts' : 'dcVolts', 0, random) };
  if (point === 'sister-P1')
    return measure(
      plant,
      meter,
      { red: 'P1+', black: 'P1-' },
      mode,
      { ...subject, run: otherRun(plant, subject) },
      random,
      moment,
    );
  const probe = asked.probe ?? extraProbe(plant, point, sheetTracker);
  return probe ? measure(plant, meter, probe, mode, subject, random, moment) : undefined;
}
