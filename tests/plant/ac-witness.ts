import { Simulation } from 'eecircuit-engine';
import { type AcCircuit, type Phasor, sizeOf, solveAc } from '../../src/plant/circuit/phasor.ts';
import { acDeck } from './spice-deck.ts';
import { worstOf } from './witness.ts';

let engine: Promise<Simulation> | undefined;

async function start(): Promise<Simulation> {
  const simulation = new Simulation();
  await simulation.start();
  return simulation;
}

/** Node phasors of a netlist of one frequency; any error output of ngspice throws. */
async function simulateAc(netlist: string): Promise<Record<string, Phasor>> {
  engine ??= start();
  const simulation = await engine;
  simulation.setNetList(netlist);
  const result = await simulation.runSim();
  const errors = simulation.getError().filter((line) => line.trim() !== '');
  if (errors.length > 0) throw new Error(`ngspice: ${errors.join('\n')}`);
  if (result.dataType !== 'complex') throw new Error('ngspice answered in real numbers');
  return Object.fromEntries(
    result.data.map(({ name, values }) => {
      const last = values.at(-1)!;
      return [name, { re: last.real, im: last.img }];
    }),
  );
}

/** Solves an AC circuit here and in ngspice and compares every node's volts and every named part's current. */
export async function compareAc(
  circuit: AcCircuit,
  hz: number,
): Promise<{ worstVolts: number; worstAmps: number }> {
  const point = solveAc(circuit);
  if (!point.ok) throw new Error(point.reason);
  const waves = await simulateAc(acDeck(circuit, hz));
  const nodes = circuit.nodes.map((_, i) => i).slice(1);
  const named = [...circuit.named.values()];
  const theirs = nodes.map((node) => waves[`v(n${node})`]!);
  const amps = named.map((id) => waves[`i(vm${id})`]!);
  return {
    // Both parts of each number, so that an angle counts too.
    worstVolts: worstOf(
      nodes.flatMap((node) => [point.volts[node]!.re, point.volts[node]!.im]),
      theirs.flatMap(({ re, im }) => [re, im]),
    ),
    worstAmps: worstOf(
      named.map((id) => sizeOf(point.amps(id))),
      amps.map(sizeOf),
    ),
  };
}
