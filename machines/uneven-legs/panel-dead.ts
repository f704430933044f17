import type { Reading } from '../../src/guide/vocabulary.ts';
import { every } from '../procedures/prove-dead/pairs.ts';
import { liveAc, type Steps } from './steps.ts';

const isolated = { cant: 'left-open', unsure: 'left-open' } as const;

const panelPairs: Record<string, Reading> = {
  'hots-ac': { point: 'D-V1', scale: 'dead-ac', mode: 'acVolts' },
  'hots-earth-ac': { point: 'D-L1G', scale: 'dead-ac', mode: 'acVolts' },
  'neutral-earth-ac': { point: 'D-NG', scale: 'dead-ac', mode: 'acVolts' },
  'largest-dc': { point: 'D-V1', scale: 'dead-dc', mode: 'dcVolts' },
};

const tester = {
  kind: 'measure',
  state: 'lockedOut',
  at: ['control'],
  hazards: ['unproved-tester'],
  tools: ['meter-cat3-1000', 'proving-source'],
  minutes: 2,
  readings: {
    dc: { point: 'proving-source', scale: 'known-live-dc', mode: 'dcVolts' },
    ac: { point: 'proving-source', scale: 'known-live-ac', mode: 'acVolts' },
  },
} as const;

/** The load panel is a place of work of its own: loads can feed back into it, so it is proved dead there, and then worked on. */
export const panelDead = {
  'panel-tester': {
    ...tester,
    rows: [
      { id: 'live', when: { dc: 'live', ac: 'live' }, to: 'panel-dead', does: [{ testerProved: true }] },
      { id: 'not-live', when: {}, to: 'left-open' },
    ],
    ...isolated,
  },
  'panel-dead': {
    kind: 'measure',
    state: 'lockedOut',
    at: ['loadPanel'],
    proves: 'loadPanel',
    ...liveAc,
    hazards: ['ac-backfeed', 'ac-shock'],
    minutes: 4,
    readings: panelPairs,
    rows: [
      {
        id: 'dead',
        when: every(panelPairs, 'dead'),
        to: 'panel-tester-after',
        does: [{ measuredDead: 'loadPanel' }],
      },
      { id: 'not-dead', when: {}, to: 'left-guarded', does: [{ measuredLive: 'loadPanel' }] },
    ],
    ...isolated,
  },
  'panel-tester-after': {
    ...tester,
    rows: [
      { id: 'live', when: { dc: 'live', ac: 'live' }, to: 'panel-ready', does: [{ testerProved: true }] },
      { id: 'not-live', when: {}, to: 'left-open' },
    ],
    ...isolated,
  },
  'panel-ready': {
    kind: 'hold',
    state: 'dead',
    at: ['loadPanel'],
    hazards: ['ac-backfeed'],
    items: [{ id: 'photo-taken' }, { id: 'torque-known' }, { id: 'right-parts' }],
    outcomes: { done: 'mend-panel' },
    ...isolated,
  },
  'mend-panel': {
    kind: 'touch',
    state: 'dead',
    at: ['loadPanel'],
    hazards: ['ac-backfeed'],
    ppe: ['rated-gloves', 'eye-protection'],
    tools: ['insulated-tools', 'torque-driver', 'marker-pen'],
    minutes: 30,
    outcomes: { done: { to: 'bring-back', does: [{ touch: 'loadPanel' }] }, 'not-today': 'left-open' },
    ...isolated,
  },
} as const satisfies Steps;
