import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BandBarOptions, bandBarSvg } from '../../src/drawings/band-bar.ts';
import { everyNode, readXml, withClass } from './xml.ts';

const zones = [
  { id: 'reversed', max: -5, label: 'Reversed' },
  { id: 'none', min: -5, max: 20, label: 'Nothing' },
  { id: 'low', min: 20, max: 310, label: 'Low' },
  { id: 'ok', min: 310, max: 352, label: 'Expected' },
  { id: 'high', min: 352, label: 'High' },
];
const read = (options: Partial<BandBarOptions>) =>
  readXml(bandBarSvg({ id: 'bar', title: 'Band', zones, unit: 'V', ...options }));

/** Where the needle stands, and the zone drawn under it. */
function landing(value: number): { x: number; zone: string } {
  const svg = read({ value });
  const x = Number(/^M([\d.]+)/.exec(withClass(svg, 'bb-needle')[0]!.attributes.d!)![1]);
  const under = withClass(svg, 'bb-zone').filter((node) => {
    const { x: left, width } = node.children[0]!.attributes;
    return x >= Number(left) - 0.06 && x <= Number(left) + Number(width) + 0.06;
  });
  return { x, zone: under.map(({ attributes }) => attributes['data-zone']).join(' ') };
}

describe('the band bar', () => {
  it('lands a value in its own zone', () => {
    expect(landing(331).zone).toBe('ok');
    expect(landing(100).zone).toBe('low');
    expect(landing(0).zone).toBe('none');
    expect(landing(-330).zone).toBe('reversed');
    expect(landing(1e6).zone).toBe('high');
  });

  it('puts a value on a bound between two zones', () => {
    expect(landing(310).zone).toBe('low ok');
  });

  it('never turns round: a higher value stands no further left, and all stay on the sheet', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -2000, max: 2000, noNaN: true }),
        fc.double({ min: 0, max: 500, noNaN: true }),
        (v, d) => {
          const a = landing(v).x;
          const b = landing(v + d).x;
          expect(b).toBeGreaterThanOrEqual(a - 0.05);
          expect(a).toBeGreaterThanOrEqual(0);
          expect(b).toBeLessThanOrEqual(360);
        },
      ),
    );
  });

  it('draws the uncertainty from one end to the other across a bound', () => {
    const spread = withClass(read({ value: 312, halfWidth: 6 }), 'bb-spread')[0]!.attributes.d!;
    const xs = [...spread.matchAll(/[ML]([\d.]+) /g)].map((m) => Number(m[1]));
    expect(Math.min(...xs)).toBeCloseTo(landing(306).x, 1);
    expect(Math.max(...xs)).toBeCloseTo(landing(318).x, 1);
    expect(withClass(read({ value: 312 }), 'bb-spread')).toHaveLength(0);
  });

  it('says every zone in its description and every bound under the bar, with a true minus', () => {
    const svg = read({ value: 331 });
    expect(svg.children.find(({ name }) => name === 'desc')!.text).toBe(
      'Reversed: … – −5 V. Nothing: −5 – 20 V. Low: 20 – 310 V. Expected: 310 – 352 V. High: 352 – … V.',
    );
    expect(withClass(svg, 'bb-number').map(({ text }) => text)).toEqual(['−5', '20', '310', '352 V']);
  });

  it('is well formed with odd words, one open zone, a zone of no width, and no value', () => {
    for (const odd of [
      [{ id: 'any', label: 'a & b < c "d"' }],
      [{ id: 'ok', max: 5, label: 'Up to five' }],
      [
        { id: 'a', max: 5, label: 'A' },
        { id: 'ok', min: 5, max: 5, label: 'Five' },
        { id: 'b', min: 5, label: 'B' },
      ],
    ]) {
      for (const value of [undefined, 5, -1e9, 1e9]) {
        const markup = bandBarSvg({ id: 'bar', title: 't', zones: odd, unit: '<V>', value, halfWidth: 1 });
        expect(markup).not.toMatch(/NaN|Infinity|style=/);
        expect(everyNode(readXml(markup)).length).toBeGreaterThan(3);
      }
    }
  });
});
