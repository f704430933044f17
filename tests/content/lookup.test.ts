import { describe, expect, it } from 'vitest';
import { type Exit, layPage } from '../../src/components/guide/lookup.ts';
import { readBlocks } from '../../src/guide/content-blocks.ts';
import { flatten } from '../../src/guide/flatten.ts';
import { machines, proceduresById, wordsById } from './fixture.ts';

const contents = Object.fromEntries(
  Object.entries(wordsById).map(([id, source]) => [id, { title: id, blocks: readBlocks(source).blocks }]),
);
const page = layPage(machines.guide, proceduresById, contents);
const exit = (machine: string, step: string, outcome: string): Exit =>
  page.step(machine, step)!.exits.find((each) => each.outcome === outcome)!;
const to = (found: Exit) => found.ways.map((way) => way.to.block);

describe('a guide’s page', () => {
  it('numbers its own steps, and the steps of each procedure by letter', () => {
    expect(page.step('small-guide', 'ready')).toMatchObject({ no: '4', block: 'ready', title: 'Ready?' });
    expect(page.step('make-safe', 'loads-off')).toMatchObject({ no: 'A1', block: 'make-safe--loads-off' });
    expect(page.step('open-string', 'open')).toMatchObject({ no: 'B2', block: 'open-string--open' });
  });

  it('leads an outcome to the step that has the procedure done', () => {
    expect(to(exit('small-guide', 'volts', 'ok'))).toEqual(['make-safe']);
    expect(page.step('small-guide', 'make-safe')!.performs).toMatchObject({
      section: { block: 'make-safe--procedure', no: 'A' },
      first: { block: 'make-safe--loads-off' },
    });
  });

  it('leads the end of a procedure to where each of its callers goes on, through procedures in between', () => {
    const done = exit('open-string', 'open', 'done');
    expect(done.ending?.block).toBe('open-string--opened');
    expect(done.ways).toEqual([
      {
        from: [expect.objectContaining({ block: 'make-safe' })],
        to: expect.objectContaining({ block: 'ready' }),
      },
      {
        from: [expect.objectContaining({ block: 'make-safe-first' })],
        to: expect.objectContaining({ block: 'verdict' }),
      },
    ]);
    expect(page.step('make-safe', 'safe')!.goesOn.map((way) => way.to.block)).toEqual(['ready', 'verdict']);
  });

  it('leads an ending that a caller does not name to the caller’s own way out', () => {
    expect(exit('small-guide', 'make-safe', 'left')).toMatchObject({
      ways: [{ to: { block: 'unresolved' } }],
    });
    expect(to(exit('small-guide', 'make-safe-first', 'left'))).toEqual(['away']);
  });

  it('says how often a loop may be taken and what comes after', () => {
    expect(exit('open-string', 'no-current', 'some').limit).toMatchObject({ max: 2 });
  });

  it('offers the ways out on every step that is no end', () => {
    for (const section of page.sections)
      for (const step of section.steps) {
        const outs = step.exits
          .map(({ outcome }) => outcome)
          .filter((id) => ['cant', 'unsure', 'stop'].includes(id));
        expect(outs, step.block).toHaveLength(
          step.step.kind === 'end' || step.step.kind === 'perform' ? 0 : 3,
        );
      }
    expect(to(exit('open-string', 'open', 'stop'))).toEqual(['away']);
  });

  it('names the readings a verdict rests on, inside a procedure too', () => {
    expect(page.step('small-guide', 'verdict')!.because).toEqual([
      { place: expect.objectContaining({ block: 'volts' }), labels: ['In band', 'Low'] },
      { place: expect.objectContaining({ block: 'open-string--no-current' }), labels: ['No current'] },
    ]);
  });

  it('leads where the flat graph leads', () => {
    const flat = flatten(machines.guide, proceduresById);
    /** The block that is shown first when a place is reached. */
    const shown = (block: string): string => {
      const step = page.sections.flatMap((section) => section.steps).find((each) => each.block === block)!;
      return step.performs ? shown(step.performs.first.block) : block;
    };
    let edges = 0;
    for (const node of flat.nodes.values())
      for (const edge of node.edges) {
        const found = exit(node.machine, node.stepId, edge.outcome);
        expect(
          found.ways.map((way) => shown(way.to.block)),
          `${node.path} ${edge.outcome}`,
        ).toContain(flat.nodes.get(edge.to)!.block);
        edges += 1;
      }
    expect(edges).toBeGreaterThan(30);
  });
});
