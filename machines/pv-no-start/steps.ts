import type { Step, StepId } from '../../src/guide/vocabulary.ts';

/** One chapter of the guide: its steps by id. */
export type Steps = Readonly<Record<StepId, Step>>;

/** What every measurement on live PV conductors asks for. */
export const livePv = {
  energised: true,
  hazards: ['pv-shock', 'meter-rating'],
  ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
  tools: ['meter-cat3-1000'],
} as const;

/** The same with a clamp round one insulated conductor. */
export const clampPv = { ...livePv, tools: ['meter-cat3-1000', 'dc-clamp'] } as const;
