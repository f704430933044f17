import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgAreaMm2 } from '../../src/quantity/wire.ts';
import { cableResistance } from '../../src/worksheets/battery-dc/cable-resistance.ts';
import { ampacityOf, usableAmps } from '../../src/worksheets/tables/ampacity.ts';
import {
  aluminiumResistivity,
  iec60228aluminium,
  necTable8,
} from '../../src/worksheets/tables/conductors.ts';
import {
  ambientFactor,
  bundlingFactor,
  necAmbient,
  necBundling,
} from '../../src/worksheets/tables/nec-310-15.ts';
import {
  ampacityColumns,
  ampacitySizesMm2,
  nec310_16,
  rowAreaMm2,
  tableAmps,
} from '../../src/worksheets/tables/nec-310-16.ts';
import {
  necEditions,
  ratingAtLeast,
  ratingAtMost,
  smallConductorCap,
  standardRatings,
} from '../../src/worksheets/tables/standard-ratings.ts';

const column = fc.constantFrom(...ampacityColumns);
const metal = fc.constantFrom('copper' as const, 'aluminium' as const);

describe('aluminium', () => {
  it('holds to the law of area and resistivity in both tables, a few per cent up for stranding', () => {
    for (const { gauge, aluminium } of necTable8.rows) {
      // 61 % IACS from 20 to 75 °C: 0.00403 is the coefficient of that metal at 20 °C.
      const solid = (aluminiumResistivity * (1 + 0.00403 * 55)) / awgAreaMm2(gauge) / 3.28084;
      expect(aluminium / solid, `gauge ${gauge}`).toBeGreaterThan(1.01);
      expect(aluminium / solid, `gauge ${gauge}`).toBeLessThan(1.03);
    }
    for (const { areaMm2, aluminium } of iec60228aluminium.rows) {
      expect((aluminium * areaMm2) / aluminiumResistivity, `${areaMm2} mm²`).toBeGreaterThan(1.04);
      expect((aluminium * areaMm2) / aluminiumResistivity, `${areaMm2} mm²`).toBeLessThan(1.14);
    }
  });

  it('has 1.6 to 1.7 times the resistance of copper of the same size, at any temperature', () => {
    for (const { gauge } of necTable8.rows) {
      for (const tempC of [0, 30, 75]) {
        const area = awgAreaMm2(gauge);
        const ratio =
          cableResistance(area, tempC, 'aluminium').ohmsPerM / cableResistance(area, tempC).ohmsPerM;
        expect(ratio, `gauge ${gauge}`).toBeGreaterThan(1.61);
        expect(ratio, `gauge ${gauge}`).toBeLessThan(1.7);
      }
    }
  });
});

describe('ampacity, Table 310.16', () => {
  it('rises with size and with the rating of the insulation; aluminium lies below copper', () => {
    for (const [at, row] of nec310_16.rows.entries()) {
      const before = nec310_16.rows[at - 1];
      for (const each of ['copper', 'aluminium'] as const) {
        const amps = row[each];
        if (!amps) continue;
        expect(amps[0]).toBeLessThan(amps[1]);
        expect(amps[1]).toBeLessThan(amps[2]);
        before?.[each]?.forEach((smaller, i) => {
          expect(amps[i]).toBeGreaterThan(smaller);
        });
      }
      row.aluminium?.forEach((amps, i) => {
        expect(amps).toBeLessThan(row.copper[i]!);
      });
      if (before) expect(rowAreaMm2(row)).toBeGreaterThan(rowAreaMm2(before));
    }
  });

  it('is stepped: a size between two rows takes the smaller, one below the table has none', () => {
    expect(tableAmps(4, 'copper', 90)).toBe(30);
    expect(tableAmps(6, 'copper', 90)).toBe(40);
    expect(tableAmps(107.2, 'copper', 75)).toBe(230);
    expect(tableAmps(1.5, 'copper', 90)).toBeUndefined();
    expect(tableAmps(2.08, 'aluminium', 90)).toBeUndefined();
    const known = new Set(nec310_16.rows.flatMap((row) => [...row.copper, ...(row.aluminium ?? [])]));
    fc.assert(
      fc.property(fc.double({ min: 3.4, max: 300, noNaN: true }), metal, column, (area, m, c) => {
        expect(known.has(tableAmps(area, m, c)!)).toBe(true);
        expect(tableAmps(area * 1.3, m, c)!).toBeGreaterThanOrEqual(tableAmps(area, m, c)!);
      }),
    );
    expect(ampacitySizesMm2('copper').length).toBe(ampacitySizesMm2('aluminium').length + 1);
  });
});

