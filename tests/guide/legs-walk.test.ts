import { describe, expect, test } from 'vitest';
import { legCases } from '../support/leg-cases/cases.ts';
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
