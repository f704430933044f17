import { describe, expect, test } from 'vitest';
import { heatCases } from '../support/heat-cases/cases.ts';
import { walkHeat } from '../support/heat-cases/walk.ts';

const causes = [
  'blocked-or-recirculated',
  'charging-hard',
  'dust-clogged',
  'fan-failed',
  'fan-sensor-stuck',
  'fan-setting',
  'fans-normal',
  'heat-nothing-wrong',
  'height-or-mounting',
  'hidden-or-circulating',
  'hot-joint',
  'hot-room-or-sun',
];

describe('a walk of the guide to loud fans and hot units', () => {
  test.each(heatCases.map((each) => [each.id, each] as const))(
    '%s',
    (_, { sheet, answers, causes: expected, end, leaves }) => {
      const result = walkHeat(sheet, answers);
      expect(result.problems).toEqual([]);
      expect({ causes: result.verdict?.causes ?? null, end: result.end }).toEqual({
        causes: expected,
        end: { result: end, leaves },
      });
    },
  );

  test('rests every verdict on what was answered in that walk', () => {
    for (const { id, sheet, answers } of heatCases) {
      const { verdict, outcomes } = walkHeat(sheet, answers);
      for (const { block, outcome } of verdict?.because ?? [])
        expect(
          outcomes.some((each) => each.block === block && each.outcome === outcome),
          `${id}: ${block}`,
        ).toBe(true);
    }
  });

  test.each(['sallow', 'tern'])('comes to every cause that the guide can name, on %s', (place) => {
    const named = heatCases.filter(({ id }) => id.startsWith(place)).flatMap((each) => each.causes ?? []);
    expect([...new Set(named)].sort()).toEqual(causes);
  });

  test('comes to the commonest answer with two figures off the screen and four answers', () => {
    const quick = heatCases.find(({ id }) => id === 'sallow: normal, the load asks')!;
    const { outcomes } = walkHeat(quick.sheet, quick.answers);
    const asked = outcomes.filter(({ by }) => by !== 'sheet' && by !== 'worksheet');
    expect(asked.length).toBeLessThanOrEqual(7);
    expect(outcomes.flatMap(({ readings }) => readings)).toHaveLength(2);
  });
});
