import type { Effect } from '../safety/effects.ts';
import type { EndStep, Machine, Outcome, Row, Step, StepId } from './vocabulary.ts';

/** An edge of the flat graph. */
export interface FlatEdge {
  /** The outcome's id within its step; `cant`, `unsure` and `stop` are on every step that is no end. */
  outcome: string;
  to: string;
  does: readonly Effect[];
  /** Readings and the zones that take this edge, first match wins. */
  when?: Row['when'];
  limit?: { counter: string; max: number; otherwise: string };
}

/** One step at one place of a run. The same procedure step stands once for each place that performs the procedure. */
export interface FlatNode {
  /** Unique in the run: `string-volts`, or `make-safe/open-main` inside a performed procedure. */
  path: string;
  /** The block on the page and the key of an answers file: `string-volts`, or `isolate--open-main`. */
  block: string;
  machine: string;
  stepId: StepId;
  step: Exclude<Step, { kind: 'perform' }>;
  edges: FlatEdge[];
}

/** A guide or procedure with every procedure it performs written out in place. */
export interface Flat {
  machine: Machine;
  start: string;
  stop: string;
  escape: string;
  nodes: ReadonlyMap<string, FlatNode>;
  /** Each performed procedure's place, and the step of it that comes first there. */
  groups: ReadonlyMap<string, string>;
}

/** What is wrong with a machine file, in words for its author. */
export class MachineError extends Error {}

const asOutcome = (target: StepId | Outcome): Outcome =>
  typeof target === 'string' ? { to: target } : target;

/** Reading id that zone-keyed `outcomes` speak of: the only reading of the step. */
function onlyReading(where: string, readings: object): string {
  const ids = Object.keys(readings);
  if (ids.length !== 1) throw new MachineError(`${where}: several readings need rows, not outcomes`);
  return ids[0]!;
}

/** The outcomes a step itself offers, in one shape. */
function ownOutcomes(
  where: string,
  step: Exclude<Step, { kind: 'perform' | 'end' }>,
): (Outcome & { id: string; when?: Row['when'] })[] {
  if (step.kind === 'measure' || step.kind === 'display') {
    if (step.rows) return step.rows.map((row) => ({ ...row }));
    const reading = onlyReading(where, step.readings);
    return Object.entries(step.outcomes ?? {}).map(([id, target]) => ({
      id,
      when: { [reading]: id },
      ...asOutcome(target),
    }));
  }
  return Object.entries(step.outcomes ?? {}).map(([id, target]) => ({
    id,
    ...asOutcome(target as StepId | Outcome),
  }));
}

interface Scope {
  machine: Machine;
  /** Path of the perform step, with its slash; empty at the top. */
  prefix: string;
  /** Turns a step id of this machine into a path, or into the caller's target where the step is an ending. */
  resolve: (id: StepId) => { to: string; does: readonly Effect[] };
}

/**
 * Writes every performed procedure out in place.
 * @param machine the guide or procedure
 * @param procedures every procedure by id
 * @throws MachineError when a target, a procedure or an ending is not there, or a procedure performs itself
 */
