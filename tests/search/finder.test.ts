import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildIndex, strayAliases } from '../../src/search/build-index.ts';
import { Finder } from '../../src/search/finder.ts';
import type { Aliases, Entry } from '../../src/search/search-index.ts';

const entry = (
  kind: Entry['kind'],
  id: string,
  title: string,
  said: string[] = [],
  under?: string,
): Entry => ({
  kind,
  id: `${kind}/${id}`,
  url: `${kind}s/${id}/`,
  ...(under === undefined ? {} : { under }),
  phrases: [{ field: 'title', text: title }, ...said.map((text) => ({ field: 'said' as const, text }))],
});

const entries: Entry[] = [
  entry('guide', 'no-start', 'The tracker will not start', ['panel volts but zero watts']),
  entry('cause', 'fuse', 'A string fuse is open', ['blown fuse in the combiner'], 'guide/no-start'),
  entry('cause', 'fans', 'A fan is seized', ['hot and no noise'], 'guide/no-start'),
  entry('procedure', 'pre-charge', 'Pre-charge and close the battery'),
  entry('glossary', 'neutral', 'Neutral'),
  entry('glossary', 'lo-z', 'Lo-Z'),
  entry('step', 'no-start/fuse-look', 'Look at the fuse', [], 'guide/no-start'),
];

const aliases: Aliases = {
  ignore: ['the a of is on my with'],
  means: [
    { said: ['blower'], words: ['fan'] },
    { said: ['charge controller'], words: ['tracker'] },
  ],
  said: { 'procedure/pre-charge': ['spark at the switch'] },
};

const finder = new Finder(buildIndex(entries, aliases));
const ids = (text: string) => finder.find(text).hits.map(({ id }) => id);
const first = (text: string) => {
  const { verdict, hits } = finder.find(text);
  return verdict === 'fits' ? hits[0]?.id : undefined;
};
const marked = (text: string) =>
  finder
    .find(text)
    .hits[0]?.why.pieces.filter(({ met }) => met)
    .map((piece) => piece.text);

describe('finding', () => {
  it('a word of a title, in any case and order', () => {
    expect(first('NEUTRAL')).toBe('glossary/neutral');
    expect(first('open fuse')).toBe('cause/fuse');
  });

  it('a slip of the finger: letters changed, swapped, doubled, left out', () => {
    for (const slip of ['nuetral', 'neutrall', 'neutrel', 'nutral'])
      expect([slip, first(slip)]).toEqual([slip, 'glossary/neutral']);
    expect(first('combinr fuse')).toBe('cause/fuse');
  });

  it('half a word', () => {
    expect(first('neut')).toBe('glossary/neutral');
    expect(first('track')).toBe('guide/no-start');
  });

  it('a hyphened word however it is written', () => {
    for (const way of ['pre-charge', 'pre charge', 'precharge', 'Pre‑Charge'])
      expect([way, first(way)]).toEqual([way, 'procedure/pre-charge']);
    expect(first('lo-z')).toBe('glossary/lo-z');
  });

  it('two words written as one', () => {
    expect(first('blownfuse')).toBe('cause/fuse');
    expect(first('onblown')).toBe('cause/fuse');
  });

  it('what is said for another word, with a slip in it too', () => {
    expect(first('blower seized')).toBe('cause/fans');
    expect(first('charge controller')).toBe('guide/no-start');
    expect(first('charge controler')).toBe('guide/no-start');
  });

  it('a phrase of the alias file', () => {
    expect(first('big spark at switch')).toBe('procedure/pre-charge');
  });

  it('the guide with the causes that it finds, after them', () => {
    expect(ids('combiner blown').slice(0, 2)).toEqual(['cause/fuse', 'guide/no-start']);
    const guide = finder.find('combiner blown').hits[1]!;
    expect(guide.why.finds).toBe('A string fuse is open');
  });

  it('a cause before a step of the same words', () => {
    const found = ids('fuse');
    expect(found.indexOf('cause/fuse')).toBeLessThan(found.indexOf('step/no-start/fuse-look'));
  });

  it('the title of what a step stands in', () => {
    const step = finder.find('look at the fuse').hits.find(({ kind }) => kind === 'step');
    expect(step?.under).toBe('The tracker will not start');
  });
});

