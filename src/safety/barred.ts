import type { Effect } from './effects.ts';
import { type BeginState, type Energy, hasDevice, hasZone } from './energy.ts';
import type { Device, Variant, Zone } from './plant.ts';
import { plantStateHolds, provedDead } from './states.ts';

/** Why a step may not be done just now. `state`: the plant is not as the step asks; the others: shown too long ago, or not since. */
export type Bar =
  | 'state'
  | 'current-not-shown'
  | 'tester-not-proved'
  /** The zone is proved dead and the proof stands: there is nothing to measure, and volts back mean "get away". */
  | 'already-proved'
  /** It tripped, and why is neither known nor ruled out. */
  | 'trip-not-explained'
  /** A cause found for a trip that nobody noted. */
  | 'trip-not-noted'
  | 'packs-not-alike'
  /** A neutral that was moved, or that nobody has shown to hold, with what leans on it. */
  | 'neutral-in-doubt'
  /** Signed volts on the source side are missing since the conductors were moved. */
  | 'polarity-not-proved'
  /** A PV device that is not made to make under load, and a tracker that may run. */
  | 'unit-running'
  /** Not to be opened under load: battery with inverter or loads on, output with loads on, AC input with its source running. */
  | 'under-load'
  /** The main switch is not to be left locked with the pre-charge resistor across it. */
  | 'resistor-still-on'
  /** A lock is not to come off before tools are out, covers on and people told. */
  | 'restore-not-ready'
  | 'sides-not-read'
  | 'not-precharged'
  | 'not-proved-dead';

/** A finding that an act leans on and that does not keep: missing or grown old. */
function perished(effect: Effect, e: Energy, variant: Variant, device: Device | undefined): Bar | undefined {
  if ('open' in effect && effect.open === 'main' && (e.inverterOn || e.loadsOn)) return 'under-load';
  // An output breaker is made to break its load, and a leg that runs high asks for just that.
  if ('open' in effect && effect.open === 'acOut' && e.loadsOn && device !== 'acOut') return 'under-load';
  if ('open' in effect && effect.open === 'others' && e.loadsOn) return 'under-load';
  if ('open' in effect && effect.open === 'acIn' && e.sourceRuns) return 'under-load';
  if ('open' in effect && effect.open === 'others' && !hasDevice(e.zero, 'others'))
    return 'current-not-shown';
  if ('open' in effect && (effect.open === 'main' || effect.open === 'pv' || effect.open === 'pvOther'))
    return hasDevice(e.zero, effect.open) ? undefined : 'current-not-shown';
  if ('measuredDead' in effect) {
    if (provedDead(e, effect.measuredDead)) return 'already-proved';
    return e.tester && !hasZone(e.charged, effect.measuredDead) ? undefined : 'tester-not-proved';
  }
  if ('unlock' in effect && !e.ready) return 'restore-not-ready';
  if ('measuredLive' in effect && provedDead(e, effect.measuredLive)) return 'already-proved';
  if ('neutral' in effect && effect.neutral === 'proved' && e.neutral === 'unproved')
    return 'neutral-in-doubt';
  if ('loads' in effect && effect.loads === 'on' && e.neutral !== 'sound') return 'neutral-in-doubt';
  if ('close' in effect && effect.close === 'acOut' && e.loadsOn && e.neutral !== 'sound')
    return 'neutral-in-doubt';
  if (('lock' in effect && effect.lock === 'main') || ('tagPlus' in effect && effect.tagPlus === 'main'))
    return e.resistorOn ? 'resistor-still-on' : undefined;
  if ('tripExplained' in effect && !hasDevice(e.tripped, effect.tripExplained)) return 'trip-not-noted';
  if ('close' in effect && hasDevice(e.tripped & ~e.explained, effect.close)) return 'trip-not-explained';
  if ('close' in effect && (effect.close === 'main' || effect.close === 'packs') && !e.packsAlike)
    return 'packs-not-alike';
  if (
    'close' in effect &&
    (effect.close === 'main' || effect.close === 'pv') &&
    !hasDevice(e.polarity, effect.close)
  )
    return 'polarity-not-proved';
  if ('close' in effect && effect.close === 'pv' && e.inverterOn && !variant.pvLoadBreak)
    return 'unit-running';
  if ('close' in effect && effect.close === 'main') {
    if (e.bothSides === 'unread') return 'sides-not-read';
    return e.bothSides === 'alike' || (e.precharged && e.resistorOn) ? undefined : 'not-precharged';
  }
  if ('precharged' in effect) return e.bothSides === 'unread' || !e.resistorOn ? 'sides-not-read' : undefined;
  if ('touch' in effect) return provedDead(e, effect.touch) ? undefined : 'not-proved-dead';
  if ('inlet' in effect)
    return provedDead(e, 'acIn') || provedDead(e, 'inlet') ? undefined : 'not-proved-dead';
  return undefined;
}

/**
 * Why a step is barred in this energy state, whichever way it was come to: by Back, a jump, a resumed visit, an address
 * typed, or a proof that ran out while it was on the screen. One definition serves the screen and the prover.
 * @returns `undefined` when the step may be done
 */
export function barredBy(
  node: {
    step: { state?: BeginState; at?: readonly Zone[]; device?: Device };
    edges: readonly { does: readonly Effect[] }[];
  },
  energy: Energy,
  variant: Variant,
): Bar | undefined {
  if (!plantStateHolds(node.step.state ?? 'any', energy, variant, node.step.at ?? [])) return 'state';
  for (const edge of node.edges) {
    const first = edge.does[0];
    const bar = first && perished(first, energy, variant, node.step.device);
    if (bar) return bar;
  }
  return undefined;
}
