import { type Builder, type Circuit, newCircuit } from '../circuit/netlist.ts';
import type { LinkPort, LinkSpec } from './spec.ts';

export interface LinkState {
  /** Plugs in their sockets. */
  unitPlug: boolean;
  packPlug: boolean;
  /** Devices that are powered. */
  unitOn: boolean;
  packOn: boolean;
}

/** Receiver inputs, pin to pin [Ω]; bias of a CAN pin to its middle [Ω]; of a 485 pair, at one device [Ω]. ISO 11898-2, TIA-485-A. */
const receiverOhm = 40e3;
const canBias = { volts: 2.5, ohms: 25e3 } as const;
const serialBias = { volts: 5, ohms: 560 } as const;
/** Mean over traffic of what a CAN driver adds to each pin [V] and through what [Ω]: a few frames a second. */
const canTraffic = { volts: 0.06, ohms: 60 } as const;
const openOhm = 50e6;
/** Wire of a data lead, one way [Ω/m]: 0.25 mm². */
export const leadOhmPerM = 0.07;

function addPort(b: Builder, side: 'unit' | 'pack', port: LinkPort, spec: LinkSpec, on: boolean): void {
  const [high, low] = [`${side}.C-H`, `${side}.C-L`];
  b.resistor(high, low, receiverOhm);
  if (port.end) b.resistor(high, low, spec.endOhm);
  if (Number.isFinite(port.short)) b.resistor(high, low, port.short);
  // The port's own reference pin; the two devices are not joined by it.
  const reference = b.node(`${side}.ref`);
  if (!on || !port.alive) {
    b.resistor(high, `${side}.ref`, openOhm);
    b.resistor(low, `${side}.ref`, openOhm);
    return;
  }
  const supply = (name: string, volts: number) => {
    b.add({ kind: 'volts', a: b.node(`${side}.${name}`), b: reference, volts });
  };
  if (spec.kind === 'can') {
    supply('mid', canBias.volts);
    supply('up', canBias.volts + canTraffic.volts);
    supply('down', canBias.volts - canTraffic.volts);
    b.resistor(high, `${side}.mid`, canBias.ohms);
    b.resistor(low, `${side}.mid`, canBias.ohms);
    b.resistor(high, `${side}.up`, canTraffic.ohms * 20);
    b.resistor(low, `${side}.down`, canTraffic.ohms * 20);
    return;
  }
  supply('plus', serialBias.volts);
  b.resistor(high, `${side}.plus`, serialBias.ohms);
  b.resistor(low, `${side}.ref`, serialBias.ohms);
}

/** Both ports, the lead and what ends it. `lead.C-H` is the plug at the unit's end, `far.C-H` the one at the pack's. */
export function linkCircuit(spec: LinkSpec, state: LinkState): Circuit {
  const b = newCircuit();
  addPort(b, 'unit', spec.unit, spec, state.unitOn);
  addPort(b, 'pack', spec.pack, spec, state.packOn);
  const { lead } = spec;
  const wire = lead.lengthM * leadOhmPerM + 0.02;
  const through = (ohms: number) => (Number.isFinite(ohms) ? ohms + wire : openOhm);
  b.resistor('lead.C-H', lead.crossed ? 'far.C-L' : 'far.C-H', through(lead.high));
  b.resistor('lead.C-L', lead.crossed ? 'far.C-H' : 'far.C-L', through(lead.low));
  b.resistor('lead.C-S', lead.stray ? 'far.C-H' : 'far.C-S', wire);
  if (Number.isFinite(lead.short)) b.resistor('lead.C-H', 'lead.C-L', lead.short);
  for (let k = 0; k < spec.extraEnds; k++) b.resistor('lead.C-H', 'lead.C-L', spec.endOhm);
  const plug = (on: boolean) => (on ? 0.02 : openOhm);
  for (const pin of ['C-H', 'C-L']) {
    b.resistor(`unit.${pin}`, `lead.${pin}`, plug(state.unitPlug));
    b.resistor(`pack.${pin}`, `far.${pin}`, plug(state.packPlug));
  }
  for (const node of ['unit.ref', 'pack.ref']) b.resistor(node, 'ground', 1e6);
  return b.done();
}
