import { describe, expect, it } from 'vitest';
import {
  anchors,
  type Crop,
  codes,
  cropOfPoint,
  crops,
  partAreas,
  partIds,
  sheet,
} from '../../src/drawings/plant/layout.ts';
import { type PlantOptions, plantSvg } from '../../src/drawings/plant/plant-svg.ts';
import { anchorIds, isAnchor, leadsOf, pointIds, testPoints } from '../../src/drawings/plant/points.ts';
import { anchorNames, plantWords, pointNames } from '../../src/words/en/points.ts';
import { everyNode, readXml, withClass } from './xml.ts';

const base = { id: 'plant', title: 'The plant', words: plantWords } as const;
const read = (options: Partial<PlantOptions>) => readXml(plantSvg({ ...base, ...options }));

/** Drawings of every kind that the product asks for. */
const variety: Partial<PlantOptions>[] = [
  {},
  { strings: 1, packs: 1, source: false },
  { crop: 'ac' },
  { links: { packs: { href: '/a/?b=1&c=2', name: 'Packs "two"' } } },
  { focus: 'mainSwitch', clampAt: 'B+', point: 'B' },
  ...pointIds.map((point) => ({ point })),
  {
    zones: {
      pvString: 'live',
      pvBus: 'unknown',
      invDC: 'dead',
      battBus: 'plain',
      packPost: 'live',
      acOut: 'dead',
      loadPanel: 'dead',
      acIn: 'unknown',
      inlet: 'live',
      control: 'dead',
    },
    devices: { pv: 'locked', main: 'open', packs: 'closed', acIn: 'locked', acOut: 'locked' },
  },
];

describe('the plant drawing', () => {
  it('is well formed, without style, script or anything from outside, whatever is asked', () => {
    for (const options of variety) {
      const svg = plantSvg({ ...base, ...options });
      const nodes = everyNode(readXml(svg));
      expect(nodes.some(({ attributes }) => 'style' in attributes)).toBe(false);
      expect(nodes.some(({ name }) => name === 'script' || name === 'style' || name === 'image')).toBe(false);
      expect(svg.replace('http://www.w3.org/2000/svg', '')).not.toContain('http');
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    }
  });

  it('shows every test point on the whole plant, once', () => {
    const drawn = everyNode(read({}))
      .map(({ attributes }) => attributes['data-point'])
      .filter(Boolean);
    expect(drawn.sort()).toEqual([...pointIds].sort());
  });

  it.each(pointIds)(
    'shows %s, marked as the one in hand, in the crop it asks for, with its leads in sight',
    (point) => {
      const marked = withClass(read({ point }), 'pd-code-here');
      expect(marked.map(({ attributes }) => attributes['data-point'])).toEqual([point]);
      const [left, top, width, height] = crops[cropOfPoint[point]];
      for (const pair of testPoints[point].pairs) {
        const ends = 'clamp' in pair ? [pair.clamp] : [pair.red, pair.black];
        for (const end of ends) {
          const { x, y, side } = anchors[end];
          const tag = x + (side === 'left' ? -40 : 40);
          expect(Math.min(x, tag), `${pair.id} ${end}`).toBeGreaterThanOrEqual(left);
          expect(Math.max(x, tag), `${pair.id} ${end}`).toBeLessThanOrEqual(left + width);
          expect(y - 13).toBeGreaterThanOrEqual(top);
          expect(y + 13).toBeLessThanOrEqual(top + height);
        }
      }
    },
  );

  it('tells the leads apart by letter and shape, and puts their tips on the two places', () => {
    const svg = read({ point: 'P1', redAt: 'P1+', blackAt: 'P1-' });
    const [red] = withClass(svg, 'pd-lead-red');
    const [black] = withClass(svg, 'pd-lead-black');
    expect(everyNode(red!).find(({ name }) => name === 'text')!.text).toBe('R');
    expect(everyNode(black!).find(({ name }) => name === 'text')!.text).toBe('B');
    expect(withClass(red!, 'pd-tag')[0]!.name).toBe('rect');
    expect(withClass(black!, 'pd-tag')[0]!.name).toBe('circle');
    expect(withClass(red!, 'pd-tip')[0]!.attributes).toMatchObject({
      cx: String(anchors['P1+'].x),
      cy: String(anchors['P1+'].y),
    });
    expect(withClass(black!, 'pd-tip')[0]!.attributes.cx).toBe(String(anchors['P1-'].x));
  });

  it('marks live, dead, unknown and locked by a drawn sign, and says them in its description', () => {
    const svg = read({
      zones: { pvString: 'live', pvBus: 'unknown', invDC: 'dead' },
      devices: { pv: 'locked', main: 'open' },
      redAt: 'P1+',
    });
    expect(withClass(svg, 'pd-mark-live')).toHaveLength(1);
    expect(withClass(svg, 'pd-mark-unknown')).toHaveLength(1);
    expect(withClass(svg, 'pd-mark-dead')).toHaveLength(1);
    expect(withClass(svg, 'pd-mark-locked')).toHaveLength(1);
    const desc = svg.children.find(({ name }) => name === 'desc')!.text;
    expect(desc).toBe(
      'Red lead on P1+, array side of the PV isolator. Array side of the PV isolator: live. ' +
        'Inverter side of the PV isolator: not known: treat as live. Inverter side of the main switch: proved dead. ' +
        'PV isolator: open and locked. DC main switch: open.',
    );
  });

  it('draws a blade open when the device is open, and another way when it is closed', () => {
    const blades = (options: Partial<PlantOptions>) =>
      withClass(read(options), 'pd-blade').map(({ attributes }) => attributes.d);
    const plain = blades({});
    expect(blades({ devices: { main: 'closed' } })).toEqual(plain);
    const open = blades({ devices: { main: 'open' } });
    expect(open.filter((d, i) => d !== plain[i])).toHaveLength(2);
    expect(blades({ devices: { main: 'locked' } })).toEqual(open);
  });

  it('escapes words from anywhere', () => {
    const svg = read({
      title: 'a < b & "c"',
      links: { packs: { href: '?a=1&b="2"', name: '<script>' } },
      words: { ...plantWords, leadLetters: { red: '<R>', black: '&' } },
      redAt: 'B+',
      blackAt: 'B-',
    });
    expect(svg.children.find(({ name }) => name === 'title')!.text).toBe('a < b & "c"');
    const link = withClass(svg, 'pd-link')[0]!;
    expect(link.attributes).toMatchObject({ href: '?a=1&b="2"', 'aria-label': '<script>' });
    expect(everyNode(withClass(svg, 'pd-lead-red')[0]!).at(-1)!.text).toBe('<R>');
  });

  it('is an image when nothing can be tapped, a group when something can', () => {
    expect(read({}).attributes.role).toBe('img');
    expect(read({ links: { packs: { href: '#', name: 'x' } } }).attributes.role).toBe('group');
  });

  it('leaves the second source away on a site that has none', () => {
    const drawn = everyNode(read({ source: false })).map(({ attributes }) => attributes['data-point']);
    expect(drawn).not.toContain('A');
    expect(drawn).toContain('O');
  });

  it('gives every part at least 48 px both ways on a phone 360 px wide, on the sheet and clear of the others', () => {
    // The front page leaves 342 px of 360 to the drawing.
    const scale = 342 / sheet.width;
    for (const part of partIds) {
      const [left, top, width, height] = partAreas[part];
      expect(width * scale, part).toBeGreaterThanOrEqual(48);
      expect(height * scale, part).toBeGreaterThanOrEqual(48);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(left + width).toBeLessThanOrEqual(sheet.width);
      expect(top + height).toBeLessThanOrEqual(sheet.height);
      for (const other of partIds) {
        if (other === part) continue;
        const [l, t, w, h] = partAreas[other];
        const apart = left + width <= l || l + w <= left || top + height <= t || t + h <= top;
        expect(apart, `${part} over ${other}`).toBe(true);
      }
    }
  });
});

