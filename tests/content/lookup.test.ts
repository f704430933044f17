import { describe, expect, it } from 'vitest';
import { type Book, type Exit, layPage, type Place } from '../../src/components/guide/lookup.ts';
import { readBlocks } from '../../src/guide/content-blocks.ts';
import { flatten } from '../../src/guide/flatten.ts';
import type { Machine } from '../../src/guide/vocabulary.ts';
import { machines, proceduresById, wordsById } from './fixture.ts';

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

  it('leads where the flat graph leads, through performed procedures and their endings', () => {
    const flat = flatten(machines.guide, proceduresById);
    /** Follows the page's links from a place within a run until a step that asks something. */
    const follow = (inside: readonly string[], machine: Machine, to: Place): string => {
      const step = machine.steps[to.block]!;
      if (step.kind === 'perform') {
        const procedure = proceduresById[step.procedure]!;
        const { first } = pages[machine.id]!.step(to.block)!;
        return follow([...inside, to.block], procedure, first!);
      }
      const caller = inside.at(-1);
      if (step.kind !== 'end' || !caller) return [...inside, to.block].join('/');
      const on = pages[machine.id]!.step(to.block)!.goesOn.find((each) => each.caller.block === caller)!;
      return follow(inside.slice(0, -1), all.find(({ id }) => `/${id}/` === on.caller.url)!, on.to);
    };
    let edges = 0;
    for (const node of flat.nodes.values())
      for (const edge of node.edges) {
        if (edge.outcome === 'stop') continue;
        const inside = node.path.split('/').slice(0, -1);
        const found = exit(node.machine, node.stepId, edge.outcome);
        const machine = all.find(({ id }) => id === node.machine)!;
        expect(follow(inside, machine, found.to), `${node.path} ${edge.outcome}`).toBe(edge.to);
        edges += 1;
      }
    expect(edges).toBeGreaterThan(30);
  });
});
