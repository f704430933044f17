import { acCircuit } from '../ac/build.ts';
import type { Circuit } from '../circuit/netlist.ts';
import { withPart } from '../circuit/netlist.ts';
import { type AcCircuit, minus, type Phasor, sizeOf, solveAc } from '../circuit/phasor.ts';
import { solveCircuit } from '../circuit/solve.ts';
import { linkCircuit } from '../link/build.ts';
import type { Random } from '../numeric/random.ts';
import { conductorOf, type Spot, type Subject, spotOf } from '../places.ts';
import { insulationOhm, pvCircuit } from '../pv/build.ts';
import { linkStateOf, settle } from '../settle.ts';
import type { Plant } from '../spec.ts';
import { type Shown, show } from './show.ts';
import type { MeterFunction, MeterSpec } from './spec.ts';

/** Two lead tips, or a clamp round conductors with all arrows the same way. */
export type Probe = { red: string; black: string } | { clamp: string; with?: string };

/** When the reading is taken. */
export type Moment =
  /** Everything settled. */
  | 'steady'
  /** While a tracker that keeps retrying drags its string, or a motor starts. */
  | 'start';

export interface Taken {
  shown: Shown;
  /** Harm to meter or person that this very act would do: physics, not rules. */
  harm?: 'ohms-on-live' | 'insulation-on-live';
}

/** An ohmmeter's own volts at open leads. From memory. */
const ohmmeter = { volts: 3, ohms: 1e3 } as const;
/** More than this across an ohmmeter and it shows nonsense or is damaged [V]. */
const liveV = 1;

const ownTrackerOf = (plant: Plant, subject: Subject): number =>
  plant.spec.runs[subject.run]?.plusTo.tracker ?? 0;

/** The direct-current circuit that a spot is in, as it stands at the moment. */
function dcCircuitOf(plant: Plant, name: Exclude<Spot['circuit'], 'ac'>, moment: Moment): Circuit {
  const settled = settle(plant);
  if (name === 'dc') return settled.dc.circuit;
  if (name === 'link') return linkCircuit(plant.spec.link, linkStateOf(plant, settled.lit));
  const { trackers } = settled.pv;
  if (moment === 'steady' || !trackers.some(({ doing }) => doing === 'retrying')) return settled.pv.circuit;
  const { spec, state } = plant;
  return pvCircuit({
    runs: spec.runs,
    trackers: spec.trackers,
    sky: spec.sky,
    isolators: state.isolators,
    parted: state.parted,
    loads: trackers.map((each) =>
      each.doing === 'retrying' || each.doing === 'running'
        ? { at: 'volts', volts: each.tryV }
        : { at: 'rest' },
    ),
  });
}

function acCircuitOf(plant: Plant, moment: Moment): AcCircuit {
  const { input } = settle(plant).ac;
  if (moment === 'steady') return settle(plant).ac.circuit;
  const { loads } = plant.spec.ac;
  const hardest = loads.reduce(
    (best, load, k) => (input.loadsOn[k] && load.startTimes > (loads[best]?.startTimes ?? 1) ? k : best),
    -1,
  );
  return hardest < 0 ? settle(plant).ac.circuit : acCircuit({ ...input, starting: hardest });
}

interface Ends {
  circuit: Spot['circuit'];
  red: string;
  black: string;
}

/** Both tips in one circuit; ground belongs to whichever the other is in. Undefined: nothing joins them. */
function endsOf(plant: Plant, red: string, black: string, subject: Subject): Ends | undefined {
  const own = ownTrackerOf(plant, subject);
  const [a, b] = [spotOf(red, subject, own), spotOf(black, subject, own)];
  if (a === undefined || b === undefined) return undefined;
  if (a === 'ground' && b === 'ground') return undefined;
  const circuit = a === 'ground' ? (b as Spot).circuit : a.circuit;
  if (b !== 'ground' && b.circuit !== circuit) return undefined;
  return { circuit, red: a === 'ground' ? 'ground' : a.node, black: b === 'ground' ? 'ground' : b.node };
}

