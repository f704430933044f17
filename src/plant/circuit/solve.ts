import { factor, solveFactored } from '../numeric/lu.ts';
import { type Island, islandsOf } from './islands.ts';
import { nextVolts, tangentOf } from './law.ts';
import type { Circuit, Node, Part, PartId } from './netlist.ts';

/** Why there is no operating point. */
export type NoPoint =
  /** The equations contradict themselves: two ideal sources against each other. */
  | 'contradiction'
  /** Newton, stepped sources and added conductance all failed. */
  | 'no-convergence';

export type OperatingPoint =
  | {
      ok: true;
      /** By node; ground is 0. Nodes of a floating island count from its first node. */
      volts: Float64Array;
      /** Current from the first node through the part to the second. */
      amps(part: PartId): number;
      /** Nodes that nothing ties to ground. */
      floating: ReadonlySet<Node>;
      /** Constant-power loads that found no volts to run on and fell below their fold: past the source's limit. */
      starved: readonly PartId[];
    }
  | { ok: false; reason: NoPoint };

const maxRounds = 150;
/** Newton stops when no voltage still moves by more than this share, plus this much [V]. */
const near = { share: 1e-9, volts: 1e-8 };
/**
 * From this round on it stops at this much: a string that floats on gigohms behind milliohm contacts has no more
 * digits than this in double precision, and would tremble for ever.
 */
const tremble = { afterRounds: 30, times: 1000 } as const;
/** Ties a floating island's first node to ground [S]; no current flows in it, so its size does not matter. */
const tieS = 1e-3;

interface Work {
  island: Island;
  /** Row of each node, -1 for ground. */
  row: Int32Array;
  size: number;
  linear: Float64Array;
  sources: Float64Array;
  a: Float64Array;
  b: Float64Array;
  pivots: Int32Array;
  curved: { part: Extract<Part, { kind: 'diode' | 'power' | 'cells' }>; id: PartId; at: number }[];
  sourceRow: Map<PartId, number>;
}

function stamp(a: Float64Array, size: number, i: number, j: number, conductance: number): void {
  if (i >= 0) a[i * size + i] = a[i * size + i]! + conductance;
  if (j >= 0) a[j * size + j] = a[j * size + j]! + conductance;
  if (i >= 0 && j >= 0) {
    a[i * size + j] = a[i * size + j]! - conductance;
    a[j * size + i] = a[j * size + i]! - conductance;
  }
}

function push(b: Float64Array, i: number, j: number, amps: number): void {
  if (i >= 0) b[i] = b[i]! - amps;
  if (j >= 0) b[j] = b[j]! + amps;
}

/** Modified nodal analysis (Ho, Ruehli & Brennan, IEEE Trans. CAS 22, 1975): node volts, and source currents as unknowns. */
function prepare(circuit: Circuit, island: Island, row: Int32Array): Work {
  island.nodes.forEach((node, i) => {
    row[node] = i;
  });
  const sourceRow = new Map<PartId, number>();
  let size = island.nodes.length;
  for (const id of island.parts) if (circuit.parts[id]!.kind === 'volts') sourceRow.set(id, size++);
  const linear = new Float64Array(size * size);
  const sources = new Float64Array(size);
  const curved: Work['curved'] = [];
  if (island.floating) linear[0] = tieS;
  for (const id of island.parts) {
    const part = circuit.parts[id]!;
    const [i, j] = [row[part.a]!, row[part.b]!];
    if (part.kind === 'resistor') stamp(linear, size, i, j, 1 / part.ohms);
    else if (part.kind === 'amps') push(sources, i, j, -part.amps);
    else if (part.kind === 'volts') {
      const k = sourceRow.get(id)!;
      for (const [node, sign] of [
        [i, 1],
        [j, -1],
      ] as const) {
        if (node < 0) continue;
        linear[node * size + k] = linear[node * size + k]! + sign;
        linear[k * size + node] = linear[k * size + node]! + sign;
      }
      sources[k] = part.volts;
    } else curved.push({ part, id, at: 0 });
  }
  const [a, b] = [new Float64Array(size * size), new Float64Array(size)];
  return { island, row, size, linear, sources, a, b, pivots: new Int32Array(size), curved, sourceRow };
}

const across = (work: Work, x: Float64Array, part: Part): number => {
  const [i, j] = [work.row[part.a]!, work.row[part.b]!];
  return (i < 0 ? 0 : x[i]!) - (j < 0 ? 0 : x[j]!);
};

