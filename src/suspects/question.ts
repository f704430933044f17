import { normalised } from './belief.ts';
import { expectedCost, ratioOrder } from './repair-order.ts';

/**
 * What a question is worth before a row of check-and-fix actions: how much less they are expected to cost once the
 * answer has set their order. `rows[cause][answer]` is P(answer | cause). Worth asking for less than this only.
 */
export function questionValue(
  p: readonly number[],
  cost: readonly number[],
  rows: readonly (readonly number[])[],
): number {
  const costOn = (belief: readonly number[]): number => expectedCost(belief, cost, ratioOrder(belief, cost));
  const later = (rows[0] ?? []).reduce((sum, _, answer) => {
    const joint = p.map((share, cause) => share * rows[cause]![answer]!);
    const mass = joint.reduce((a, b) => a + b, 0);
    return mass > 0 ? sum + mass * costOn(normalised(joint)) : sum;
  }, 0);
  return costOn(p) - later;
}
