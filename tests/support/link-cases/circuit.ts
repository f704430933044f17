/**
 * A data pair as a circuit of its own, apart from the worksheets: what a meter shows is worked out from the conductances
 * that hang on it, never from the bands of the guide.
 */
export interface Pair {
  /** End resistor at the inverter, at the last pack, and others in the middle on the pack's side [Ω]. */
  unitEnd?: number;
  packEnd?: number;
  middle?: readonly number[];
  /** The lead between inverter and pack. */
  lead?: 'whole' | 'broken' | 'shorted';
  /** A port whose driver is shorted inside. */
  shortedPort?: 'unit' | 'pack';
}

const short = 0.6;
/** What the meter's leads and contacts add [Ω]. */
const contacts = 0.3;

const text = (siemens: number): string => (siemens === 0 ? 'OL' : (1 / siemens + contacts).toFixed(1));
const sum = (list: readonly (number | undefined)[]): number =>
  list.reduce<number>((total, ohms) => total + (ohms === undefined ? 0 : 1 / ohms), 0);

const unitSide = ({ unitEnd, shortedPort }: Pair) =>
  sum([unitEnd, shortedPort === 'unit' ? short : undefined]);
const packSide = ({ packEnd, middle = [], shortedPort }: Pair) =>
  sum([packEnd, ...middle, shortedPort === 'pack' ? short : undefined]);
const throughLead = (pair: Pair) =>
  pair.lead === 'broken' ? 0 : packSide(pair) + (pair.lead === 'shorted' ? 1 / short : 0);

/** At a spare socket beside the inverter, both plugs in. */
export const bothIn = (pair: Pair): string => text(unitSide(pair) + throughLead(pair));
/** With the inverter's plug out: into the free plug, into the inverter's socket, into the pack's socket without the lead. */
export const intoCable = (pair: Pair): string => text(throughLead(pair));
export const intoUnit = (pair: Pair): string => text(unitSide(pair));
export const intoPack = (pair: Pair): string => text(packSide(pair));

/** Idle volts between the wires of a biased serial pair with this device's ends alone on it [V]. */
export function idleVolts(supply: number, biasOhms: number, endOhms: number, turned = false): string {
  const amps = supply / (2 * biasOhms + endOhms);
  return (amps * endOhms * (turned ? -1 : 1)).toFixed(3);
}

/** The average a meter shows on the pins of a CAN port: idle with a share of dominant bits (3.5 V and 1.5 V). */
export const canPins = (dominant: number) => ({
  high: (2.5 + dominant).toFixed(2),
  low: (2.5 - dominant).toFixed(2),
});

/** Amps that each of some packs carries of an AC load [A], idle included. */
export const packShare = (acWatts: number, volts: number, idleWatts: number, packs: number): string =>
  ((acWatts / 0.93 + idleWatts) / volts / packs).toFixed(1);
