import { barredBy } from '../../safety/barred.ts';
import {
  applyEffect,
  type Energy,
  energyKey,
  environmentEvents,
  forgetFresh,
  initialEnergy,
  standing,
} from '../../safety/energy.ts';
import type { Variant } from '../../safety/plant.ts';
import { kept, promiseText } from '../../safety/promises.ts';
import { rules } from '../../safety/rules/index.ts';
import { leftAs } from '../../safety/states.ts';
import type { Flat, FlatEdge, FlatNode } from '../flatten.ts';
import { questions } from '../questions.ts';
import type { Earlier } from './earlier.ts';

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

/** What a walk over one plant found. */
export interface Exploration {
  /** Pairs of step and energy state, for each of the variants judged together. */
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
  from?: Place | undefined;
  outcome?: string | undefined;
}

const handsOff: readonly string[] = ['cant', 'unsure', 'stop'];
const arrivalRules = rules.filter((rule) => rule.onArrival);
const deedRules = rules.filter((rule) => rule.onDeed);

const wayTo = (place: Place): PathStep[] => {
  const list: PathStep[] = [];
  for (let at: Place | undefined = place; at?.from; at = at.from)
    list.unshift({ step: at.from.node.path, outcome: at.outcome ?? '' });
  return list;
};

/** When a walk may stop early: after so many breaches, or so many states past the first one. */
export interface Limits {
  breaches: number;
  statesAfterBreach: number;
}

/**
 * Walks every pair of step and energy state that a run can be in on one plant: all outcomes, going back to earlier
 * questions, a proof that grows old, a generator that starts by itself. Breadth first, so the first path to a breach is
 * the shortest.
 * @param alike variants that differ only in what their devices are rated for or in daylight: what can happen is the same
 * on all of them, and each deed is judged for every one
 */
export function explore(
  flat: Flat,
  alike: readonly Variant[],
  earlier: Earlier,
  limits: Limits,
): Exploration {
  return new Walk(flat, alike, earlier, limits).run();
}

class Walk {
  private readonly breaches: Breach[] = [];
  private readonly told = new Set<string>();
  private readonly seen = new Set<number>();
  private readonly energies = new Map<string, number>();
  private readonly reached = new Set<string>();
  /** How the plant stood whenever a step was reached by outcomes alone. */
  private readonly stood = new Map<string, Set<string>>();
  private readonly effective = new Set<string>();
  private readonly queue: Place[] = [];
  private readonly flat: Flat;
  private readonly alike: readonly Variant[];
  private readonly plant: Variant;
  private readonly rated: readonly Variant[];
  private readonly earlier: Earlier;
  private readonly limits: Limits;

  constructor(flat: Flat, alike: readonly Variant[], earlier: Earlier, limits: Limits) {
    this.flat = flat;
    this.alike = alike;
    this.plant = alike[0]!;
    // No rule reads the daylight: unknown and day both mean light.
    this.rated = [
      ...new Map(alike.map((v) => [`${v.mainLoadBreak} ${v.pvLoadBreak} ${v.polarised}`, v])).values(),
    ];
    this.earlier = earlier;
    this.limits = limits;
  }

  run(): Exploration {
    const start = this.flat.nodes.get(this.flat.start)!;
    for (const begins of this.flat.machine.begins)
      this.push({ node: start, energy: initialEnergy(this.plant, begins), straight: true });
    let left = Number.POSITIVE_INFINITY;
    const each = (from: number, to: () => number, deal: (place: Place) => void) => {
      for (let i = from; i < to() && left > 0 && this.breaches.length < this.limits.breaches; i++, left--) {
        deal(this.queue[i]!);
        if (this.breaches.length > 0) left = Math.min(left, this.limits.statesAfterBreach);
      }
    };
    // First the guide as it is laid out; then, from everywhere in that, what going back and the world can do.
    each(
      0,
      () => this.queue.length,
      (place) => this.visit(place),
    );
    const straight = this.queue.length;
    each(
      0,
      () => straight,
      (place) => this.disturb(place),
    );
    each(
      straight,
      () => this.queue.length,
      (place) => {
        this.visit(place);
        this.disturb(place);
      },
    );
    return {
      states: this.seen.size * this.alike.length,
      breaches: this.breaches,
      reached: this.reached,
      effective: this.effective,
    };
  }

