import { describe, expect, it } from 'vitest';
import { readingUncertainty } from '../../src/quantity/meter.ts';
import { normalised } from '../../src/suspects/belief.ts';
import {
  conformsAbove,
  normalBelow,
  probabilityIn,
  softLikelihood,
  wideEnough,
} from '../../src/suspects/soft-reading.ts';

/** The volts meter of the worked cases: 0.5 % + 2 counts of 10 mV. */
const volts = (reading: number) =>
  readingUncertainty(reading, { percentOfReading: 0.5, counts: 2, resolution: 0.01 }, 0.01);

describe('one reading', () => {
  it.each([
    [51.2, 0.5, 2, 0.01, 0.276, 0.1593, 0.3187],
    [412, 0.5, 2, 0.1, 2.26, 1.305, 2.61],
    [80, 2, 5, 0.1, 2.1, 1.212, 2.425],
    [100, 0.5, 2, 0.1, 0.7, 0.404, 0.808],
    [0.3, 0.9, 3, 0.1, 0.303, 0.175, 0.35],
  ])('%d, ±(%d %% + %d of %d)', (reading, percentOfReading, counts, resolution, a, u, expanded) => {
    const found = readingUncertainty(reading, { percentOfReading, counts, resolution }, resolution);
    expect(Math.abs(found.halfWidth - a)).toBeLessThan(0.0006);
    expect(Math.abs(found.standard - u)).toBeLessThan(0.0006);
    expect(Math.abs(found.expanded - expanded)).toBeLessThan(0.0006);
  });

  it('the normal distribution, at published points', () => {
    // NIST/SEMATECH e-Handbook, 1.3.6.7.1.
    expect(normalBelow(0)).toBe(0.5);
    expect(normalBelow(1)).toBeCloseTo(0.841345, 6);
    expect(normalBelow(1.96)).toBeCloseTo(0.975002, 6);
    expect(normalBelow(-3)).toBeCloseTo(0.00135, 6);
    expect(normalBelow(40)).toBe(1);
  });

  it('51.20 V against 51.0 V: 89.5 %, accepted without a guard band, undetermined with one', () => {
    const { standard: u, expanded } = volts(51.2);
    expect(probabilityIn({ low: 51, high: Number.POSITIVE_INFINITY }, 51.2, u)).toBeCloseTo(0.8953, 3);
    expect(conformsAbove(51, 51.2, 0)).toBe('accepted');
    expect(conformsAbove(51, 51.2, 1.645 * u)).toBe('undetermined');
    expect(51 + 1.645 * u).toBeCloseTo(51.262, 3);
    expect(51 + expanded).toBeCloseTo(51.319, 3);
    expect(conformsAbove(51, 51.33, expanded)).toBe('accepted');
    expect(51 - 1.645 * u).toBeCloseTo(50.738, 3);
    expect(51 - expanded).toBeCloseTo(50.681, 3);
    expect(conformsAbove(51, 50.67, expanded)).toBe('rejected');
  });

  it('53.90 V between 50 and 54 V: 72.5 %', () => {
    const { standard: u } = volts(53.9);
    expect(u).toBeCloseTo(0.1671, 4);
    expect(probabilityIn({ low: 50, high: 54 }, 53.9, u)).toBeCloseTo(0.7252, 3);
  });

  it('wants a band of four U', () => {
    expect(wideEnough(1.3, 0.3187)).toBe(true);
    expect(wideEnough(1.2, 0.3187)).toBe(false);
  });
});

describe('a reading near the edge of a class', () => {
  const classes = [
    { low: 10, high: 48 },
    { low: 48, high: 58.4 },
  ];
  const rows = [
    [0.1, 0.9],
    [0.8, 0.2],
  ];
  const prior = [0.7, 0.3];
  const share = (likelihood: (row: number[]) => number): number =>
    normalised(rows.map((row, at) => prior[at]! * likelihood(row)))[0]!;
  const { standard: u } = volts(48.1);
  const w = classes.map((one) => probabilityIn(one, 48.1, u));

  it('weighs by the density in each class: .8856, not .8223', () => {
    expect(u).toBeCloseTo(0.1504, 4);
    expect(w[0]).toBeCloseTo(0.2531, 3);
    expect(w[1]).toBeCloseTo(0.7469, 3);
    expect(share((row) => row[1]!)).toBeCloseTo(0.913, 3);
    expect(share((row) => row[0]!)).toBeCloseTo(0.226, 3);
    expect(share((row) => w[0]! * row[0]! + w[1]! * row[1]!)).toBeCloseTo(0.8223, 3);
    expect(share((row) => softLikelihood(classes, row, 48.1, u))).toBeCloseTo(0.8856, 3);
  });
});
