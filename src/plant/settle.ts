import { type AcCircuitInput, acCircuit } from './ac/build.ts';
import { dcCircuit, post } from './battery/build.ts';
import { permittedChargeA, permittedDischargeA } from './battery/spec.ts';
import type { Circuit } from './circuit/netlist.ts';
import { type AcCircuit, type AcPoint, minus, solveAc, wattsOf } from './circuit/phasor.ts';
import { type OperatingPoint, solveCircuit } from './circuit/solve.ts';
import { solveHeat } from './heat/solve.ts';
import type { HeatResult } from './heat/spec.ts';
import { type LinkResult, linkData } from './link/data.ts';
import { type PvPoint, solvePv, type TrackerLeave } from './pv/tracker.ts';
import type { Plant } from './spec.ts';

/** Why a unit makes nothing. */
export type UnitState =
  | 'running'
  | 'off'
  | 'no-supply'
  | 'low-battery'
  | 'high-battery'
  | 'overload'
  | 'searching';

/** Where a plant stands with its handles as they are, once everything quick has settled. */
export interface Settled {
  unit: UnitState;
  /** The unit has a supply and its screen is lit. */
  lit: boolean;
  /** Volts and current at the DC posts; current counts out of the battery. */
  busV: number;
  busA: number;
  packA: number[];
  /** Output, and each leg's, over all units [W]; apparent power [VA]. */
  outW: number;
  legW: [number, number];
  outVa: number;
  unitW: number[];
  /** Charge current permitted by the packs that the unit knows of [A]. */
  permittedA: number | undefined;
  /** Passed through from the second source. */
  passed: boolean;
  pv: PvPoint;
  dc: { circuit: Circuit; point: OperatingPoint };
  ac: { circuit: AcCircuit; point: AcPoint; input: AcCircuitInput };
  link: LinkResult;
  heat: HeatResult[];
}

/** PV to battery. From memory. */
const chargerShare = 0.97;
/** How far a unit loads a second source to charge, of what it can give. From memory. */
const sourceShare = 0.9;
/** Overload that stops a unit at once, as a multiple of what one leg may carry for long. */
const tripTimes = 2;

export const linkStateOf = ({ spec, state }: Plant, lit: boolean) => ({
  unitPlug: state.unitPlug,
  packPlug: state.packPlug,
  unitOn: lit,
  packOn: spec.packs[0]!.awake && state.packOn[0]!,
});

function solveDc({ spec, state }: Plant, watts: number) {
  const connected = (state.mainOn || spec.path.mainWelded) && spec.packs.some((_, i) => state.packOn[i]);
  const circuit = dcCircuit({
    packs: spec.packs,
    path: spec.path,
    packOn: state.packOn,
    mainOn: state.mainOn,
    precharge: state.precharge,
    unit: { watts, foldV: 0.6 * spec.unit.cutV, bleedOhm: spec.unit.bleedOhm },
    heldV: connected ? undefined : state.busV,
  });
  const point = solveCircuit(circuit);
  const at = (name: string) => (point.ok ? point.volts[circuit.nodeOf.get(name)!]! : 0);
  return { circuit, point, volts: at('I+') - at('I-'), connected };
}

function acInputOf({ spec, state }: Plant, unitLegV: number): AcCircuitInput {
  const running = state.sourceRunning && spec.source.kind !== 'none';
  return {
    spec: spec.ac,
    unitLegV,
    loadsOn: state.loadsOn,
    starting: state.starting,
    testW: state.testW,
    outputOn: state.outputOn,
    source: {
      legV: running ? spec.source.legV : 0,
      innerOhm: spec.source.innerOhm,
      passed: running && state.acInOn && unitLegV > 0 && !spec.source.flips,
      bonded: spec.source.bonded && state.acInOn,
    },
  };
}

