import type { Effect } from '../effects.ts';
import type { BeginState, Energy } from '../energy.ts';
import type { Variant, Zone } from '../plant.ts';

/** The rules of the safety model, by number. `verdict` guards that no verdict says more than its readings. */
export const ruleIds = [
  ...Array.from({ length: 28 }, (_, i) => `I${i + 1}` as const),
  'verdict',
] as readonly string[];

/** What a rule needs to know of a step. A guide's own steps have this shape. */
export interface RuleStep {
  kind: string;
  state?: BeginState;
  at?: readonly Zone[];
  hazards?: readonly string[];
  ppe?: readonly string[];
  tools?: readonly string[];
  readings?: Readonly<Record<string, { mode: string; scale: string; signed?: boolean }>>;
  energised?: boolean;
  proves?: Zone;
  device?: string;
  items?: readonly { id: string; reading?: { step: string; reading: string; zones: readonly string[] } }[];
  result?: string;
  leaves?: readonly string[];
}

export interface RuleEdge {
  outcome: string;
  to: string;
  does: readonly Effect[];
  when?: Readonly<Record<string, string | readonly string[]>>;
  limit?: { otherwise: string };
}

export interface RuleNode {
  path: string;
  step: RuleStep;
  edges: readonly RuleEdge[];
}

/** The whole graph, for rules about its shape. */
export interface RuleGraph {
  start: string;
  stop: string;
  nodes: ReadonlyMap<string, RuleNode>;
}

/** An effect about to be applied. */
export interface Deed {
  node: RuleNode;
  edge: RuleEdge;
  effect: Effect;
  before: Energy;
  variant: Variant;
  graph: RuleGraph;
}

/** A step about to be done in an energy state in which it is allowed. */
export interface Arrival {
  node: RuleNode;
  energy: Energy;
  variant: Variant;
  graph: RuleGraph;
}

/** A safety rule as predicates. Each gives a short reason when the rule is broken, in the words of a maintainer. */
export interface Rule {
  id: string;
  onDeed?(deed: Deed): string | undefined;
  onArrival?(arrival: Arrival): string | undefined;
  onGraph?(graph: RuleGraph): { path: string; reason: string } | undefined;
}

/** Names of protective equipment that every energised measurement asks for. */
export const energisedPpe = ['rated-gloves', 'eye-protection'] as const;

/** The zones a row accepts for its readings, flattened. */
export function acceptedZones(edge: RuleEdge): string[] {
  return Object.values(edge.when ?? {}).flatMap((zones) =>
    typeof zones === 'string' ? [zones] : [...zones],
  );
}

/** True when the outcome was earned by readings that all fell in the named zones (every reading of the step named). */
export function earnedBy(node: RuleNode, edge: RuleEdge, zonesAllowed: readonly string[]): boolean {
  const readings = Object.keys(node.step.readings ?? {});
  return (
    node.step.kind === 'measure' &&
    readings.length > 0 &&
    readings.every((id) => edge.when?.[id] !== undefined) &&
    acceptedZones(edge).every((zone) => zonesAllowed.includes(zone))
  );
}

/** Nodes that lead to a node by any outcome. */
export function into(graph: RuleGraph, path: string): { node: RuleNode; edge: RuleEdge }[] {
  const list: { node: RuleNode; edge: RuleEdge }[] = [];
  for (const node of graph.nodes.values())
    for (const edge of node.edges)
      if (edge.to === path || edge.limit?.otherwise === path) list.push({ node, edge });
  return list;
}
