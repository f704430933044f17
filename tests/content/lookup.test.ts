import { describe, expect, it } from 'vitest';
import { guides, procedures } from '../../machines/index.ts';
import { type Book, type Exit, layPage, type Place } from '../../src/components/guide/lookup.ts';
import { readBlocks } from '../../src/guide/content-blocks.ts';
import { flatten } from '../../src/guide/flatten.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';
import { machines, wordsById } from './fixture.ts';

const all = [machines.guide, ...machines.procedures];
const book: Book = {
  machines: all,
  contents: Object.fromEntries(
    Object.entries(wordsById).map(([id, source]) => [
      id,
      { title: `The ${id}`, blocks: readBlocks(source).blocks },
    ]),
  ),
  urlOf: ({ id }) => `/${id}/`,
};
const pages = Object.fromEntries(all.map((machine) => [machine.id, layPage(machine, book)]));
const exit = (machine: string, step: string, outcome: string): Exit =>
  pages[machine]!.step(step)!.exits.find((each) => each.outcome === outcome)!;

describe('a page of the book', () => {
  it('numbers its steps in the order of its words', () => {
    expect(pages['small-guide']!.step('ready')).toMatchObject({
      no: '4',
      block: 'ready',
      title: 'Ready?',
      url: '',
      page: '',
    });
    expect(pages['small-guide']!.first).toMatchObject({ no: '1', block: 'volts' });
  });

  it('sends the reader to a procedure’s page and names its endings', () => {
    const step = pages['small-guide']!.step('make-safe')!;
    expect(step.first).toMatchObject({
      url: '/make-safe/',
      block: 'loads-off',
      no: '1',
      page: 'The make-safe',
    });
    expect(exit('small-guide', 'make-safe', 'safe')).toMatchObject({
      label: 'Safe',
      to: { block: 'ready', url: '' },
    });
    expect(pages['small-guide']!.performs).toEqual([{ url: '/make-safe/', title: 'The make-safe' }]);
  });

  it('leads an ending that a caller does not name to the caller’s own way out', () => {
    expect(exit('small-guide', 'make-safe', 'left').to.block).toBe('unresolved');
    expect(exit('small-guide', 'make-safe-first', 'left').to.block).toBe('away');
  });

  it('says at a procedure’s ending where each caller goes on', () => {
    expect(pages['make-safe']!.step('safe')!.goesOn).toMatchObject([
      { caller: { block: 'make-safe', url: '/small-guide/' }, to: { block: 'ready', url: '/small-guide/' } },
      { caller: { block: 'make-safe-first' }, to: { block: 'verdict' } },
    ]);
    expect(pages['open-string']!.step('opened')!.goesOn).toMatchObject([
      { caller: { block: 'string', url: '/make-safe/' }, to: { block: 'safe', url: '/make-safe/' } },
    ]);
    expect(pages['make-safe']!.step('away')!.goesOn).toEqual([]);
  });

  it('says how often a loop may be taken and what comes after', () => {
    expect(exit('open-string', 'no-current', 'some').limit).toMatchObject({
      max: 2,
      otherwise: { block: 'left' },
    });
  });

  it('offers the ways out on every step that asks something', () => {
    for (const page of Object.values(pages))
      for (const { step, block, exits } of page.steps) {
        const outs = exits.filter(({ outcome }) => ['cant', 'unsure', 'stop'].includes(outcome));
        expect(outs, block).toHaveLength(step.kind === 'end' || step.kind === 'perform' ? 0 : 3);
      }
    expect(exit('open-string', 'open', 'stop').to.block).toBe('away');
  });

  it('names the readings a verdict rests on, inside a procedure too', () => {
    expect(pages['small-guide']!.step('verdict')!.because).toMatchObject([
      { place: { block: 'volts', url: '' }, labels: ['In band', 'Low'] },
      { place: { block: 'no-current', url: '/open-string/' }, labels: ['No current'] },
    ]);
  });
});

/**
 * Follows the pages' links as a reader would, through performed procedures and their endings, and compares each with the
 * flat graph's edge. Stop is left out: on a procedure's own page it is that page's way to get away.
 * @returns how many edges were compared
 */
function compareWithFlat(machine: Machine, of: Book): number {
  const byId = Object.fromEntries(of.machines.map((each) => [each.id, each]));
  const laid = Object.fromEntries(of.machines.map((each) => [each.id, layPage(each, of)]));
  const follow = (inside: readonly string[], at: Machine, to: Place): string => {
    const step = at.steps[to.block]!;
    const shown = laid[at.id]!.step(to.block)!;
    if (step.kind === 'perform') return follow([...inside, to.block], byId[step.procedure]!, shown.first!);
    const caller = inside.at(-1);
    if (step.kind !== 'end' || caller === undefined) return [...inside, to.block].join('/');
    const outer = callerOf(inside.slice(0, -1));
    const on = shown.goesOn.find(
      (each) => each.caller.block === caller && each.caller.url === of.urlOf(outer),
    )!;
    return follow(inside.slice(0, -1), outer, on.to);
  };
  const callerOf = (inside: readonly string[]): Machine =>
    inside.reduce((at, id) => byId[(at.steps[id] as { procedure: string }).procedure]!, machine);
  let edges = 0;
  for (const node of flatten(machine, byId).nodes.values())
    for (const edge of node.edges) {
      if (edge.outcome === 'stop') continue;
      const inside = node.path.split('/').slice(0, -1);
      const found = laid[node.machine]!.step(node.stepId)!.exits.find(
        ({ outcome }) => outcome === edge.outcome,
      )!;
      expect(follow(inside, byId[node.machine]!, found.to), `${node.path} ${edge.outcome}`).toBe(edge.to);
      edges += 1;
    }
  return edges;
}

describe('the pages lead where the flat graph leads', () => {
  it('in the fixture', () => {
    expect(compareWithFlat(machines.guide, book)).toBeGreaterThan(30);
  });

  const real: Book = {
    machines: [...guides, ...procedures],
    contents: {},
    urlOf: ({ kind, id }) => `/${kind}/${id}/`,
  };
  it.each(real.machines.map((machine) => [machine.id, machine] as const))('in %s', (_id, machine) => {
    expect(compareWithFlat(machine, real)).toBeGreaterThan(Object.keys(machine.steps).length);
  });
});
