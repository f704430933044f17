import type { SiteSheet } from '../../site/sheet.ts';
import { randomFrom } from '../numeric/random.ts';
import { firstSubject, type Subject } from '../places.ts';
import { type Conditions, soundPlant } from '../site.ts';
import { asFound } from '../spec.ts';
import { batteryLink } from './battery-link.ts';
import { fansHeat } from './fans-heat.ts';
import type { Draft, Fault, Group, Sampled } from './fault.ts';
import { otherGroups } from './others.ts';
import { pvNoStart } from './pv-no-start.ts';
import { unevenLegs } from './uneven-legs.ts';

/** Every fault of every group. */
export const faults: readonly Fault[] = [
  ...pvNoStart,
  ...batteryLink,
  ...fansHeat,
  ...unevenLegs,
  ...otherGroups,
];

export const faultsOf = (group: Group): readonly Fault[] => faults.filter((fault) => fault.group === group);

export interface SampleInput {
  sheet: SiteSheet;
  /** Undefined: a plant in good order. */
  fault: Fault | undefined;
  /** The same seed, sheet and fault give the same plant. */
  seed: number;
  subject?: Subject;
  conditions?: Conditions;
}

/** A plant as found, with one cause or none. Undefined where the fault cannot be on this plant. */
export function samplePlant({
  sheet,
  fault,
  seed,
  subject = firstSubject,
  conditions,
}: SampleInput): Sampled | undefined {
  if (fault?.fits && !fault.fits(sheet)) return undefined;
  const random = randomFrom(seed);
  const making = { sheet, subject, random: random.fork('fault') };
  const spec = soundPlant(sheet, random.fork('sound'), { ...fault?.conditions?.(making), ...conditions });
  if (!spec) return undefined;
  const draft: Draft = { spec, state: asFound(spec) };
  const severity = fault?.make(draft, making) ?? {};
  // A fault may add loads or open handles; what it added is switched on.
  draft.state.loadsOn = spec.ac.loads.map((_, i) => draft.state.loadsOn[i] ?? true);
  return { plant: draft, fault, severity };
}
