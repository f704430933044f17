import type { WorkDef } from '../context.ts';
import { foundWorks } from './found-works.ts';
import { lineWorks } from './line-works.ts';
import { retestWorks } from './retest-works.ts';
import { stepWorks } from './step-works.ts';

export { legScales } from './scales.ts';

/** Arithmetic that decides a step of the guide on uneven legs. */
export const legWorks: readonly WorkDef[] = [...foundWorks, ...stepWorks, ...lineWorks, ...retestWorks];
