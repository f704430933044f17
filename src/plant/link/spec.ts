import type { Contact } from '../pv/spec.ts';

export interface LinkPort {
  /** Its driver and bias work. */
  alive: boolean;
  /** Across its pins [Ω]; `Infinity` unless it has failed so. */
  short: Contact;
  /** It carries an end resistor. */
  end: boolean;
}

export interface LinkLead {
  /** Its two signal wires. */
  high: Contact;
  low: Contact;
  /** Signal wires change places between its plugs. */
  crossed: boolean;
  /** Another pin's wire meets a signal pin. */
  stray: boolean;
  /** The two wires against each other. */
  short: Contact;
  /** A plug half in: it makes contact until it is touched. */
  touchy: boolean;
  lengthM: number;
}

export interface LinkSpec {
  kind: 'none' | 'can' | 'serial-485';
  unit: LinkPort;
  pack: LinkPort;
  lead: LinkLead;
  /** Resistors fitted somewhere between beyond the two ends, and what one end has [Ω]. */
  extraEnds: number;
  endOhm: number;
  /** What each side speaks: equal means they understand each other. */
  protocol: { unit: number; pack: number };
  speed: { unit: number; pack: number };
  revision: { unit: number; pack: number };
  /** The pack's or the unit's lead sits in a socket of another bus. */
  wrongSocket: boolean;
  /** Addresses set at the packs; the host is 1, each only once. */
  addresses: number[];
  /** Packs whose lead to the next is broken: those after it are not seen. */
  chainBrokenAfter: number | undefined;
  /** Disturbance on the pair per ampere of battery current [V/A]: leads tied together, no shield. */
  noiseVPerA: number;
  /** Something else asks on the same pair. */
  secondMaster: boolean;
  /** The unit keeps to the limits it is sent. */
  obeys: boolean;
  /** Silence after which the unit raises an alarm [s]. */
  timeOutS: number;
}