export function flatten(machine: Machine, procedures: Readonly<Record<string, Machine>>): Flat {
  const nodes = new Map<string, FlatNode>();
  const groups = new Map<string, string>();
  const stop = machine.stop;

  const walk = (scope: Scope, callers: readonly string[]): void => {
    const { machine: m, prefix } = scope;
    const where = (id: string) => `${m.id}, step ${id}`;
    for (const id of [m.start, m.escape, m.stop])
      if (!m.steps[id]) throw new MachineError(`${m.id}: there is no step ${id}`);
    for (const [id, step] of Object.entries(m.steps)) {
      if (step.kind === 'perform') {
        inline(scope, id, step, callers);
        continue;
      }
      if (step.kind === 'end' && prefix) continue;
      const edges: FlatEdge[] = [];
      const add = (outcome: string, target: Outcome & { when?: Row['when'] }) => {
        const { to, does } = scope.resolve(target.to);
        edges.push({
          outcome,
          to,
          does: [...(target.does ?? []), ...does],
          ...(target.when ? { when: target.when } : {}),
          ...(target.limit
            ? {
                limit: {
                  ...target.limit,
                  counter: prefix + target.limit.counter,
                  otherwise: scope.resolve(target.limit.otherwise).to,
                },
              }
            : {}),
        });
      };
      if (step.kind !== 'end') {
        for (const { id: outcome, ...target } of ownOutcomes(where(id), step)) add(outcome, target);
        add('cant', asOutcome(step.cant ?? m.escape));
        add('unsure', asOutcome(step.unsure ?? m.escape));
        edges.push({ outcome: 'stop', to: stop, does: [] });
      }
      nodes.set(prefix + id, {
        path: prefix + id,
        block: m.id === machine.id ? id : `${m.id}--${id}`,
        machine: m.id,
        stepId: id,
        step,
        edges,
      });
    }
  };

  const inline = (
    outer: Scope,
    id: StepId,
    step: Extract<Step, { kind: 'perform' }>,
    callers: readonly string[],
  ): void => {
    const procedure = procedures[step.procedure];
    if (!procedure)
      throw new MachineError(`${outer.machine.id}, step ${id}: there is no procedure ${step.procedure}`);
    if (callers.includes(procedure.id)) throw new MachineError(`${procedure.id} performs itself`);
    const prefix = `${outer.prefix}${id}/`;
    groups.set(outer.prefix + id, procedure.start);
    for (const ending of Object.keys(step.endings))
      if (procedure.steps[ending]?.kind !== 'end')
        throw new MachineError(`${outer.machine.id}, step ${id}: ${procedure.id} has no ending ${ending}`);
    const resolve: Scope['resolve'] = (target) => {
      const inner = procedure.steps[target];
      if (!inner) throw new MachineError(`${procedure.id}: there is no step ${target}`);
      if (inner.kind === 'end') return resolveEnding(outer, step, procedure, target, inner);
      if (inner.kind === 'perform') return { to: entry(prefix + target, inner, procedures), does: [] };
      return { to: prefix + target, does: [] };
    };
    walk({ machine: procedure, prefix, resolve }, [...callers, procedure.id]);
  };

  const resolveEnding = (
    outer: Scope,
    step: Extract<Step, { kind: 'perform' }>,
    procedure: Machine,
    ending: StepId,
    end: EndStep,
  ) => {
    const mapped = step.endings[ending];
    if (!mapped) {
      if (end.result !== 'leftIsolated' && end.result !== 'leftGuarded')
        throw new MachineError(`${outer.machine.id}: the ending ${ending} of ${procedure.id} leads nowhere`);
      return outer.resolve(outer.machine.escape);
    }
    const outcome = asOutcome(mapped);
    const { to, does } = outer.resolve(outcome.to);
    return { to, does: [...(outcome.does ?? []), ...does] };
  };

  const top: Scope = {
    machine,
    prefix: '',
    resolve: (id) => {
      const step = machine.steps[id];
      if (!step) throw new MachineError(`${machine.id}: there is no step ${id}`);
      return { to: step.kind === 'perform' ? entry(id, step, procedures) : id, does: [] };
    },
  };
  walk(top, [machine.id]);
  return {
    machine,
    start: top.resolve(machine.start).to,
    stop,
    escape: top.resolve(machine.escape).to,
    nodes,
    groups,
  };
}

/** The path of the first step inside a performed procedure. */
function entry(
  path: string,
  step: Extract<Step, { kind: 'perform' }>,
  procedures: Readonly<Record<string, Machine>>,
): string {
  const procedure = procedures[step.procedure];
  if (!procedure) throw new MachineError(`there is no procedure ${step.procedure}`);
  const start = procedure.steps[procedure.start];
  if (start?.kind === 'perform') return entry(`${path}/${procedure.start}`, start, procedures);
  return `${path}/${procedure.start}`;
}
