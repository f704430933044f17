import { describe, expect, it } from 'vitest';
import { posterior } from '../../src/suspects/belief.ts';
import { capacityBits, leastChecks, symmetricCapacity } from '../../src/suspects/code-length.ts';
import { nothingRead } from '../../src/suspects/history.ts';
import { entropyBits, informationBits } from '../../src/suspects/information.ts';
import { rankChecks, worthOf } from '../../src/suspects/worth.ts';
import { bareTable, eightBySix, eightBySixPrice, sureRows } from './tables.ts';

const chain = [0.4, 0.3, 0.2, 0.1];
const eight = [0.25, 0.2, 0.15, 0.12, 0.1, 0.08, 0.06, 0.04];
const even = (n: number): number[] => Array.from({ length: n }, () => 1 / n);

describe('information of a check', () => {
  it('in a chain of four is most after the first', () => {
    const table = bareTable(
      chain,
      ['0111', '0011', '0001'].map((rows) => ({ rows: sureRows(rows) })),
    );
    expect(entropyBits(chain)).toBeCloseTo(1.8464, 4);
    const bits = [0, 1, 2].map((check) => informationBits(table, chain, check));
    [0.971, 0.8813, 0.469].forEach((expected, at) => {
      expect(bits[at]).toBeCloseTo(expected, 4);
    });
  });

  it('loses one bit for each share of suspects that predict nothing', () => {
    const table = bareTable(chain, [
      {
        rows: [
          [1, 0],
          [1, 0],
          [0, 1],
          [0.5, 0.5],
        ],
      },
    ]);
    expect(entropyBits([0.75, 0.25])).toBeCloseTo(0.8113, 4);
    expect(informationBits(table, chain, 0)).toBeCloseTo(0.7113, 4);
    expect(informationBits(table, chain, 0)).toBeCloseTo(entropyBits([0.75, 0.25]) - 0.1, 12);
  });

  it('is nothing where it splits only causes with one remedy', () => {
    const rows = sureRows('01');
    expect(informationBits(bareTable([0.5, 0.5], [{ rows }], ['same', 'same']), [0.5, 0.5], 0)).toBe(0);
    expect(informationBits(bareTable([0.5, 0.5], [{ rows }]), [0.5, 0.5], 0)).toBe(1);
  });
});

describe('first step of the eight by six', () => {
  const table = eightBySix();
  const prior = posterior(table, nothingRead(table));
  const worths = table.checks.map((_, check) => worthOf(table, prior, check, eightBySixPrice));

  it.each([
    [0, 0.3983, 11.16, 0.7672],
    [1, 0.5709, 16.596, 0.7931],
    [2, 0.7547, 14.04, 0.8701],
    [3, 0.4536, 13.392, 0.693032],
    [4, 0.3348, 8.046, 0.7816],
    [5, 0.4022, 11.376, 0.7595],
  ])('check %d: %d bits, saves %d, can carry %d', (check, bits, saved, capacity) => {
    expect(worths[check]!.bits).toBeCloseTo(bits, 4);
    expect(worths[check]!.savedMinutes).toBeCloseTo(saved, 3);
    expect(capacityBits(table.checks[check]!.rows)).toBeCloseTo(capacity, 4);
  });

  it('turns from the battery terminals to the settings as a hazard point weighs more', () => {
    const at = (minutesPerHazard: number) => {
      const ranked = rankChecks(table, prior, [...table.checks.keys()], {
        ...eightBySixPrice,
        minutesPerHazard,
      });
      const worth = (id: string) => ranked.find((w) => table.checks[w.check]!.id === id)!.bitsPerCost;
      return {
        first: table.checks[ranked[0]!.check]!.id,
        battery: worth('battTermV'),
        settings: worth('readParams'),
      };
    };
    for (const weight of [0, 1, 2, 3, 4, 5]) expect(at(weight).first).toBe('readFaultCode');
    expect(at(1).battery).toBeCloseTo(0.1142, 4);
    expect(at(1).settings).toBeCloseTo(0.0804, 4);
    expect(at(2).battery).toBeCloseTo(0.0816, 4);
    expect(at(5).battery).toBeCloseTo(0.0439, 4);
    expect(at(1).battery).toBeGreaterThan(at(1).settings);
    expect(at(5).battery).toBeLessThan(at(5).settings);
  });
});

describe('least number of checks', () => {
  it.each([
    [chain, 1.8464, 1.9, 1.165, 1.3, 1],
    [eight, 2.795, 2.83, 1.7634, 1.85, 1.5],
    [even(8), 3, 3, 1.8928, 2, 1.75],
    [even(10), 3.3219, 3.4, 2.0959, 2.2, 1.8],
  ])('%j', (prior, bits, two, trits, three, four) => {
    expect(entropyBits(prior)).toBeCloseTo(bits, 4);
    expect(leastChecks(prior, 2)).toBeCloseTo(two, 10);
    expect(entropyBits(prior) / Math.log2(3)).toBeCloseTo(trits, 4);
    expect(leastChecks(prior, 3)).toBeCloseTo(three, 10);
    expect(leastChecks(prior, 4)).toBeCloseTo(four, 10);
  });
});

describe('a check that errs evenly', () => {
  it.each([
    [0.01, 0.9192, 1.4942],
    [0.05, 0.7136, 1.2486],
    [0.1, 0.531, 1.016],
    [0.2, 0.2781, 0.663],
  ])('with error %d carries %d or %d bits', (error, two, three) => {
    expect(symmetricCapacity(2, error)).toBeCloseTo(two, 4);
    expect(symmetricCapacity(3, error)).toBeCloseTo(three, 4);
    const rows = [0, 1, 2].map((i) => [0, 1, 2].map((y) => (i === y ? 1 - error : error / 2)));
    expect(capacityBits(rows)).toBeCloseTo(three, 4);
  });

  it('at 5 % takes 4.20 binary or 2.40 ternary checks for eight causes, 4.66 or 2.66 for ten', () => {
    expect(3 / symmetricCapacity(2, 0.05)).toBeCloseTo(4.2, 2);
    expect(3 / symmetricCapacity(3, 0.05)).toBeCloseTo(2.4, 2);
    expect(Math.log2(10) / symmetricCapacity(2, 0.05)).toBeCloseTo(4.66, 2);
    expect(Math.log2(10) / symmetricCapacity(3, 0.05)).toBeCloseTo(2.66, 2);
  });
});
