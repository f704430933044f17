import type { PartId } from '../drawings/plant/layout.ts';

/**
 * What a tap on a part of the plant drawing offers, as `folder/id` of guides and procedures, the likeliest first. A part
 * with one of them leads straight there; a part with none is no link.
 */
export const partWays: Readonly<Partial<Record<PartId, readonly string[]>>> = {
  strings: ['guides/pv-no-start', 'procedures/string-check', 'procedures/open-string'],
  pvIsolator: ['guides/pv-no-start', 'procedures/open-string', 'procedures/string-check'],
  generator: ['guides/uneven-legs', 'procedures/isolate', 'procedures/restore-ac'],
  inverter: [
    'guides/pv-no-start',
    'guides/fans-heat',
    'guides/uneven-legs',
    'guides/battery-link',
    'procedures/isolate',
    'procedures/first-power-up',
    'procedures/join-unit-dc',
  ],
  mainSwitch: ['procedures/isolate', 'procedures/pre-charge', 'procedures/restore'],
  outputBreaker: ['guides/uneven-legs', 'procedures/ac-output-check', 'procedures/restore-ac'],
  loadPanel: ['guides/uneven-legs', 'procedures/ac-output-check', 'procedures/neutral-proof'],
  dataLink: ['guides/battery-link'],
  packs: ['guides/battery-link', 'procedures/isolate', 'procedures/prove-dead', 'procedures/pre-charge'],
  loads: ['guides/uneven-legs'],
  ground: ['guides/uneven-legs', 'guides/pv-no-start', 'procedures/neutral-proof'],
};
