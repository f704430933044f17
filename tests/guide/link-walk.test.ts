import { describe, expect, test } from 'vitest';
import batteryLink from '../../machines/battery-link.ts';
import { verdictsOf } from '../../src/guide/content-check.ts';
import { linkCases } from '../support/link-cases/cases.ts';
import { walkLink } from '../support/link-cases/walk.ts';

describe('a walk of the battery-link guide', () => {
  test.each(linkCases.map((each) => [each.id, each] as const))(
    '%s',
    (_, { sheet, answers, causes, end, leaves }) => {
      const result = walkLink(sheet, answers);
      expect(result.problems).toEqual([]);
      expect({ at: result.needs, end: result.end }).toEqual({ at: null, end: { result: end, leaves } });
      expect(result.verdict?.causes ?? null).toEqual(causes);
    },
  );

  test('rests every verdict on what was answered in that walk', () => {
    for (const { id, sheet, answers } of linkCases) {
      const { verdict, outcomes } = walkLink(sheet, answers);
      for (const { block, outcome } of verdict?.because ?? [])
        expect(
          outcomes.some((each) => each.block === block && each.outcome === outcome),
          `${id}: ${block}`,
        ).toBe(true);
    }
  });

  test('comes to every cause that the guide can name', () => {
    const named = new Set(linkCases.flatMap((each) => each.causes ?? []));
    expect([...named].sort()).toEqual([...verdictsOf([batteryLink]).keys()].sort());
  });
});
