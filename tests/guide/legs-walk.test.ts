import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { legCases, plantCase } from '../support/leg-cases/cases.ts';
import { walkLegs } from '../support/leg-cases/walk.ts';

describe('a walk of the guide on uneven legs', () => {
  test.each(legCases.map((each) => [each.id, each] as const))('%s', (_, { sheet, answers, causes, end }) => {
    const result = walkLegs(sheet, answers);
    expect(
      { problems: result.problems, causes: result.verdict?.causes ?? null, end: result.end?.result },
      JSON.stringify(result.outcomes.map((o) => `${o.block}:${o.outcome}`)),
    ).toEqual({
      problems: [],
      causes,
      end,
    });
  });

  test('comes to every cause that the guide can name', () => {
    const named = new Set(legCases.flatMap((each) => each.causes ?? []));
    expect([...named].sort()).toEqual([
      'feeder-long',
      'hot-joint-poor',
      'leg-lost',
      'leg-overloaded',
      'legs-healthy',
      'legs-in-phase',
      'legs-third-apart',
      'neutral-joint-poor',
      'neutral-not-grounded',
      'neutral-open-at-source',
      'neutral-open-feeder',
      'search-mode',
      'shared-neutral-open',
      'source-flipping',
      'source-sags',
      'start-dip',
    ]);
  });
});

const site = fc.constantFrom('opposed' as const, 'common' as const, 'wye' as const);
const house = fc.tuple(fc.integer({ min: 0, max: 2500 }), fc.integer({ min: 0, max: 2500 }));
const neutralCauses = ['neutral-open-feeder', 'neutral-open-at-source', 'neutral-joint-poor'];

describe('on any plant', () => {
  test('a neutral with half an ohm too much, up to open, is never called healthy and never left with loads on', () => {
    fc.assert(
      fc.property(site, house, fc.double({ min: -0.3, max: 12, noNaN: true }), (where, watts, decades) => {
        const { sheet, answers } = plantCase(where, { neutral: 10 ** decades }, watts);
        const { end, outcomes } = walkLegs(sheet, answers);
        expect(['healthy', 'fixed']).not.toContain(end?.result);
        const tested = outcomes.some(({ block }) => block === 'panel-still');
        if (tested) expect(outcomes.some(({ block }) => block === 'loads-on')).toBe(false);
      }),
      { numRuns: 60 },
    );
  });

  test('a sound neutral is never blamed, whatever the house draws and wherever its volts stand', () => {
    fc.assert(
      fc.property(site, house, fc.double({ min: 112, max: 127, noNaN: true }), (where, watts, volts) => {
        const { sheet, answers } = plantCase(where, { volts }, watts);
        const causes = walkLegs(sheet, answers).verdict?.causes ?? [];
        expect(causes.filter((cause) => neutralCauses.includes(cause))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('a reading that contradicts the rest names nothing', () => {
    const { sheet, answers } = plantCase('opposed', {}, [900, 700]);
    const odd = { v12: '310.0', v1: '120.1', v2: '120.0' };
    const { verdict, end } = walkLegs(sheet, { ...answers, 'out-legs': odd });
    expect(verdict ?? null).toBeNull();
    expect(end?.result ?? 'unfinished').not.toBe('healthy');
  });
});
