import type { Machine } from '../src/guide/vocabulary.ts';
import batteryLink from './battery-link.ts';
import fansHeat from './fans-heat.ts';
import acOutputCheck from './procedures/ac-output-check.ts';
import firstPowerUp from './procedures/first-power-up.ts';
import isolate from './procedures/isolate.ts';
import joinUnitDc from './procedures/join-unit-dc.ts';
import neutralProof from './procedures/neutral-proof.ts';
import openString from './procedures/open-string.ts';
import preCharge from './procedures/pre-charge.ts';
import proveDead from './procedures/prove-dead.ts';
import restore from './procedures/restore.ts';
import restoreAc from './procedures/restore-ac.ts';
import stringCheck from './procedures/string-check.ts';
import pvNoStart from './pv-no-start.ts';
import unevenLegs from './uneven-legs.ts';

/** Every guide, in the order in which they are offered. */
export const guides: readonly Machine[] = [pvNoStart, fansHeat, batteryLink, unevenLegs];

/** Every procedure, in the order of a job: make safe, work, bring back. */
export const procedures: readonly Machine[] = [
  isolate,
  proveDead,
  openString,
  restore,
  preCharge,
  firstPowerUp,
  stringCheck,
  acOutputCheck,
  joinUnitDc,
  restoreAc,
  neutralProof,
];

export const proceduresById: Readonly<Record<string, Machine>> = Object.fromEntries(
  procedures.map((procedure) => [procedure.id, procedure]),
);
