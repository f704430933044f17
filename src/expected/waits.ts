import type { WaitDef } from './context.ts';
import { coolSeconds } from './pre-charge-works.ts';
import { runString } from './pv/site.ts';

const minute = 60;

/** Where a label is silent, the longest in common use. Common practice throughout. */
const silent = {
  /** Stored charge in an inverter of this class. */
  storedChargeS: 10 * minute,
  /** From enough volts to a running tracker. */
  trackerStartS: 5 * minute,
} as const;

/** Every wait that a step may ask for. */
export const waitList: readonly WaitDef[] = [
  {
    id: 'label-wait',
    seconds: ({ sheet }) => sheet.inverter.storedChargeWaitS ?? silent.storedChargeS,
  },
  /** A tracker ramps down after its unit is stopped. */
  { id: 'tracker-stop', seconds: () => minute },
  {
    id: 'tracker-start',
    seconds: (context) => {
      const run = runString(context);
      return (run.ok ? run.tracker.startDelayS : null) ?? silent.trackerStartS;
    },
  },
  { id: 'pre-charge-cool', seconds: coolSeconds },
  /** Fans, capacitors and screens settle before idle draw is read. */
  { id: 'idle-settle', seconds: () => 10 * minute },
  /** Units in lock stay in lock. Safety rule I25. */
  { id: 'in-step', seconds: () => minute },
  /** An array gives back the charge of an insulation test through the tester. */
  { id: 'test-settle', seconds: () => 2 * minute },
];
