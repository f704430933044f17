import { describe, expect, it } from 'vitest';
import { questionValue } from '../../src/suspects/question.ts';
import { expectedCost, ratioOrder } from '../../src/suspects/repair-order.ts';

const p = [0.5, 0.3, 0.2];
const cost = [10, 20, 5];
const yes = [0.9, 0.2, 0.5];

describe('a question before the repairs', () => {
  it('is worth 2.15', () => {
    expect(expectedCost(p, cost, ratioOrder(p, cost))).toBeCloseTo(18.5, 12);
    const value = questionValue(
      p,
      cost,
      yes.map((share) => [share, 1 - share]),
    );
    expect(value).toBeCloseTo(2.15, 10);
  });

  it('changes the order: 13.2787 after yes, 21.1538 and 3, 2, 1 after no', () => {
    const answered = (rows: readonly number[]) => {
      const joint = p.map((share, at) => share * rows[at]!);
      const belief = joint.map((j) => j / joint.reduce((a, b) => a + b));
      return {
        belief,
        order: ratioOrder(belief, cost),
        cost: expectedCost(belief, cost, ratioOrder(belief, cost)),
      };
    };
    expect(answered(yes).belief.map((b) => b.toFixed(4))).toEqual(['0.7377', '0.0984', '0.1639']);
    expect(answered(yes).cost).toBeCloseTo(13.2787, 4);
    const no = answered(yes.map((share) => 1 - share));
    expect(no.belief.map((b) => b.toFixed(4))).toEqual(['0.1282', '0.6154', '0.2564']);
    expect(no.order).toEqual([2, 1, 0]);
    expect(no.cost).toBeCloseTo(21.1538, 4);
  });

  it('that every cause answers alike is worth nothing', () => {
    expect(
      questionValue(p, cost, [
        [0.3, 0.7],
        [0.3, 0.7],
        [0.3, 0.7],
      ]),
    ).toBeCloseTo(0, 12);
  });
});
