import type { ScaleDef, WorkDef } from '../context.ts';
import { otherScales } from './amps.ts';
import { batteryScales } from './battery.ts';
import { betweenWorks } from './between.ts';
import { groundWorks } from './ground-works.ts';
import { voltScales } from './volts.ts';
import { stringWorks } from './works.ts';

/** Expected bands of a PV string and of what its tracker waits for. */
export const pvScales: readonly ScaleDef[] = [...voltScales, ...otherScales, ...batteryScales];

/** Arithmetic that decides a step of the PV guide. */
export const pvWorks: readonly WorkDef[] = [...stringWorks, ...groundWorks, ...betweenWorks];
