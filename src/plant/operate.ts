import { dcCircuit } from './battery/build.ts';
import { solveCircuit } from './circuit/solve.ts';
import { charge, type Sample } from './circuit/transient.ts';
import { acVoltsBetween, ampsIn, dcVoltsBetween } from './meter/measure.ts';
import { firstSubject, type Spot, type Subject, spotOf } from './places.ts';
import { terminal } from './pv/build.ts';
import { packVolts, settle } from './settle.ts';
import type { Plant, PlantState } from './spec.ts';

/** What a hand may move. `on` closes a contact, starts a source, puts a plug in. */
export type Act =
  | {
      move: 'main' | 'precharge' | 'unit' | 'output' | 'acIn' | 'source' | 'unitPlug' | 'packPlug';
      on: boolean;
    }
  | { move: 'pack'; pack: number; on: boolean }
  | { move: 'isolator' | 'plugs'; run: number; on: boolean }
  | { move: 'load'; load: number; on: boolean }
  | { move: 'allLoads'; on: boolean }
  /** A resistive test load on a leg [W]; 0 takes it away. */
  | { move: 'test'; leg: 0 | 1; watts: number }
  /** Charging turned down by hand to this [A]; undefined gives it back. */
  | { move: 'charge'; amps: number | undefined }
  /** Charge taken out of the bus through a resistor. */
  | { move: 'bleed' };

/** What the act did in physics; judged by whoever asks, not here. */
export type Consequence =
  /** A contact opened with current in it: an arc of these volts behind it. */
  | { kind: 'opened-under-current'; what: string; amps: number; volts: number }
  /** A contact closed on empty capacitors or on another source. */
  | { kind: 'inrush'; what: string; amps: number }
  /** Loads got this many volts, at most, of a nominal. */
  | { kind: 'volts-on-loads'; share: number };

export interface Acted {
  plant: Plant;
  consequences: Consequence[];
}

const set = <T>(list: readonly T[], at: number, value: T): T[] =>
  list.map((each, i) => (i === at ? value : each));

function nextState(plant: Plant, act: Act): PlantState {
  const { state } = plant;
  switch (act.move) {
    case 'main':
      return { ...state, mainOn: act.on };
    case 'precharge':
      return { ...state, precharge: act.on };
    case 'unit':
      return { ...state, unitOn: act.on, readyS: state.readyS.map(() => 0) };
    case 'output':
      return { ...state, outputOn: act.on };
    case 'acIn':
      return { ...state, acInOn: act.on };
    case 'source':
      return { ...state, sourceRunning: act.on };
    case 'unitPlug':
      return { ...state, unitPlug: act.on };
    case 'packPlug':
      return { ...state, packPlug: act.on };
    case 'pack':
      return { ...state, packOn: set(state.packOn, act.pack, act.on) };
    case 'isolator':
      return { ...state, isolators: set(state.isolators, act.run, act.on) };
    case 'plugs':
      return { ...state, parted: set(state.parted, act.run, !act.on) };
    case 'load':
      return { ...state, loadsOn: set(state.loadsOn, act.load, act.on) };
    case 'allLoads':
      return { ...state, loadsOn: state.loadsOn.map(() => act.on) };
    case 'test':
      return { ...state, testW: act.leg === 0 ? [act.watts, state.testW[1]] : [state.testW[0], act.watts] };
    case 'charge':
      return { ...state, chargeHeldA: act.amps };
    case 'bleed':
      return { ...state, busV: 0 };
  }
}

const isFed = ({ spec, state }: Plant): boolean =>
  (state.mainOn || spec.path.mainWelded) && state.packOn.some((on) => on);

