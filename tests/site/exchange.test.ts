import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyDraft } from '../../src/site/defaults.ts';
import { demoSites, sallowCreek } from '../../src/site/demo.ts';
import { draftFactIds, draftOfSheet, type SheetDraft, sheetOfDraft } from '../../src/site/draft.ts';
import { exportDraft } from '../../src/site/draft-exchange.ts';
import { exportSites, importSites, longestFile } from '../../src/site/exchange.ts';
import { setFact } from '../../src/site/facts.ts';
import { siteMessages } from '../../src/words/en/site.ts';

function refused(text: string): { id: string; factIds: string[]; site?: string }[] {
  const result = importSites(text);
  if (result.ok) throw new Error('the file was taken');
  for (const { reason } of result.problems) {
    expect(siteMessages[reason.id]?.(reason.params ?? {}), reason.id).toMatch(/^[A-Z“].*\.$/);
  }
  return result.problems.map(({ reason, factIds, site }) => ({ id: reason.id, factIds, site }));
}
const ids = (text: string): string[] => refused(text).map(({ id }) => id);
const file = (sites: unknown, more: object = {}): string =>
  JSON.stringify({ format: 'faultwright-sites', version: 1, sites, ...more });

describe('a file of sites', () => {
  it('comes back whole', () => {
    expect(importSites(exportSites(demoSites))).toEqual({ ok: true, sites: demoSites });
    expect(importSites(`\uFEFF${exportSites(demoSites)}`)).toEqual({ ok: true, sites: demoSites });
  });

  it('comes back whole whatever the notes and figures', () => {
    const sheet = fc
      .record({
        notes: fc.string({ maxLength: 2000, unit: 'grapheme' }),
        idleW: fc.double({ min: 0, max: 1000, noNaN: true }),
      })
      .filter(({ notes }) => notes.length <= 2000)
      .map(({ notes, idleW }) => setFact(setFact(sallowCreek, 'notes', notes), 'inverter.idleW', idleW + 0));
    fc.assert(
      fc.property(sheet, (each) => {
        expect(importSites(exportSites([each]))).toEqual({ ok: true, sites: [each] });
      }),
    );
  });

  it('may be one sheet alone', () => {
    expect(importSites(JSON.stringify(sallowCreek))).toEqual({ ok: true, sites: [sallowCreek] });
  });
});

describe('a site that was not finished', () => {
  const begun: SheetDraft = {
    ...emptyDraft('site-0123456789abcdef', 'metric'),
    typed: { units: 'metric', name: 'Shed', 'battery.packs': 'two?', 'strings[0].vocV': ' 41,0 V' },
  };
  const drafted = (more: object) =>
    JSON.stringify({ format: 'faultwright-site-draft', version: 1, draft: { ...begun, ...more } });

  it('comes back as it was typed, slips and gaps and all', () => {
    expect(sheetOfDraft(begun).ok).toBe(false);
    expect(importSites(exportDraft(begun))).toEqual({ ok: true, sites: [], draft: begun });
    const shown = draftOfSheet(sallowCreek);
    expect(importSites(exportDraft(shown))).toEqual({ ok: true, sites: [], draft: shown });
  });

  it('comes back whole whatever was typed', () => {
    const texts = fc.dictionary(
      fc.constantFrom(...draftFactIds(begun)),
      fc.string({ unit: 'grapheme', maxLength: 40 }),
    );
    fc.assert(
      fc.property(texts, (typed) => {
        const draft = { ...begun, typed: { ...typed } };
        expect(importSites(exportDraft(draft))).toEqual({ ok: true, sites: [], draft });
      }),
    );
  });

  it.each<[string, object, string]>([
    ['a box that the form has not', { typed: { 'battery.colour': 'red' } }, 'site.unknownField'],
    ['a row that is not there', { typed: { 'strings[7].vocV': '41' } }, 'site.unknownField'],
    ['a number for a text', { typed: { name: 7 } }, 'site.file.badDraft'],
    ['a text beyond reason', { typed: { notes: 'x'.repeat(5000) } }, 'site.file.badDraft'],
    ['rows beyond reason', { rows: { trackers: 1e9, strings: 1 } }, 'site.file.badDraft'],
    ['half a row', { rows: { trackers: 1, strings: 0.5 } }, 'site.file.badDraft'],
    ['an id that is an address', { id: '../x' }, 'site.file.badDraft'],
    ['an unknown that must be known', { unknown: ['battery.packs'] }, 'site.file.badDraft'],
    ['no list of unknowns', { unknown: 'all' }, 'site.file.badDraft'],
  ])('is refused with %s', (_, more, id) => {
    expect(ids(drafted(more))).toEqual([id]);
  });

  it('is refused of a newer version, of none, and with a harmful key', () => {
    expect(ids(JSON.stringify({ format: 'faultwright-site-draft', version: 2, draft: begun }))).toEqual([
      'site.file.newer',
    ]);
    expect(ids(JSON.stringify({ format: 'faultwright-site-draft' }))).toEqual(['site.file.badVersion']);
    expect(ids(JSON.stringify({ format: 'faultwright-site-draft', version: 1 }))).toEqual([
      'site.file.badDraft',
    ]);
    expect(ids(exportDraft(begun).replace('"typed": {', '"typed": { "__proto__": {},'))).toEqual([
      'site.file.poisoned',
    ]);
  });
});

