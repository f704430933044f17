import type { HoldItem, Step, StepId } from '../src/guide/vocabulary.ts';

/** Parts of steps that many machines share. Data only: what is worn and held, and what is confirmed on leaving. */

/** One chapter of a procedure: its steps by id. */
export type Steps = Readonly<Record<StepId, Step>>;

/** Probes or a clamp on battery-side conductors that may be live. */
export const dcLive = {
  energised: true,
  hazards: ['battery-short', 'live-metering'],
  ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
  tools: ['meter-cat3-600'],
} as const;

/** A zeroed DC clamp round one battery cable. */
export const dcClampLive = { ...dcLive, tools: ['meter-cat3-600', 'dc-clamp'] } as const;

/** Probes on PV conductors: the meter is rated above the coldest string volts. */
export const pvLive = {
  energised: true,
  hazards: ['pv-live-in-light', 'pv-shock', 'meter-rating'],
  ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
  tools: ['meter-cat3-1000'],
} as const;

/** A zeroed DC clamp round one PV conductor. */
export const pvClampLive = {
  energised: true,
  hazards: ['pv-arc', 'pv-live-in-light', 'meter-rating'],
  ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
  tools: ['meter-cat3-1000', 'dc-clamp'],
} as const;

/** Probes or a clamp on AC terminals. */
export const acLive = {
  energised: true,
  hazards: ['ac-shock', 'live-metering'],
  ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
  tools: ['meter-cat3-600'],
} as const;

/** Worn at the handle of a battery switch. */
export const batteryHandlePpe = ['rated-gloves', 'eye-protection', 'face-shield', 'no-metal-worn'] as const;

/** Confirmed before walking away from a plant that could not be made safe. */
export const guardedItems: readonly HoldItem[] = [
  { id: 'nobody-near' },
  { id: 'area-closed' },
  { id: 'owner-told' },
  { id: 'return-time' },
];

/** Confirmed before walking away from a plant that stays isolated. */
export const isolatedItems: readonly HoldItem[] = [
  { id: 'tags-on' },
  { id: 'covers-on' },
  { id: 'owner-told' },
];

/** Confirmed after getting away from smoke, smell, heat, water or a tingle. */
export const stoppedItems: readonly HoldItem[] = [
  { id: 'people-out' },
  { id: 'area-closed' },
  { id: 'help-called' },
  { id: 'owner-told' },
  { id: 'return-time' },
];