/** Capacitors keep what they had when their source is taken away. */
function keepsCharge(before: Plant, after: PlantState): PlantState {
  const settled = settle(before);
  const busV = isFed(before) ? settled.busV : after.busV;
  const { circuit, point } = settled.pv;
  const at = (tracker: number, pole: '+' | '-') =>
    point.ok ? point.volts[circuit.nodeOf.get(terminal(tracker, pole))!]! : 0;
  const inputV = after.inputV.map((held, i) => {
    const fed = before.spec.runs.some((run, r) => run.plusTo.tracker === i && before.state.isolators[r]);
    return fed ? Math.max(0, at(i, '+') - at(i, '-')) : held;
  });
  return { ...after, busV, inputV };
}

/** Ohms round the loop that a closing main switch joins. */
const loopOhm = ({ spec, state }: Plant): number =>
  1 /
    spec.packs.reduce(
      (sum, pack, i) => (state.packOn[i] && pack.awake ? sum + 1 / pack.innerOhm : sum),
      1e-6,
    ) +
  2 * spec.path.cableOhm +
  spec.path.plusJoint +
  spec.path.minusJoint;

function consequencesOf(before: Plant, after: Plant, act: Act): Consequence[] {
  const found: Consequence[] = [];
  const opens = 'on' in act && !act.on;
  const arc = (what: string, anchor: string, subject: Subject, kind: 'dc' | 'ac', volts: number) => {
    const amps = Math.abs(ampsIn(before, anchor, subject, 'steady', kind));
    if (amps > 0.01) found.push({ kind: 'opened-under-current', what, amps, volts });
  };
  if (opens && act.move === 'main') arc('main', 'S1+', firstSubject, 'dc', packVolts(settle(before), 0));
  if (opens && act.move === 'pack')
    arc(
      `pack${act.pack}`,
      'B+',
      { ...firstSubject, pack: act.pack },
      'dc',
      packVolts(settle(before), act.pack),
    );
  if (opens && (act.move === 'isolator' || act.move === 'plugs')) {
    const subject = { ...firstSubject, run: act.run };
    arc(
      act.move,
      act.move === 'plugs' ? 'array' : 'P1+',
      subject,
      'dc',
      Math.abs(voltsAcross(after, 'P1+', 'P1-', subject)),
    );
  }
  if (opens && act.move === 'output') arc('output', 'D-L1', firstSubject, 'ac', before.spec.ac.legV);
  if (!opens && act.move === 'main' && !before.state.mainOn) {
    const gap = Math.abs(voltsAcross(before, 'S1+', 'S2+', firstSubject));
    found.push({ kind: 'inrush', what: 'main', amps: gap / loopOhm(before) });
  }
  if (!opens && act.move === 'pack') {
    const volts = packVolts(settle(before), act.pack);
    const others = before.spec.packs.flatMap((_, i) =>
      i !== act.pack && before.state.packOn[i] ? [packVolts(settle(before), i)] : [],
    );
    const gap =
      others.length > 0
        ? Math.abs(volts - others[0]!)
        : before.state.mainOn
          ? Math.abs(volts - before.state.busV)
          : 0;
    found.push({
      kind: 'inrush',
      what: `pack${act.pack}`,
      amps: gap / (2 * before.spec.packs[act.pack]!.innerOhm),
    });
  }
  const share = mostLegShare(after);
  if (share > 1.1) found.push({ kind: 'volts-on-loads', share });
  return found;
}

/** Highest leg-to-neutral volts at the panel as a share of nominal. */
function mostLegShare(plant: Plant): number {
  const legs = plant.spec.ac.legs === 2 ? ['D-L1', 'D-L2'] : ['D-L1'];
  const volts = legs.map((leg) =>
    acVoltsBetween(plant, { circuit: 'ac', red: leg, black: 'D-N' }, 10e6, 'steady'),
  );
  return Math.max(...volts) / plant.spec.ac.legV;
}

function voltsAcross(plant: Plant, red: string, black: string, subject: Subject): number {
  const own = plant.spec.runs[subject.run]?.plusTo.tracker ?? 0;
  const [a, b] = [spotOf(red, subject, own), spotOf(black, subject, own)];
  if (!a || !b || a === 'ground' || b === 'ground') return 0;
  return dcVoltsBetween(plant, { circuit: a.circuit, red: a.node, black: b.node }, 10e6, 'steady');
}

