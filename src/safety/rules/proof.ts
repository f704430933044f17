import { hasDevice, hasZone } from '../energy.ts';
import { alwaysLive, type Zone } from '../plant.ts';
import { notIsolated, provedDead } from '../states.ts';
import { silentWork } from './hands.ts';
import {
  acceptedZones,
  earnedBy,
  energisedPpe,
  into,
  type Rule,
  type RuleEdge,
  type RuleNode,
} from './rule.ts';

const dcZones: readonly Zone[] = ['invDC', 'pvBus', 'pvRun', 'battBus'];

/** Zones with capacitors: what was taken out can creep back. */
const storing: readonly Zone[] = ['invDC', 'pvBus'];

/** A second look at the same pair, judged against the first. */
const readAgain = (node: RuleNode | undefined, zone: Zone): boolean =>
  node?.step.kind === 'measure' &&
  node.step.at?.includes(zone) === true &&
  Object.values(node.step.readings ?? {}).some(({ scale }) => scale.startsWith('not-rising'));

/** I2: live, dead, live: same tester, every pair and each pole to earth, on both ranges, all at or below the dead threshold. */
export const proofOrder: Rule = {
  id: 'I2',
  onGraph(graph) {
    for (const node of graph.nodes.values()) {
      const zone = node.step.proves;
      if (!zone) continue;
      for (const edge of node.edges) {
        if (!edge.when) continue;
        const calls = (key: string) =>
          edge.does.some((effect) => (effect as Record<string, unknown>)[key] === zone);
        if (!calls('measuredDead') && !calls('measuredLive'))
          return { path: node.path, reason: `${edge.outcome} of a dead test says nothing of its zone` };
        if (calls('measuredDead') && storing.includes(zone) && !readAgain(graph.nodes.get(edge.to), zone))
          return {
            path: node.path,
            reason: 'a zone that stores charge is not read again after half a minute',
          };
      }
    }
    return undefined;
  },
  onDeed({ node, edge, effect, before }) {
    if ('testerProved' in effect)
      return earnedBy(node, edge, ['live']) ? undefined : 'tester called good without a live reading';
    if (!('measuredDead' in effect)) return undefined;
    if (node.step.proves !== effect.measuredDead) return 'called dead by a step that is not its dead test';
    if (!before.tester) return 'tester not shown on a known live source just before';
    if (!earnedBy(node, edge, ['dead'])) return 'called dead by a reading that is not dead';
    const modes = Object.values(node.step.readings ?? {}).map((reading) => reading.mode);
    const count = (mode: string) => modes.filter((m) => m === mode).length;
    const [main, cross] = dcZones.includes(effect.measuredDead)
      ? ['dcVolts', 'acVolts']
      : ['acVolts', 'dcVolts'];
    return count(main!) >= 3 && count(cross!) >= 1
      ? undefined
      : 'every pair and each pole to earth, on the DC and on the AC range';
  },
};

/** I3: lock only an open device; take charge out only after all locks; measure dead only after that. */
export const order: Rule = {
  id: 'I3',
  onGraph: (graph) => silentWork(graph, 'discharge', ['bleed']),
  onDeed({ node, effect, before, variant }) {
    const device = 'lock' in effect ? effect.lock : 'tagPlus' in effect ? effect.tagPlus : undefined;
    if (device && hasDevice(before.closed, device)) return `${device} locked while closed`;
    if ('bleed' in effect) {
      if (notIsolated(before, variant).length > 0) return 'charge taken out before every lock is on';
      const { step } = node;
      const fit =
        step.kind === 'discharge' &&
        (step.hazards ?? []).length > 0 &&
        step.tools?.includes('bleed-resistor');
      return fit ? undefined : 'charge taken out other than through a rated resistor, as live work';
    }
    if ('waited' in effect && notIsolated(before, variant).length > 0)
      return 'waiting time counted before every lock is on';
    if ('measuredDead' in effect && hasZone(before.charged, effect.measuredDead))
      return 'dead test before charge had time or was taken out';
    return undefined;
  },
};

/** I14: an insulation test only on what is proved dead, electronics off, everyone clear; proved again after. */
export const insulationTest: Rule = {
  id: 'I14',
  onGraph(graph) {
    for (const { path, step, edges } of graph.nodes.values()) {
      if (!Object.values(step.readings ?? {}).some(({ mode }) => mode === 'insulation')) continue;
      const read = edges.filter((edge) => edge.when);
      if (!read.every((edge) => edge.does.some((effect) => 'insulationTest' in effect)))
        return { path, reason: 'an outcome says nothing of the test volts' };
      const sound = (edge: RuleEdge) => acceptedZones(edge).every((zone) => zone === 'sound');
      const onward = read.filter(sound).map((edge) => edge.to);
      if (read.some((edge) => !sound(edge) && onward.includes(edge.to)))
        return { path, reason: 'a leak goes on where sound insulation does' };
    }
    return undefined;
  },
  onDeed({ node, effect, before, graph }) {
    if (!('insulationTest' in effect)) return undefined;
    const zone = effect.insulationTest;
    if (!node.step.hazards?.includes('insulation-test-volts'))
      return 'no hazard statement for the test volts';
    if (!energisedPpe.every((item) => node.step.ppe?.includes(item)))
      return 'protective equipment not listed';
    const held = into(graph, node.path).every(
      ({ node: from }) =>
        from.step.kind === 'hold' &&
        ['everyone-clear', 'electronics-off'].every((id) => from.step.items?.some((item) => item.id === id)),
    );
    if (!held) return 'no hold that clears people and electronics first';
    if (zone === 'pvString') {
      if (!node.step.tools?.includes('array-insulation-tester'))
        return 'a lit array needs a tester made for it';
      return hasDevice(before.closed, 'pv') ? 'array still connected to the unit' : undefined;
    }
    return provedDead(before, zone) ? undefined : 'zone not proved dead';
  },
};

const deadModes = ['ohms', 'continuity', 'diode', 'capacitance', 'insulation'];

/** I21: ohms, continuity and the like only on what is proved dead; never on packs or strings. */
export const instrumentMode: Rule = {
  id: 'I21',
  onArrival({ node, energy, variant }) {
    const { step } = node;
    if (step.kind !== 'measure') return undefined;
    const modes = Object.values(step.readings ?? {}).map((reading) => reading.mode);
    const bad = modes.filter((mode) => deadModes.includes(mode));
    if (bad.length === 0) return undefined;
    for (const zone of step.at ?? []) {
      if (
        zone === 'pvString' &&
        bad.every((mode) => mode === 'insulation') &&
        step.tools?.includes('array-insulation-tester')
      )
        continue;
      if (alwaysLive.includes(zone)) return `${bad[0]} on ${zone}`;
      if (zone === 'control') {
        if (notIsolated(energy, variant).length > 0 || hasDevice(energy.closed, 'packs'))
          return 'both devices of a data pair must be off';
      } else if (!provedDead(energy, zone)) return `${bad[0]} on ${zone}, not proved dead`;
    }
    return (step.at ?? []).length === 0 ? `${bad[0]} at no stated zone` : undefined;
  },
};

/** A reading that shows volts on a zone that had been proved dead: get away (part of I28). */
export function voltsBack(effect: object, proved: number): boolean {
  return 'measuredLive' in effect && hasZone(proved, effect.measuredLive as Zone);
}

/** True when an outcome takes in a reading too close to call. */
export const takesUndetermined = (edge: Parameters<typeof acceptedZones>[0]): boolean =>
  acceptedZones(edge).includes('undetermined');
