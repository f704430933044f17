import { barredBy } from '../../safety/barred.ts';
import {
  applyEffect,
  type Energy,
  energyKey,
  environmentEvents,
  initialEnergy,
} from '../../safety/energy.ts';
import type { Variant } from '../../safety/plant.ts';
import { rules } from '../../safety/rules/index.ts';
import { leftAs } from '../../safety/states.ts';
import type { Flat, FlatEdge, FlatNode } from '../flatten.ts';
import { questions } from '../questions.ts';

/** One step of the way to a breach. */
export interface PathStep {
  step: string;
  outcome: string;
}

/** A rule broken, and the shortest way there. */
export interface Breach {
  rule: string;
  reason: string;
  machine: string;
  step: string;
  variant?: Variant;
  path: PathStep[];
}

/** What a walk over one plant variant found. */
export interface Exploration {
  states: number;
  breaches: Breach[];
  /** Flat paths reached without a jump. */
  reached: ReadonlySet<string>;
  /** Effects that changed the energy state somewhere, as `path outcome index`. */
  effective: ReadonlySet<string>;
}

interface Place {
  node: FlatNode;
  energy: Energy;
  /** Reached by outcomes alone: no jump, nothing from outside. */
  straight: boolean;
  from?: Place;
  outcome?: string;
}

const questionKinds: readonly string[] = ['look', 'choose', 'workOut', 'display', 'measure'];
const hands: readonly string[] = ['cant', 'unsure', 'stop'];

/** For each step, the earlier questions it can be gone back to from. */
export function earlierQuestions(flat: Flat): Map<string, FlatNode[]> {
  const parents = new Map<string, Set<string>>();
  for (const node of flat.nodes.values())
    for (const edge of node.edges)
      for (const to of [edge.to, edge.limit?.otherwise])
        if (to) (parents.get(to) ?? parents.set(to, new Set()).get(to)!).add(node.path);
  const result = new Map<string, FlatNode[]>();
  for (const path of flat.nodes.keys()) {
    const seen = new Set<string>();
    const queue = [path];
    for (let at = queue.pop(); at; at = queue.pop())
      for (const parent of parents.get(at) ?? [])
        if (!seen.has(parent)) {
          seen.add(parent);
          queue.push(parent);
        }
    result.set(
      path,
      [...seen].map((key) => flat.nodes.get(key)!).filter((node) => questionKinds.includes(node.step.kind)),
    );
  }
  return result;
}

const wayTo = (place: Place | undefined): PathStep[] => {
  const list: PathStep[] = [];
  for (let at = place; at?.from; at = at.from)
    list.unshift({ step: at.from.node.path, outcome: at.outcome ?? '' });
  return list;
};

/**
 * Walks every pair of step and energy state that a run can be in on one plant: all outcomes, going back to earlier
 * questions, a proof that grows old, a generator that starts by itself. Breadth first, so the first path to a breach is
 * the shortest.
 * @param earlier from `earlierQuestions`, once per guide
 */
