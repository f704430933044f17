import fc from 'fast-check';
import { normalised } from '../../src/suspects/belief.ts';
import { type History, notDone } from '../../src/suspects/history.ts';
import type { Price } from '../../src/suspects/price.ts';
import type { Table } from '../../src/suspects/table.ts';
import fixture from './data/eight-by-six.json' with { type: 'json' };

/** A table as it stands, without floor and without "none of these": for published and worked figures. */
export function bareTable(
  prior: readonly number[],
  checks: readonly { cost?: number; hazard?: number; rows: readonly (readonly number[])[] }[],
  remedies: readonly string[] = prior.map((_, at) => `remedy${at}`),
): Table {
  const distinct = [...new Set(remedies)];
  return {
    suspects: prior.map((share, at) => ({ id: `suspect${at}`, remedy: remedies[at]!, prior: share })),
    checks: checks.map(({ cost = 1, hazard = 0, rows }, at) => ({
      id: `check${at}`,
      minutes: cost,
      hazard,
      outcomes: rows[0]!.map((_, y) => `outcome${y}`),
      rows,
    })),
    remedies: distinct,
    classOf: remedies.map((remedy) => distinct.indexOf(remedy)),
  };
}

/** The illustrative eight causes by six checks (invented figures, no field data). */
export function eightBySix(remedyOf: (cause: string) => string = (cause) => cause): Table {
  const remedies = fixture.causes.map(remedyOf);
  const table = bareTable(
    fixture.prior,
    Object.values(fixture.checks).map(({ minutes, hazard, p }) => ({ cost: minutes, hazard, rows: p })),
    remedies,
  );
  return {
    ...table,
    suspects: table.suspects.map((s, at) => ({ ...s, id: fixture.causes[at]! })),
    checks: table.checks.map((check, at) => {
      const [id, { outcomes }] = Object.entries(fixture.checks)[at]!;
      return { ...check, id, outcomes };
    }),
  };
}

export const eightBySixPrice: Price = { minutesPerHazard: 1, wrongMinutes: fixture.wrong };

/** Tests whose outcome is certain given the cause: `'101'` has outcome 1 for the first and third. */
export const sureRows = (outcomes: string): number[][] =>
  [...outcomes].map((y) => (y === '1' ? [0, 1] : [1, 0]));

const share = fc.double({ min: 0.005, max: 1, noNaN: true });
const row = (length: number) => fc.array(share, { minLength: length, maxLength: length }).map(normalised);

/** Small tables with every entry possible. Some suspects share a remedy. */
export const anyTable = fc
  .record({ suspects: fc.integer({ min: 2, max: 6 }), checks: fc.integer({ min: 1, max: 4 }) })
  .chain(({ suspects, checks }) =>
    fc.record({
      prior: row(suspects),
      remedies: fc.array(fc.integer({ min: 0, max: 4 }).map(String), {
        minLength: suspects,
        maxLength: suspects,
      }),
      checks: fc.array(
        fc.record({
          cost: fc.double({ min: 0.5, max: 30, noNaN: true }),
          hazard: fc.integer({ min: 0, max: 8 }),
          rows: fc
            .integer({ min: 2, max: 4 })
            .chain((k) => fc.array(row(k), { minLength: suspects, maxLength: suspects })),
        }),
        { minLength: checks, maxLength: checks },
      ),
    }),
  )
  .map(({ prior, checks, remedies }) => bareTable(prior, checks, remedies));

/** A table with some of its checks read. */
export const anyTableRead = anyTable.chain((table) =>
  fc
    .tuple(...table.checks.map(({ outcomes }) => fc.integer({ min: notDone, max: outcomes.length - 1 })))
    .map((history): { table: Table; history: History } => ({ table, history })),
);