/** Volts between two places with the meter's own resistance across them; 0 where no circuit joins them. */
export function dcVoltsBetween(plant: Plant, ends: Ends, meterOhm: number, moment: Moment): number {
  if (ends.circuit === 'ac') return 0;
  const circuit = dcCircuitOf(plant, ends.circuit, moment);
  const [a, b] = [circuit.nodeOf.get(ends.red), circuit.nodeOf.get(ends.black)];
  if (a === undefined || b === undefined || a === b) return 0;
  const point = solveCircuit(withPart(circuit, { kind: 'resistor', a, b, ohms: meterOhm }));
  return point.ok ? point.volts[a]! - point.volts[b]! : 0;
}

export function acVoltsBetween(plant: Plant, ends: Ends, meterOhm: number, moment: Moment): number {
  if (ends.circuit !== 'ac') return 0;
  const circuit = acCircuitOf(plant, moment);
  const [a, b] = [circuit.nodeOf.get(ends.red), circuit.nodeOf.get(ends.black)];
  if (a === undefined || b === undefined || a === b) return 0;
  const point = solveAc({
    ...circuit,
    parts: [...circuit.parts, { kind: 'impedance', a, b, ohms: { re: meterOhm, im: 0 } }],
  });
  return point.ok ? sizeOf(minus(point.volts[a]!, point.volts[b]!)) : 0;
}

/** What an ohmmeter finds, or how many volts stand in its way. */
function ohmsBetween(plant: Plant, ends: Ends): number | 'live' {
  const volts =
    ends.circuit === 'ac'
      ? acVoltsBetween(plant, ends, 10e6, 'steady')
      : dcVoltsBetween(plant, ends, 10e6, 'steady');
  if (Math.abs(volts) > liveV) return 'live';
  if (ends.circuit === 'ac') return Number.POSITIVE_INFINITY;
  const circuit = dcCircuitOf(plant, ends.circuit, 'steady');
  const [a, b] = [circuit.nodeOf.get(ends.red), circuit.nodeOf.get(ends.black)];
  if (a === undefined || b === undefined) return Number.POSITIVE_INFINITY;
  const amps = ohmmeter.volts / ohmmeter.ohms;
  const driven = withPart(withPart(circuit, { kind: 'amps', a, b, amps }), {
    kind: 'resistor',
    a,
    b,
    ohms: ohmmeter.ohms,
  });
  const point = solveCircuit(driven);
  if (!point.ok) return Number.POSITIVE_INFINITY;
  const across = point.volts[a]! - point.volts[b]!;
  const through = amps - across / ohmmeter.ohms;
  return through <= 0 ? Number.POSITIVE_INFINITY : across / through;
}

/** Signed amperes of direct current, or the size of alternating current, in a conductor. */
export function ampsIn(
  plant: Plant,
  anchor: string,
  subject: Subject,
  moment: Moment,
  kind: 'dc' | 'ac',
): number {
  const conductor = conductorOf(anchor, subject);
  if (!conductor) return 0;
  if (conductor.circuit === 'ac') return kind === 'ac' ? sizeOf(phasorIn(plant, conductor.part, moment)) : 0;
  if (kind === 'ac') return 0;
  const circuit = dcCircuitOf(plant, conductor.circuit, moment);
  const id = circuit.named.get(conductor.part);
  const point = solveCircuit(circuit);
  return point.ok && id !== undefined ? conductor.sign * point.amps(id) : 0;
}

function phasorIn(plant: Plant, part: string, moment: Moment): Phasor {
  const circuit = acCircuitOf(plant, moment);
  const id = circuit.named.get(part);
  const point = solveAc(circuit);
  return point.ok && id !== undefined ? point.amps(id) : { re: 0, im: 0 };
}

