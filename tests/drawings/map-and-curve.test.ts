import { describe, expect, it } from 'vitest';
import { curveSvg } from '../../src/drawings/curve.ts';
import { guideMapSvg, type MapNode } from '../../src/drawings/guide-map.ts';
import { layer } from '../../src/drawings/map/layers.ts';
import { wrap } from '../../src/drawings/wrap.ts';
import { everyNode, readXml, withClass } from './xml.ts';

const edge = (from: string, to: string) => ({ from, to });

describe('layers', () => {
  it('puts each step below all that lead to it, and ways back apart', () => {
    const ids = ['start', 'a', 'b', 'end'];
    const edges = [
      edge('start', 'a'),
      edge('start', 'b'),
      edge('a', 'b'),
      edge('b', 'end'),
      edge('b', 'start'),
      edge('a', 'a'),
    ];
    const { rows, back, down } = layer(ids, edges);
    const rowOf = (id: string) => rows.findIndex((row) => row.some((slot) => slot.id === id));
    expect(['start', 'a', 'b', 'end'].map(rowOf)).toEqual([0, 1, 2, 3]);
    expect(back).toEqual([edge('b', 'start'), edge('a', 'a')]);
    expect(down.find(({ edge: { from, to } }) => from === 'start' && to === 'b')!.through).toHaveLength(3);
  });

  it('leaves out edges to steps it does not know', () => {
    expect(layer(['a'], [edge('a', 'b'), edge('b', 'a')])).toMatchObject({ down: [], back: [] });
  });

  it('holds for a graph of fifty steps with ways back: every way down runs down', () => {
    const ids = Array.from({ length: 50 }, (_, i) => `s${i}`);
    const edges = ids.flatMap((id, i) => [
      edge(id, `s${(i * 7 + 3) % 50}`),
      edge(id, `s${(i * 3 + 1) % 50}`),
    ]);
    const { rows, down, back } = layer(ids, edges);
    const rowOf = new Map(rows.flatMap((row, at) => row.map((slot) => [slot.id, at] as const)));
    for (const { through } of down) {
      for (let i = 0; i + 1 < through.length; i++) {
        expect(rowOf.get(through[i + 1]!)! - rowOf.get(through[i]!)!).toBe(1);
      }
    }
    expect(down.length + back.length).toBe(edges.length);
    expect(rows.flat().filter(({ bend }) => !bend)).toHaveLength(50);
  });
});

describe('the guide map', () => {
  const nodes: MapNode[] = [
    { id: 'start', title: 'Look <round> & listen', kind: 'look' },
    { id: 'hold', title: 'Before you open it', kind: 'hold' },
    { id: 'cause', title: 'String too short', kind: 'verdict', href: '#cause' },
    { id: 'end', title: 'Done', kind: 'end' },
  ];
  const edges = [edge('start', 'hold'), edge('hold', 'cause'), edge('cause', 'end'), edge('cause', 'start')];
  const markup = guideMapSvg({
    id: 'map',
    title: 'Map',
    nodes,
    edges,
    path: ['start', 'hold'],
    here: 'hold',
  });
  const svg = readXml(markup);

  it('draws every step once, and every way, without style', () => {
    expect(withClass(svg, 'gm-node').map(({ attributes }) => attributes['data-node'])).toEqual([
      'start',
      'hold',
      'cause',
      'end',
    ]);
    expect(withClass(svg, 'gm-way')).toHaveLength(4);
    expect(markup).not.toMatch(/NaN|undefined|style=/);
    expect(everyNode(svg).some(({ text }) => text.includes('<round>'))).toBe(true);
  });

  it('marks the way taken and where you are, and nothing else', () => {
    expect(
      withClass(svg, 'gm-taken').map(({ attributes }) => [attributes['data-from'], attributes['data-to']]),
    ).toEqual([['start', 'hold']]);
    expect(withClass(svg, 'gm-done').map(({ attributes }) => attributes['data-node'])).toEqual([
      'start',
      'hold',
    ]);
    expect(withClass(svg, 'gm-here').map(({ attributes }) => attributes['data-node'])).toEqual(['hold']);
  });

  it('keeps plates apart and on the sheet', () => {
    const many = Array.from({ length: 30 }, (_, i) => ({
      id: `n${i}`,
      title: `Step ${i} with a longer name`,
      kind: 'look',
    }));
    const ways = many.slice(1).map((node, i) => edge(`n${Math.floor(i / 3)}`, node.id));
    const drawn = readXml(guideMapSvg({ id: 'm', title: 't', nodes: many, edges: ways }));
    const plates = withClass(drawn, 'gm-plate').map(({ attributes: a }) => ({
      x: Number(a.x),
      y: Number(a.y),
      w: Number(a.width),
      h: Number(a.height),
    }));
    const [, , width, height] = drawn.attributes.viewBox!.split(' ').map(Number);
    plates.forEach((p, i) => {
      expect(p.x + p.w).toBeLessThanOrEqual(width!);
      expect(p.y + p.h).toBeLessThanOrEqual(height!);
      for (const q of plates.slice(i + 1)) {
        expect(p.x + p.w <= q.x || q.x + q.w <= p.x || p.y + p.h <= q.y || q.y + q.h <= p.y).toBe(true);
      }
    });
  });
});

describe('curves', () => {
  const lines = [
    {
      id: 'e',
      label: 'expected',
      points: [
        [0, 0],
        [10, 50],
      ] as const,
      broken: true,
    },
  ];
  const place = (marks: { x: number; y: number }[]) =>
    withClass(
      readXml(curveSvg({ id: 'c', title: 'Pre-charge', xLabel: 's', yLabel: 'V', lines, marks })),
      'cv-mark',
    ).map(({ attributes }) => [Number(attributes.cx), Number(attributes.cy)] as const);

  it('puts measured points on the line that they belong to', () => {
    const [low, middle, high] = place([
      { x: 0, y: 0 },
      { x: 5, y: 25 },
      { x: 10, y: 50 },
    ]);
    expect(middle![0]).toBeCloseTo((low![0] + high![0]) / 2, 0);
    expect(middle![1]).toBeCloseTo((low![1] + high![1]) / 2, 0);
    expect(high![1]).toBeLessThan(low![1]);
  });

  it('is well formed with no data, one point, a flat line and odd words', () => {
    for (const points of [
      [],
      [[1, 1]],
      [
        [0, 5],
        [9, 5],
      ],
    ] as (readonly [number, number])[][]) {
      const markup = curveSvg({
        id: 'c',
        title: '<&>',
        xLabel: 'a & b',
        yLabel: '"V"',
        lines: [{ id: 'l', label: '<l>', points }],
        levels: [{ y: 3, label: 'limit & more' }],
      });
      readXml(markup);
      expect(markup).not.toMatch(/NaN|Infinity|style=/);
    }
  });
});

describe('wrap', () => {
  it('breaks between words, keeps a long word whole', () => {
    expect(wrap('one two three', 7)).toEqual(['one two', 'three']);
    expect(wrap('incomprehensible', 5)).toEqual(['incomprehensible']);
  });
});