describe('test points', () => {
  it('are those of the fault catalogue, each with a name, a place and a crop', () => {
    expect([...pointIds].sort()).toEqual([
      'A',
      'B',
      'C',
      'D',
      'E',
      'I',
      'O',
      'P1',
      'P2',
      'PG',
      'R',
      'S1',
      'S2',
    ]);
    for (const id of pointIds) {
      expect(pointNames[id].length).toBeGreaterThan(3);
      expect(codes[id]).toBeDefined();
      expect(crops[cropOfPoint[id] as Crop]).toBeDefined();
    }
  });

  it('name pairs once, on places that are drawn and named', () => {
    const ids = pointIds.flatMap((id) => testPoints[id].pairs.map((pair) => pair.id));
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) {
      const pair = leadsOf(id)!;
      for (const end of 'clamp' in pair ? [pair.clamp] : [pair.red, pair.black]) {
        expect(isAnchor(end)).toBe(true);
        expect(anchorNames[end].length).toBeGreaterThan(3);
      }
    }
  });

  it('put red on the plus side and black on the minus side', () => {
    for (const id of ['P1', 'P2', 'I', 'S2', 'S1', 'B'] as const) {
      expect(leadsOf(id)).toEqual({ id, red: `${id}+`, black: `${id}-` });
    }
  });

  it('lead nowhere for a screen or a watch', () => {
    expect(leadsOf('display')).toBeUndefined();
    expect(leadsOf('toString')).toBeUndefined();
  });

  it('stand apart: no two places on the same spot', () => {
    const spots = anchorIds.map((id) => `${anchors[id].x} ${anchors[id].y}`);
    expect(new Set(spots).size).toBe(spots.length);
  });
});
