import type { DiodeParams } from '../pv/single-diode.ts';

/** Node 0 is ground: the grounding conductor, the frames, the enclosure. */
export type Node = number;

/**
 * The parts that direct-current circuits are made of. Currents count from the first node through the part to the
 * second, volts from first to second. Resistances are above 0: a sound contact has some.
 */
export type Part =
  | { kind: 'resistor'; a: Node; b: Node; ohms: number }
  /** Ideal source: `a` stands `volts` above `b`. */
  | { kind: 'volts'; a: Node; b: Node; volts: number }
  /** Drives `amps` out of `a` and into `b` outside itself: a source whose plus is `a`. */
  | { kind: 'amps'; a: Node; b: Node; amps: number }
  /** I = satA·(exp(V/slopeV) − 1). */
  | { kind: 'diode'; a: Node; b: Node; satA: number; slopeV: number }
  /** Takes `watts` at any volts above `foldV`; below it goes on as the resistance it had there. Negative watts give. */
  | { kind: 'power'; a: Node; b: Node; watts: number; foldV: number }
  /** A run of equal solar cells, plus at `a`, each of its `count` parts bridged by a bypass diode where there is one. */
  | {
      kind: 'cells';
      a: Node;
      b: Node;
      each: DiodeParams;
      count: number;
      bypass?: { satA: number; slopeV: number };
    };

export type PartId = number;

export interface Circuit {
  /** Names of nodes; the index is the node. */
  readonly nodes: readonly string[];
  readonly parts: readonly Part[];
  /** Named parts: clamps go round these. */
  readonly named: ReadonlyMap<string, PartId>;
  readonly nodeOf: ReadonlyMap<string, Node>;
}

/** Builds a circuit by node names; `ground` is node 0. */
export interface Builder {
  node(name: string): Node;
  /** Adds a part; a name makes its current readable. */
  add(part: Part, name?: string): PartId;
  resistor(a: string, b: string, ohms: number, name?: string): void;
  done(): Circuit;
}

/** Nothing we clamp round or solve across is smaller [Ω]: a weld, a crimp, a handspan of busbar. */
const leastOhms = 1e-6;

export function newCircuit(): Builder {
  const nodes = ['ground'];
  const nodeOf = new Map<string, Node>([['ground', 0]]);
  const parts: Part[] = [];
  const named = new Map<string, PartId>();
  const node = (name: string): Node => {
    const known = nodeOf.get(name);
    if (known !== undefined) return known;
    nodeOf.set(name, nodes.length);
    return nodes.push(name) - 1;
  };
  const add = (part: Part, name?: string): PartId => {
    const id = parts.push(part) - 1;
    if (name !== undefined) named.set(name, id);
    return id;
  };
  return {
    node,
    add,
    resistor: (a, b, ohms, name) => {
      add({ kind: 'resistor', a: node(a), b: node(b), ohms: Math.max(ohms, leastOhms) }, name);
    },
    done: () => ({ nodes, parts, named, nodeOf }),
  };
}

/** The same circuit with one more part between two of its nodes: a meter, a test load. */
export const withPart = (circuit: Circuit, part: Part): Circuit => ({
  ...circuit,
  parts: [...circuit.parts, part],
});
