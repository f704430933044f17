import type { Group } from '../plant/index.ts';
import { sameReadings } from './classes.ts';
import type { Visited } from './visit.ts';

/** Verdicts of a plant in good order, one a guide. */
const sound: readonly string[] = [
  'nothing-wrong',
  'legs-healthy',
  'heat-nothing-wrong',
  'fans-normal',
  'link-sound',
];
const saysSound = (causes: readonly string[]): boolean => causes.every((cause) => sound.includes(cause));

/** How a visit to a faulty plant came out. */
export type Result =
  /** The one cause, and no other before it. */
  | 'exact'
  /** Named together with others that read the same, all of one class of the fault list. */
  | 'class'
  /** Named together with others that no class holds together. */
  | 'mixed'
  /** Another cause. */
  | 'wrong'
  /** No cause was named. */
  | 'none'
  /** The guide did not get to an end. */
  | 'stuck';

export interface Scored {
  result: Result;
  /** Causes named at the end; one where exact. */
  size: number;
  /** What stands in the confusion table. */
  said: string;
}

/** Judges the causes last named; a verdict before it that left the true cause out makes it wrong. */
export function score(group: Group, cause: string, visited: Visited): Scored {
  const named = visited.verdicts.filter(({ causes }) => !saysSound(causes));
  const last = named.at(-1);
  const said = last
    ? last.causes.join(' or ')
    : visited.stuck
      ? `stuck at ${visited.endBlock}`
      : visited.endBlock;
  if (!last)
    return {
      result: visited.stuck ? 'stuck' : visited.verdicts.length > 0 ? 'wrong' : 'none',
      size: 0,
      said,
    };
  const size = last.causes.length;
  if (named.some(({ causes }) => !causes.includes(cause))) return { result: 'wrong', size, said };
  if (size === 1) return { result: 'exact', size, said };
  const inClass = sameReadings.some(
    (each) => each.group === group && last.causes.every((one) => each.causes.includes(one)),
  );
  return { result: inClass ? 'class' : 'mixed', size, said };
}

/** A plant in good order was told that something is wrong with it. Held back by a full battery is no condemnation. */
export const condemned = ({ verdicts, end }: Visited): boolean =>
  end !== 'healthy' && verdicts.some(({ causes }) => !saysSound(causes));
