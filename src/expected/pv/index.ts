import type { ScaleDef } from '../context.ts';
import { otherScales } from './amps.ts';
import { batteryScales } from './battery.ts';
import { voltScales } from './volts.ts';

export { pvWorks } from './works.ts';

/** Expected bands of a PV string and of what its tracker waits for. */
export const pvScales: readonly ScaleDef[] = [...voltScales, ...otherScales, ...batteryScales];
