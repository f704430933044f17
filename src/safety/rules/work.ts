import { hasDevice, hasZone } from '../energy.ts';
import { plantStateHolds } from '../states.ts';
import { earnedBy, energisedPpe, type Rule, type RuleEdge, type RuleNode } from './rule.ts';

/** Every reading of the step speaks for the outcome, and not all of them may be too close to call. */
const shownBy = (node: RuleNode, edge: RuleEdge): boolean => {
  const zones = Object.keys(node.step.readings ?? {}).map((id) => [edge.when?.[id] ?? []].flat());
  return zones.every((list) => list.length > 0) && zones.some((list) => !list.includes('undetermined'));
};

/** I8: nothing goes back on before tools are out and people told; every restore is checked. Ends are judged by the prover. */
export const restore: Rule = {
  id: 'I8',
  onDeed({ node, edge, effect, before }) {
    if ('readyToRestore' in effect) {
      const items = (node.step.items ?? []).map((item) => item.id);
      const need = ['tools-out', 'covers-on', 'people-told'];
      return node.step.kind === 'hold' && need.every((id) => items.includes(id))
        ? undefined
        : 'ready called without its hold';
    }
    if ('verified' in effect)
      return shownBy(node, edge) ? undefined : 'called working on less than every reading';
    if ('close' in effect && hasDevice(before.held, effect.close)) return 'closed with a lock still on';
    return 'unlock' in effect && !before.ready ? 'a lock came off before the work was made ready' : undefined;
  },
};

const probeModes = ['dcVolts', 'acVolts', 'lowZVolts', 'dcClamp', 'acClamp', 'frequency'];

/** I11: measuring on live parts is energised work: rated meter, leads and clamp, equipment worn, hazard shown. */
export const energisedMeasurement: Rule = {
  id: 'I11',
  onArrival({ node, energy, variant }) {
    const { step } = node;
    if (step.kind !== 'measure') return undefined;
    const probes = Object.values(step.readings ?? {}).some((reading) => probeModes.includes(reading.mode));
    if (!probes) return undefined;
    const at = step.at ?? [];
    if (at.length === 0) return 'probes at no stated zone';
    if (at.every((zone) => zone === 'control')) return undefined;
    const dead =
      !step.proves &&
      plantStateHolds('dead', energy, variant, at) &&
      at.every((zone) => hasZone(energy.proved, zone));
    if (dead) return undefined;
    if (!step.energised) return 'measured on live parts and not marked so';
    if ((step.hazards ?? []).length === 0) return 'no hazard statement';
    if (!energisedPpe.every((item) => step.ppe?.includes(item))) return 'protective equipment not listed';
    return step.tools?.some((tool) => tool.startsWith('meter-')) ? undefined : 'meter rating not stated';
  },
};

/** I15: charging only when cell temperatures and the lowest cell are known to allow it. */
export const chargingEnable: Rule = {
  id: 'I15',
  onDeed({ node, edge, effect, before }) {
    if ('cellsFitToCharge' in effect) {
      const shown =
        node.step.kind === 'display' &&
        Object.keys(node.step.readings ?? {}).every((id) => edge.when?.[id] === 'ok');
      return shown ? undefined : 'cells called fit without their figures';
    }
    return 'enableCharging' in effect && !before.cellsFit
      ? 'charging enabled with cells not known to be fit'
      : undefined;
  },
};

/** I17: what a step presumes of the plant holds when it is reached. */
export const precondition: Rule = {
  id: 'I17',
  onArrival({ node, energy, variant }) {
    const state = node.step.state ?? 'any';
    return plantStateHolds(state, energy, variant, node.step.at) ? undefined : `the step asks for ${state}`;
  },
};

/** I24: one way in for a generator; its lead moves only with the engine stopped, auto-start off and the pins dead. */
export const generatorInlet: Rule = {
  id: 'I24',
  onDeed({ node, effect, before }) {
    if ('source' in effect && effect.source === 'running' && !node.step.hazards?.includes('co-fumes'))
      return 'engine run without the fumes statement';
    if ('source' in effect && effect.source === 'stopped' && before.autoStart)
      return 'stopped while it may still start by itself';
    if (!('inlet' in effect)) return undefined;
    if (before.sourceRuns) return 'inlet moved with the engine running';
    if (before.autoStart) return 'inlet moved with auto-start enabled';
    return hasZone(before.proved, 'inlet') || hasZone(before.proved, 'acIn')
      ? undefined
      : 'inlet pins not proved dead';
  },
};

/** I26: a neutral that was moved is proved with 120 V loads off, then with one test load, before any load goes on. */
export const neutralProof: Rule = {
  id: 'I26',
  onDeed({ node, edge, effect, before, variant }) {
    if ('close' in effect && effect.close === 'acOut' && before.loadsOn && before.neutral !== 'sound')
      return 'output closed onto loads with the neutral in doubt';
    if ('neutral' in effect) {
      if (effect.neutral === 'inDoubt') return undefined;
      if (!earnedBy(node, edge, ['ok'])) return 'neutral called sound without its readings';
      if (effect.neutral === 'legsInBand')
        return before.loadsOn ? 'first legs reading with loads on' : undefined;
      return before.neutral === 'unproved' ? 'test load before the unloaded readings' : undefined;
    }
    if ('liftNeutral' in effect)
      return plantStateHolds('lockedOut', before, variant)
        ? undefined
        : 'neutral lifted with a hot pole closed';
    return 'loads' in effect && effect.loads === 'on' && before.neutral !== 'sound'
      ? 'loads put on a neutral in doubt'
      : undefined;
  },
};
