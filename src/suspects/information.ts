import { type Belief, byRemedy, predicted } from './belief.ts';
import type { Table } from './table.ts';

/** Shannon entropy [bit]; an impossible entry counts nothing. */
export const entropyBits = (list: readonly number[]): number =>
  list.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);

/**
 * What a check is expected to tell about the *remedy* [bit]: I(class; outcome) = H(Y) − Σ p(class) H(Y | class)
 * (de Kleer & Williams 1987, taken over repair classes: telling two causes with one remedy apart is worth nothing).
 * Never negative.
 */
export function informationBits(table: Table, belief: Belief, check: number): number {
  const { rows, outcomes } = table.checks[check]!;
  const mass = byRemedy(table, belief);
  const joint = table.remedies.map(() => outcomes.map(() => 0));
  belief.forEach((p, suspect) => {
    const row = joint[table.classOf[suspect]!]!;
    rows[suspect]!.forEach((share, outcome) => {
      row[outcome]! += p * share;
    });
  });
  const within = joint.reduce(
    (sum, row, at) => (mass[at]! > 0 ? sum + mass[at]! * entropyBits(row.map((j) => j / mass[at]!)) : sum),
    0,
  );
  return Math.max(0, entropyBits(predicted(table, belief, check)) - within);
}
