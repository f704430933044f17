export type { Steps } from '../shared.ts';

/** A thermometer held in air or against a cable's jacket, all covers on: no probe goes on a conductor. */
export const airTemp = {
  state: 'asFound',
  hazards: ['hot-surface', 'moving-parts'],
  tools: ['thermometer'],
  minutes: 3,
} as const;

/** The same on the plant as it runs again after work. */
export const airTempAgain = { ...airTemp, state: 'running' } as const;

/** One temperature, judged on a scale of this guide. */
export const tempOf = (point: string, scale: string) =>
  ({ point, scale, mode: 'temperature', signed: true }) as const;
