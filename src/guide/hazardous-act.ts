import { type Effect, isAct } from '../safety/effects.ts';
import type { Outcome, Step, StepId } from './vocabulary.ts';

/** Acts that take energy away and move nothing that carries current: they need no hazard of their own. */
function harmless(effect: Effect): boolean {
  return (
    'lock' in effect ||
    'unlock' in effect ||
    'tagPlus' in effect ||
    'waited' in effect ||
    ('inverter' in effect && effect.inverter === 'off') ||
    ('source' in effect && effect.source === 'stopped') ||
    ('autoStart' in effect && effect.autoStart === 'disabled') ||
    ('loads' in effect && effect.loads === 'off') ||
    ('resistor' in effect && effect.resistor === 'off') ||
    ('open' in effect && effect.open === 'acOut')
  );
}

function effectsOf(step: Step): readonly Effect[] {
  if (step.kind === 'end' || step.kind === 'perform') return [];
  const targets: readonly (StepId | Outcome)[] =
    (step.kind === 'measure' || step.kind === 'display') && step.rows
      ? step.rows
      : Object.values(step.outcomes ?? {});
  return targets.flatMap((target) => (typeof target === 'string' ? [] : (target.does ?? [])));
}

/** What a step does that needs a hazard statement before it, in a word; `undefined` when nothing does. */
export function hazardousAct(step: Step): string | undefined {
  if (step.kind === 'measure' && step.energised) return 'measures on live parts';
  if (step.kind === 'touch' || step.kind === 'handleLive' || step.kind === 'discharge') return step.kind;
  const act = effectsOf(step).find((effect) => isAct(effect) && !harmless(effect));
  return act ? Object.entries(act).flat().join(' ') : undefined;
}
