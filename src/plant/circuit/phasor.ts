import { factor, solveFactored } from '../numeric/lu.ts';

/** A complex number: rms volts, amperes or ohms of one frequency. */
export interface Phasor {
  re: number;
  im: number;
}

export const phasor = (size: number, degrees: number): Phasor => ({
  re: size * Math.cos((degrees * Math.PI) / 180),
  im: size * Math.sin((degrees * Math.PI) / 180),
});
export const sizeOf = ({ re, im }: Phasor): number => Math.hypot(re, im);
export const minus = (x: Phasor, y: Phasor): Phasor => ({ re: x.re - y.re, im: x.im - y.im });
export const plus = (x: Phasor, y: Phasor): Phasor => ({ re: x.re + y.re, im: x.im + y.im });
/** Mean power [W] of a current in a voltage. */
export const wattsOf = (volts: Phasor, amps: Phasor): number => volts.re * amps.re + volts.im * amps.im;

/** Impedances and sources between nodes; node 0 is ground. An impedance is never 0. */
export type AcPart =
  | { kind: 'impedance'; a: number; b: number; ohms: Phasor }
  | { kind: 'source'; a: number; b: number; volts: Phasor; inner: Phasor };

export interface AcCircuit {
  readonly nodes: readonly string[];
  readonly parts: readonly AcPart[];
  readonly named: ReadonlyMap<string, number>;
  readonly nodeOf: ReadonlyMap<string, number>;
}

export interface AcBuilder {
  node(name: string): number;
  impedance(a: string, b: string, re: number, im?: number, name?: string): void;
  /** A source with its inner impedance: `a` stands `volts` above `b` when nothing is drawn. */
  source(a: string, b: string, volts: Phasor, inner: Phasor, name?: string): void;
  done(): AcCircuit;
}

/** A welded contact, a lug [Ω]: the least that a conductor has. */
const leastOhms = 1e-6;

export function newAcCircuit(): AcBuilder {
  const nodes = ['ground'];
  const nodeOf = new Map<string, number>([['ground', 0]]);
  const parts: AcPart[] = [];
  const named = new Map<string, number>();
  const node = (name: string): number => {
    const known = nodeOf.get(name);
    if (known !== undefined) return known;
    nodeOf.set(name, nodes.length);
    return nodes.push(name) - 1;
  };
  const add = (part: AcPart, name: string | undefined): void => {
    const id = parts.push(part) - 1;
    if (name !== undefined) named.set(name, id);
  };
  return {
    node,
    impedance: (a, b, re, im = 0, name) =>
      add(
        {
          kind: 'impedance',
          a: node(a),
          b: node(b),
          ohms: Math.hypot(re, im) < leastOhms ? { re: leastOhms, im: 0 } : { re, im },
        },
        name,
      ),
    source: (a, b, volts, inner, name) => add({ kind: 'source', a: node(a), b: node(b), volts, inner }, name),
    done: () => ({ nodes, parts, named, nodeOf }),
  };
}

export type AcPoint =
  | { ok: true; volts: readonly Phasor[]; amps(part: number): Phasor }
  | { ok: false; reason: 'resonance' };

/** Every node is leaked to ground by this [S], which gives islands a reference and moves nothing a meter can see. */
const leakS = 1e-12;

const inverse = ({ re, im }: Phasor): Phasor => {
  const square = re * re + im * im;
  return { re: re / square, im: -im / square };
};
const times = (x: Phasor, y: Phasor): Phasor => ({
  re: x.re * y.re - x.im * y.im,
  im: x.re * y.im + x.im * y.re,
});

/**
 * Nodal analysis of one frequency. The complex equations are solved as real ones of twice the size,
 * [G −B; B G]·[re; im], so that the same elimination serves both.
 */
export function solveAc({ nodes, parts }: AcCircuit): AcPoint {
  const count = nodes.length - 1;
  const size = 2 * count;
  const a = new Float64Array(size * size);
  const b = new Float64Array(size);
  const put = (i: number, j: number, y: Phasor): void => {
    if (i < 0 || j < 0) return;
    const add = (row: number, column: number, value: number): void => {
      a[row * size + column] = a[row * size + column]! + value;
    };
    add(i, j, y.re);
    add(i, j + count, -y.im);
    add(i + count, j, y.im);
    add(i + count, j + count, y.re);
  };
  for (let i = 0; i < count; i++) put(i, i, { re: leakS, im: 0 });
  for (const part of parts) {
    const [i, j] = [part.a - 1, part.b - 1];
    const y = inverse(part.kind === 'source' ? part.inner : part.ohms);
    const negative = { re: -y.re, im: -y.im };
    put(i, i, y);
    put(j, j, y);
    put(i, j, negative);
    put(j, i, negative);
    if (part.kind !== 'source') continue;
    const driven = times(y, part.volts);
    for (const [node, sign] of [
      [i, 1],
      [j, -1],
    ] as const) {
      if (node < 0) continue;
      b[node] = b[node]! + sign * driven.re;
      b[node + count] = b[node + count]! + sign * driven.im;
    }
  }
  const pivots = new Int32Array(size);
  if (!factor(a, size, pivots)) return { ok: false, reason: 'resonance' };
  solveFactored(a, size, pivots, b);
  const volts: Phasor[] = [{ re: 0, im: 0 }];
  for (let i = 0; i < count; i++) volts.push({ re: b[i]!, im: b[i + count]! });
  return {
    ok: true,
    volts,
    amps: (id) => {
      const part = parts[id]!;
      const across = minus(volts[part.a]!, volts[part.b]!);
      // A source drives its current out of `a`: counted from a through the part to b, like any other.
      return part.kind === 'source'
        ? times(inverse(part.inner), minus(across, part.volts))
        : times(inverse(part.ohms), across);
    },
  };
}
