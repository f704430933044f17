import { type Energy, fitted, hasDevice, hasZone } from './energy.ts';
import type { Device, Variant, Zone } from './plant.ts';

/**
 * What an ending of a procedure promises to whoever performs it. The prover holds the procedure to it, so that a step
 * that matters to the caller cannot be lost without notice.
 */
export type Promised =
  | { closed: Device }
  | { opened: Device }
  /** Open, and held by a lock or by a tag and one further measure. */
  | { held: Device }
  | { unlocked: Device }
  | { provedDead: Zone }
  /** A zeroed clamp has just shown that no current flows there. */
  | { noCurrent: Device }
  | 'resistorOff'
  | 'loadsOn'
  | 'loadsOff'
  | 'inverterOff'
  /** The second source may start by itself again, where it did before. */
  | 'autoStart'
  | 'neutralSound'
  | 'verified';

const feedsAcIn: readonly Zone[] = ['acIn', 'inlet'];

/** True when the promise is kept. What a plant does not have cannot break one. */
export function kept(promise: Promised, e: Energy, variant: Variant): boolean {
  if (promise === 'resistorOff') return !e.resistorOn;
  if (promise === 'loadsOn') return e.loadsOn;
  if (promise === 'loadsOff') return !e.loadsOn;
  if (promise === 'inverterOff') return !e.inverterOn;
  if (promise === 'autoStart') return variant.source !== 'autoStart' || e.autoStart;
  if (promise === 'neutralSound') return e.neutral === 'sound';
  if (promise === 'verified') return e.verify === 'passed';
  if ('provedDead' in promise) {
    const zone = promise.provedDead;
    return (variant.source === 'none' && feedsAcIn.includes(zone)) || hasZone(e.proved, zone);
  }
  const device = Object.values(promise)[0] as Device;
  if (!fitted(variant).includes(device)) return true;
  if ('closed' in promise) return hasDevice(e.closed, device);
  if ('opened' in promise) return !hasDevice(e.closed, device);
  if ('noCurrent' in promise) return hasDevice(e.zero, device);
  if ('held' in promise) return !hasDevice(e.closed, device) && hasDevice(e.held, device);
  return !hasDevice(e.held, device);
}

/** A promise in a few words, for a maintainer. */
export const promiseText = (promise: Promised): string =>
  typeof promise === 'string' ? promise : Object.entries(promise).flat().join(' ');
