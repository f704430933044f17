import { deviceNames } from './devices.ts';

const on = (device: string) => deviceNames[device] ?? device;

/** What the hands did, by the key of the effect. */
const deeds: Readonly<Record<string, (of: string) => string>> = {
  open: (of) => `Opened: ${on(of)}.`,
  close: (of) => `Closed: ${on(of)}.`,
  lock: (of) => `Locked: ${on(of)}.`,
  tagPlus: (of) => `Tagged, and one further measure: ${on(of)}.`,
  unlock: (of) => `Lock taken off: ${on(of)}.`,
  inverter: (of) => `Inverter switched ${of}.`,
  source: (of) => `Second source ${of === 'running' ? 'started' : 'stopped'}.`,
  autoStart: (of) => `Auto-start ${of}.`,
  loads: (of) => `Loads switched ${of}.`,
  inlet: (of) => `Generator lead ${of}.`,
  bleed: () => 'Stored charge taken out through a resistor.',
  waited: () => 'Waited for stored charge to drain.',
  touch: () => 'Hands on conductors, proved dead.',
  handleLive: () => 'Worked on conductors that stay live.',
  plugs: (of) => `String plugs ${of}.`,
  liftNeutral: () => 'Neutral lifted.',
  resistor: (of) => `Pre-charge resistor ${of}.`,
  insulationTest: () => 'Insulation test made.',
  enableCharging: () => 'Charging enabled.',
  lift: () => 'Heavy lift done.',
};

/** A deed in a sentence. */
export function deedText(act: object): string {
  const [verb, of] = Object.entries(act)[0] ?? ['', ''];
  return deeds[verb]?.(String(of)) ?? verb;
}
