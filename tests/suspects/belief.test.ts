import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { posterior, predicted, updated } from '../../src/suspects/belief.ts';
import { historyOf } from '../../src/suspects/history.ts';
import { expectSame } from './network.ts';
import { anyTableRead, bareTable, eightBySix } from './tables.ts';

const table = eightBySix();

describe('posterior', () => {
  const read = historyOf(table, [
    { check: 'readFaultCode', outcome: 'none' },
    { check: 'battTermV', outcome: 'ok' },
    { check: 'invTermV', outcome: 'zero' },
  ]);
  const history = read.kind === 'history' ? read.history : [];

  it('after no code, battery well, nothing at the inverter: the fuse', () => {
    const expected = [
      0.0167471429, 0.6942451983, 0.0360212681, 0.2435948064, 0.0057759593, 0.0011928612, 0.0023072446,
      0.0001155192,
    ];
    posterior(table, history).forEach((share, at) => {
      expect(Math.abs(share - expected[at]!)).toBeLessThan(1e-10);
    });
  });

  it('predicts each reading of it in turn', () => {
    let belief: readonly number[] = table.suspects.map(({ prior }) => prior);
    const shares = [0, 1, 2].map((check) => {
      const share = predicted(table, belief, check)[history[check]!]!;
      belief = updated(table, belief, check, history[check]!);
      return share;
    });
    [0.5944, 0.669142, 0.48056].forEach((share, at) => {
      expect(shares[at]).toBeCloseTo(share, 6);
    });
    expect(belief).toEqual(posterior(table, history).map((share) => expect.closeTo(share, 14)));
  });

  it('is that of the library within 1e-12, by all three of its methods', () => expectSame(table, history));

  it('is that of the library for any table and any readings', () => {
    fc.assert(
      fc.property(anyTableRead, ({ table: any, history: some }) => expectSame(any, some)),
      { numRuns: 40 },
    );
  });

  it('of Eddy (1982): .01 of women, .792 found, .096 false alarms: 7.7 %', () => {
    const eddy = bareTable(
      [0.01, 0.99],
      [
        {
          rows: [
            [0.208, 0.792],
            [0.904, 0.096],
          ],
        },
      ],
    );
    expect(posterior(eddy, [1])[0]).toBeCloseTo(0.076923, 6);
    expectSame(eddy, [1]);
  });

  it('of readings that no suspect allows is flat, never NaN', () => {
    const sure = bareTable(
      [0.3, 0.7],
      [
        {
          rows: [
            [1, 0],
            [1, 0],
          ],
        },
      ],
    );
    expect(posterior(sure, [1])).toEqual([0.5, 0.5]);
  });
});

describe('readings by name', () => {
  it('count a check once: the second replaces the first', () => {
    const twice = historyOf(table, [
      { check: 'battTermV', outcome: 'zero' },
      { check: 'battTermV', outcome: 'ok' },
    ]);
    expect(twice).toEqual({ kind: 'history', history: [-1, 0, -1, -1, -1, -1] });
  });

  it('name what the table does not know', () => {
    const reading = { check: 'battTermV', outcome: 'purple' };
    expect(historyOf(table, [reading])).toEqual({ kind: 'unknown', reading });
  });
});