/** Moves one thing. The plant that comes back is a new one; what it cost is beside it. */
export function operate(plant: Plant, act: Act): Acted {
  const moved: Plant = { ...plant, state: keepsCharge(plant, nextState(plant, act)) };
  return { plant: moved, consequences: consequencesOf(plant, moved, act) };
}

/** Highest volts that a hand on these conductors would meet, against ground and between any two of them. */
export function touchVolts(plant: Plant, anchors: readonly string[], subject: Subject): number {
  const own = plant.spec.runs[subject.run]?.plusTo.tracker ?? 0;
  /** A body: 1 kΩ hand to hand or hand to foot (IEC 60479-1, order of size). */
  const bodyOhm = 1000;
  const spots = anchors
    .map((anchor) => spotOf(anchor, subject, own))
    .filter((spot): spot is Spot => spot !== undefined && spot !== 'ground');
  const pairs = spots.flatMap((a, i) => [
    { a, node: 'ground' },
    ...spots.slice(i + 1).flatMap((b) => (b.circuit === a.circuit ? [{ a, node: b.node }] : [])),
  ]);
  return pairs.reduce((most, { a, node }) => {
    const ends = { circuit: a.circuit, red: a.node, black: node };
    const volts =
      a.circuit === 'ac'
        ? acVoltsBetween(plant, ends, bodyOhm, 'steady')
        : Math.abs(dcVoltsBetween(plant, ends, bodyOhm, 'steady'));
    return Math.max(most, volts);
  }, 0);
}

/** Volts of the bus capacitors over a time, when no closed switch holds them: pre-charge, or bleeding down. */
export function busCurve(plant: Plant, seconds: number): Sample[] {
  const { spec, state } = plant;
  if (isFed(plant))
    return [
      { atS: 0, volts: settle(plant).busV },
      { atS: seconds, volts: settle(plant).busV },
    ];
  const linear = (heldV: number): number => {
    const circuit = dcCircuit({
      packs: spec.packs,
      path: spec.path,
      packOn: state.packOn,
      mainOn: false,
      precharge: state.precharge,
      unit: { watts: 0, foldV: 1, bleedOhm: spec.unit.bleedOhm },
      heldV,
    });
    const point = solveCircuit(circuit);
    return point.ok ? point.amps(circuit.named.get('capacitors')!) : 0;
  };
  // Everything outside the unit is linear: two points give its source and resistance once for all.
  const [at0, at50] = [linear(0), linear(50)];
  const slope = (at50 - at0) / 50;
  const idle = state.unitOn ? spec.unit.idleW : 0;
  const drawn = (volts: number) =>
    (volts > spec.unit.wakeV ? spec.unit.wakeW / volts : 0) + (volts > spec.unit.cutV ? idle / volts : 0);
  return charge({
    farads: spec.unit.busF,
    startV: state.busV,
    into: (volts) => at0 + slope * volts - drawn(volts),
    seconds,
  });
}

/** Lets time pass: capacitors charge or empty, trackers come ready. Heat is taken as settled. */
export function advance(plant: Plant, seconds: number): Plant {
  const { spec, state } = plant;
  const busV = isFed(plant) ? state.busV : busCurve(plant, seconds).at(-1)!.volts;
  const settled = settle(plant);
  const inputV = state.inputV.map((volts, i) => {
    const { inputOhm, inputF } = spec.trackers[i]!;
    return volts * Math.exp(-seconds / (inputOhm * inputF));
  });
  const readyS = state.readyS.map((ready, i) => {
    const { doing } = settled.pv.trackers[i]!;
    return doing === 'off' || doing === 'waiting' ? 0 : ready + seconds;
  });
  return { ...plant, state: { ...state, atS: state.atS + seconds, busV, inputV, readyS } };
}