describe('correction for ambient temperature', () => {
  it('follows the square-root law at the upper edge of every row, rounded to two places', () => {
    for (const { upToC, factors } of necAmbient.rows) {
      for (const [at, columnC] of ampacityColumns.entries()) {
        const law = upToC < columnC ? Math.sqrt((columnC - upToC) / (columnC - 30)) : undefined;
        const printed = factors[at];
        if (printed === undefined) expect(law ?? 0, `${upToC}/${columnC}`).toBe(0);
        else expect(Math.abs(printed - law!), `${upToC}/${columnC}`).toBeLessThanOrEqual(0.0051);
      }
    }
  });

  it('is stepped and never rises with heat', () => {
    const known = new Set(necAmbient.rows.flatMap((row) => row.factors));
    fc.assert(
      fc.property(fc.double({ min: -40, max: 90, noNaN: true }), column, (tempC, c) => {
        expect(known.has(ambientFactor(tempC, c)) || ambientFactor(tempC, c) === undefined).toBe(true);
        expect(ambientFactor(tempC + 5, c) ?? 0).toBeLessThanOrEqual(ambientFactor(tempC, c) ?? 0);
      }),
    );
    expect(ambientFactor(30, 90)).toBe(1);
    expect(ambientFactor(30.5, 90)).toBe(0.96);
    expect(ambientFactor(86, 90)).toBeUndefined();
  });

  it('takes its share for company in the raceway', () => {
    expect([2, 3, 4, 6, 7, 9, 10, 20, 21, 30, 31, 40, 41].map(bundlingFactor)).toEqual([
      1, 1, 0.8, 0.8, 0.7, 0.7, 0.5, 0.5, 0.45, 0.45, 0.4, 0.4, 0.35,
    ]);
    expect(necBundling.rows.map((row) => row.factor)).toEqual(
      [...necBundling.rows.map((row) => row.factor)].toSorted((a, b) => b - a),
    );
  });
});

describe('usable ampacity', () => {
  const usual = {
    areaMm2: awgAreaMm2(-3),
    metal: 'copper' as const,
    insulation: 90 as const,
    termination: 75 as const,
    ambientC: 45,
    conductors: 3,
  };

  it('takes the smaller of the two, never both multiplied', () => {
    expect(usableAmps(ampacityOf(usual)!)).toBeCloseTo(226.2, 9);
    expect(usableAmps(ampacityOf({ ...usual, areaMm2: awgAreaMm2(-1), ambientC: 50 })!)).toBeCloseTo(
      159.9,
      9,
    );
    const tenGauge = ampacityOf({ ...usual, areaMm2: awgAreaMm2(10), ambientC: 60, conductors: 6 })!;
    expect(usableAmps(tenGauge)).toBeCloseTo(22.72, 9);
    expect(usableAmps(ampacityOf({ ...usual, areaMm2: awgAreaMm2(6), ambientC: 40 })!)).toBe(65);
    expect(usableAmps(ampacityOf({ ...usual, areaMm2: awgAreaMm2(6), ambientC: 40, termination: 60 })!)).toBe(
      55,
    );
  });

  it('never rises with heat, company or a smaller size', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...ampacitySizesMm2('copper')),
        fc.integer({ min: -20, max: 80 }),
        fc.integer({ min: 1, max: 45 }),
        (areaMm2, ambientC, conductors) => {
          const here = { ...usual, areaMm2, ambientC, conductors };
          const amps = usableAmps(ampacityOf(here)!);
          for (const worse of [
            { ...here, ambientC: ambientC + 5 },
            { ...here, conductors: conductors + 1 },
            { ...here, areaMm2: Math.max(2.08, areaMm2 / 1.3) },
          ]) {
            expect(usableAmps(ampacityOf(worse)!)).toBeLessThanOrEqual(amps);
          }
        },
      ),
    );
  });
});

describe('standard ratings', () => {
  it('rise, hold no 55, 65, 75 or 85 A, and have 10 A for breakers from 2023 on', () => {
    for (const edition of necEditions) {
      for (const device of ['fuse', 'breaker'] as const) {
        const ratings = standardRatings(edition, device);
        expect(ratings).toEqual([...new Set(ratings)].toSorted((a, b) => a - b));
        for (const none of [12, 55, 65, 75, 85]) expect(ratings).not.toContain(none);
      }
    }
    expect(standardRatings('2023', 'breaker')).toContain(10);
    expect(standardRatings('2020', 'breaker')).not.toContain(10);
    expect(standardRatings('2017', 'fuse')).toContain(10);
  });

  it('step up and down without skipping one', () => {
    expect(ratingAtLeast(39.6, '2023', 'breaker')).toBe(40);
    expect(ratingAtLeast(40, '2023', 'breaker')).toBe(40);
    expect(ratingAtLeast(14 * 1.25, '2020', 'fuse')).toBe(20);
    expect(ratingAtMost(55, '2023', 'breaker')).toBe(50);
    expect(ratingAtMost(5, '2020', 'breaker')).toBeUndefined();
    expect(ratingAtLeast(7000, '2020', 'breaker')).toBeUndefined();
  });

  it('cap small conductors', () => {
    expect([14, 12, 10, 8].map((gauge) => smallConductorCap(awgAreaMm2(gauge), 'copper'))).toEqual([
      15,
      20,
      30,
      undefined,
    ]);
    expect([12, 10, 8].map((gauge) => smallConductorCap(awgAreaMm2(gauge), 'aluminium'))).toEqual([
      15,
      25,
      undefined,
    ]);
    expect(smallConductorCap(4, 'copper')).toBe(20);
  });
});
