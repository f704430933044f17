import { describe, expect, it } from 'vitest';
import { readAliases, readEntries } from '../../src/commands/search-input.ts';
import { firstPlaces, readPhrases } from '../../src/commands/search-phrases.ts';
import { buildIndex, strayAliases } from '../../src/search/build-index.ts';
import { Finder } from '../../src/search/finder.ts';

const entries = readEntries();
const aliases = readAliases();
const finder = new Finder(buildIndex(entries, aliases));
const known = new Set(entries.map(({ id }) => id));
const sets = readPhrases();

describe('what can be found', () => {
  it('is every kind of page and step, each id and address once', () => {
    expect(new Set(entries.map(({ kind }) => kind)).size).toBe(7);
    expect(known.size).toBe(entries.length);
    expect(new Set(entries.map(({ url }) => url)).size).toBe(entries.length);
  });

  it('is found by its own title, whole: first, or beside others of the same words', () => {
    const lost = entries
      .filter(({ kind }) => kind !== 'step')
      .filter(({ id, phrases }) => {
        const { verdict, hits } = finder.find(phrases[0]!.text);
        return verdict !== 'fits' || !hits.slice(0, firstPlaces).some((hit) => hit.id === id);
      });
    expect(lost.map(({ id }) => id)).toEqual([]);
  });

  it('is what the alias file speaks of', () => {
    expect(strayAliases(entries, aliases)).toEqual([]);
  });
});

describe('phrases as people say them', () => {
  it('are at least 150 that something fits, half of them by someone who had not seen the aliases, and at least 40 that nothing fits', () => {
    const count = (of: 'fits' | 'nothing') =>
      new Set(sets.flatMap((set) => set[of].map((each) => (typeof each === 'string' ? each : each.say))))
        .size;
    expect(count('fits')).toBeGreaterThanOrEqual(150);
    expect(count('nothing')).toBeGreaterThanOrEqual(40);
    const unseen = sets.filter(({ name }) => ['blind', 'neighbour'].includes(name));
    expect(unseen).toHaveLength(2);
    expect(unseen.reduce((sum, { fits }) => sum + fits.length, 0) * 2).toBeGreaterThanOrEqual(count('fits'));
    // Strangers may well say the same; one of them says nothing twice, and what is said twice counts once.
    for (const set of sets) {
      const said = [...set.fits.map(({ say }) => say), ...set.nothing];
      expect(new Set(said).size, set.name).toBe(said.length);
    }
  });

  it('want what there is', () => {
    const wants = sets.flatMap(({ fits }) => fits.flatMap((each) => each.wants));
    expect(wants.filter((id) => !known.has(id))).toEqual([]);
  });

  for (const { name, fits, nothing } of sets)
    describe(name, () => {
      it('finds what is wanted among the first three for 95 in a hundred', () => {
        const missed = fits.filter(({ say, wants }) => {
          const { verdict, hits } = finder.find(say);
          return verdict !== 'fits' || !hits.slice(0, firstPlaces).some(({ id }) => wants.includes(id));
        });
        expect(
          1 - missed.length / fits.length,
          missed.map(({ say }) => say).join('; '),
        ).toBeGreaterThanOrEqual(0.95);
      });

      it('says that nothing fits for 80 in a hundred of those that nothing fits', () => {
        const wrong = nothing.filter((say) => finder.find(say).verdict === 'fits');
        expect(1 - wrong.length / nothing.length, wrong.join('; ')).toBeGreaterThanOrEqual(0.8);
      });
    });
});
