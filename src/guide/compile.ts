import { type AnyStateMachine, assign, getInitialSnapshot, getNextSnapshot, setup } from 'xstate';
import type { Flat, FlatEdge, FlatNode } from './flatten.ts';
import { type GuideEvent, type Moves, takes } from './moves.ts';

/** A guide as an XState machine, with the narrow face a run needs; nothing outside this file knows the library's types. */
export interface CompiledGuide extends Moves {
  /** The XState machine itself, for graph tools. */
  machine: AnyStateMachine;
}

interface Take {
  outcome: string;
  when?: FlatEdge['when'];
  counter?: string;
  max?: number;
}

const kit = setup({
  types: { context: {} as { counters: Record<string, number> }, events: {} as GuideEvent },
  guards: {
    takes: ({ context, event }, take: Take) =>
      takes(take, event) && (take.counter === undefined || (context.counters[take.counter] ?? 0) < take.max!),
  },
  actions: {
    count: assign(({ context }, { counter }: { counter: string }) => ({
      counters: { ...context.counters, [counter]: (context.counters[counter] ?? 0) + 1 },
    })),
  },
});

const target = (path: string) => `#${path}`;

/** The transitions of one edge: while its loop may still be taken, and where it leads once it may not. */
function transitions(edge: FlatEdge) {
  const take: Take = { outcome: edge.outcome, ...(edge.when ? { when: edge.when } : {}) };
  if (!edge.limit) return [{ guard: { type: 'takes', params: take }, target: target(edge.to) }];
  const { counter, max, otherwise } = edge.limit;
  return [
    {
      guard: { type: 'takes', params: { ...take, counter, max } },
      target: target(edge.to),
      actions: { type: 'count', params: { counter } },
    },
    { guard: { type: 'takes', params: take }, target: target(otherwise) },
  ];
}

const eventType = (edge: FlatEdge): GuideEvent['type'] =>
  edge.when
    ? 'readings'
    : edge.outcome === 'cant' || edge.outcome === 'unsure' || edge.outcome === 'stop'
      ? edge.outcome
      : 'outcome';

function stateConfig(node: FlatNode) {
  if (node.step.kind === 'end') return { id: node.path, type: 'final' };
  const on: Record<string, unknown[]> = {};
  for (const edge of node.edges) {
    const type = eventType(edge);
    on[type] = [...(on[type] ?? []), ...transitions(edge)];
  }
  return { id: node.path, on };
}

interface Nest {
  initial?: string;
  states: Record<string, Nest | ReturnType<typeof stateConfig>>;
}

/** States nested as the paths are: a performed procedure is one state with its steps inside. */
function nest(flat: Flat): Nest {
  const root: Nest = { states: {} };
  const at = (path: string) => path.split('/').reduce((level, part) => level.states[part] as Nest, root);
  for (const node of flat.nodes.values()) {
    const parts = node.path.split('/');
    const last = parts.pop()!;
    let level = root;
    for (const part of parts) {
      level.states[part] ??= { states: {} };
      level = level.states[part] as Nest;
    }
    level.states[last] = stateConfig(node);
  }
  root.initial = flat.start.split('/')[0]!;
  for (const [group, first] of flat.groups) at(group).initial = first;
  return root;
}

/** Compiles a flat guide to an XState machine of named guards with static parameters. */
export function compile(flat: Flat): CompiledGuide {
  const config = { id: flat.machine.id, context: { counters: {} }, ...nest(flat) };
  const machine = kit.createMachine(config as never) as unknown as AnyStateMachine;
  const values = new Map([...flat.nodes.keys()].map((path) => [path, stateValue(path)]));

  const pathOf = (value: unknown): string =>
    typeof value === 'string'
      ? value
      : Object.entries(value as object).map(([key, inner]) => `${key}/${pathOf(inner)}`)[0]!;

  return {
    flat,
    machine,
    begin: () => ({ path: pathOf(getInitialSnapshot(machine).value), counters: {} }),
    next(from, event) {
      const node = flat.nodes.get(from.path);
      const edge = node?.edges.find((candidate) => takes(candidate, event));
      if (!edge) return undefined;
      const state = machine.resolveState({
        value: values.get(from.path)!,
        context: { counters: from.counters },
      });
      const after = getNextSnapshot(machine, state, event);
      const path = pathOf(after.value);
      return { to: { path, counters: after.context.counters }, edge };
    },
  };
}

type StateValue = string | { [key: string]: StateValue };

function stateValue(path: string): StateValue {
  const parts = path.split('/');
  let value: StateValue = parts.pop()!;
  for (const part of parts.reverse()) value = { [part]: value };
  return value;
}
