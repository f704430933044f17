import { choices } from './choices.ts';
import { later } from './fetch-later.ts';
import type { BuildControls } from './host.ts';
import { readings } from './readings.ts';
import type { Stage } from './stage.ts';

/** What builds the controls of each kind of step. The later kinds are here once their step was made ready. */
export function controlsOf(kind: string, stage: Stage): BuildControls {
  const more = later();
  switch (kind) {
    case 'measure':
    case 'display':
      return readings;
    case 'hold':
      return more!.hold;
    case 'pair':
      return more!.pairing;
    case 'wait':
      return more!.wait;
    case 'workOut':
      return more!.work;
    case 'verdict':
      return more!.verdict(stage);
    case 'end':
      return more!.ending(stage);
    default:
      return choices;
  }
}
