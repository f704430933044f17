import { choices } from './choices.ts';
import { ending } from './ending.ts';
import { hold } from './hold.ts';
import type { BuildControls } from './host.ts';
import type { Plate } from './plate.ts';
import { readings } from './readings.ts';
import { verdict } from './verdict.ts';
import { wait } from './wait.ts';
import { work } from './work.ts';

/** What builds the controls of each kind of step. */
export function controlsOf(
  kind: string,
  root: HTMLElement,
  plateOf: (block: string) => Plate | undefined,
): BuildControls {
  switch (kind) {
    case 'measure':
    case 'display':
      return readings;
    case 'hold':
      return hold;
    case 'wait':
      return wait;
    case 'workOut':
      return work;
    case 'verdict':
      return verdict(root, plateOf);
    case 'end':
      return ending(root, plateOf);
    default:
      return choices;
  }
}
