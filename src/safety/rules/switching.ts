import { hasDevice } from '../energy.ts';
import type { Device, Variant } from '../plant.ts';
import { acceptedZones, earnedBy, type Rule, type RuleEdge, type RuleNode } from './rule.ts';

/** A polarised device counts as non-load-break in a battery circuit, where current can flow both ways. */
const mainBreaksLoad = (variant: Variant) => variant.mainLoadBreak && !variant.polarised;

/** I5: joining a charged side to an uncharged one asks for both sides read and, if apart, a finished pre-charge. */
export const precharge: Rule = {
  id: 'I5',
  onDeed({ node, edge, effect, before, variant }) {
    if ('bothSidesRead' in effect) {
      const signed = Object.values(node.step.readings ?? {}).filter((reading) => reading.signed).length >= 2;
      const zones =
        effect.bothSidesRead === 'alike' ? ['ok', 'alike'] : ['ok', 'absent', 'apart', 'undetermined'];
      return signed && earnedBy(node, edge, zones)
        ? undefined
        : 'both sides of the open device are not both read, signed and in band';
    }
    if ('precharged' in effect) {
      if (!before.resistorOn || before.bothSides === 'unread')
        return 'pre-charge called finished that was never begun';
      return earnedBy(node, edge, ['ok', 'complete'])
        ? undefined
        : 'pre-charge called finished on a reading that is not within 5 %';
    }
    if (!('close' in effect)) return undefined;
    const device = effect.close;
    if (device === 'packs' && hasDevice(before.closed, 'main'))
      return 'a pack joined to the bus with the main closed';
    const joins = device === 'main' || (device === 'others' && variant.inverters === 'several');
    if (!joins) return undefined;
    if (device === 'others') return before.inStep ? undefined : 'another unit joined without its own check';
    if (before.bothSides === 'unread') return 'both sides not read since it was opened';
    if (before.bothSides === 'alike') return undefined;
    if (!before.precharged) return 'bus not pre-charged';
    return before.resistorOn ? undefined : 'resistor taken off before the close';
  },
};

/** An outcome that tells whether current flows there. */
const saysOfCurrent = (edge: RuleEdge, device: Device): boolean =>
  edge.does.some(
    (effect) =>
      ('zeroShown' in effect && effect.zeroShown === device) ||
      ('currentFlows' in effect && effect.currentFlows === device),
  );

/** Devices of which some outcome of a step says whether current flows there. */
const toldOf = (node: RuleNode): Device[] =>
  node.edges.flatMap((edge) =>
    edge.does.flatMap((effect) =>
      'zeroShown' in effect ? [effect.zeroShown] : 'currentFlows' in effect ? [effect.currentFlows] : [],
    ),
  );

const noVoltsZones = ['absent', 'near-zero', 'slightly-negative'];

/** An outcome of a signed reading on strings behind their open handles that shows no volts, or next to none. */
const showsNoVolts = ({ step }: RuleNode, edge: RuleEdge): boolean =>
  step.kind === 'measure' &&
  step.state === 'pvOpen' &&
  (step.at ?? []).includes('pvString') &&
  Object.values(step.readings ?? {}).some(({ mode, signed }) => mode === 'dcVolts' && signed) &&
  acceptedZones(edge).some((zone) => noVoltsZones.includes(zone));

/** A clamp round the string, with no way past it that ends where "no current" leads. */
function isClampStep(node: RuleNode): boolean {
  const clamped = Object.values(node.step.readings ?? {}).some(({ mode }) => mode === 'dcClamp');
  const past = node.edges.filter((edge) => !edge.when).map((edge) => edge.to);
  return (
    clamped &&
    (node.step.at ?? []).includes('pvString') &&
    node.edges.every((edge) => !edge.does.some((effect) => 'zeroShown' in effect) || !past.includes(edge.to))
  );
}

/**
 * I6: a PV device moves only at no current, or where it is rated to break it. No volts behind an open handle says nothing
 * of the current: nothing comes, or everything flows through a contact that did not part. A clamp comes next.
 */
export const pvNoLoad: Rule = {
  id: 'I6',
  onGraph(graph) {
    for (const node of graph.nodes.values()) {
      const unclamped = node.edges.find((edge) => {
        const next = graph.nodes.get(edge.to);
        return showsNoVolts(node, edge) && next?.step.kind !== 'end' && !(next && isClampStep(next));
      });
      if (unclamped)
        return {
          path: node.path,
          reason: `${unclamped.outcome}: no volts, and no clamp before it goes on`,
        };
      for (const device of toldOf(node))
        for (const edge of node.edges)
          if (edge.when && !saysOfCurrent(edge, device))
            return {
              path: node.path,
              reason: `${edge.outcome} of a clamp reading says nothing of ${device}`,
            };
    }
    return undefined;
  },
  onDeed({ node, edge, effect, before, variant }) {
    if ('zeroShown' in effect)
      return earnedBy(node, edge, ['zero']) ? undefined : 'zero current called without a clamp reading';
    if ('plugs' in effect)
      return hasDevice(before.flows, 'pv') ? 'plug moved with current flowing' : undefined;
    const device = 'open' in effect ? effect.open : undefined;
    if (device !== 'pv' && device !== 'pvOther') return undefined;
    if (hasDevice(before.flows, device)) return 'handle moved with current flowing';
    if (hasDevice(before.zero, device)) return undefined;
    return variant.pvLoadBreak && !variant.polarised && !before.inverterOn
      ? undefined
      : 'no zero current shown on a zeroed clamp';
  },
};