type Ended = 'solved' | NoPoint;

/** One Newton run from where the tangents stand; `x` gets the answer. `share` scales the sources, `extraS` bridges every curved part. */
function newton(work: Work, x: Float64Array, share: number, extraS: number): Ended {
  const { a, b, size, row } = work;
  for (let round = 0; round < maxRounds; round++) {
    a.set(work.linear);
    for (let i = 0; i < size; i++) b[i] = work.sources[i]! * share;
    for (const { part, at } of work.curved) {
      const { amps, slope } = tangentOf(part, at);
      const [i, j] = [row[part.a]!, row[part.b]!];
      stamp(a, size, i, j, slope + extraS);
      push(b, i, j, amps - slope * at);
    }
    if (!factor(a, size, work.pivots)) return work.curved.length === 0 ? 'contradiction' : 'no-convergence';
    solveFactored(a, size, work.pivots, b);
    x.set(b);
    let moved = false;
    const slack = round < tremble.afterRounds ? 1 : tremble.times;
    for (const curve of work.curved) {
      const wanted = across(work, x, curve.part);
      if (!Number.isFinite(wanted)) return 'no-convergence';
      const next = nextVolts(curve.part, wanted, curve.at);
      const still = slack * (near.volts + near.share * Math.abs(next));
      if (Math.abs(next - wanted) > still || Math.abs(next - curve.at) > still) moved = true;
      curve.at = next;
    }
    if (!moved) return 'solved';
  }
  return 'no-convergence';
}

/** Where the first tangents stand: cells near open circuit, loads well above their fold. */
function begin(work: Work): void {
  for (const curve of work.curved) {
    if (curve.part.kind === 'power') curve.at = curve.part.foldV * 4;
    else if (curve.part.kind === 'cells')
      curve.at =
        curve.part.each.photoA > 0
          ? 0.9 *
            curve.part.count *
            curve.part.each.slopeV *
            Math.log1p(curve.part.each.photoA / curve.part.each.satA)
          : 0;
    else curve.at = 0;
  }
}

function solveIsland(work: Work, x: Float64Array): Ended {
  begin(work);
  const straight = newton(work, x, 1, 0);
  if (straight !== 'no-convergence') return straight;
  // Bridge the curved parts with less and less conductance, each answer the start of the next.
  begin(work);
  let ended: Ended = 'solved';
  for (let extra = 1; extra > 1e-13 && ended === 'solved'; extra /= 10) ended = newton(work, x, 1, extra);
  if (ended === 'solved') ended = newton(work, x, 1, 0);
  if (ended === 'solved') return ended;
  // Raise the sources from nothing.
  for (const curve of work.curved) curve.at = 0;
  ended = 'solved';
  for (let step = 1; step <= 20 && ended === 'solved'; step++) ended = newton(work, x, step / 20, 0);
  return ended;
}

/** The operating point: every node's volts and every part's current, or a typed reason. Never NaN, never endless. */
export function solveCircuit(circuit: Circuit): OperatingPoint {
  const volts = new Float64Array(circuit.nodes.length);
  const row = new Int32Array(circuit.nodes.length).fill(-1);
  const sourceAmps = new Map<PartId, number>();
  const floating = new Set<Node>();
  const starved: PartId[] = [];
  for (const island of islandsOf(circuit)) {
    if (island.parts.length === 0) {
      for (const node of island.nodes) floating.add(node);
      continue;
    }
    const work = prepare(circuit, island, row);
    const x = new Float64Array(work.size);
    const ended = solveIsland(work, x);
    if (ended !== 'solved') return { ok: false, reason: ended };
    island.nodes.forEach((node, i) => {
      volts[node] = x[i]!;
      if (island.floating) floating.add(node);
    });
    for (const [id, k] of work.sourceRow) sourceAmps.set(id, x[k]!);
    for (const { part, id } of work.curved)
      if (part.kind === 'power' && part.watts > 0 && volts[part.a]! - volts[part.b]! < part.foldV)
        starved.push(id);
  }
  const amps = (id: PartId): number => {
    const part = circuit.parts[id]!;
    const standing = volts[part.a]! - volts[part.b]!;
    if (part.kind === 'resistor') return standing / part.ohms;
    if (part.kind === 'amps') return -part.amps;
    if (part.kind === 'volts') return sourceAmps.get(id) ?? 0;
    return tangentOf(part, standing).amps;
  };
  return { ok: true, volts, amps, floating, starved };
}
