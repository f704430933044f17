import type { PartId } from '../drawings/plant/layout.ts';

/** Where a tap on a part of the plant drawing leads, as `folder/id` of a guide or procedure. A part may have none. */
export const partWays: Readonly<Partial<Record<PartId, string>>> = {
  strings: 'guides/pv-no-start',
  pvIsolator: 'procedures/open-string',
  inverter: 'procedures/first-power-up',
  mainSwitch: 'procedures/pre-charge',
  packs: 'procedures/isolate',
  outputBreaker: 'procedures/ac-output-check',
  loadPanel: 'procedures/ac-output-check',
};
