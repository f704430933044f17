import { hasDevice, hasZone } from '../energy.ts';
import { alwaysLive, type Device } from '../plant.ts';
import { notIsolated, provedDead } from '../states.ts';
import { energisedPpe, type Rule, type RuleGraph } from './rule.ts';

/** A step of hands-on work of which no outcome says what the hands did: the plant would pass for untouched. */
export function silentWork(
  graph: RuleGraph,
  kind: string,
  deeds: readonly string[],
): { path: string; reason: string } | undefined {
  for (const node of graph.nodes.values())
    if (
      node.step.kind === kind &&
      !node.edges.some((edge) => edge.does.some((effect) => deeds.includes(Object.keys(effect)[0]!)))
    )
      return { path: node.path, reason: 'no outcome says what the hands did' };
  return undefined;
}

/** I1: hands touch a conductor only where every way to it is open and held, charge is gone, and it is proved dead here. */
export const touch: Rule = {
  id: 'I1',
  onGraph: (graph) => silentWork(graph, 'touch', ['touch']),
  onDeed({ node, effect, before, variant }) {
    if (!('touch' in effect)) return undefined;
    const zone = effect.touch;
    if (node.step.kind !== 'touch' || !node.step.at?.includes(zone))
      return 'hands on conductors in a step that does not say so';
    if (alwaysLive.includes(zone)) return `${zone} is always live`;
    if ((node.step.hazards ?? []).length === 0) return 'no hazard statement';
    if (zone === 'pvRun' && !before.plugsParted) return 'the run is still plugged in';
    if (!hasZone(before.voided, zone) && !provedDead(before, zone)) return `${zone} was never proved dead`;
    if (hasZone(before.charged, zone)) return `${zone} may hold charge`;
    if (notIsolated(before, variant).some((device) => device === 'main' || device === 'pv'))
      return 'battery or PV not open and held';
    return undefined;
  },
};

/** I4: a proof ends with any close, unlock, start, wake, new day, hand-over or after its time. */
export const invalidation: Rule = {
  id: 'I4',
  onDeed({ effect, before }) {
    if (!('touch' in effect)) return undefined;
    return !provedDead(before, effect.touch) && hasZone(before.voided, effect.touch)
      ? 'the proof was voided since it was made'
      : undefined;
  },
};

/** I9: every source counts, not only the battery. */
export const everySource: Rule = {
  id: 'I9',
  onDeed({ effect, before, variant }) {
    if (!('touch' in effect) || effect.touch === 'pvRun') return undefined;
    const left: Device[] = notIsolated(before, variant).filter(
      (device) => device === 'acIn' || device === 'others' || device === 'pvOther',
    );
    // A load with a source of its own feeds back through the output breaker.
    const output =
      effect.touch === 'acOut' && (hasDevice(before.closed, 'acOut') || !hasDevice(before.held, 'acOut'));
    if (output) left.push('acOut');
    return left.length > 0 ? `still connected: ${left.join(', ')}` : undefined;
  },
};

/** I19: conductors that are always live are only ever handled as live, with what that asks for. */
export const alwaysLiveZones: Rule = {
  id: 'I19',
  onGraph: (graph) => silentWork(graph, 'handleLive', ['handleLive', 'plugs']),
  onDeed({ node, effect, before }) {
    if ('plugs' in effect) {
      if (node.step.kind !== 'handleLive') return 'string plugs moved in a step that is not live work';
      if (!hasDevice(before.zero, 'pv') && hasDevice(before.closed, 'pv'))
        return 'string plugs moved without zero current shown';
      if (hasDevice(before.closed, 'pv')) return 'string plugs moved with the isolator closed';
      if (!energisedPpe.every((item) => node.step.ppe?.includes(item)))
        return 'protective equipment not listed';
      return (node.step.hazards ?? []).length === 0 ? 'no hazard statement' : undefined;
    }
    if (!('handleLive' in effect)) return undefined;
    const { step } = node;
    if (step.kind !== 'handleLive' || !step.at?.includes(effect.handleLive))
      return 'live work in a step that does not say so';
    if (!alwaysLive.includes(effect.handleLive)) return 'live work where the zone can be made dead';
    if ((step.hazards ?? []).length === 0) return 'no hazard statement';
    if (!energisedPpe.every((item) => step.ppe?.includes(item))) return 'protective equipment not listed';
    if (effect.handleLive === 'pvString') {
      if (hasDevice(before.flows, 'pv')) return 'current flows in the string';
      return hasDevice(before.closed, 'pv') ? 'PV isolator closed' : undefined;
    }
    if (hasDevice(before.closed, 'main') || hasDevice(before.closed, 'packs'))
      return 'pack not off, or its circuit not open at the other end';
    return step.ppe?.includes('face-shield') && step.tools?.includes('insulated-tools')
      ? undefined
      : 'face protection and insulated tools';
  },
};

/** I22: who must know, and who must be there. */
export const people: Rule = {
  id: 'I22',
  onArrival({ node, energy }) {
    if (!node.step.energised) return undefined;
    return energy.namedPerson
      ? undefined
      : 'energised work before someone named will come looking at a set time';
  },
  onDeed({ effect, before }) {
    const bare = 'handleLive' in effect && effect.handleLive === 'packPost';
    if ((bare || 'lift' in effect) && !before.guardedWork)
      return 'needs a second person or the extra items for working alone';
    return undefined;
  },
};
