import { describe, expect, test } from 'vitest';
import { pvCases } from '../support/pv-cases/cases.ts';
import { walkPv } from '../support/pv-cases/walk.ts';

describe('a walk of the PV guide', () => {
  test.each(pvCases.map((each) => [each.id, each] as const))(
    '%s',
    (_, { sheet, answers, causes, end, leaves }) => {
      const result = walkPv(sheet, answers);
      expect(result.problems).toEqual([]);
      expect(result.verdict?.causes ?? null).toEqual(causes);
      expect(result.end).toEqual({ result: end, leaves });
    },
  );

  test('rests every verdict on what was answered in that walk', () => {
    for (const { id, sheet, answers } of pvCases) {
      const { verdict, outcomes } = walkPv(sheet, answers);
      for (const { block, outcome } of verdict?.because ?? [])
        expect(
          outcomes.some((each) => each.block === block && each.outcome === outcome),
          `${id}: ${block}`,
        ).toBe(true);
    }
  });

  test('comes to every cause that the guide can name', () => {
    const named = new Set(pvCases.flatMap((each) => each.causes ?? []));
    expect([...named].sort()).toEqual(
      [
        'battery-not-live',
        'held-back',
        'high-resistance-joint',
        'insulation-fault',
        'isolator-open',
        'lockout-latched',
        'module-bypassed',
        'module-shutdown-holding',
        'nothing-wrong',
        'pole-grounded-or-shared',
        'start-disabled-by-setting',
        'string-fuse-open',
        'string-open-circuit',
        'string-reversed',
        'string-shorted',
        'string-too-long',
        'string-too-short',
        'tracker-input-failed',
        'unequal-strings',
        'wrong-tracker-input',
      ].sort(),
    );
  });
});
