import type { WaitDef } from '../context.ts';

/** Metal and air follow a change of load slowly: ten to fifteen minutes. Common practice. */
export const heatWaits: readonly WaitDef[] = [{ id: 'heat-settle', seconds: () => 15 * 60 }];
