import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyDraft, withoutRow, withRow } from '../../src/site/defaults.ts';
import { demoSites, sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { draftOfSheet, readFact, type SheetDraft, sheetOfDraft, textOfFact } from '../../src/site/draft.ts';
import { withUnits } from '../../src/site/draft-units.ts';
import { factOf, facts, getFact } from '../../src/site/facts.ts';

const typing = (draft: SheetDraft, typed: Record<string, string>): SheetDraft => ({
  ...draft,
  typed: { ...draft.typed, ...typed },
  unknown: draft.unknown.filter((id) => typed[id] === undefined),
});

/** What a person types who knows only what the form will not do without. */
const least: Record<string, string> = {
  name: 'Shed',
  codeBasis: 'iec',
  'climate.recordLowC': '-22',
  'climate.usualHighC': '34,5 °C',
  'battery.cellsInSeries': '16',
  'battery.packs': '1',
  'battery.packCapacityAh': '100',
  'battery.cellMinV': '2,5',
  'battery.cellChargeV': '3.45',
  'battery.cellMaxV': '3650 mV',
  'battery.packContinuousA': '100 A',
  'mainSwitch.kind': 'breaker',
  'inverter.ratedW': '6 kW',
  'inverter.dcMinV': '42',
  'inverter.dcMaxV': '60',
  'inverter.topology': 'opposed-120-240',
  'inverter.frequencyHz': '60',
  parallelUnits: '1',
  'trackers[0].name': 'A',
  'trackers[0].startV': '150',
  'trackers[0].trackMinV': '120',
  'trackers[0].trackMaxV': '425',
  'trackers[0].maxV': '500',
  'trackers[0].usableA': '18',
  'strings[0].name': 'Roof',
  'strings[0].tracker': 'A',
  'strings[0].modulesInSeries': '8',
  'strings[0].parallel': '1',
  'strings[0].vocV': '41',
  'strings[0].vmpV': '34',
  'strings[0].iscA': '11,5',
  'strings[0].impA': '10.8',
  'strings[0].vocPerC': '−0,28',
  'strings[0].pmaxPerC': '-0.35 %/K',
  'secondSource.kind': 'none',
  'dataLink.kind': 'none',
  'meter.hasDcClamp': 'no',
};

describe('a sheet as it is typed', () => {
  it('takes an empty sheet with the least filled in', () => {
    const result = sheetOfDraft(typing(emptyDraft('shed', 'metric'), least));
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    expect(result.sheet.inverter.ratedW).toBe(6000);
    expect(result.sheet.strings[0]?.vocPerC).toBeCloseTo(-0.0028, 12);
    expect(result.sheet.climate.usualLowC).toBeNull();
    expect(result.sheet.battery.cellMaxV).toBeCloseTo(3.65, 12);
  });

  it('says of every box left empty that it is, and of nothing else', () => {
    const result = sheetOfDraft(emptyDraft('shed', 'metric'));
    if (result.ok) throw new Error('taken');
    const needed = Object.keys(least).sort();
    expect(result.problems.map(({ factIds }) => factIds[0]).sort()).toEqual(needed);
    expect(new Set(result.problems.map(({ reason }) => reason.id))).toEqual(new Set(['site.missing']));
  });

  it('asks for a tick where a fact may be unknown and its box is empty', () => {
    const draft = draftOfSheet(sallowCreek);
    const result = sheetOfDraft({ ...draft, typed: { ...draft.typed, 'inverter.idleW': ' ' } });
    expect(result).toMatchObject({ ok: false, problems: [{ reason: { id: 'site.missingOrUnknown' } }] });
  });

  it('gives the reason of a number that cannot be read', () => {
    const draft = typing(emptyDraft('shed', 'metric'), {
      ...least,
      'inverter.ratedW': '6,000',
      'battery.packs': '2 A',
    });
    const result = sheetOfDraft(draft);
    expect(result.ok ? [] : result.problems.map(({ factIds, reason }) => [factIds[0], reason.id])).toEqual([
      ['battery.packs', 'quantity.wrongKind'],
      ['inverter.ratedW', 'quantity.thousandsOrDecimal'],
    ]);
  });

  it('says what contradicts each other beside what is wrong alone, in the order of the boxes, and nothing twice', () => {
    const draft = typing(emptyDraft('shed', 'metric'), {
      ...least,
      name: '',
      'climate.recordLowC': '10',
      'climate.usualHighC': '5',
      'inverter.dcMinV': '59',
      'inverter.dcMaxV': 'sixty',
      'strings[0].tracker': 'B',
      'strings[0].vocV': '30',
    });
    const result = sheetOfDraft(draft);
    expect(result.ok ? [] : result.problems.map(({ factIds, reason }) => [factIds[0], reason.id])).toEqual([
      ['name', 'site.missing'],
      ['climate.recordLowC', 'site.mustBeBelow'],
      ['inverter.dcMaxV', 'quantity.notANumber'],
      ['strings[0].tracker', 'site.noSuchTracker'],
      ['strings[0].vmpV', 'site.mustBeBelow'],
    ]);
    const nameless = sheetOfDraft(typing(draft, { 'trackers[0].name': '' }));
    expect(nameless.ok ? [] : nameless.problems.map(({ reason }) => reason.id)).not.toContain(
      'site.noSuchTracker',
    );
  });

  it.each(demoSites.map((sheet) => [sheet.name, sheet] as const))(
    'shows %s and reads it back whole',
    (_, sheet) => {
      expect(sheetOfDraft(draftOfSheet(sheet), sheet)).toEqual({ ok: true, sheet, warnings: [] });
    },
  );

  it('keeps a value to the last bit when its box is untouched, and takes what is typed when it is not', () => {
    const odd = { ...ternLedge, inverter: { ...ternLedge.inverter, idleW: 45.123456789 } };
    const draft = draftOfSheet(odd);
    const kept = sheetOfDraft(draft, odd);
    expect(kept.ok && kept.sheet.inverter.idleW).toBe(45.123456789);
    const typed = sheetOfDraft(typing(draft, { 'inverter.idleW': '45.1235 W' }), odd);
    expect(typed.ok && typed.sheet.inverter.idleW).toBe(45.1235);
  });

  it('adds and removes rows without mixing them up', () => {
    const draft = withRow(draftOfSheet(sallowCreek), 'strings');
    expect(draft.rows.strings).toBe(3);
    expect(draft.unknown).toContain('strings[2].lengthM');
    const back = withoutRow(withoutRow(draft, 'strings', 2), 'strings', 0);
    expect(back.rows.strings).toBe(1);
    expect(back.typed['strings[0].name']).toBe('West');
    const result = sheetOfDraft(back, sallowCreek);
    expect(result.ok && result.sheet.strings[0]?.lengthM).toBeCloseTo(33.528, 9);
  });

  it('goes over to other units and back without changing what is meant', () => {
    const metric = withUnits(draftOfSheet(sallowCreek), 'metric');
    expect(metric.typed['climate.recordLowC']).toBe('−30');
    const result = sheetOfDraft(metric);
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    for (const { id, answer } of facts) {
      if (answer.type !== 'number') continue;
      const concrete = id.replace('[]', '[0]');
      const [before, after] = [getFact(sallowCreek, concrete), getFact(result.sheet, concrete)];
      if (before === null) expect(after).toBeNull();
      else expect(Number(after) / Number(before), id).toBeCloseTo(1, 4);
    }
    expect(
      withUnits(typing(draftOfSheet(sallowCreek), { 'inverter.idleW': 'abc' }), 'metric').typed[
        'inverter.idleW'
      ],
    ).toBe('abc');
  });

  it('reads back every value it shows, in both units', () => {
    const numbers = facts.filter((fact) => fact.answer.type === 'number');
    fc.assert(
      fc.property(
        fc.constantFrom(...numbers),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.boolean(),
        (fact, part, us) => {
          if (fact.answer.type !== 'number') return;
          const { min, max, kind } = fact.answer;
          const exact = min + part * (max - min);
          const value = kind === 'count' ? Math.round(exact) : exact;
          const units = us ? 'us' : 'metric';
          const reading = readFact(fact, textOfFact(fact, value, units), units);
          if (!reading.ok) throw new Error(`${fact.id} ${value}: ${reading.reason.id}`);
          const span = kind === 'temperature' ? Math.abs(value) + 20 : Math.abs(value);
          const tolerance = kind === 'wireSize' ? 0.011 : 1e-5;
          expect(Math.abs(Number(reading.value) - value)).toBeLessThanOrEqual(tolerance * span + 1e-12);
        },
      ),
    );
  });

  it('takes nothing but the choices there are', () => {
    expect(readFact(factOf('inverter.topology'), 'split', 'us').ok).toBe(false);
    expect(readFact(factOf('inverter.frequencyHz'), '60', 'us')).toEqual({ ok: true, value: 60 });
    expect(readFact(factOf('fuse.fitted'), 'maybe', 'us').ok).toBe(false);
  });
});