function clampAmps(
  plant: Plant,
  probe: { clamp: string; with?: string },
  subject: Subject,
  moment: Moment,
  kind: 'dc' | 'ac',
) {
  if (probe.with === undefined) return ampsIn(plant, probe.clamp, subject, moment, kind);
  const parts = [probe.clamp, probe.with].map((anchor) => conductorOf(anchor, subject)?.part);
  if (kind === 'dc' || parts.some((part) => part === undefined))
    return (
      ampsIn(plant, probe.clamp, subject, moment, kind) + ampsIn(plant, probe.with, subject, moment, kind)
    );
  const [x, y] = parts.map((part) => phasorIn(plant, part!, moment));
  return Math.hypot(x!.re + y!.re, x!.im + y!.im);
}

/** Insulation of the string to ground at the tester's volts: what leaks, in parallel. */
function insulationBetween(plant: Plant, ends: Ends, subject: Subject): number | 'live' {
  if (ends.circuit !== 'pv') return ohmsBetween(plant, ends);
  const run = plant.spec.runs[subject.run]!;
  // A lit string is live; the tester measures against the string's own volts, so a dark one is asked for.
  return plant.state.isolators[subject.run] ? 'live' : insulationOhm(run, plant.spec.sky);
}

/** Takes one reading. The plant is not changed by it. */
export function measure(
  plant: Plant,
  meter: MeterSpec,
  probe: Probe,
  mode: MeterFunction,
  subject: Subject,
  random: Random,
  moment: Moment = 'steady',
): Taken {
  if ('clamp' in probe) {
    if (mode === 'dcClamp' && !meter.hasDcClamp) return { shown: { kind: 'noFunction' } };
    if (mode !== 'dcClamp' && mode !== 'acClamp') return { shown: { kind: 'noFunction' } };
    const kind = mode === 'dcClamp' ? 'dc' : 'ac';
    const amps = clampAmps(plant, probe, subject, moment, kind) + (kind === 'dc' ? meter.clampZeroA : 0);
    return { shown: show(meter, mode, amps, random) };
  }
  const ends = endsOf(plant, probe.red, probe.black, subject);
  switch (mode) {
    case 'dcVolts':
      return {
        shown: show(meter, 'dcVolts', ends ? dcVoltsBetween(plant, ends, meter.inputOhm, moment) : 0, random),
      };
    case 'acVolts':
      return {
        shown: show(meter, 'acVolts', ends ? acVoltsBetween(plant, ends, meter.inputOhm, moment) : 0, random),
      };
    case 'lowZVolts': {
      if (meter.lowZOhm === undefined) return { shown: { kind: 'noFunction' } };
      if (!ends) return { shown: show(meter, 'dcVolts', 0, random) };
      return ends.circuit === 'ac'
        ? { shown: show(meter, 'acVolts', acVoltsBetween(plant, ends, meter.lowZOhm, moment), random) }
        : { shown: show(meter, 'dcVolts', dcVoltsBetween(plant, ends, meter.lowZOhm, moment), random) };
    }
    case 'ohms':
    case 'continuity': {
      const ohms = ends ? ohmsBetween(plant, ends) : Number.POSITIVE_INFINITY;
      return ohms === 'live'
        ? { shown: { kind: 'overRange' }, harm: 'ohms-on-live' }
        : { shown: show(meter, 'ohms', ohms, random) };
    }
    case 'insulation': {
      const ohms = ends ? insulationBetween(plant, ends, subject) : Number.POSITIVE_INFINITY;
      return ohms === 'live'
        ? { shown: { kind: 'overRange' }, harm: 'insulation-on-live' }
        : { shown: { kind: 'value', value: Math.min(ohms, 4e9), resolution: 1e4 } };
    }
    case 'frequency': {
      const live = ends && acVoltsBetween(plant, ends, meter.inputOhm, moment) > 5;
      const { source, ac } = plant.spec;
      const hz = settle(plant).passed ? source.hz : ac.hz;
      return {
        shown: live
          ? { kind: 'value', value: hz, resolution: 0.01 }
          : { kind: 'value', value: 0, resolution: 0.01 },
      };
    }
    default:
      return { shown: { kind: 'noFunction' } };
  }
}
