import { Simulation } from 'eecircuit-engine';

/** One circuit's answer: a list of values for each node voltage and source current. */
export type Waves = Readonly<Record<string, readonly number[]>>;

let engine: Promise<Simulation> | undefined;

async function start(): Promise<Simulation> {
  const simulation = new Simulation();
  await simulation.start();
  return simulation;
}

/**
 * Runs a netlist in ngspice, the circuit simulator, which shares no line with ours.
 * Anything the simulator writes to its error output fails the test that asked.
 */
export async function simulate(netlist: string): Promise<Waves> {
  const result = await run(netlist);
  if (result.dataType !== 'real')
    throw new Error('ngspice answered in complex numbers where real ones were asked for');
  const waves = Object.fromEntries(result.data.map((wave) => [wave.name, wave.values as number[]]));
  if (Object.keys(waves).length === 0) throw new Error('ngspice answered with nothing');
  return waves;
}

/** The same for a netlist with one `.ac` point: the magnitude of each node voltage and source current, nothing else. */
export async function simulateAc(netlist: string): Promise<Readonly<Record<string, number>>> {
  const result = await run(netlist);
  if (result.dataType !== 'complex')
    throw new Error('ngspice answered in real numbers where complex ones were asked for');
  return Object.fromEntries(
    result.data.flatMap((wave) => {
      const value = wave.values[0];
      return value ? [[wave.name, Math.hypot(value.real, value.img)]] : [];
    }),
  );
}

async function run(netlist: string) {
  engine ??= start();
  const simulation = await engine;
  simulation.setNetList(netlist);
  const result = await simulation.runSim();
  const errors = simulation.getError().filter((line) => line.trim() !== '');
  if (errors.length > 0) throw new Error(`ngspice: ${errors.join('\n')}`);
  return result;
}

/** The value of a wave at a time, on a straight line between two points of the simulator. */
export function at(waves: Waves, name: string, timeS: number): number {
  const times = named(waves, 'time');
  const values = named(waves, name);
  const after = times.findIndex((time) => time >= timeS);
  if (after < 0) throw new Error(`the run ends before ${timeS} s`);
  if (after === 0) return values[0]!;
  const share = (timeS - times[after - 1]!) / (times[after]! - times[after - 1]!);
  return values[after - 1]! + share * (values[after]! - values[after - 1]!);
}

/** A value of an operating point, or the last of a run. */
export function last(waves: Waves, name: string): number {
  return named(waves, name).at(-1)!;
}

function named(waves: Waves, name: string): readonly number[] {
  const wave = waves[name];
  if (!wave || wave.length === 0)
    throw new Error(`ngspice gave no ${name}; it gave ${Object.keys(waves).join(', ')}`);
  return wave;
}
