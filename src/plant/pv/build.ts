import { type Builder, type Circuit, newCircuit } from '../circuit/netlist.ts';
import { translated } from './de-soto.ts';
import { type DiodeParams, inSeries } from './single-diode.ts';
import {
  type Contact,
  cellTemp,
  type ModuleRun,
  moduleCount,
  type PvRun,
  type Sky,
  type TrackerSpec,
} from './spec.ts';

/** What the parts of a PV circuit are named by: `place(run, 'P1+')` is a node, clamps carry the same names. */
export const place = (run: number, anchor: string): string => `run${run}.${anchor}`;
export const terminal = (tracker: number, pole: '+' | '-'): string => `tracker${tracker}.${pole}`;

/** Schottky bypass diode: about 0.4 V at 10 A. From memory. */
export const bypassDiode = { satA: 1e-6, slopeV: 0.027 } as const;
/** The power stage's own diodes, which a reversed string drives: about 0.9 V at 10 A. From memory. */
const inputDiode = { satA: 1e-9, slopeV: 0.039 } as const;
/** Volts of a module held off by its shutdown device, and what that source can drive through. Common: 1 V or less. */
const heldModule = { volts: 0.8, ohms: 400 } as const;
/** Across an open contact [Ω]: clean plastic in a closed box. */
export const openOhm = 5e9;
/** A dry module's own insulation to its frame [Ω]: some hundred times the least of IEC 61215-2 MQT 03 for 2 m². From memory. */
const moduleInsulationOhm = 2e9;
/** A sound contact, plug pair or switch pole [Ω]. */
export const soundContactOhm = 0.004;

/** How each tracker loads its terminals: at rest, or held at these volts. */
export type TrackerLoad = { at: 'rest' } | { at: 'volts'; volts: number };

export interface PvCircuitInput {
  runs: readonly PvRun[];
  trackers: readonly TrackerSpec[];
  sky: Sky;
  /** Handles of the isolators, by run; plugs at the array parted, by run. */
  isolators: readonly boolean[];
  parted: readonly boolean[];
  loads: readonly TrackerLoad[];
}

export const contact = (ohms: Contact): number => (Number.isFinite(ohms) ? Math.max(ohms, 1e-6) : openOhm);

/** Modules cut where a leak leaves the row, so that each piece is one reduced part. */
function pieces(modules: readonly ModuleRun[], cuts: readonly number[]): { run: ModuleRun; from: number }[] {
  const list: { run: ModuleRun; from: number }[] = [];
  let from = 0;
  for (const run of modules) {
    const end = from + run.count;
    const inner = [...new Set(cuts.filter((cut) => cut > from && cut < end))].sort((x, y) => x - y);
    let start = from;
    for (const cut of [...inner, end]) {
      if (cut > start) list.push({ run: { ...run, count: cut - start }, from: start });
      start = cut;
    }
    from = end;
  }
  return list;
}

const third = (module: DiodeParams): DiodeParams => inSeries(module, 1 / 3);

function addModules(b: Builder, plus: string, minus: string, run: ModuleRun, input: PvRun, sky: Sky): void {
  const [a, z] = [b.node(plus), b.node(minus)];
  if (run.held) {
    const inner = b.node(`${plus}.held`);
    b.add({ kind: 'volts', a: inner, b: z, volts: sky.lightWm2 > 20 ? heldModule.volts * run.count : 0 });
    b.add({ kind: 'resistor', a: inner, b: a, ohms: heldModule.ohms * run.count });
    return;
  }
  const sound = 3 - run.bridgedParts;
  if (sound === 0) {
    b.add({ kind: 'resistor', a, b: z, ohms: soundContactOhm * run.count });
    return;
  }
  const module = translated(input.module, sky.lightWm2 * run.lightShare, cellTemp(sky));
  b.add({ kind: 'cells', a, b: z, each: third(module), count: sound * run.count, bypass: bypassDiode });
}