  private visit(place: Place): void {
    const { node, energy, straight } = place;
    if (straight) {
      this.reached.add(node.path);
      const known = this.stood.get(node.path);
      if (known) known.add(standing(energy));
      else this.stood.set(node.path, new Set([standing(energy)]));
    }
    if (node.step.kind === 'end') {
      this.judgeEnd(place);
      return;
    }
    // A step come to other than by its outcomes may not fit the plant: the screen bars it, and only the ways out stay open.
    const barred = !straight && barredBy(node, energy, this.plant) !== undefined;
    if (!barred)
      for (const rule of arrivalRules) {
        const reason = rule.onArrival?.({ node, energy, variant: this.plant, graph: this.flat });
        if (reason) this.report(rule.id, reason, place, this.plant);
      }
    const allowed =
      node.step.kind === 'sheet' && node.step.ask
        ? questions[node.step.ask]?.onVariant(this.plant)
        : undefined;
    for (const edge of node.edges) {
      const handOff = handsOff.includes(edge.outcome);
      if (!handOff && (barred || (allowed && !allowed.includes(edge.outcome)))) continue;
      const after = this.take(place, edge);
      for (const to of edge.limit ? [edge.to, edge.limit.otherwise] : [edge.to])
        this.push({
          node: this.flat.nodes.get(to)!,
          energy: after,
          straight,
          from: place,
          outcome: edge.outcome,
        });
    }
  }

  /** What can happen at a place besides its outcomes. */
  private disturb(place: Place): void {
    const { node, energy } = place;
    if (node.step.kind === 'end') return;
    for (const { event, energy: after } of environmentEvents(energy, this.plant))
      this.push({ node, energy: after, straight: false, from: place, outcome: event });
    const back = forgetFresh(energy);
    const stands = standing(back);
    const isOpen = (question: FlatNode) =>
      this.stood.get(question.path)?.has(stands) === true && !barredBy(question, back, this.plant);
    for (const target of this.earlier.newTargets(node.path, energyKey(back), isOpen))
      this.push({ node: target, energy: back, straight: false, from: place, outcome: 'back' });
  }

  private push(place: Place): void {
    const key = energyKey(place.energy);
    let energy = this.energies.get(key);
    if (energy === undefined) {
      energy = this.energies.size;
      this.energies.set(key, energy);
    }
    const id = (energy * this.earlier.size + this.earlier.indexOf(place.node.path)) * 2;
    if (this.seen.has(id + 1) || (!place.straight && this.seen.has(id))) return;
    this.seen.add(place.straight ? id + 1 : id);
    this.queue.push(place);
  }

  /** Applies an outcome's effects one by one, each judged before it happens. */
  private take(place: Place, edge: FlatEdge): Energy {
    if (edge.does.length === 0) return place.energy;
    let energy = place.energy;
    edge.does.forEach((effect, i) => {
      for (const rule of deedRules)
        for (const variant of this.rated) {
          const reason = rule.onDeed?.({
            node: place.node,
            edge,
            effect,
            before: energy,
            variant,
            graph: this.flat,
          });
          if (reason) this.report(rule.id, reason, place, variant);
        }
      const after = applyEffect(energy, effect);
      const mark = `${place.node.path} ${edge.outcome} ${i}`;
      if (!this.effective.has(mark) && energyKey(after) !== energyKey(energy)) this.effective.add(mark);
      energy = after;
    });
    return energy;
  }

  /** I8: the plant is left as the end says. */
  private judgeEnd(place: Place): void {
    const { step } = place.node;
    if (step.kind !== 'end') return;
    const items = (step.items ?? []).map((item) => item.id);
    const fail = (reason: string) => this.report('I8', reason, place, this.plant);
    const whole = step.result === 'fixed' || step.result === 'healthy';
    if (whole && step.leaves.some((leaves) => leaves !== 'restored' && leaves !== 'untouched'))
      fail('called fixed and not restored');
    if (step.leaves.includes('guarded') && !guardItems.every((id) => items.includes(id)))
      fail('left guarded without its items');
    if (step.leaves.includes('isolated') && !items.includes('owner-told'))
      fail('left isolated and nobody told');
    // A finding that has grown old, or that Back has skipped, bars the caller's own steps: only the straight way is promised.
    for (const promise of place.straight ? (step.promises ?? []) : [])
      if (!kept(promise, place.energy, this.plant))
        fail(`promises ${promiseText(promise)}, and it is not so`);
    if (step.leaves.includes('guarded')) return;
    const left: readonly string[] = leftAs(place.energy, this.plant);
    if (!step.leaves.some((leaves) => left.includes(leaves)))
      fail(
        `ends as ${step.leaves.join(' or ')}, but the plant is ${left.join(', ') || 'neither restored nor isolated'}`,
      );
  }

  private report(rule: string, reason: string, place: Place, variant: Variant): void {
    const key = `${rule} ${place.node.path} ${reason}`;
    if (this.told.has(key)) return;
    this.told.add(key);
    const { path } = place.node;
    this.breaches.push({
      rule,
      reason,
      machine: this.flat.machine.id,
      step: path,
      variant,
      path: wayTo(place),
    });
  }
}

const guardItems = ['area-closed', 'owner-told', 'return-time'];
