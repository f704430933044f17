import type { Circuit, Part } from '../../src/plant/circuit/netlist.ts';
import type { AcCircuit } from '../../src/plant/circuit/phasor.ts';

/** ngspice's thermal volts at its 27 °C: emission coefficients are set so that the slope is the one of the part. */
const spiceVt = (1.380649e-23 * 300.15) / 1.602176634e-19;

const options = '.options reltol=1e-6 itl1=2000';

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

/** The netlist of one circuit. Named parts get an ammeter, a source of 0 V, in series; floating islands a tie at one node. */
export function dcDeck(circuit: Circuit, ties: readonly number[] = [], analysis = '.op'): string {
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
    options,
    analysis,
    '.end',
  ].join('\n');
}

/** An AC circuit as one frequency point: impedances as R with L or C at 60 Hz. */
export function acDeck(circuits: readonly AcCircuit[], hz = 60): string {
  const w = 2 * Math.PI * hz;
  const lines = circuits.flatMap((circuit, k) =>
    circuit.parts
      .flatMap((part, id) => {
        const [a, b] = [part.a, part.b].map((node) => (node === 0 ? '0' : `k${k}_n${node}`)) as [
          string,
          string,
        ];
        const name = `k${k}_${id}`;
        const { re, im } = part.kind === 'source' ? part.inner : part.ohms;
        const from = part.kind === 'source' ? `${name}s` : b;
        const middle = `${name}m`;
        const reactive =
          im > 0
            ? `L${name} ${middle} ${from} ${im / w}`
            : im < 0
              ? `C${name} ${middle} ${from} ${-1 / (w * im)}`
              : '';
        const lines =
          im === 0
            ? [`R${name} ${a} ${from} ${re}`]
            : re === 0
              ? [reactive.replace(middle, a)]
              : [`R${name} ${a} ${middle} ${re}`, reactive];
        if (part.kind === 'source') {
          const degrees = (Math.atan2(part.volts.im, part.volts.re) * 180) / Math.PI;
          lines.push(`V${name} ${from} ${b} DC 0 AC ${Math.hypot(part.volts.re, part.volts.im)} ${degrees}`);
        }
        return lines;
      })
      .concat(
        // Nodes that only a capacitance reaches have no bias path; the plant leaks the same 1e-12 S.
        circuit.nodes.slice(1).map((_, i) => `RG${k}_${i + 1} k${k}_n${i + 1} 0 1e12`),
      ),
  );
  return ['plant', ...lines, options, `.ac lin 1 ${hz} ${hz}`, '.end'].join('\n');
}