export function explore(
  flat: Flat,
  variant: Variant,
  earlier: Map<string, FlatNode[]>,
  most = 20,
): Exploration {
  const breaches: Breach[] = [];
  const told = new Set<string>();
  const seen = new Set<string>();
  const reached = new Set<string>();
  const effective = new Set<string>();
  const queue: Place[] = [];

  const report = (rule: string, reason: string, place: Place) => {
    const key = `${rule} ${place.node.path} ${reason}`;
    if (told.has(key) || breaches.length >= most) return;
    told.add(key);
    breaches.push({
      rule,
      reason,
      machine: flat.machine.id,
      step: place.node.path,
      variant,
      path: wayTo(place),
    });
  };
  const push = (
    node: FlatNode,
    energy: Energy,
    key: string,
    straight: boolean,
    from?: Place,
    outcome?: string,
  ) => {
    const id = `${node.path}|${straight ? 's' : 'j'}|${key}`;
    if (seen.has(id) || (!straight && seen.has(`${node.path}|s|${key}`))) return;
    seen.add(id);
    queue.push({ node, energy, straight, ...(from ? { from } : {}), ...(outcome ? { outcome } : {}) });
  };

  for (const begins of flat.machine.begins) {
    const energy = initialEnergy(variant, begins);
    push(flat.nodes.get(flat.start)!, energy, energyKey(energy), true);
  }

  for (let i = 0; i < queue.length; i++) {
    const place = queue[i]!;
    const { node, energy, straight } = place;
    if (straight) reached.add(node.path);
    if (node.step.kind === 'end') {
      judgeEnd(place, variant, report);
      continue;
    }
    // A step come to other than by its outcomes may not fit the plant: the screen bars it, and only the ways out stay open.
    const barred = !straight && barredBy(node, energy, variant) !== undefined;
    if (!barred)
      for (const rule of rules) {
        const reason = rule.onArrival?.({ node, energy, variant, graph: flat });
        if (reason) report(rule.id, reason, place);
      }
    const allowed =
      node.step.kind === 'sheet' && node.step.ask ? questions[node.step.ask]?.onVariant(variant) : undefined;
    for (const edge of node.edges) {
      if (barred && !hands.includes(edge.outcome)) continue;
      if (allowed && !hands.includes(edge.outcome) && !allowed.includes(edge.outcome)) continue;
      const after = take(place, edge, variant, flat, report, effective);
      const key = energyKey(after);
      push(flat.nodes.get(edge.to)!, after, key, straight, place, edge.outcome);
      if (edge.limit) push(flat.nodes.get(edge.limit.otherwise)!, after, key, straight, place, edge.outcome);
    }
    for (const { event, energy: after } of environmentEvents(energy, variant))
      push(node, after, energyKey(after), false, place, event);
    const key = energyKey(energy);
    for (const target of earlier.get(node.path) ?? [])
      if (!barredBy(target, energy, variant)) push(target, energy, key, false, place, 'back');
  }
  return { states: seen.size, breaches, reached, effective };
}

type Report = (rule: string, reason: string, place: Place) => void;

/** Applies an outcome's effects one by one, each judged before it happens. */
function take(
  place: Place,
  edge: FlatEdge,
  variant: Variant,
  flat: Flat,
  report: Report,
  effective: Set<string>,
): Energy {
  let energy = place.energy;
  edge.does.forEach((effect, i) => {
    for (const rule of rules) {
      const reason = rule.onDeed?.({ node: place.node, edge, effect, before: energy, variant, graph: flat });
      if (reason) report(rule.id, reason, place);
    }
    const after = applyEffect(energy, effect);
    const mark = `${place.node.path} ${edge.outcome} ${i}`;
    if (!effective.has(mark) && energyKey(after) !== energyKey(energy)) effective.add(mark);
    energy = after;
  });
  return energy;
}

const guardItems = ['area-closed', 'owner-told', 'return-time'];

/** I8: the plant is left as the end says. */
function judgeEnd(place: Place, variant: Variant, report: Report): void {
  const { step } = place.node;
  if (step.kind !== 'end') return;
  const items = (step.items ?? []).map((item) => item.id);
  const whole = step.result === 'fixed' || step.result === 'healthy';
  if (whole && step.leaves.some((leaves) => leaves !== 'restored' && leaves !== 'untouched'))
    report('I8', 'called fixed and not restored', place);
  if (step.leaves.includes('guarded') && !guardItems.every((id) => items.includes(id)))
    report('I8', 'left guarded without its items', place);
  if (step.leaves.includes('isolated') && !items.includes('owner-told'))
    report('I8', 'left isolated and nobody told', place);
  if (step.leaves.includes('guarded')) return;
  const left: readonly string[] = leftAs(place.energy, variant);
  if (!step.leaves.some((leaves) => left.includes(leaves)))
    report(
      'I8',
      `ends as ${step.leaves.join(' or ')}, but the plant is ${left.join(', ') || 'neither restored nor isolated'}`,
      place,
    );
}
