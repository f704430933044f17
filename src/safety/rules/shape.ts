import type { Effect } from '../effects.ts';
import { actKeys } from '../effects.ts';
import { voltsBack } from './proof.ts';
import { into, type Rule, type RuleEdge, type RuleGraph, type RuleNode } from './rule.ts';

const verb = (effect: Effect) => Object.keys(effect)[0]!;
const object = (effect: Effect) => String(Object.values(effect)[0]).replace('pvOther', 'pv');

/** Effects a person walks up to: each stands behind a hold point. */
const heldBack = (effect: Effect) =>
  'touch' in effect ||
  'handleLive' in effect ||
  'bleed' in effect ||
  'plugs' in effect ||
  'insulationTest' in effect ||
  ('close' in effect && effect.close !== 'acOut') ||
  'liftNeutral' in effect;

const isSafeEdge = (edge: RuleEdge) =>
  !edge.does.some(
    (effect) =>
      'touch' in effect ||
      'handleLive' in effect ||
      'close' in effect ||
      'plugs' in effect ||
      'bleed' in effect,
  );

/** Nodes from which an end can be reached without hands on conductors and without closing anything. */
function canLeave(graph: RuleGraph, blocked: (node: RuleNode) => boolean): Set<string> {
  const good = new Set(
    [...graph.nodes.values()].filter((node) => node.step.kind === 'end').map((node) => node.path),
  );
  for (let grew = true; grew; ) {
    grew = false;
    for (const node of graph.nodes.values()) {
      if (good.has(node.path) || blocked(node)) continue;
      if (node.edges.some((edge) => edge.outcome !== 'stop' && isSafeEdge(edge) && good.has(edge.to))) {
        good.add(node.path);
        grew = true;
      }
    }
  }
  return good;
}

/** I12: a hold point has items, and one way on; hazardous work is reached only through one. */
export const holdPoint: Rule = {
  id: 'I12',
  onGraph(graph) {
    for (const node of graph.nodes.values()) {
      if (node.step.kind === 'hold') {
        if ((node.step.items ?? []).length === 0)
          return { path: node.path, reason: 'a hold point with nothing to meet' };
        const ways = node.edges.filter((edge) => !['cant', 'unsure', 'stop'].includes(edge.outcome));
        if (ways.length !== 1 || ways[0]!.outcome !== 'done')
          return { path: node.path, reason: 'a hold point with more than one way on' };
        const done = ways[0]!.to;
        if (node.edges.some((edge) => edge.outcome === 'cant' && edge.to === done))
          return { path: node.path, reason: 'its way out leads past it' };
        continue;
      }
      if (!node.edges.some((edge) => edge.does.some(heldBack))) continue;
      const bare = into(graph, node.path).find(
        ({ node: from, edge }) => from.step.kind !== 'hold' || edge.outcome !== 'done',
      );
      if (bare || node.path === graph.start)
        return {
          path: node.path,
          reason: `reached without a hold point${bare ? ` from ${bare.node.path}` : ''}`,
        };
    }
    return undefined;
  },
};

/** I13: from everywhere there is a way out with hands off. */
export const wayOut: Rule = {
  id: 'I13',
  onGraph(graph) {
    const good = canLeave(graph, () => false);
    for (const node of graph.nodes.values()) {
      if (node.step.kind === 'end') continue;
      for (const name of ['cant', 'unsure']) {
        const edge = node.edges.find(({ outcome }) => outcome === name);
        if (!edge) return { path: node.path, reason: `no "${name}"` };
        if (!isSafeEdge(edge) || !good.has(edge.to))
          return { path: node.path, reason: `"${name}" leads to no safe end` };
        if (edge.does.length > 0 && edge.does.some((effect) => !('dangerFound' in effect)))
          return { path: node.path, reason: `"${name}" claims something was done` };
      }
    }
    return undefined;
  },
};

/** I16: one action a step. */
export const oneAction: Rule = {
  id: 'I16',
  onGraph(graph) {
    for (const node of graph.nodes.values())
      for (const edge of node.edges) {
        const acts = edge.does.filter(
          (effect) => (actKeys as readonly string[]).includes(verb(effect)) && !('waited' in effect),
        );
        if (new Set(acts.map((effect) => `${verb(effect)} ${object(effect)}`)).size > 1 && !isHandling(acts))
          return { path: node.path, reason: 'more than one action' };
      }
    return undefined;
  },
};

/** Parting or joining a plug is one deed, though it is also handling live conductors. */
const isHandling = (acts: Effect[]) =>
  acts.every((effect) => 'handleLive' in effect || 'plugs' in effect) && acts.length === 2;

/** I18: every loop is counted and has a way out. */
export const boundedLoops: Rule = {
  id: 'I18',
  onGraph(graph) {
    const state = new Map<string, 'open' | 'closed'>();
    const trail: string[] = [];
    const visit = (path: string): string | undefined => {
      if (state.get(path) === 'closed') return undefined;
      if (state.get(path) === 'open') return path;
      state.set(path, 'open');
      trail.push(path);
      for (const edge of graph.nodes.get(path)?.edges ?? []) {
        const next = edge.limit ? [edge.limit.otherwise] : [edge.to];
        for (const to of next) {
          const loop = visit(to);
          if (loop) return loop;
        }
      }
      trail.pop();
      state.set(path, 'closed');
      return undefined;
    };
    const loop = visit(graph.start);
    return loop ? { path: loop, reason: 'a loop without a count' } : undefined;
  },
};

/** I28: smoke, smell, hissing, a tingle, water or volts back: offered at every step, and nothing follows it. */
export const stopAlways: Rule = {
  id: 'I28',
  onGraph(graph) {
    const end = graph.nodes.get(graph.stop);
    if (end?.step.kind !== 'end' || end.step.result !== 'leftGuarded')
      return { path: graph.stop, reason: 'stop does not lead to a guarded end' };
    for (const node of graph.nodes.values())
      if (
        node.step.kind !== 'end' &&
        !node.edges.some((edge) => edge.outcome === 'stop' && edge.to === graph.stop)
      )
        return { path: node.path, reason: 'stop is not offered' };
    return undefined;
  },
  onDeed({ edge, effect, before, graph }) {
    if (!voltsBack(effect, before.proved)) return undefined;
    return graph.nodes.get(edge.to)?.step.result === 'leftGuarded'
      ? undefined
      : 'work goes on with volts back on a zone proved dead';
  },
};