/** The AC side at given bus volts: its circuit, and what each unit and each leg gives. */
function solveOutput(plant: Plant, busV: number, making: boolean) {
  const { ac, unit } = plant.spec;
  const legV = making ? ac.legV * Math.min(1, busV / unit.regulatesFromV) : 0;
  const input = acInputOf(plant, legV);
  const circuit = acCircuit(input);
  const point = solveAc(circuit);
  const unitW = ac.units.map(() => 0);
  const legW: [number, number] = [0, 0];
  let va = 0;
  let mostLegW = 0;
  if (point.ok)
    ac.units.forEach((_, k) => {
      for (let leg = 0; leg < ac.legs; leg++) {
        const part = circuit.named.get(`unit${k}.L${leg + 1}`)!;
        const { a } = circuit.parts[part]!;
        const volts = minus(point.volts[a]!, point.volts[circuit.nodeOf.get(`unit${k}.M`)!]!);
        const amps = point.amps(part);
        const watts = input.source.passed ? 0 : wattsOf(volts, amps);
        unitW[k] = unitW[k]! + watts;
        legW[leg] = legW[leg]! + watts;
        mostLegW = Math.max(mostLegW, watts);
        va += Math.hypot(volts.re, volts.im) * Math.hypot(amps.re, amps.im);
      }
    });
  const ownW = unitW.reduce((sum, watts) => sum + watts, 0);
  const outW = input.source.passed ? passedW(circuit, point, ac.legs) : ownW;
  return { input, circuit, point, unitW, legW, outW, va, mostLegW };
}

/** What the second source gives through the unit to the output [W]. */
function passedW(circuit: AcCircuit, point: AcPoint, legs: number): number {
  if (!point.ok) return 0;
  let sum = 0;
  for (let leg = 1; leg <= legs; leg++) {
    const volts = minus(
      point.volts[circuit.nodeOf.get(`O-L${leg}`)!]!,
      point.volts[circuit.nodeOf.get('O-N')!]!,
    );
    sum += wattsOf(volts, point.amps(circuit.named.get(`A-L${leg}`)!));
  }
  return sum;
}

type Output = ReturnType<typeof solveOutput>;

function unitStateOf(plant: Plant, restV: number, connected: boolean): UnitState {
  const { unit } = plant.spec;
  if (!plant.state.unitOn) return 'off';
  if (!connected || restV < 10) return 'no-supply';
  if (restV < unit.startV) return 'low-battery';
  return restV > unit.maxV ? 'high-battery' : 'running';
}

/** Current the battery may take [A], from the packs' own limits, the settings, and the volts it is charged to. */
function chargeRoomA(plant: Plant, link: LinkResult, restV: number): number {
  const { spec, state } = plant;
  const live = spec.packs.filter((_, i) => state.packOn[i]);
  // Without a link the packs still refuse by themselves: a switch opens inside.
  const takes = live.reduce((sum, pack) => sum + permittedChargeA(pack), 0);
  const told =
    link.up && link.obeyed ? takes : live.some((pack) => permittedChargeA(pack) > 0) ? Infinity : 0;
  const ohms =
    1 / live.reduce((sum, pack) => sum + (pack.awake ? 1 / pack.innerOhm : 0), 1e-9) +
    2 * spec.path.cableOhm +
    0.001;
  const byVolts = Math.max(0, (spec.unit.chargeV - restV) / ohms);
  return Math.max(0, Math.min(told, byVolts, spec.unit.chargeLimitA, state.chargeHeldA ?? Infinity));
}

