import type { Flat, FlatEdge } from '../flatten.ts';
import type { Breach, PathStep } from './explore.ts';

/**
 * No verdict says more than its readings: every path to it took the outcomes it rests on, and took none of the others
 * of those steps since. Looked at on the graph alone, so it holds whatever the plant.
 */
export function unsupportedVerdicts(flat: Flat): Breach[] {
  const breaches = strayGrounds(flat);
  for (const node of flat.nodes.values()) {
    if (node.step.kind !== 'verdict') continue;
    const prefix = node.path.slice(0, node.path.lastIndexOf('/') + 1);
    const fail = (step: string, reason: string, path: PathStep[]) =>
      breaches.push({
        rule: 'verdict',
        reason: `${step}: ${reason}`,
        machine: flat.machine.id,
        step: node.path,
        path,
      });
    if (node.step.because.length === 0) fail(node.path, 'a verdict that rests on nothing', []);
    for (const { step, outcomes } of node.step.because) {
      const basis = flat.nodes.get(prefix + step);
      if (!basis) {
        fail(step, 'there is no such step', []);
        continue;
      }
      const absent = outcomes.filter((outcome) => !basis.edges.some((edge) => edge.outcome === outcome));
      if (absent.length > 0) fail(step, `it has no outcome ${absent.join(', ')}`, []);
      const supports = (path: string, edge: FlatEdge) =>
        path === basis.path && outcomes.includes(edge.outcome);
      const without = reach(flat, [flat.start], node.path, supports);
      if (without) fail(step, `reached without ${outcomes.join(' or ')}`, without);
      const others = basis.edges
        .filter((edge) => !outcomes.includes(edge.outcome) && edge.outcome !== 'stop')
        .map((edge) => edge.to);
      const since = reach(flat, others, node.path, supports);
      if (since) fail(step, `reached after another outcome was taken there`, since);
    }
  }
  return breaches;
}

/** What is said to speak against a cause names a cause, steps and outcomes that there are. */
function strayGrounds(flat: Flat): Breach[] {
  const { id, against = {}, start } = flat.machine;
  const named = new Set(
    [...flat.nodes.values()].flatMap(({ step }) => (step.kind === 'verdict' ? step.causes : [])),
  );
  const lost = Object.entries(against).flatMap(([cause, lists]) => [
    ...(named.has(cause) ? [] : [{ cause, what: 'no verdict names it' }]),
    ...lists.flat().flatMap(({ step, outcomes }) => {
      const edges = flat.nodes.get(step)?.edges;
      if (!edges) return [{ cause, what: `there is no step ${step}` }];
      const absent = outcomes.filter((outcome) => !edges.some((edge) => edge.outcome === outcome));
      return absent.length > 0 ? [{ cause, what: `${step} has no outcome ${absent.join(', ')}` }] : [];
    }),
  ]);
  return lost.map(({ cause, what }) => ({
    rule: 'verdict',
    reason: `against ${cause}: ${what}`,
    machine: id,
    step: start,
    path: [],
  }));
}

/** The shortest path from some steps to a target that avoids the named edges. */
function reach(
  flat: Flat,
  from: readonly string[],
  target: string,
  avoid: (path: string, edge: FlatEdge) => boolean,
): PathStep[] | undefined {
  const cameBy = new Map<string, { path: string; outcome: string } | undefined>(
    from.map((path) => [path, undefined]),
  );
  const queue = [...from];
  for (let i = 0; i < queue.length; i++) {
    const path = queue[i]!;
    if (path === target) {
      const list: PathStep[] = [];
      for (let step = cameBy.get(path), at = path; step; at = step.path, step = cameBy.get(at))
        list.unshift({ step: step.path, outcome: step.outcome });
      return list;
    }
    for (const edge of flat.nodes.get(path)?.edges ?? []) {
      if (avoid(path, edge)) continue;
      for (const to of [edge.to, edge.limit?.otherwise])
        if (to && !cameBy.has(to)) {
          cameBy.set(to, { path, outcome: edge.outcome });
          queue.push(to);
        }
    }
  }
  return undefined;
}
