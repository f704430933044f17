import type { Circuit } from '../../src/plant/circuit/netlist.ts';
import { solveCircuit } from '../../src/plant/circuit/solve.ts';
import { last, simulate } from '../spice/ngspice.ts';
import { dcDeck } from './spice-deck.ts';

/** Values below this share of the largest of their kind are not compared, nor what ngspice's own tolerance covers. */
const telling = { share: 1e-3, least: 1e-3 };

/** Worst relative difference over the values that tell. */
export function worstOf(ours: readonly number[], theirs: readonly number[]): number {
  const largest = Math.max(...theirs.map(Math.abs), 0);
  return ours.reduce((worst, value, i) => {
    const other = theirs[i]!;
    return Math.abs(other) <= Math.max(telling.share * largest, telling.least)
      ? worst
      : Math.max(worst, Math.abs(value / other - 1));
  }, 0);
}

export interface Compared {
  worstVolts: number;
  worstAmps: number;
}

/**
 * Solves a circuit here and in ngspice and compares every node's volts and every named current.
 * `leastA`: currents under this are leakage, where ngspice's own conductance across each junction (1e-12 S) shows.
 */
export async function compareDc(circuit: Circuit, leastA = 1e-4): Promise<Compared> {
  const point = solveCircuit(circuit);
  if (!point.ok) throw new Error(point.reason);
  const waves = await simulate(dcDeck(circuit, [...point.floating].slice(0, 1), point.volts));
  const nodes = circuit.nodes.map((_, i) => i).slice(1);
  const volts = nodes.map((node) => last(waves, `v(n${node})`));
  const ids = [...circuit.named.values()];
  const amps = ids.map((id) => last(waves, `i(vm${id})`));
  const most = Math.max(...amps.map(Math.abs), 0);
  return {
    worstVolts: worstOf(
      nodes.map((node) => point.volts[node]!),
      volts,
    ),
    worstAmps:
      most < leastA
        ? 0
        : worstOf(
            ids.map((id) => point.amps(id)),
            amps,
          ),
  };
}
