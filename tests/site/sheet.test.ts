import { describe, expect, it } from 'vitest';
import { checkSheet } from '../../src/site/check.ts';
import { demoSites, sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { missingFacts } from '../../src/site/fact-paths.ts';
import { factOf, facts, getFact, setFact, unknownAllowed } from '../../src/site/facts.ts';
import { meterSpecOf } from '../../src/site/meter.ts';
import type { SiteSheet } from '../../src/site/sheet.ts';
import { factGroups, factLabel, siteMessages } from '../../src/words/en/site.ts';
import { choiceWords, factWords } from '../../src/words/en/site-facts.ts';

/** The reason ids and facts of every problem, of a sheet that must be refused. */
function problems(input: unknown): string[] {
  const result = checkSheet(input);
  if (result.ok) throw new Error('the sheet was taken');
  return result.problems.map(({ factIds, reason }) => `${reason.id} ${factIds.join(' ')}`.trim());
}
const withFact = (id: string, value: unknown): SiteSheet => setFact(sallowCreek, id, value as never);

describe('the demo sites', () => {
  it.each(demoSites.map((sheet) => [sheet.name, sheet] as const))(
    '%s is a valid sheet with nothing odd',
    (_, sheet) => {
      expect(checkSheet(sheet)).toEqual({ ok: true, sheet, warnings: [] });
      expect(sheet.invented).toBe(true);
    },
  );

  // String volts by the coefficient method of NEC 690.7(A)(1): Voc·(1 + b·(T − 25)), here by hand.
  it('Sallow Creek: strings lie in the trackers’ window at every temperature', () => {
    const [string, tracker] = [sallowCreek.strings[0], sallowCreek.trackers[0]] as const;
    const coldVocV = 8 * 41 * (1 - 0.0028 * (-30 - 25));
    const hotVocV = 8 * 41 * (1 - 0.0028 * (60 - 25));
    const hotVmpV = 8 * 34 * (1 - 0.0035 * (60 - 25));
    expect(string?.modulesInSeries).toBe(8);
    expect(coldVocV).toBeLessThan(tracker?.trackMaxV ?? 0);
    expect(hotVocV).toBeGreaterThan(1.1 * (tracker?.startV ?? 1e9));
    expect(hotVmpV).toBeGreaterThan(1.03 * (tracker?.trackMinV ?? 1e9));
  });

  it('Tern Ledge: its string lies in the window too, with roof heat', () => {
    const tracker = ternLedge.trackers[0];
    expect(5 * 37.5 * (1 - 0.003 * (-15 - 25))).toBeLessThan(tracker?.trackMaxV ?? 0);
    expect(5 * 37.5 * (1 - 0.003 * (70 - 25))).toBeGreaterThan(1.1 * (tracker?.startV ?? 1e9));
    expect(5 * 31 * (1 - 0.0036 * (70 - 25))).toBeGreaterThan(1.03 * (tracker?.trackMinV ?? 1e9));
  });

  it('differ in what a guide could wrongly take for granted', () => {
    for (const id of [
      'units',
      'battery.cellsInSeries',
      'battery.packs',
      'inverter.topology',
      'secondSource.kind',
    ]) {
      expect(getFact(sallowCreek, id), id).not.toBe(getFact(ternLedge, id));
    }
  });
});

describe('a sheet kept before a fact was asked for', () => {
  it('does not know that fact, and is taken', () => {
    const { fanAirflowM3s, efficiency, derateStartC, ...older } = sallowCreek.inverter;
    expect([fanAirflowM3s, efficiency, derateStartC]).not.toContain(null);
    const result = checkSheet({ ...sallowCreek, inverter: older });
    expect(result).toMatchObject({
      ok: true,
      sheet: { inverter: { fanAirflowM3s: null, efficiency: null, derateStartC: null, idleW: 100 } },
    });
  });
});

describe('each bad value', () => {
  it.each<[string, unknown, string]>([
    ['altitudeM', Number.NaN, 'site.outOfRange'],
    ['altitudeM', Number.POSITIVE_INFINITY, 'site.outOfRange'],
    ['battery.packs', 1.5, 'site.outOfRange'],
    ['battery.packs', 0, 'site.outOfRange'],
    ['battery.packs', '2', 'site.outOfRange'],
    ['battery.cellsInSeries', null, 'site.missing'],
    ['strings[0].vocPerC', 0.0028, 'site.outOfRange'],
    ['strings[0].vocPerC', -0.28, 'site.outOfRange'],
    ['strings[1].isolator.loadBreak', 'yes', 'site.notYesNo'],
    ['inverter.topology', 'split', 'site.notAChoice'],
    ['inverter.frequencyHz', 55, 'site.notAChoice'],
    ['name', '   ', 'site.badText'],
    ['name', 'a\u0007b', 'site.badText'],
    ['name', 'x'.repeat(81), 'site.badText'],
    ['notes', 'x'.repeat(2001), 'site.badText'],
  ])('%s = %o is refused at its fact', (id, value, reason) => {
    expect(problems(withFact(id, value))).toEqual([`${reason} ${id}`]);
  });

  it('names unknown fields, missing parts, and records of another kind', () => {
    expect(problems({ ...sallowCreek, colour: 'red' })).toEqual(['site.unknownField']);
    expect(problems({ ...sallowCreek, battery: undefined })).toEqual(['site.badRecord battery']);
    expect(problems({ ...sallowCreek, version: 2 })).toEqual(['site.badRecord version']);
    expect(problems({ ...sallowCreek, id: '../x' })).toEqual(['site.badRecord id']);
    for (const nothing of [null, undefined, 3, 'x', [], {}]) expect(checkSheet(nothing).ok).toBe(false);
  });

  it('lists all of them at once', () => {
    const sheet = setFact(withFact('battery.packs', 0), 'strings[0].vocV', 0);
    expect(problems(sheet)).toHaveLength(2);
  });
});

describe('values that contradict each other', () => {
  it.each<[string, unknown, string]>([
    ['climate.recordLowC', 20, 'site.mustNotExceed climate.recordLowC climate.usualLowC'],
    ['climate.usualLowC', 35, 'site.mustBeBelow climate.usualLowC climate.usualHighC'],
    ['battery.cellRecoverMinV', 3, 'site.mustNotExceed battery.cellRecoverMinV battery.cellMinV'],
    ['battery.cellChargeV', 3.7, 'site.mustNotExceed battery.cellChargeV battery.cellMaxV'],
    ['battery.packPeakA', 100, 'site.mustNotExceed battery.packContinuousA battery.packPeakA'],
    ['inverter.dcMaxV', 42, 'site.mustBeBelow inverter.dcMinV inverter.dcMaxV'],
    ['inverter.surgeW', 5000, 'site.mustNotExceed inverter.ratedW inverter.surgeW'],
    ['inverter.legLimitW', 7000, 'site.mustNotExceed inverter.legLimitW inverter.ratedW'],
    ['trackers[1].startV', 500, 'site.mustBeBelow trackers[1].startV trackers[1].maxV'],
    ['trackers[0].trackMaxV', 510, 'site.mustNotExceed trackers[0].trackMaxV trackers[0].maxV'],
    ['trackers[0].trackMinV', 425, 'site.mustBeBelow trackers[0].trackMinV trackers[0].trackMaxV'],
    [
      'trackers[0].shortCircuitMaxA',
      10,
      'site.mustNotExceed trackers[0].usableA trackers[0].shortCircuitMaxA',
    ],
    ['strings[0].vmpV', 41, 'site.mustBeBelow strings[0].vmpV strings[0].vocV'],
    ['strings[1].impA', 12, 'site.mustBeBelow strings[1].impA strings[1].iscA'],
    ['strings[1].name', 'east ', 'site.nameTwice strings[1].name'],
    ['strings[0].tracker', 'PV3', 'site.noSuchTracker strings[0].tracker'],
  ])('%s = %o', (id, value, expected) => {
    expect(problems(withFact(id, value))).toContain(expected);
  });

  it('are told of beside values that are wrong alone', () => {
    const sheet = setFact(withFact('battery.packs', 0), 'inverter.surgeW', 5000);
    expect(problems(sheet)).toEqual([
      'site.outOfRange battery.packs',
      'site.mustNotExceed inverter.ratedW inverter.surgeW',
    ]);
    expect(problems(setFact(sheet, 'inverter.surgeW', -1))).toEqual([
      'site.outOfRange battery.packs',
      'site.outOfRange inverter.surgeW',
    ]);
    expect(problems({ ...sallowCreek, trackers: 3, strings: [1, null] })).not.toContain(
      'site.noSuchTracker strings[0].tracker',
    );
  });

  it('does not stop on facts that are unknown', () => {
    expect(checkSheet(withFact('climate.usualLowC', null)).ok).toBe(true);
  });
});

describe('what can be so but should not', () => {
  const warned = (sheet: SiteSheet): string[] => {
    const result = checkSheet(sheet);
    return result.ok ? result.warnings.map(({ reason }) => reason.id) : ['refused'];
  };
  it('is warned of and kept', () => {
    expect(warned(withFact('battery.cellsInSeries', 18))).toEqual(['site.fullAboveInverter']);
    expect(warned(withFact('battery.cellsInSeries', 12))).toEqual(['site.fullBelowInverter']);
    expect(warned(withFact('packBreaker.fitted', false))).toEqual(['site.packsWithoutBreakers']);
    expect(warned(withFact('fuse.fitted', false))).toEqual(['site.noFuse']);
  });
  it('a string too long or too short for its tracker is a finding for a guide, not an error of the sheet', () => {
    for (const modules of [2, 20])
      expect(warned(withFact('strings[0].modulesInSeries', modules))).toEqual([]);
  });
});

describe('facts', () => {
  it('may be null exactly where the schema says so', () => {
    for (const fact of facts) {
      const id = fact.id.replace('[]', '[0]');
      expect(checkSheet(withFact(id, null)).ok, id).toBe(unknownAllowed[fact.id]);
    }
  });

  it('are asked for where the sheet does not know them, row by row', () => {
    const sheet = setFact(withFact('inverter.busCapacitanceF', null), 'strings[1].lengthM', null);
    expect(
      missingFacts(sheet, [
        'inverter.busCapacitanceF',
        'inverter.idleW',
        'strings[].lengthM',
        'inverter.busCapacitanceF',
      ]),
    ).toEqual(['inverter.busCapacitanceF', 'strings[1].lengthM']);
    expect(missingFacts(sheet, ['strings', 'strings[].vocV'])).toEqual([]);
    expect(missingFacts({ ...sheet, strings: [] }, ['strings[].vocV'])).toEqual(['strings']);
  });

  it('are set on a copy', () => {
    const changed = setFact(sallowCreek, 'strings[1].isolator.ratedA', 40);
    expect(getFact(changed, 'strings[1].isolator.ratedA')).toBe(40);
    expect(getFact(sallowCreek, 'strings[1].isolator.ratedA')).toBe(32);
    expect(() => setFact(sallowCreek, 'strings[7].vocV', 40)).toThrow(/no row/);
    expect(() => setFact(sallowCreek, '__proto__.x', 1)).toThrow(/no fact/);
  });

  it('give the meter’s accuracy as percent, or nothing while it is unknown', () => {
    expect(meterSpecOf(sallowCreek, 'dcVolts')).toEqual({ percentOfReading: 0.5, counts: 2 });
    expect(meterSpecOf(withFact('meter.dcVolts.counts', null), 'dcVolts')).toBeNull();
  });

  it('throws for an id that is none', () => {
    expect(() => factOf('battery.colour')).toThrow(/no fact/);
  });
});

describe('words', () => {
  it('every fact has a label of its own, and every choice a name', () => {
    for (const fact of facts) {
      expect(factWords[fact.id]?.label, fact.id).toBeTruthy();
      if (fact.answer.type === 'choice') {
        for (const choice of fact.answer.choices)
          expect(choiceWords[fact.id]?.[String(choice)], `${fact.id} ${choice}`).toBeTruthy();
      }
    }
    for (const id of Object.keys(factWords)) if (!['strings', 'trackers'].includes(id)) factOf(id);
    expect(factLabel('strings[1].vocV')).toBe('String 2: Module Voc');
  });

  it('every fact stands in one group of the form', () => {
    for (const { id } of facts.filter((fact) => !fact.id.includes('[]'))) {
      const groups = factGroups.filter(({ starts }) =>
        starts.some((start) => (start.endsWith('.') ? id.startsWith(start) : id === start)),
      );
      expect(groups, id).toHaveLength(1);
    }
  });

  it('every problem has a sentence', () => {
    const broken: unknown[] = [
      { ...sallowCreek, colour: 1 },
      withFact('battery.packs', 0),
      withFact('strings[1].name', 'East'),
      withFact('strings[0].tracker', 'x'),
      withFact('inverter.dcMaxV', 42),
      withFact('inverter.surgeW', 300),
    ];
    for (const input of broken) {
      const result = checkSheet(input);
      if (result.ok) throw new Error('taken');
      for (const { reason } of result.problems) {
        expect(siteMessages[reason.id]?.(reason.params ?? {}), reason.id).toMatch(/^[A-Z“].*\.$/);
      }
    }
  });
});
