/**
 * The parts of an install that the safety rules speak of: what can be switched, where a hand or a probe can be, and
 * which plants a guide must hold good on. Plain lists, so that a guide's author can read the words to use.
 */

/** A device that can hold a circuit open. A battery-management switch or a software "off" is never one of these. */
export const devices = ['packs', 'main', 'pv', 'pvOther', 'acOut', 'acIn', 'others'] as const;
/**
 * - `packs`: the breakers of the battery packs
 * - `main`: the DC main switch between bank and inverter
 * - `pv`: the isolator of the string under test; `pvOther`: those of every other string
 * - `acOut`: the breaker from the inverter's output to the load panel
 * - `acIn`: the isolator of the second source (generator or utility)
 * - `others`: the DC and AC isolators of every other inverter on the same bus or output
 */
export type Device = (typeof devices)[number];

/** Where conductors are. A neutral belongs to its zone and counts as live. */
export const zones = [
  'packPost',
  'battBus',
  'invDC',
  'pvString',
  'pvBus',
  'pvRun',
  'acOut',
  'loadPanel',
  'acIn',
  'inlet',
  'control',
] as const;
/**
 * - `packPost`: battery posts, live in every state
 * - `battBus`: battery side of the main switch (S1)
 * - `invDC`: inverter side of the main switch and the inverter's DC posts (S2, I)
 * - `pvString`: array side of the PV isolator, live in any light (P1)
 * - `pvBus`: inverter side of the PV isolator and the PV terminals (P2)
 * - `pvRun`: a PV run whose plugs are parted and capped at both ends: an ordinary zone again
 * - `acOut`, `loadPanel`, `acIn`, `inlet`: AC output terminals, load panel, AC-input terminals, generator inlet
 * - `control`: data link, low-voltage control
 */
export type Zone = (typeof zones)[number];

/** Zones that no isolator can make dead: the only verb there is `handleLive`. */
export const alwaysLive: readonly Zone[] = ['packPost', 'pvString'];

/** A kind of plant on which every guide must keep every rule. */
export interface Variant {
  /** Second source on the AC input. `autoStart`: it may start by itself. */
  source: 'none' | 'manual' | 'autoStart';
  packs: 'one' | 'several';
  inverters: 'one' | 'several';
  /** The main switch is rated to break direct current at the bank's volts and amps. */
  mainLoadBreak: boolean;
  /** The PV isolators are rated to break the string's current at its coldest volts. */
  pvLoadBreak: boolean;
  /** Isolators that only break current one way round: they count as non-load-break wherever current can flow both ways. */
  polarised: boolean;
  /** `unknown` means: treat as light. */
  daylight: 'day' | 'unknown';
}

/** Every plant variant the prover walks, the one with the most in it first (it breaks a bad guide soonest). */
export function allVariants(): Variant[] {
  const list: Variant[] = [];
  for (const source of ['autoStart', 'manual', 'none'] as const)
    for (const packs of ['several', 'one'] as const)
      for (const inverters of ['several', 'one'] as const)
        for (const mainLoadBreak of [false, true])
          for (const pvLoadBreak of [false, true])
            for (const polarised of [true, false])
              for (const daylight of ['unknown', 'day'] as const)
                list.push({ source, packs, inverters, mainLoadBreak, pvLoadBreak, polarised, daylight });
  return list;
}
