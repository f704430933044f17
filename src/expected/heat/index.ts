import type { ScaleDef } from '../context.ts';
import { airScales } from './air.ts';
import { partScales } from './parts.ts';

export { heatWaits } from './waits.ts';
export { heatWorks } from './works.ts';

/** Expected bands of a unit's load, heat and air. */
export const heatScales: readonly ScaleDef[] = [...airScales, ...partScales];
