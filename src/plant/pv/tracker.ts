import { islandsOf } from '../circuit/islands.ts';
import type { Circuit } from '../circuit/netlist.ts';
import { type OperatingPoint, solveCircuit } from '../circuit/solve.ts';
import { insulationOhm, type PvCircuitInput, pvCircuit, type TrackerLoad, terminal } from './build.ts';

/** What a tracker does at the moment. */
export type TrackerDoing =
  /** Its unit is off, or a setting or an event keeps it from starting. */
  | 'off'
  /** Too few volts to start. */
  | 'waiting'
  /** Enough volts; its start delay has not passed. */
  | 'delay'
  /** Starts, finds too little, gives up, starts again: at rest most of the time. */
  | 'retrying'
  | 'running'
  /** Stays off for the insulation it measured, or for volts over its limit. */
  | 'insulation'
  | 'over-volts'
  | 'failed';

/** What lets a tracker run, from outside the array. */
export interface TrackerLeave {
  /** The unit is on and has supply, and nothing is latched. */
  powered: boolean;
  /** Seconds since it could first have started. */
  readyS: number;
  /** Volts its input capacitors still hold while nothing feeds them; undefined: they follow the array. */
  heldV?: number | undefined;
  /** Least insulation the unit starts with [Ω]; 0 when it does not test. */
  insulationLimitOhm: number;
}

export interface TrackerResult {
  doing: TrackerDoing;
  volts: number;
  amps: number;
  watts: number;
  /** What it could draw if all of it were taken [W]. */
  availableW: number;
  /** Volts it drags its input to while it tries; the same as `volts` when it runs. */
  tryV: number;
  tryA: number;
}

export interface PvPoint {
  circuit: Circuit;
  point: OperatingPoint;
  trackers: TrackerResult[];
}

/** The part of a circuit that hangs together with a named part without going through ground: the rest does not matter to it. */
function onlyWith(circuit: Circuit, name: string): Circuit {
  const wanted = circuit.named.get(name)!;
  const kept = islandsOf(circuit).find(({ parts }) => parts.includes(wanted))!.parts;
  return {
    ...circuit,
    parts: kept.map((id) => circuit.parts[id]!),
    named: new Map([[name, kept.indexOf(wanted)]]),
  };
}

/** Current into a tracker's terminals at given volts: the circuit is laid out once and only the held volts change. */
function currentOf(input: PvCircuitInput, index: number): (volts: number) => number {
  const kept = input.runs.flatMap((run, i) =>
    run.plusTo.tracker === index || run.minusTo.tracker === index ? [i] : [],
  );
  const whole = pvCircuit({
    ...input,
    runs: kept.map((i) => input.runs[i]!),
    isolators: kept.map((i) => input.isolators[i]!),
    parted: kept.map((i) => input.parted[i]!),
    loads: input.trackers.map((_, i) => (i === index ? { at: 'volts', volts: 0 } : { at: 'rest' })),
  });
  const circuit = onlyWith(whole, `tracker${index}`);
  const id = circuit.named.get(`tracker${index}`)!;
  const held = circuit.parts[id]!;
  return (volts) => {
    const parts = circuit.parts.with(id, { ...held, kind: 'volts', volts });
    const point = solveCircuit({ ...circuit, parts });
    return point.ok ? point.amps(id) : 0;
  };
}

const scanPoints = 12;
const golden = (Math.sqrt(5) - 1) / 2;

/** Volts of most power within the tracker's window: a scan for the right hill, then golden section. */
function bestVolts(watts: (volts: number) => number, low: number, high: number): number {
  const step = (high - low) / scanPoints;
  let best = low;
  let most = -Infinity;
  for (let k = 0; k <= scanPoints; k++) {
    const here = watts(low + k * step);
    if (here <= most) continue;
    most = here;
    best = low + k * step;
  }
  let [left, right] = [Math.max(low, best - step), Math.min(high, best + step)];
  let [inner, outer] = [right - golden * (right - left), left + golden * (right - left)];
  let [atInner, atOuter] = [watts(inner), watts(outer)];
  while (right - left > 1e-3 * high) {
    if (atInner > atOuter) {
      [right, outer, atOuter] = [outer, inner, atInner];
      inner = right - golden * (right - left);
      atInner = watts(inner);
    } else {
      [left, inner, atInner] = [inner, outer, atOuter];
      outer = left + golden * (right - left);
      atOuter = watts(outer);
    }
  }
  const middle = (left + right) / 2;
  return watts(middle) >= most ? middle : best;
}

