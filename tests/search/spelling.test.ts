import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { joinedWords, stem, stemsOf, tokensOf } from '../../src/search/spelling.ts';

const words = (text: string) => tokensOf(text).map(({ word }) => word);

describe('tokensOf', () => {
  it('parts at whatever is no letter or digit, and forgets case, accents and apostrophes', () => {
    expect(words('Won’t START: Übertemp—now!')).toEqual(['wont', 'start', 'ubertemp', 'now']);
  });

  it('takes a unit off its number, and keeps names of numbers and letters', () => {
    expect(words('240V 53.2v 120ohm L1 RJ45')).toEqual(['240', '53', '2', '120', 'l1', 'rj45']);
  });

  it('says where each word stands', () => {
    const text = 'pre-charge  it';
    expect(tokensOf(text).map(({ from, to }) => text.slice(from, to))).toEqual(['pre', 'charge', 'it']);
  });

  it('takes any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
        for (const { word, from, to } of tokensOf(text)) {
          expect(word).toMatch(/^[\p{L}\p{N}]+$/u);
          expect(to).toBeGreaterThan(from);
        }
      }),
    );
  });
});

describe('joinedWords', () => {
  it('are those written with a hyphen', () => {
    expect(joinedWords('Pre-charge, over-voltage and a-b-c')).toEqual(['precharge', 'overvoltage', 'abc']);
  });
});

describe('stem', () => {
  it('makes one word of its forms', () => {
    for (const forms of [
      ['trip', 'trips', 'tripped', 'tripping'],
      ['charge', 'charges', 'charged', 'charging'],
      ['battery', 'batteries'],
      ['switch', 'switches', 'switched'],
      ['fuse', 'fuses', 'fused'],
    ])
      expect(new Set(forms.map(stem)).size, forms.join()).toBe(1);
  });

  it('keeps apart what is not the same, and short words as they are', () => {
    expect(stemsOf('string strings bus gas mppt l1s')).toEqual([
      'string',
      'string',
      'bus',
      'gas',
      'mppt',
      'l1s',
    ]);
    expect(stem('bypass')).toBe('bypass');
    expect(stem('volts')).not.toBe(stem('voltage'));
  });
});
