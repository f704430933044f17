import { type Builder, type Circuit, newCircuit } from '../circuit/netlist.ts';
import type { Contact } from '../pv/spec.ts';
import { type DcPathSpec, type PackSpec, packOpenVolts, permittedDischargeA } from './spec.ts';

export const post = (pack: number, pole: '+' | '-'): string => `pack${pack}.${pole}`;

/** Across an open contact at battery volts [Ω]. */
const openOhm = 1e9;
/** The unit's filter from each DC post to ground [Ω]. From memory. */
const filterOhm = 1e6;
/** Bleed inside a sleeping pack, across its posts [Ω]. */
const packBleedOhm = 220e3;

export interface UnitLoad {
  /** Power at the posts [W]; negative charges the battery. */
  watts: number;
  /** Below these volts it no longer holds that power. */
  foldV: number;
  /** What the posts draw anyway [Ω]. */
  bleedOhm: number;
}

export interface DcCircuitInput {
  packs: readonly PackSpec[];
  path: DcPathSpec;
  /** Handles: breaker of each pack, main switch, pre-charge resistor across it. */
  packOn: readonly boolean[];
  mainOn: boolean;
  precharge: boolean;
  unit: UnitLoad;
  /** Volts of the unit's capacitors where nothing else holds the posts; undefined: they follow. */
  heldV?: number | undefined;
}

const contact = (ohms: Contact): number => (Number.isFinite(ohms) ? ohms : openOhm);

function addPack(b: Builder, index: number, pack: PackSpec, on: boolean): void {
  const [plus, minus] = [post(index, '+'), post(index, '-')];
  const cells = b.node(`pack${index}.cells`);
  b.add({ kind: 'volts', a: cells, b: b.node(minus), volts: packOpenVolts(pack) });
  const through = permittedDischargeA(pack) > 0 ? pack.innerOhm : pack.sleepLeakOhm;
  b.resistor(`pack${index}.cells`, plus, through, `pack${index}`);
  b.resistor(plus, minus, packBleedOhm);
  b.resistor(plus, 'bus+', on ? contact(pack.breaker) : openOhm);
  b.resistor(minus, 'bus-', 1e-5);
}

/** Battery, path and the inverter's DC posts as one circuit. */
export function dcCircuit(input: DcCircuitInput): Circuit {
  const { path, unit } = input;
  const b = newCircuit();
  input.packs.forEach((pack, index) => {
    addPack(b, index, pack, input.packOn[index] ?? true);
  });
  b.resistor('bus+', 'fuse', contact(path.plusJoint) / 2);
  b.resistor('fuse', path.reversed ? 'S1-' : 'S1+', contact(path.fuse), 'S1+');
  b.resistor('bus-', path.reversed ? 'S1+' : 'S1-', contact(path.minusJoint) / 2);
  const closed = input.mainOn || path.mainWelded;
  b.resistor('S1+', 'S2+', closed ? contact(path.main) : openOhm);
  if (input.precharge) b.resistor('S1+', 'S2+', path.prechargeOhm, 'precharge');
  b.resistor('S1-', 'S2-', 1e-5);
  b.resistor('S2+', 'I+', path.cableOhm + contact(path.plusJoint) / 2, 'I+');
  b.resistor('S2-', 'I-', path.cableOhm + contact(path.minusJoint) / 2);
  b.resistor('I+', 'I-', unit.bleedOhm);
  b.resistor('I+', 'ground', filterOhm);
  b.resistor('I-', 'ground', filterOhm);
  const [plus, minus] = [b.node('I+'), b.node('I-')];
  if (unit.watts !== 0)
    b.add({ kind: 'power', a: plus, b: minus, watts: unit.watts, foldV: unit.foldV }, 'unit');
  if (input.heldV !== undefined)
    b.add({ kind: 'volts', a: plus, b: minus, volts: input.heldV }, 'capacitors');
  return b.done();
}
