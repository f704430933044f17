import { withPart } from '../circuit/netlist.ts';
import { solveCircuit } from '../circuit/solve.ts';
import { type LinkState, linkCircuit } from './build.ts';
import type { LinkSpec } from './spec.ts';

/** What comes of the link. */
export interface LinkResult {
  /** Data flows now. */
  up: boolean;
  /** It falls out now and then: with load, when touched, or at any time. */
  drops: 'never' | 'with-load' | 'when-touched' | 'any-time';
  /** Packs that report, of those fitted. */
  packsSeen: number;
  /** Limits are sent and kept. */
  obeyed: boolean;
}

/** Differential receivers decide at 0.9 V (CAN) and at 0.2 V of a driver's 1.5 V or more (485); noise eats the rest. */
const noiseMarginV = { can: 1.1, 'serial-485': 1.3, none: 0 } as const;
/** A driver's lowest differential volts into its rated 60 Ω, and its inner resistance. ISO 11898-2, from memory. */
const driver = { volts: 2, ohms: 35 } as const;
const needsV = { can: 0.9, 'serial-485': 0.4, none: 0 } as const;

/** Ohms between the wires, seen at the unit's socket, everything off. */
export function pairOhm(spec: LinkSpec, state: LinkState): number {
  const circuit = linkCircuit(spec, { ...state, unitOn: false, packOn: false });
  const [high, low] = ['unit.C-H', 'unit.C-L'].map((name) => circuit.nodeOf.get(name)!);
  const point = solveCircuit(withPart(circuit, { kind: 'amps', a: high!, b: low!, amps: 1e-3 }));
  return point.ok ? (point.volts[high!]! - point.volts[low!]!) / 1e-3 : Number.POSITIVE_INFINITY;
}

/** What the far receiver sees of the unit's driver [V]; negative when the pair is crossed. */
function receivedV(spec: LinkSpec, state: LinkState): number {
  const circuit = linkCircuit(spec, { ...state, unitOn: false, packOn: false });
  const node = (name: string) => circuit.nodeOf.get(name)!;
  const amps = driver.volts / driver.ohms;
  const driven = withPart(
    withPart(circuit, { kind: 'amps', a: node('unit.C-H'), b: node('unit.C-L'), amps }),
    { kind: 'resistor', a: node('unit.C-H'), b: node('unit.C-L'), ohms: driver.ohms },
  );
  const point = solveCircuit(driven);
  return point.ok ? point.volts[node('pack.C-H')]! - point.volts[node('pack.C-L')]! : 0;
}

/** A pair without its ends rings: how far from 60 Ω a lead of this length may be and still carry data. From memory. */
function endsCarry(ohms: number, lengthM: number): boolean {
  const slack = lengthM < 3 ? 2.1 : lengthM < 15 ? 1.6 : 1.35;
  return ohms < 60 * slack && ohms > 60 / slack;
}

/** Whether data flows, and what of it, at a battery current, and whether it would stop at the fullest one [A]. */
export function linkData(spec: LinkSpec, state: LinkState, batteryA: number, fullA = 0): LinkResult {
  const fitted = spec.addresses.length;
  const none: LinkResult = { up: false, drops: 'never', packsSeen: 0, obeyed: false };
  if (spec.kind === 'none' || !state.unitOn || !state.packOn) return none;
  const received = receivedV(spec, state);
  const understood =
    spec.protocol.unit === spec.protocol.pack &&
    spec.speed.unit === spec.speed.pack &&
    spec.revision.unit === spec.revision.pack &&
    !spec.wrongSocket;
  const wires =
    spec.unit.alive &&
    spec.pack.alive &&
    received >= needsV[spec.kind] &&
    endsCarry(pairOhm(spec, state), spec.lead.lengthM);
  const hosts = spec.addresses.filter((address) => address === 1).length;
  if (!understood || !wires || hosts !== 1) return none;
  const distinct = new Set(spec.addresses).size;
  const packsSeen = Math.min(distinct, spec.chainBrokenAfter ?? fitted);
  const noise = spec.noiseVPerA * Math.abs(batteryA);
  const noisy = noise > noiseMarginV[spec.kind];
  const drops = spec.lead.touchy
    ? 'when-touched'
    : spec.secondMaster
      ? 'any-time'
      : noisy || spec.noiseVPerA * fullA > noiseMarginV[spec.kind]
        ? 'with-load'
        : 'never';
  return { up: !noisy, drops, packsSeen, obeyed: spec.obeys };
}
