import { describe, expect, it } from 'vitest';
import { readContent, readGlossary, readSources } from '../../src/commands/content-input.ts';
import { checkContent } from '../../src/guide/content-check.ts';
import { bannedFindings } from '../../src/guide/prose-check.ts';
import { zones as plantZones } from '../../src/safety/plant.ts';
import { hazards } from '../../src/words/en/hazards.ts';
import { zones } from '../../src/words/en/states.ts';

const once = (ids: readonly string[]) => ids.filter((id, at) => ids.indexOf(id) !== at);

describe('the content of this project', () => {
  const input = readContent();

  it('fits its machines, word for word', () => {
    expect(input.guides.length).toBeGreaterThan(0);
    expect(checkContent(input).map(({ file, id, message }) => `${file}: ${id}: ${message}`)).toEqual([]);
  });

  it('keeps DANGER for the few hazards that surely kill or maim', () => {
    const words = Object.values(hazards).map(({ word }) => word);
    expect(words.filter((word) => word === 'danger').length / words.length).toBeLessThan(0.25);
  });

  it('names every zone of the plant', () => {
    expect(Object.keys(zones).sort()).toEqual([...plantZones].sort());
  });

  it('has a glossary whose terms stand once and point at each other', () => {
    const glossary = readGlossary();
    const ids = glossary.map(({ id }) => id);
    expect(once(ids)).toEqual([]);
    expect(glossary.flatMap(({ see }) => see).filter((id) => !ids.includes(id))).toEqual([]);
    expect(ids.length).toBeGreaterThan(40);
  });

  it('names no make in glossary, sources and hazards', () => {
    const text = JSON.stringify([readGlossary(), hazards], null, 1);
    expect(bannedFindings('glossary and hazards', text)).toEqual([]);
    expect(once(readSources().map(({ id }) => id))).toEqual([]);
  });
});
