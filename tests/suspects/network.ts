import { type ICptWithParentsItem, type INetwork, inferences } from 'bayesjs';
import { expect } from 'vitest';
import { posterior } from '../../src/suspects/belief.ts';
import { type History, notDone } from '../../src/suspects/history.ts';
import type { Table } from '../../src/suspects/table.ts';

/** One row of a node with parents, as the library wants it. */
export function entry(when: Record<string, string>, shares: Record<string, number>): ICptWithParentsItem {
  // biome-ignore lint/suspicious/noThenProperty: the library's own name for the row.
  return { when, then: shares };
}

/** The table as a network for the library: one node for the cause, one child for each check. */
function networkOf(table: Table): INetwork {
  const share = (ids: readonly string[], p: readonly number[]) =>
    Object.fromEntries(ids.map((id, at) => [id, p[at]!]));
  const causes = table.suspects.map(({ id }) => id);
  const cause = {
    id: 'cause',
    states: causes,
    parents: [],
    cpt: share(
      causes,
      table.suspects.map(({ prior }) => prior),
    ),
  };
  const checks = table.checks.map(({ id, outcomes, rows }) => ({
    id,
    states: [...outcomes],
    parents: ['cause'],
    cpt: causes.map((suspect, at) => entry({ cause: suspect }, share(outcomes, rows[at]!))),
  }));
  return Object.fromEntries([cause, ...checks].map((node) => [node.id, node]));
}

const given = (table: Table, history: History) =>
  Object.fromEntries(
    history.flatMap((y, at) =>
      y === notDone ? [] : [[table.checks[at]!.id, table.checks[at]!.outcomes[y]!]],
    ),
  );

/** Our posterior against the library's three methods, within 1e-12. */
export function expectSame(table: Table, history: History): void {
  const ours = posterior(table, history);
  const network = networkOf(table);
  for (const { infer } of Object.values(inferences)) {
    table.suspects.forEach(({ id }, at) => {
      const theirs = infer(network, { cause: id }, given(table, history));
      expect(Math.abs(theirs - ours[at]!)).toBeLessThan(1e-12);
    });
  }
}