/** I7: battery, PV, AC source, loads; and back in reverse. */
export const switchingOrder: Rule = {
  id: 'I7',
  onDeed({ effect, before, variant }) {
    const closed = (device: Parameters<typeof hasDevice>[1]) => hasDevice(before.closed, device);
    if ('close' in effect) {
      if ((effect.close === 'pv' || effect.close === 'pvOther') && !closed('main'))
        return 'PV joined before the battery';
      if (effect.close === 'acIn' && !closed('main')) return 'AC source joined before the battery';
      if (effect.close === 'main' && (closed('pv') || closed('pvOther')))
        return 'battery closed with PV already connected';
      if (
        effect.close === 'main' &&
        (before.inverterOn || (before.loadsOn && closed('acOut') && before.inverterOn))
      )
        return 'battery closed onto a running unit';
    }
    if ('inverter' in effect && effect.inverter === 'on' && !closed('main'))
      return 'unit started without its battery';
    if (!('open' in effect) || effect.open !== 'main') return undefined;
    if (before.loadsOn || before.inverterOn) return 'battery opened under load';
    if (closed('pv') || closed('pvOther')) return 'battery opened before PV';
    if (variant.source !== 'none' && closed('acIn')) return 'battery opened before the AC source';
    return hasDevice(before.zero, 'main') ? undefined : 'battery opened without zero current shown';
  },
};

/** I10: polarity and size proved, signed, on the source side of the open device before its first close after any conductor moved. */
export const polarity: Rule = {
  id: 'I10',
  onDeed({ node, edge, effect, before }) {
    if ('polarityProved' in effect) {
      const signed = Object.values(node.step.readings ?? {}).every((reading) => reading.signed);
      return signed && earnedBy(node, edge, ['ok'])
        ? undefined
        : 'polarity called on a reading without its sign, or out of band';
    }
    if (!('close' in effect) || (effect.close !== 'main' && effect.close !== 'pv')) return undefined;
    return hasDevice(before.polarity, effect.close)
      ? undefined
      : `polarity at ${effect.close} not proved since its conductors were moved`;
  },
};

/** I20: making or breaking under load only by a device made for it. */
export const underLoad: Rule = {
  id: 'I20',
  onDeed({ node, effect, before, variant }) {
    const device = 'open' in effect ? effect.open : 'close' in effect ? effect.close : undefined;
    if (device && node.step.kind !== 'operate') return 'a handle moved in a step that does not say so';
    if (device && device !== 'acOut' && (node.step.hazards ?? []).length === 0) return 'no hazard statement';
    if (
      'open' in effect &&
      effect.open === 'main' &&
      !hasDevice(before.zero, 'main') &&
      !mainBreaksLoad(variant)
    )
      return 'main opened without zero current shown';
    if ('open' in effect && effect.open === 'others') {
      if (before.loadsOn) return 'other units switched under load';
      if (!hasDevice(before.zero, 'others')) return 'other units opened without zero current shown';
    }
    if ('open' in effect && effect.open === 'acOut' && before.loadsOn && node.step.device !== 'acOut')
      return 'output opened under load';
    if ('open' in effect && effect.open === 'acIn' && before.sourceRuns)
      return 'AC input opened with its source running';
    if (
      'close' in effect &&
      (effect.close === 'pv' || effect.close === 'pvOther') &&
      before.inverterOn &&
      !variant.pvLoadBreak
    )
      return 'PV closed onto a running tracker by a device not made to make under load';
    if ('resistor' in effect && effect.resistor === 'on' && hasDevice(before.closed, 'main'))
      return 'pre-charge resistor across a closed switch';
    return undefined;
  },
};

/** I23: packs are joined only when alike in volts and known to be alike in charge. */
export const packsInParallel: Rule = {
  id: 'I23',
  onDeed({ effect, before, variant }) {
    if (variant.packs === 'one' || !('close' in effect)) return undefined;
    const joins = effect.close === 'packs' || (effect.close === 'main' && !before.packsAlike);
    if (!joins) return undefined;
    return before.packsAlike ? undefined : 'packs joined without knowing them alike';
  },
};

/** I25: AC outputs are joined only in step. */
export const joiningOutputs: Rule = {
  id: 'I25',
  onDeed({ node, edge, effect, before, variant }) {
    if ('inStep' in effect)
      return earnedBy(node, edge, ['ok', 'inStep']) ? undefined : 'called in step without the readings';
    if (variant.inverters === 'one' || !('close' in effect) || effect.close !== 'others') return undefined;
    return before.inStep ? undefined : 'outputs joined that were not shown in step';
  },
};

/** I27: after a trip, one re-close for each finding. */
export const reclose: Rule = {
  id: 'I27',
  onDeed({ effect, before }) {
    if ('tripExplained' in effect)
      return hasDevice(before.tripped, effect.tripExplained)
        ? undefined
        : 'a trip explained that was never noted';
    if (!('close' in effect)) return undefined;
    const device = effect.close;
    return hasDevice(before.tripped, device) && !hasDevice(before.explained, device)
      ? `${device} closed again after a trip with no finding`
      : undefined;
  },
};