/** Volts between the best point and open circuit where a falling quantity comes down to a limit. */
function rightOf(value: (volts: number) => number, limit: number, low: number, high: number): number {
  let [left, right] = [low, high];
  for (let round = 0; round < 30; round++) {
    const middle = (left + right) / 2;
    if (value(middle) > limit) left = middle;
    else right = middle;
  }
  return right;
}

function startTracker(
  input: PvCircuitInput,
  index: number,
  openV: number,
  leave: TrackerLeave,
  amps: (volts: number) => number,
): TrackerResult {
  const spec = input.trackers[index]!;
  const rest = { volts: openV, amps: 0, watts: 0, availableW: 0, tryV: openV, tryA: 0 };
  if (!leave.powered || !spec.enabled) return { ...rest, doing: 'off' };
  if (openV > spec.maxV) return { ...rest, doing: 'over-volts' };
  if (openV < spec.startV) return { ...rest, doing: 'waiting' };
  const connected = input.runs.filter((run, i) => input.isolators[i] && run.plusTo.tracker === index);
  if (connected.some((run) => insulationOhm(run, input.sky) < leave.insulationLimitOhm))
    return { ...rest, doing: 'insulation' };
  if (!spec.works) return { ...rest, doing: 'failed' };
  if (leave.readyS < spec.startDelayS) return { ...rest, doing: 'delay' };
  const watts = (volts: number) => volts * amps(volts);
  const high = Math.max(spec.trackMinV, Math.min(spec.trackMaxV, openV));
  let volts = bestVolts(watts, spec.trackMinV, high);
  if (amps(volts) > spec.usableA) volts = rightOf(amps, spec.usableA, volts, openV);
  const drawn = Math.max(0, amps(volts));
  const availableW = volts * drawn;
  if (availableW < spec.leastW) return { ...rest, doing: 'retrying', availableW, tryV: volts, tryA: drawn };
  return { doing: 'running', volts, amps: drawn, watts: availableW, availableW, tryV: volts, tryA: drawn };
}

/** Held back: up the right-hand side of the curve, to next to no current if nothing is wanted. */
function heldTo(
  result: TrackerResult,
  limitW: number,
  openV: number,
  amps: (volts: number) => number,
): TrackerResult {
  const volts = rightOf((v) => v * amps(v), limitW, result.volts, openV);
  const drawn = Math.max(0, amps(volts));
  return { ...result, volts, amps: drawn, watts: volts * drawn };
}

/** The PV side at rest: every tracker's terminals open, or held by their own capacitors. */
export function pvAtRest(
  input: PvCircuitInput,
  heldV: readonly (number | undefined)[] = [],
): { circuit: Circuit; point: OperatingPoint; openV: number[] } {
  const loads = input.trackers.map((_, i): TrackerLoad => {
    const volts = heldV[i];
    return volts === undefined ? { at: 'rest' } : { at: 'volts', volts };
  });
  const circuit = pvCircuit({ ...input, loads });
  const point = solveCircuit(circuit);
  const at = (tracker: number, pole: '+' | '-') =>
    point.ok ? point.volts[circuit.nodeOf.get(terminal(tracker, pole))!]! : 0;
  return { circuit, point, openV: input.trackers.map((_, i) => at(i, '+') - at(i, '-')) };
}

/** Where every tracker ends up; together they give no more than battery and loads take [W]. */
export function solvePv(input: PvCircuitInput, leaves: readonly TrackerLeave[], acceptW: number): PvPoint {
  const held = leaves.map((leave) => leave.heldV);
  const rest = pvAtRest(input, held);
  const curves = input.trackers.map((_, i) => currentOf(input, i));
  const free = input.trackers.map((_, i) => startTracker(input, i, rest.openV[i]!, leaves[i]!, curves[i]!));
  const available = free.reduce((sum, each) => sum + (each.doing === 'running' ? each.watts : 0), 0);
  const share = available > acceptW ? Math.max(0, acceptW) / available : 1;
  const trackers = free.map((each, i) =>
    each.doing === 'running' && share < 1
      ? heldTo(each, each.watts * share, rest.openV[i]!, curves[i]!)
      : each,
  );
  if (!trackers.some(({ doing }) => doing === 'running')) return { ...rest, trackers };
  const loads = trackers.map((result, i): TrackerLoad => {
    const volts = result.doing === 'running' ? result.volts : held[i];
    return volts === undefined ? { at: 'rest' } : { at: 'volts', volts };
  });
  const circuit = pvCircuit({ ...input, loads });
  return { circuit, point: solveCircuit(circuit), trackers };
}
