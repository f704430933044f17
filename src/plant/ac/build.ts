import { type AcBuilder, type AcCircuit, newAcCircuit, phasor } from '../circuit/phasor.ts';
import type { Contact } from '../pv/spec.ts';
import type { AcLoad, AcSpec } from './spec.ts';

/** Across an open AC contact [Ω]. */
const openOhm = 50e6;
const contact = (ohms: Contact): number => (Number.isFinite(ohms) ? ohms : openOhm);

export interface AcCircuitInput {
  spec: AcSpec;
  /** Volts of one leg that the units make at no load; 0 while they make none. */
  unitLegV: number;
  /** Which loads are switched on, and which is starting just now. */
  loadsOn: readonly boolean[];
  starting?: number | undefined;
  /** A resistive test load [W] on each leg. */
  testW: readonly [number, number];
  /** The breaker between output and panel. */
  outputOn: boolean;
  /** A second source at the AC input: its leg volts, and whether it is passed through to the output. */
  source: { legV: number; innerOhm: number; passed: boolean; bonded: boolean };
}

/** The impedance that takes this power at nominal volts. */
function impedanceOf(
  watts: number,
  factor: number,
  volts: number,
  times: number,
): { re: number; im: number } {
  const size = (volts * volts * factor) / watts / times;
  return { re: size * factor, im: size * Math.sqrt(1 - factor * factor) };
}

function addUnit(b: AcBuilder, k: number, input: AcCircuitInput): void {
  const { spec, unitLegV, source } = input;
  const unit = spec.units[k]!;
  const out = (leg: string) => `unit${k}.${leg}`;
  const making = unit.on && unitLegV > 0 && !source.passed;
  for (let leg = 0; leg < spec.legs; leg++) {
    const angle = (leg === 0 ? 0 : spec.leg2Deg) + unit.aheadDeg;
    const name = `L${leg + 1}`;
    if (making)
      b.source(out(name), out('M'), phasor(unitLegV * unit.voltsShare, angle), {
        re: spec.innerOhm,
        im: spec.innerReactOhm,
      });
    // A stopped unit's output relays are open.
    b.impedance(out(name), `O-${name}`, making ? contact(unit.line[leg]!) : openOhm, 0, out(name));
  }
  b.impedance(out('M'), 'O-N', contact(unit.neutral), 0, out('N'));
}

function addSource(b: AcBuilder, { spec, source }: AcCircuitInput): void {
  for (let leg = 0; leg < spec.legs; leg++) {
    const name = `L${leg + 1}`;
    const inner = { re: source.innerOhm, im: source.innerOhm };
    if (source.legV > 0) b.source(`A-${name}`, 'A-N', phasor(source.legV, leg === 0 ? 0 : 180), inner);
    b.impedance(`A-${name}`, `O-${name}`, source.passed ? 0.01 : openOhm, 0, `A-${name}`);
  }
  b.impedance('A-N', 'O-N', 0.005, 0, 'A-N');
  if (source.bonded) b.impedance('A-N', 'ground', 0.05, 0, 'GA');
}

function addLoad(b: AcBuilder, load: AcLoad, times: number, spec: AcSpec): void {
  const volts = load.at === '12' ? 2 * spec.legV : spec.legV;
  const { re, im } = impedanceOf(load.watts, load.powerFactor, volts, times);
  const places = {
    '1': ['D-L1', 'D-N'],
    '2': ['D-L2', 'D-N'],
    '12': ['D-L1', 'D-L2'],
    pair1: ['D-L1', 'pair-N'],
    pair2: ['D-L2', 'pair-N'],
    far: ['R-L', 'R-N'],
  } as const;
  const [from, to] = places[load.at];
  b.impedance(from, to, re, im, `load.${load.id}`);
}

/** Output, run, panel, loads, ground and second source as one circuit of one frequency. */
export function acCircuit(input: AcCircuitInput): AcCircuit {
  const { spec, outputOn } = input;
  const b = newAcCircuit();
  spec.units.forEach((_, k) => {
    addUnit(b, k, input);
  });
  addSource(b, input);
  for (let leg = 0; leg < spec.legs; leg++) {
    const name = `L${leg + 1}`;
    const run = spec.feederOhm + contact(spec.lineJoint[leg]!);
    b.impedance(
      `O-${name}`,
      `D-${name}`,
      outputOn ? run : openOhm,
      outputOn ? spec.feederReactOhm : 0,
      `D-${name}`,
    );
    const test = input.testW[leg]!;
    if (test > 0) b.impedance(`D-${name}`, 'D-N', spec.legV ** 2 / test, 0, `test${leg + 1}`);
  }
  b.impedance('O-N', 'D-N', spec.feederOhm + contact(spec.neutralJoint), spec.feederReactOhm, 'D-N');
  b.impedance('pair-N', 'D-N', contact(spec.pairNeutral), 0, 'pair-N');
  b.impedance('D-L1', 'R-L', spec.farOhm);
  b.impedance('R-N', 'D-N', spec.farOhm, 0, 'R-N');
  spec.loads.forEach((load, k) => {
    if (input.loadsOn[k] && (spec.legs === 2 || load.at === '1' || load.at === 'far'))
      addLoad(b, load, input.starting === k ? load.startTimes : 1, spec);
  });
  b.impedance('O-N', 'ground', contact(spec.bondAtUnit), 0, 'bond');
  b.impedance('D-N', 'D-G', contact(spec.bondAtPanel), 0, 'panel-bond');
  b.impedance('D-G', 'ground', spec.groundingOhm, 0, 'G');
  const w = 2 * Math.PI * spec.hz;
  ['O-L1', 'O-L2', 'O-N'].forEach((node, k) => {
    if (node === 'O-L2' && spec.legs === 1) return;
    b.impedance(node, 'ground', 0, -1 / (w * spec.strayF[k]!));
  });
  return b.done();
}
