import { describe, expect, test } from 'vitest';
import type { AnyStateMachine } from 'xstate';
import { getAdjacencyMap } from 'xstate/graph';
import { procedures as allProcedures, guides, proceduresById } from '../../machines/index.ts';
import { type CompiledGuide, compile } from '../../src/guide/compile.ts';
import { type Flat, type FlatEdge, type FlatNode, flatten } from '../../src/guide/flatten.ts';
import { rowFits } from '../../src/guide/judge.ts';
import { type GuideEvent, movesOf } from '../../src/guide/moves.ts';
import { fixtureGuide, fixtureProcedure } from '../support/fixture-guide.ts';

/**
 * A set of outcomes on which this row is the first that fits; `undefined` for a row that no outcomes can take. Zones that
 * no row names are stood for by one name that is no zone.
 */
function outcomesFor(node: FlatNode, edge: FlatEdge): Record<string, string> | undefined {
  const rows = node.edges.filter((each) => each.when);
  const readings = 'readings' in node.step ? Object.keys(node.step.readings) : [];
  const named = (id: string) => [
    ...new Set(rows.flatMap((row) => [row.when?.[id] ?? []].flat())),
    'no-zone-of-any-row',
  ];
  const sets = readings.reduce<Record<string, string>[]>(
    (list, id) => list.flatMap((set) => named(id).map((zone) => ({ ...set, [id]: zone }))),
    [{}],
  );
  return sets.find((set) => rows.find((row) => rowFits(row.when!, set)) === edge);
}

function eventOf(node: FlatNode, edge: FlatEdge): GuideEvent | undefined {
  if (edge.when) {
    const outcomes = outcomesFor(node, edge);
    return outcomes && { type: 'readings', outcomes };
  }
  const { outcome } = edge;
  return outcome === 'cant' || outcome === 'unsure' || outcome === 'stop'
    ? { type: outcome }
    : { type: 'outcome', outcome };
}

const eventsAt = (node: FlatNode) =>
  node.edges.flatMap((edge) => {
    const event = eventOf(node, edge);
    return event ? [{ edge, event }] : [];
  });

const keyOf = (path: string, counters: Readonly<Record<string, number>>) =>
  `${path} ${JSON.stringify(Object.entries(counters).sort())}`;

/** The graph that the data says: from each place and count, where each outcome leads. */
function dataGraph(flat: Flat): Map<string, Map<string, string>> {
  const graph = new Map<string, Map<string, string>>();
  const queue = [{ path: flat.start, counters: {} as Record<string, number> }];
  for (let at = queue.pop(); at; at = queue.pop()) {
    const key = keyOf(at.path, at.counters);
    if (graph.has(key)) continue;
    const ways = new Map<string, string>();
    graph.set(key, ways);
    const node = flat.nodes.get(at.path)!;
    for (const { edge, event } of eventsAt(node)) {
      const taken = edge.limit ? (at.counters[edge.limit.counter] ?? 0) : 0;
      const counted = edge.limit !== undefined && taken < edge.limit.max;
      const path = edge.limit && !counted ? edge.limit.otherwise : edge.to;
      const counters = counted ? { ...at.counters, [edge.limit!.counter]: taken + 1 } : at.counters;
      ways.set(JSON.stringify(event), keyOf(path, counters));
      queue.push({ path, counters });
    }
  }
  return graph;
}

const pathOf = (value: unknown): string =>
  typeof value === 'string'
    ? value
    : Object.entries(value as object)
        .map(([key, inner]) => `${key}/${pathOf(inner)}`)
        .join('+');

interface Snapshot {
  value: unknown;
  context: { counters: Record<string, number> };
}
const snapshotKey = (snapshot: Snapshot) => keyOf(pathOf(snapshot.value), snapshot.context.counters);

/** The graph that the compiled machine has, as the library's own graph tool finds it. */
function machineGraph({ flat, machine }: CompiledGuide): Map<string, Map<string, string>> {
  const adjacency = getAdjacencyMap(machine as AnyStateMachine, {
    events: (snapshot: Snapshot) =>
      eventsAt(flat.nodes.get(pathOf(snapshot.value))!).map(({ event }) => event) as never,
    serializeState: snapshotKey as never,
    serializeEvent: ((event: GuideEvent) => JSON.stringify(event)) as never,
    limit: 1_000_000,
  });
  return new Map(
    Object.values(adjacency).map(({ state, transitions }) => [
      snapshotKey(state as unknown as Snapshot),
      new Map(
        (Object.values(transitions) as { event: GuideEvent; state: Snapshot }[]).map((way) => [
          JSON.stringify(way.event),
          snapshotKey(way.state),
        ]),
      ),
    ]),
  );
}

const procedures = { [fixtureProcedure.id]: fixtureProcedure };

describe('a compiled guide', () => {
  const compiled = compile(flatten(fixtureGuide, procedures));

  test('has the graph that its data says', () => {
    const data = dataGraph(compiled.flat);
    expect(data.size).toBeGreaterThan(20);
    expect(machineGraph(compiled)).toEqual(data);
  });

  test('leaves no step of the data out of reach', () => {
    const reached = new Set([...dataGraph(compiled.flat).keys()].map((key) => key.split(' ')[0]));
    expect([...compiled.flat.nodes.keys()].filter((path) => !reached.has(path))).toEqual([]);
  });

  test('differs when an edge of the data is moved', () => {
    const steps = { ...fixtureGuide.steps, 'unlock-main': { ...fixtureGuide.steps['clear']! } };
    const other = compile(flatten({ ...fixtureGuide, steps }, procedures));
    expect(machineGraph(other)).not.toEqual(dataGraph(compiled.flat));
  });

  test('gives the same next place by its own face as by the machine', () => {
    for (const [key, ways] of machineGraph(compiled)) {
      const [path, counters] = key.split(' ') as [string, string];
      const from = { path, counters: Object.fromEntries(JSON.parse(counters)) };
      for (const [event, to] of ways) {
        const next = compiled.next(from, JSON.parse(event) as GuideEvent)!;
        expect(keyOf(next.to.path, next.to.counters)).toBe(to);
      }
    }
  });

  test('does not take an outcome that the step has not', () => {
    const begin = compiled.begin();
    expect(compiled.next(begin, { type: 'outcome', outcome: 'no-such' })).toBeUndefined();
    expect(compiled.next(begin, { type: 'readings', outcomes: { v: 'ok' } })).toBeUndefined();
  });

  test('holds nothing but data: it comes through JSON whole', () => {
    const config = compiled.machine.config;
    expect(JSON.parse(JSON.stringify(config))).toEqual(config);
  });
});

describe.each([...guides, ...allProcedures].map((machine) => [machine.id, machine] as const))(
  '%s',
  (_id, machine) => {
    const own = compile(flatten(machine, proceduresById));
    const moves = movesOf(own.flat);

    test('moves in the browser as the compiled machine moves, at every step and count', () => {
      let compared = 0;
      for (const node of own.flat.nodes.values())
        for (const { edge, event } of eventsAt(node))
          for (const count of edge.limit ? [0, edge.limit.max - 1, edge.limit.max] : [0]) {
            const counters: Record<string, number> =
              edge.limit && count > 0 ? { [edge.limit.counter]: count } : {};
            const from = { path: node.path, counters };
            expect(moves.next(from, event)).toEqual(own.next(from, event));
            compared++;
          }
      expect(moves.begin()).toEqual(own.begin());
      expect(compared).toBeGreaterThan(own.flat.nodes.size);
    });
  },
);