describe('why', () => {
  it('marks the words met, in the phrase that fits best', () => {
    const [hit] = finder.find('blown fuse').hits;
    expect(hit?.why.field).toBe('said');
    expect(hit?.why.pieces.map(({ text }) => text).join('')).toBe('blown fuse in the combiner');
    expect(marked('blown fuse')).toEqual(['blown', 'fuse']);
  });

  it('says how a slip was read, and what a word was taken for', () => {
    expect(finder.find('nuetral').hits[0]?.why.taken).toEqual([
      { typed: 'nuetral', as: 'Neutral', how: 'like' },
    ]);
    expect(finder.find('blower').hits[0]?.why.taken).toEqual([{ typed: 'blower', as: 'fan', how: 'means' }]);
    expect(finder.find('neutral').hits[0]?.why.taken).toEqual([]);
  });

  it('marks a hyphened pair as the one word that was typed', () => {
    expect(marked('precharge')).toEqual(['Pre-charge']);
  });
});

describe('nothing fits', () => {
  it('where nothing is like what was typed', () => {
    expect(finder.find('zebra')).toEqual({ verdict: 'nothing', hits: [], unknown: ['zebra'] });
  });

  it('where only the smaller part of it is met; the nearest are named apart', () => {
    const found = finder.find('zebra giraffe fuse');
    expect(found.verdict).toBe('nothing');
    expect(found.hits.map(({ id }) => id)).toContain('cause/fuse');
    expect(found.unknown).toEqual(['zebra', 'giraffe']);
  });

  it('says empty where no word says anything', () => {
    for (const text of ['', '   ', 'the', 'on my', '???', '.*', '()[]{}^$\\', '\u0000', 'a'])
      expect([text, finder.find(text).verdict]).toEqual([text, 'empty']);
  });
});

describe('hostile input', () => {
  it('is read to its two-hundredth letter', () => {
    const begun = performance.now();
    expect(finder.find('fuse '.repeat(20_000)).verdict).toBe('fits');
    expect(finder.find('x'.repeat(1_000_000)).verdict).toBe('nothing');
    expect(performance.now() - begun).toBeLessThan(2000);
  });

  it('is only words: markup, patterns and names of properties are looked for like any other', () => {
    for (const text of [
      '<script>alert(1)</script>',
      '(ab+)+$',
      '__proto__',
      'constructor',
      'toString hasOwnProperty',
    ])
      expect([text, finder.find(text).verdict]).toEqual([text, 'nothing']);
    expect(first('fuse.*(')).toBe('cause/fuse');
  });

  it('never throws, and the same words always find the same', () => {
    const said = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 250 }),
      fc.constantFrom('fuse', 'nuetral blown', 'pre-'),
    );
    fc.assert(
      fc.property(fc.array(said, { maxLength: 4 }), (texts) => {
        const before = finder.find('blown fuse');
        const found = finder.find(texts.join(' '));
        for (const { score, covered } of found.hits) {
          expect(score).toBeGreaterThan(0);
          expect(score).toBeLessThanOrEqual(1);
          expect(covered).toBeLessThanOrEqual(1 + 1e-6);
        }
        expect(finder.find('blown fuse')).toEqual(before);
      }),
    );
  });

  it('an empty index finds nothing', () => {
    const none = new Finder(buildIndex([], { ignore: [], means: [], said: {} }));
    expect(none.find('fuse')).toEqual({ verdict: 'nothing', hits: [], unknown: ['fuse'] });
  });
});

describe('the alias file', () => {
  it('is told of ids that nothing has', () => {
    expect(strayAliases(entries, { ...aliases, said: { 'guide/gone': ['x'], 'cause/fuse': ['y'] } })).toEqual(
      ['guide/gone'],
    );
  });
});
