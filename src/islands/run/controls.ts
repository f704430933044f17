import { choices } from './choices.ts';
import type { BuildControls } from './host.ts';
import { part } from './parts.ts';
import { readings } from './readings.ts';
import type { Stage } from './stage.ts';

/** What builds the controls of each kind of step. The later kinds are here once their step was made ready. */
export function controlsOf(kind: string, stage: Stage): BuildControls {
  switch (kind) {
    case 'measure':
    case 'display':
      return readings;
    case 'hold':
      return part('steps').hold;
    case 'pair':
      return part('pairing').pairing;
    case 'wait':
      return part('steps').wait;
    case 'workOut':
      return part('steps').work;
    case 'verdict':
      return part('ends').verdict(stage);
    case 'end':
      return part('ends').ending(stage);
    default:
      return choices;
  }
}
