import { batteryHandlePpe, type Steps } from '../../shared.ts';

/** The resistor, and what must be true before anything is clipped on. */
export const ready = {
  resistor: {
    kind: 'workOut',
    state: 'lockedOut',
    ask: 'pre-charge-resistor',
    facts: ['precharge.resistorOhm', 'precharge.ratedW'],
    minutes: 1,
    outcomes: { fits: 'ready', unfit: 'left-isolated' },
  },
  ready: {
    kind: 'hold',
    state: 'lockedOut',
    hazards: ['battery-short', 'bus-inrush'],
    ppe: batteryHandlePpe,
    tools: ['precharge-resistor', 'insulated-leads', 'meter-cat3-600', 'watch'],
    minutes: 4,
    items: [
      { id: 'units-off' },
      { id: 'sources-open' },
      { id: 'traced' },
      { id: 'own-switch' },
      { id: 'tools-out' },
      { id: 'covers-on' },
      { id: 'people-told' },
      { id: 'named-person' },
    ],
    outcomes: { done: { to: 'packs', does: [{ namedPerson: true }, { readyToRestore: true }] } },
  },
} as const satisfies Steps;
