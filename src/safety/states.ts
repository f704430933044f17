import { type BeginState, type Energy, fitted, hasDevice, hasZone, isolators } from './energy.ts';
import { alwaysLive, type Device, type Variant, type Zone } from './plant.ts';

const open = (e: Energy, device: Device) => !hasDevice(e.closed, device);
const openAndHeld = (e: Energy, device: Device) => open(e, device) && hasDevice(e.held, device);

/** Devices that still have to be opened or locked before the inverter's conductors are isolated from every source. */
export function notIsolated(e: Energy, variant: Variant): Device[] {
  return isolators(variant).filter((device) => !openAndHeld(e, device));
}

/** A zone is proved dead at this moment. */
export function provedDead(e: Energy, zone: Zone): boolean {
  return !alwaysLive.includes(zone) && hasZone(e.proved, zone);
}

const sourceOff = (e: Energy, variant: Variant) => variant.source === 'none' || open(e, 'acIn');
const othersOff = (e: Energy, variant: Variant) => variant.inverters === 'one' || open(e, 'others');
const batteryLive = (e: Energy) => hasDevice(e.closed, 'packs') && hasDevice(e.closed, 'main');

/**
 * True when the plant is in the state a step asks for. One definition serves the plate, the bar on jumps and the prover.
 * @param at the zones of the step: `dead` asks for a proof at each of them
 */
export function plantStateHolds(
  state: BeginState,
  e: Energy,
  variant: Variant,
  at: readonly Zone[] = [],
): boolean {
  switch (state) {
    case 'any':
      return true;
    case 'asFound':
      return batteryLive(e) && hasDevice(e.closed, 'pv') && e.inverterOn && asBegun(e) && e.verify !== 'owed';
    case 'running':
      return batteryLive(e) && hasDevice(e.closed, 'pv') && e.inverterOn;
    case 'noLoad':
      return batteryLive(e) && e.inverterOn && (!e.loadsOn || open(e, 'acOut'));
    case 'pvOpen':
      return openAndHeld(e, 'pv') && batteryLive(e);
    case 'mainOpen':
      return (
        open(e, 'main') &&
        open(e, 'pv') &&
        open(e, 'pvOther') &&
        sourceOff(e, variant) &&
        othersOff(e, variant) &&
        !e.inverterOn
      );
    case 'batteryOnly':
      return (
        batteryLive(e) &&
        open(e, 'pv') &&
        open(e, 'pvOther') &&
        sourceOff(e, variant) &&
        othersOff(e, variant) &&
        !e.loadsOn
      );
    case 'lockedOut':
      return notIsolated(e, variant).length === 0;
    case 'dead':
      return (
        notIsolated(e, variant).length === 0 &&
        at.filter((zone) => !alwaysLive.includes(zone)).every((zone) => provedDead(e, zone))
      );
  }
}

/** Nothing stands open that was closed when the run began, nor the other way round. */
const asBegun = (e: Energy) => e.closed === e.began && !e.plugsParted;

/** House loads are live on a neutral that nobody has shown to hold. */
const loadsInDoubt = (e: Energy) => e.loadsOn && !open(e, 'acOut') && e.inverterOn && e.neutral !== 'sound';

/** What the plant would be left like if the person walked away now. */
export function leftAs(e: Energy, variant: Variant): ('untouched' | 'restored' | 'isolated')[] {
  const list: ('untouched' | 'restored' | 'isolated')[] = [];
  if (loadsInDoubt(e)) return list;
  const quiet = !e.resistorOn && !e.danger;
  const opened = fitted(variant).filter((device) => open(e, device));
  if (asBegun(e) && quiet && e.verify === 'notOwed' && e.touched === 0 && e.inverterOn)
    list.push('untouched');
  const allBack = (e.began & ~e.closed) === 0 && e.held === 0 && !e.plugsParted && e.inverterOn && e.loadsOn;
  const starts = variant.source !== 'autoStart' || e.autoStart;
  if (allBack && starts && quiet && e.verify === 'passed') list.push('restored');
  // A pack that tripped or sleeps takes no lock, and needs none behind a locked main switch.
  const held = opened.every(
    (device) => device === 'acOut' || device === 'packs' || hasDevice(e.held, device),
  );
  const touchedSafe =
    e.touched === 0 || notIsolated(e, variant).length === 0 || (onlyPvTouched(e) && openAndHeld(e, 'pv'));
  if (opened.length > 0 && held && touchedSafe && !e.resistorOn) list.push('isolated');
  return list;
}

/** Only array-side conductors were handled: the string's own isolator keeps them from everything else. */
const onlyPvTouched = (e: Energy): boolean => !hasZone(e.touched, 'invDC');
