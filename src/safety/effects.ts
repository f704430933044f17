import type { Device, Zone } from './plant.ts';

/**
 * What taking an outcome does to the plant, or shows of it. An author lists these on an outcome; the fold of all of them
 * is the energy state. Acts and findings are both here because both change what may safely come next.
 */
export type Effect =
  // Acts of the hands
  | { open: Device }
  | { close: Device }
  | { lock: Device }
  /** No lockable handle: a tag and one further measure, such as a removed and bagged link. */
  | { tagPlus: Device }
  | { unlock: Device }
  | { inverter: 'on' | 'off' }
  /** Stop or start the second source. */
  | { source: 'stopped' | 'running' }
  | { autoStart: 'disabled' | 'enabled' }
  /** Loads switched off at the panel or at the appliances. */
  | { loads: 'off' | 'on' }
  | { inlet: 'plugged' | 'unplugged' }
  /** Stored charge taken out through a rated resistor. */
  | { bleed: Zone }
  /** The waiting time on the unit's label has passed with every source locked off. */
  | { waited: Zone }
  /** Hands on conductors of a zone that is proved dead. */
  | { touch: Zone }
  /** Work on conductors that cannot be made dead. */
  | { handleLive: Zone }
  /** String plugs parted and capped at both ends / joined again. */
  | { plugs: 'parted' | 'joined' }
  | { liftNeutral: true }
  /** The pre-charge resistor switched on to or off from the open main switch. */
  | { resistor: 'on' | 'off' }
  | { insulationTest: Zone }
  | { enableCharging: true }
  /** A load-heavy lift. */
  | { lift: true }
  // What a reading or a look has shown
  /** A zeroed DC clamp on one conductor shows no current (0.5 A for PV, 2 A for a battery circuit). */
  | { zeroShown: Device }
  /** The clamp shows current that must not be broken here. */
  | { currentFlows: Device }
  /** The tester reads right on a known live source. */
  | { testerProved: true }
  /** Every pair and each pole to earth at or below the dead threshold, DC and AC, not rising. */
  | { measuredDead: Zone }
  /** The zone is not dead. */
  | { measuredLive: Zone }
  /** Signed volts on the source side of the open device agree with its marking, and its conductors are traced. */
  | { polarityProved: Device }
  /** Both sides of the open device read, signed: alike within 5 %, or apart. */
  | { bothSidesRead: 'alike' | 'apart' }
  /** Pre-charge finished: volts within 5 % inside five time constants, resistor still on. */
  | { precharged: true }
  /** Packs rested, within 0.1 V, and known to be at the same charge. */
  | { packsAlike: true }
  /** Same-named legs of two units within 5 V for 60 s. */
  | { inStep: true }
  /** A sign of a lost neutral / 120 V loads off and V12, V1, V2 in band / then one test load on one leg and still in band. */
  | { neutral: 'inDoubt' | 'legsInBand' | 'proved' }
  /** Cell temperatures and lowest cell known and inside the label's charging limits. */
  | { cellsFitToCharge: true }
  /** A protective device was found tripped or its fuse blown / why it tripped is known or a short test is clear. */
  | { tripped: Device }
  | { tripExplained: Device }
  /** Restore may begin: lugs torqued and marked, tools, leads and resistor out, covers on, people clear and told. */
  | { readyToRestore: true }
  /** The system does what it should after the last restore. */
  | { verified: true }
  | { verifyFailed: true }
  /** Someone named will come looking at a set time. */
  | { namedPerson: true }
  /** A second person is present, or the extra items for working alone are confirmed. */
  | { guardedWork: true }
  /** Something that could hurt a person was found and still stands / has been put right. */
  | { dangerFound: true }
  | { dangerCleared: true };

/** Effects that are deeds of the hands: they can be reversed by another deed, never undone by Back. */
export const actKeys = [
  'open',
  'close',
  'lock',
  'tagPlus',
  'unlock',
  'inverter',
  'source',
  'autoStart',
  'loads',
  'inlet',
  'bleed',
  'waited',
  'touch',
  'handleLive',
  'plugs',
  'liftNeutral',
  'resistor',
  'insulationTest',
  'enableCharging',
  'lift',
] as const;

/** True when the effect is a deed of the hands and not a finding. */
export function isAct(effect: Effect): boolean {
  return actKeys.some((key) => key in effect);
}
