import type { Circuit, Part } from '../../src/plant/circuit/netlist.ts';
import type { AcCircuit } from '../../src/plant/circuit/phasor.ts';
import { pointAtVolts } from '../../src/plant/pv/single-diode.ts';

/** ngspice's thermal volts at its 27 °C: emission coefficients are set so that the slope is the one of the part. */
const spiceVt = (1.380649e-23 * 300.15) / 1.602176634e-19;

// vntol: strings float on gigohms, where more is below what double precision leaves of a volt.
const options = '.options reltol=1e-6 vntol=1e-4 itl1=2000';

/** One junction, with the model card it needs. */
function diode(id: string, a: string, b: string, satA: number, slopeV: number): string[] {
  return [`D${id} ${a} ${b} M${id}`, `.model M${id} D(IS=${satA} N=${slopeV / spiceVt})`];
}

/** A part as ngspice's own devices; a run of cells is written out part by part, as it is built. */
function cards(part: Part, id: number, prefix: string): string[] {
  const [a, b] = [part.a, part.b].map((node) => (node === 0 ? '0' : `${prefix}n${node}`)) as [string, string];
  const name = `${prefix}${id}`;
  switch (part.kind) {
    case 'resistor':
      return [`R${name} ${a} ${b} ${part.ohms}`];
    case 'volts':
      return [`V${name} ${a} ${b} DC ${part.volts}`];
    case 'amps':
      return [`I${name} ${b} ${a} DC ${part.amps}`];
    case 'diode':
      return diode(name, a, b, part.satA, part.slopeV);
    case 'power':
      return [
        `B${name} ${a} ${b} I=V(${a},${b}) > ${part.foldV} ? ${part.watts}/V(${a},${b}) : V(${a},${b})*${part.watts / part.foldV ** 2}`,
      ];
    case 'cells': {
      const lines: string[] = [];
      for (let k = 0; k < part.count; k++) {
        const top = k === 0 ? a : `${name}c${k}`;
        const end = k === part.count - 1 ? b : `${name}c${k + 1}`;
        const inner = `${name}d${k}`;
        lines.push(
          `I${name}_${k} ${end} ${inner} DC ${part.each.photoA}`,
          ...diode(`${name}_${k}`, inner, end, part.each.satA, part.each.slopeV),
          `RP${name}_${k} ${inner} ${end} ${part.each.shuntOhm}`,
          `RS${name}_${k} ${inner} ${top} ${part.each.seriesOhm}`,
        );
        if (part.bypass) lines.push(...diode(`${name}b${k}`, end, top, part.bypass.satA, part.bypass.slopeV));
      }
      return lines;
    }
  }
}

/** Where ngspice begins to look: our volts, and straight lines between them inside a run of cells. */
function nodesets(circuit: Circuit, volts: ArrayLike<number>): string[] {
  const list = circuit.nodes.slice(1).map((_, i) => `.nodeset v(n${i + 1})=${volts[i + 1]}`);
  circuit.parts.forEach((part, id) => {
    if (part.kind !== 'cells') return;
    const at = (k: number) => volts[part.a]! + ((volts[part.b]! - volts[part.a]!) * k) / part.count;
    const { amps } = pointAtVolts(part.each, at(0) - at(1));
    for (let k = 0; k < part.count; k++) {
      if (k > 0) list.push(`.nodeset v(${id}c${k})=${at(k)}`);
      list.push(`.nodeset v(${id}d${k})=${at(k) + amps * part.each.seriesOhm}`);
    }
  });
  return list;
}

/**
 * The netlist of one circuit. Named parts get an ammeter, a source of 0 V, in series; a floating island a tie at one
 * node. Start volts spare ngspice its stepping, whose notes count as errors; where it ends is its own affair.
 */
export function dcDeck(circuit: Circuit, ties: readonly number[] = [], volts?: ArrayLike<number>): string {
  const names = new Map([...circuit.named].map(([name, id]) => [id, name]));
  const lines = circuit.parts.flatMap((part, id) => {
    if (!names.has(id)) return cards(part, id, '');
    const metered = { ...part, a: circuit.nodes.length + id };
    const at = part.a === 0 ? '0' : `n${part.a}`;
    return [`VM${id} ${at} n${metered.a} DC 0`, ...cards(metered, id, '')];
  });
  return [
    'plant',
    ...lines,
    ...ties.map((node) => `RT${node} n${node} 0 1k`),
    ...(volts ? nodesets(circuit, volts) : []),
    options,
    '.op',
    '.end',
  ].join('\n');
}

/** An AC circuit as one frequency point: impedances as R with L or C, named ones with an ammeter of 0 V. */
export function acDeck(circuit: AcCircuit, hz: number): string {
  const w = 2 * Math.PI * hz;
  const named = new Set(circuit.named.values());
  const at = (node: number) => (node === 0 ? '0' : `n${node}`);
  const lines = circuit.parts.flatMap((part, id) => {
    const { re, im } = part.kind === 'source' ? part.inner : part.ohms;
    const list: string[] = [];
    let from = at(part.a);
    if (named.has(id)) {
      list.push(`VM${id} ${from} m${id} DC 0 AC 0`);
      from = `m${id}`;
    }
    const to = part.kind === 'source' ? `s${id}` : at(part.b);
    const middle = re !== 0 && im !== 0 ? `x${id}` : to;
    if (re !== 0) list.push(`R${id} ${from} ${middle} ${re}`);
    const reactiveFrom = re !== 0 ? middle : from;
    if (im > 0) list.push(`L${id} ${reactiveFrom} ${to} ${im / w}`);
    if (im < 0) list.push(`C${id} ${reactiveFrom} ${to} ${-1 / (w * im)}`);
    if (part.kind === 'source') {
      const degrees = (Math.atan2(part.volts.im, part.volts.re) * 180) / Math.PI;
      list.push(`V${id} ${to} ${at(part.b)} DC 0 AC ${Math.hypot(part.volts.re, part.volts.im)} ${degrees}`);
    }
    return list;
  });
  // The same leak as the plant's, so that every node has a way to ground for ngspice's first look at direct current.
  const leaks = circuit.nodes.slice(1).map((_, i) => `RG${i + 1} n${i + 1} 0 1e12`);
  return ['plant', ...lines, ...leaks, options, `.ac lin 1 ${hz} ${hz}`, '.end'].join('\n');
}