function settleOnce(plant: Plant, forced: UnitState | undefined): Settled {
  const { spec, state } = plant;
  const rest = solveDc(plant, 0);
  let unit = forced ?? unitStateOf(plant, rest.volts, rest.connected);
  const lit = unit !== 'off' && unit !== 'no-supply';
  const making = unit === 'running';
  const source = state.sourceRunning && state.acInOn && spec.source.kind !== 'none' && making;
  let output: Output = solveOutput(plant, rest.volts, making);
  if (making && output.outW < spec.ac.searchW && !output.input.source.passed) {
    unit = 'searching';
    output = solveOutput(plant, rest.volts, false);
  }
  const link = linkData(spec.link, linkStateOf(plant, lit), 0);
  const room = making || unit === 'searching' ? chargeRoomA(plant, link, rest.volts) : 0;
  const units = spec.ac.units.filter(({ on }) => on).length;
  const idleW = lit ? spec.unit.idleW * units : 0;
  const drawn = (out: Output) =>
    out.unitW.reduce((sum, watts) => sum + Math.abs(watts) / spec.unit.efficiency, idleW);
  const powered =
    lit &&
    unit !== 'low-battery' &&
    unit !== 'high-battery' &&
    spec.unit.latched.length === 0 &&
    (!spec.unit.linkRequired || link.up);
  const leaves: TrackerLeave[] = spec.trackers.map((_, i) => ({
    powered,
    readyS: state.readyS[i]!,
    insulationLimitOhm: spec.unit.insulationLimitOhm,
    heldV:
      state.inputV[i]! > 0.5 && !spec.runs.some((run, r) => run.plusTo.tracker === i && state.isolators[r])
        ? state.inputV[i]
        : undefined,
  }));
  const acceptW = (drawn(output) + room * (rest.volts + 0.5)) / chargerShare;
  const pv = solvePv(
    {
      runs: spec.runs,
      trackers: spec.trackers,
      sky: spec.sky,
      isolators: state.isolators,
      parted: state.parted,
      loads: [],
    },
    leaves,
    acceptW,
  );
  const pvW = pv.trackers.reduce((sum, each) => sum + each.watts, 0) * chargerShare;
  const fromSourceW =
    source && !spec.source.flips
      ? Math.max(
          0,
          Math.min(
            Math.min(room, spec.source.chargeA) * rest.volts,
            sourceShare * spec.source.ratedW - output.outW,
            spec.unit.ratedW * units,
          ),
        )
      : 0;
  let dc = solveDc(plant, drawn(output) - pvW - fromSourceW);
  // The output follows the bus where it cannot hold its volts; two rounds settle it.
  for (let round = 0; round < 4 && making && dc.volts < spec.unit.regulatesFromV; round++) {
    output = solveOutput(plant, dc.volts, true);
    dc = solveDc(plant, drawn(output) - pvW - fromSourceW);
  }
  const ampsOf = (name: string) => {
    const id = dc.circuit.named.get(name);
    return dc.point.ok && id !== undefined ? dc.point.amps(id) : 0;
  };
  const busA = ampsOf('I+');
  const heat = spec.heat.map((each, k) => {
    const watts = Math.abs(output.unitW[k] ?? 0);
    const chargeW = (pvW / chargerShare + fromSourceW) / Math.max(1, units);
    const reactive = output.va / spec.ac.units.length - watts;
    return solveHeat(each, {
      lossW: lit
        ? watts * (1 / spec.unit.efficiency - 1) +
          spec.unit.idleW +
          0.03 * chargeW +
          0.04 * Math.max(0, reactive)
        : 0,
      loadShare: Math.max(watts, chargeW) / spec.unit.ratedW,
      dcA: Math.abs(busA) / Math.max(1, units),
      acA: watts / spec.ac.legV / spec.ac.legs,
    });
  });
  const fullA = (spec.unit.ratedW * units) / spec.unit.startV;
  const flowing = linkData(spec.link, linkStateOf(plant, lit), busA, fullA);
  const seen = spec.packs.slice(0, flowing.packsSeen);
  return {
    unit,
    lit,
    busV: dc.volts,
    busA,
    packA: spec.packs.map((_, i) => ampsOf(`pack${i}`)),
    outW: output.outW,
    legW: output.legW,
    outVa: output.va,
    unitW: output.unitW,
    permittedA: flowing.up ? seen.reduce((sum, pack) => sum + permittedChargeA(pack), 0) : undefined,
    passed: output.input.source.passed,
    pv,
    dc,
    ac: output,
    link: flowing,
    heat,
  };
}

const known = new WeakMap<Plant, Settled>();

/** The plant's operating point. The same plant object gives the same answer object. */
export function settle(plant: Plant): Settled {
  const found = known.get(plant);
  if (found) return found;
  let settled = settleOnce(plant, undefined);
  const { unit } = plant.spec;
  const starved = settled.dc.point.ok && settled.dc.point.starved.length > 0;
  const most = plant.spec.packs.some(
    (pack, i) => settled.packA[i]! > pack.peakA && permittedDischargeA(pack) > 0,
  );
  if (settled.unit === 'running' && mostLeg(settled) > tripTimes * unit.legLimitW)
    settled = settleOnce(plant, 'overload');
  else if (
    settled.unit === 'running' &&
    (starved || !settled.dc.point.ok || settled.busV < unit.cutV || most)
  )
    settled = settleOnce(plant, 'low-battery');
  known.set(plant, settled);
  return settled;
}

const mostLeg = ({ legW, unitW }: Settled): number => Math.max(...legW) / Math.max(1, unitW.length);

/** Volts between the posts of a pack. */
export function packVolts(settled: Settled, pack: number): number {
  const { circuit, point } = settled.dc;
  if (!point.ok) return 0;
  return (
    point.volts[circuit.nodeOf.get(post(pack, '+'))!]! - point.volts[circuit.nodeOf.get(post(pack, '-'))!]!
  );
}
