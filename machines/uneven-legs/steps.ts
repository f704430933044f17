import type { Step, StepId } from '../../src/guide/vocabulary.ts';

/** One chapter of the guide: its steps by id. */
export type Steps = Readonly<Record<StepId, Step>>;

/** Probes or a clamp on AC conductors that are live. */
export const liveAc = {
  energised: true,
  hazards: ['ac-shock', 'live-metering'],
  ppe: ['rated-gloves', 'eye-protection', 'no-metal-worn'],
  tools: ['meter-cat3-600'],
} as const;

/** The same with an AC clamp. */
export const clampAc = { ...liveAc, tools: ['meter-cat3-600', 'ac-clamp'] } as const;

/** Under a test load while the neutral is in doubt: one leg may stand near twice its volts. */
export const doubtfulAc = {
  ...liveAc,
  hazards: ['neutral-open', 'ac-shock', 'live-metering'],
  tools: ['meter-cat3-600', 'ac-clamp', 'test-load-1kw'],
} as const;

/** "I can't" and "not sure" once the output is open. */
export const leaveOpen = { cant: 'left-open', unsure: 'left-open' } as const;

/** "I can't" and "not sure" once the output is closed again. */
export const openAgain = { cant: 'open-again', unsure: 'open-again' } as const;
