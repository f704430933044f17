import { describe, expect, it } from 'vitest';
import { type MeterSpec, readingUncertainty } from '../../src/quantity/meter.ts';
import { awgAreaMm2, awgGauges, awgName } from '../../src/quantity/wire.ts';

describe('uncertainty of a reading (GUM, JCGM 100:2008: rectangular, u = a/√3, U = 2u)', () => {
  // Printed figures; each is compared to as many digits as it prints.
  it.each<[string, number, MeterSpec, number, string, string, string]>([
    [
      '51.20 V on a 60.00 V range',
      51.2,
      { percentOfReading: 0.5, counts: 2 },
      0.01,
      '0.2760',
      '0.1593',
      '0.3187',
    ],
    ['412.0 V on a 600.0 V range', 412, { percentOfReading: 0.5, counts: 2 }, 0.1, '2.260', '1.305', '2.610'],
    ['80.0 A by clamp', 80, { percentOfReading: 2, counts: 5 }, 0.1, '2.100', '1.212', '2.425'],
    ['100.0 mV', 0.1, { percentOfReading: 0.5, counts: 2 }, 0.0001, '0.000700', '0.000404', '0.000808'],
    ['0.3 Ω', 0.3, { percentOfReading: 0.9, counts: 3 }, 0.1, '0.303', '0.175', '0.350'],
  ])('%s', (_, value, spec, step, a, u, expanded) => {
    const got = readingUncertainty(value, spec, step);
    expect(got.halfWidth.toFixed(a.length - 2)).toBe(a);
    expect(got.standard.toFixed(u.length - 2)).toBe(u);
    expect(got.expanded.toFixed(expanded.length - 2)).toBe(expanded);
  });

  it('is the same for a reading of either sign', () => {
    const spec = { percentOfReading: 0.5, counts: 2 };
    expect(readingUncertainty(-51.2, spec, 0.01)).toEqual(readingUncertainty(51.2, spec, 0.01));
  });

  it('takes the larger step when fewer digits were written down than the meter shows, and never a smaller one', () => {
    const spec = { percentOfReading: 0.5, counts: 2, resolution: 0.01 };
    expect(readingUncertainty(51, spec, 1).halfWidth).toBeCloseTo(0.255 + 2, 9);
    expect(readingUncertainty(51, spec, 0.0001).halfWidth).toBeCloseTo(0.255 + 0.02, 9);
  });
});

describe('wire sizes', () => {
  // ASTM B258 diameters: 12 AWG 0.08081 in, 4/0 0.4600 in; areas as NEC chapter 9 table 8 prints them.
  const table8: Record<string, number> = {
    '14': 2.08,
    '12': 3.31,
    '10': 5.261,
    '8': 8.367,
    '6': 13.3,
    '4': 21.15,
    '3': 26.67,
    '2': 33.62,
    '1': 42.41,
    '1/0': 53.49,
    '2/0': 67.43,
    '3/0': 85.01,
    '4/0': 107.2,
  };
  it.each(Object.entries(table8))('AWG %s is %f mm² (NEC chapter 9 table 8)', (name, area) => {
    const gauge = awgGauges.find((each) => awgName(each) === name);
    expect(awgAreaMm2(gauge as number) / area).toBeCloseTo(1, 3);
  });
});