describe('a hostile or broken file is refused with a reason', () => {
  it.each<[string, string, string]>([
    ['empty', '', 'site.file.notJson'],
    ['not JSON', '<html>', 'site.file.notJson'],
    ['cut short', exportSites(demoSites).slice(0, 900), 'site.file.notJson'],
    ['too long', ' '.repeat(longestFile + 1), 'site.file.tooLong'],
    ['nested beyond reason', '['.repeat(200_000) + ']'.repeat(200_000), 'site.file.'],
    ['a list', '[]', 'site.file.notSites'],
    ['null', 'null', 'site.file.notSites'],
    ['a number', '1e999', 'site.file.notSites'],
    ['of another format', '{"format":"cake"}', 'site.file.notSites'],
    ['of a newer version', file([sallowCreek], { version: 2 }), 'site.file.newer'],
    ['of no version', JSON.stringify({ format: 'faultwright-sites', sites: [] }), 'site.file.badVersion'],
    ['without sites', file([]), 'site.file.empty'],
    ['with sites that are none', file({}), 'site.file.empty'],
    ['with too many sites', file(Array.from({ length: 201 }, () => 1)), 'site.file.tooMany'],
    ['with an extra field', file([sallowCreek], { evil: 1 }), 'site.unknownField'],
    ['with the same site twice', file([sallowCreek, sallowCreek]), 'site.file.idTwice'],
    ['with a newer sheet', file([{ ...sallowCreek, version: 9 }]), 'site.file.newer'],
  ])('%s', (_, text, id) => {
    expect(ids(text)[0]).toContain(id);
  });

  it.each(['__proto__', 'constructor', 'prototype'])('with the key %s anywhere', (key) => {
    const text = exportSites([sallowCreek]).replace(
      '"battery": {',
      `"battery": { "${key}": { "polluted": true },`,
    );
    expect(text).toContain(key);
    expect(ids(text)).toEqual(['site.file.poisoned']);
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('says which site and which fact is bad, for all of them', () => {
    const bad = setFact(setFact(sallowCreek, 'battery.packs', 0), 'strings[1].vocV', 'high');
    expect(refused(file([demoSites[1], bad]))).toEqual([
      { id: 'site.outOfRange', factIds: ['battery.packs'], site: 'Sallow Creek Apiary' },
      { id: 'site.outOfRange', factIds: ['strings[1].vocV'], site: 'Sallow Creek Apiary' },
    ]);
  });

  it('names a site that has no name by its place', () => {
    expect(refused(file([sallowCreek, 7]))[0]).toMatchObject({ site: '#2' });
  });

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(importSites(text).ok).toBe(false);
      }),
    );
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const text = JSON.stringify({ format: 'faultwright-sites', version: 1, sites: [value] }, (_, part) =>
          typeof part === 'bigint' ? 1 : part,
        );
        expect(importSites(text).ok).toBe(false);
      }),
    );
  });
});