/** The array side of one run: branches into the combiner, two conductors down to the isolator. */
function addArray(b: Builder, index: number, input: PvCircuitInput): void {
  const { sky, runs, parted } = input;
  const run = runs[index]!;
  const name = (anchor: string) => place(index, anchor);
  const leaks = run.leaks.filter((leak) => sky.wet || !leak.wetOnly);
  const modules = moduleCount(run);
  run.branches.forEach((branch, k) => {
    const at = (position: number) => name(`b${k}.${position}`);
    const cuts = k === 0 ? leaks.map((leak) => leak.at) : [];
    const list = pieces(branch.modules, cuts);
    const length = list.reduce((sum, piece) => sum + piece.run.count, 0);
    for (const { run: each, from } of list) addModules(b, at(from), at(from + each.count), each, run, sky);
    const [top, end] = branch.reversed ? [at(length), at(0)] : [at(0), at(length)];
    const open = parted[index] ? openOhm : undefined;
    b.resistor(top, name(`b${k}.fuse`), contact(branch.joint));
    b.resistor(name(`b${k}.fuse`), name('C+'), open ?? contact(branch.fuse), name(`PS${k}+`));
    b.resistor(end, name('C-'), open ?? soundContactOhm);
    if (k === 0) for (const leak of leaks) b.resistor(at(Math.min(leak.at, length)), 'ground', leak.ohms);
    b.resistor(at(0), 'ground', (2 * moduleInsulationOhm) / modules);
    b.resistor(at(length), 'ground', (2 * moduleInsulationOhm) / modules);
  });
  b.resistor(name('C+'), name('M+'), run.leadOhm / 2, name('array'));
  b.resistor(name('C-'), name('M-'), run.leadOhm / 2);
  if (Number.isFinite(run.short)) b.resistor(name('M+'), name('M-'), run.short);
  b.resistor(name('M+'), name('P1+'), run.leadOhm / 2, name('P1+'));
  b.resistor(name('M-'), name('P1-'), run.leadOhm / 2);
}

/** Isolator and unit side of one run. */
function addUnitSide(b: Builder, index: number, input: PvCircuitInput): void {
  const run = input.runs[index]!;
  const name = (anchor: string) => place(index, anchor);
  const closed = input.isolators[index];
  const [farPlus, farMinus] = run.crossedAt === 'isolator' ? ['P2-', 'P2+'] : ['P2+', 'P2-'];
  b.resistor(name('P1+'), name(farPlus), closed ? contact(run.poles.plus) : openOhm);
  b.resistor(name('P1-'), name(farMinus), closed ? contact(run.poles.minus) : openOhm);
  const crossed = run.crossedAt === 'unit';
  const [plusTo, minusTo] = crossed ? [run.minusTo, run.plusTo] : [run.plusTo, run.minusTo];
  b.resistor(name('P2+'), terminal(plusTo.tracker, plusTo.pole), soundContactOhm, name('P2+'));
  b.resistor(name('P2-'), terminal(minusTo.tracker, minusTo.pole), soundContactOhm);
}

function addTracker(b: Builder, index: number, spec: TrackerSpec, load: TrackerLoad): void {
  const [plus, minus] = [terminal(index, '+'), terminal(index, '-')];
  b.resistor(plus, minus, spec.inputOhm);
  b.resistor(plus, 'ground', spec.groundOhm);
  b.resistor(minus, 'ground', spec.groundOhm);
  b.add({ kind: 'diode', a: b.node(minus), b: b.node(plus), ...inputDiode }, `tracker${index}.diode`);
  if (load.at === 'volts')
    b.add({ kind: 'volts', a: b.node(plus), b: b.node(minus), volts: load.volts }, `tracker${index}`);
}

/** Every string, isolator and tracker input of the plant as one circuit. */
export function pvCircuit(input: PvCircuitInput): Circuit {
  const b = newCircuit();
  input.runs.forEach((_, index) => {
    addArray(b, index, input);
    addUnitSide(b, index, input);
  });
  input.trackers.forEach((spec, index) => {
    addTracker(b, index, spec, input.loads[index] ?? { at: 'rest' });
  });
  return b.done();
}

/** Resistance of everything between the array and ground that an insulation test finds, pole capacitance apart. */
export function insulationOhm(run: PvRun, sky: Sky): number {
  const own = run.branches.length * (moduleCount(run) / moduleInsulationOhm);
  const leaks = run.leaks.reduce((sum, leak) => (leak.wetOnly && !sky.wet ? sum : sum + 1 / leak.ohms), own);
  return 1 / leaks;
}
