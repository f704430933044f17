import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coefficientFromVolts, tempAtVolts, vmpAt, vocAt } from '../../src/worksheets/pv/string-volts.ts';
import { stringWindow } from '../../src/worksheets/pv/string-window.ts';
import { nec690_7, necColdFactor, necColdSteps } from '../../src/worksheets/tables/nec-690-7.ts';

type In = Parameters<typeof stringWindow.compute>[0];

/** Eight modules that sit well inside their tracker's window. */
const fitting: In = {
  vocVolts: 41,
  vmpVolts: 34,
  vocPerC: -0.0028,
  vmpPerC: -0.0035,
  modules: 8,
  recordLowC: -30,
  hotCellC: 65,
  hotMargin: 0.03,
  startVolts: 150,
  trackLowVolts: 120,
  trackHighVolts: 425,
  maxVolts: 500,
};

function outOf(change: Partial<In>) {
  const result = stringWindow.compute({ ...fitting, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('string window verdict', () => {
  it.each<[string, Partial<In>, string]>([
    ['a string inside the window', {}, 'ok'],
    ['too few modules to start hot', { modules: 4, trackLowVolts: 100 }, 'startsNever'],
    ['hot volts a hair above start', { modules: 5, trackLowVolts: 100, startVolts: 175 }, 'startsMarginal'],
    ['starts but cannot track hot', { modules: 6, trackLowVolts: 180 }, 'belowTracking'],
    ['too many modules on the coldest morning', { modules: 11, trackHighVolts: 480 }, 'overMaximum'],
    [
      'by coefficient under, by table over the maximum',
      { maxVolts: 385, trackHighVolts: 380 },
      'nearMaximum',
    ],
    ['working volts above tracking in mild weather', { trackHighVolts: 260 }, 'aboveTracking'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('names destruction before everything else that is wrong', () => {
    const change: Partial<In> = { modules: 11, trackHighVolts: 300, startVolts: 480, maxVolts: 490 };
    expect(outOf(change).verdict).toBe('overMaximum');
    const remarks = stringWindow.remarks!({ ...fitting, ...change }, outOf(change)).map(
      (remark) => remark.id,
    );
    expect(remarks[0]).toBe('worksheet.string-window.overMaximum');
    expect(remarks).toContain('worksheet.string-window.startsNever');
    expect(remarks).toContain('worksheet.string-window.aboveTracking');
  });

  it('says nothing by the table below −40 °C, where the table stops', () => {
    const out = outOf({ recordLowC: -41 });
    expect(out.vocColdTableVolts).toBeUndefined();
    expect(out.mostModulesTable).toBeUndefined();
    expect(stringWindow.remarks!({ ...fitting, recordLowC: -41 }, out).map((each) => each.id)).toContain(
      'worksheet.string-window.belowTable',
    );
  });

  it('counts modules so that the count fits and one more does not', () => {
    const out = outOf({});
    expect(vocAt(fitting.vocVolts, fitting.vocPerC, -30) * out.mostModules!).toBeLessThanOrEqual(500);
    expect(vocAt(fitting.vocVolts, fitting.vocPerC, -30) * (out.mostModules! + 1)).toBeGreaterThan(500);
    const least = outOf({ modules: out.leastModules! });
    expect(least.verdict).toBe('ok');
    expect(outOf({ modules: out.leastModules! - 1 }).verdict).not.toBe('ok');
  });

  it.each<[string, Partial<In>]>([
    ['vmpAboveVoc', { vmpVolts: 42 }],
    ['windowUpsideDown', { trackLowVolts: 430 }],
    ['startAboveMaximum', { startVolts: 500 }],
    ['trackingAboveMaximum', { trackHighVolts: 501 }],
  ])('refuses with %s', (reason, change) => {
    const result = stringWindow.compute({ ...fitting, ...change });
    expect(!result.ok && result.reason.id).toBe(`worksheet.string-window.${reason}`);
  });
});

describe('string volts', () => {
  const coefficient = fc.double({ min: -0.006, max: -0.0005, noNaN: true });
  const temp = fc.double({ min: -60, max: 95, noNaN: true });
  const volts = fc.double({ min: 5, max: 1500, noNaN: true });

  it('rise as it gets colder', () => {
    fc.assert(
      fc.property(
        volts,
        coefficient,
        temp,
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (v, c, t, drop) => {
          expect(vocAt(v, c, t - drop)).toBeGreaterThan(vocAt(v, c, t));
          expect(vmpAt(v, c, t - drop)).toBeGreaterThan(vmpAt(v, c, t));
        },
      ),
    );
  });

  it('scale with the modules in series and stand at the label’s figure at 25 °C', () => {
    fc.assert(
      fc.property(volts, coefficient, temp, fc.integer({ min: 1, max: 40 }), (v, c, t, n) => {
        expect(vocAt(n * v, c, t) / (n * vocAt(v, c, t))).toBeCloseTo(1, 10);
        expect(vocAt(v, c, 25)).toBe(v);
      }),
    );
  });

  it('give back the temperature they were worked out at', () => {
    fc.assert(
      fc.property(volts, coefficient, temp, (v, c, t) => {
        expect(tempAtVolts(v, c, vocAt(v, c, t))!).toBeCloseTo(t, 6);
      }),
    );
    expect(tempAtVolts(40, 0, 30)).toBeUndefined();
  });

  it('take a coefficient in volts per degree as the same line', () => {
    expect(vocAt(41.1, coefficientFromVolts(-0.14, 41.1), -15)).toBeCloseTo(41.1 + 0.14 * 40, 9);
  });
});

describe('the cold factor table', () => {
  it('never falls as it gets colder, and steps by 0.02 or 0.01 or the one 0.02 gap of 1.23', () => {
    const factors = nec690_7.rows.map((row) => row.factor);
    for (const [at, factor] of factors.entries()) {
      if (at > 0) expect(factor - factors[at - 1]!).toBeGreaterThan(0);
    }
    expect(factors).toHaveLength(13);
  });

  it('is stepped: one value per row, the colder row for a fraction, never a value between', () => {
    const known = new Set<number>([1, ...nec690_7.rows.map((row) => row.factor)]);
    fc.assert(
      fc.property(fc.double({ min: -40, max: 60, noNaN: true }), (tempC) => {
        expect(known.has(necColdFactor(tempC)!)).toBe(true);
        expect(necColdFactor(tempC)).toBe(necColdFactor(tempC >= 25 ? tempC : Math.floor(tempC)));
      }),
    );
    expect(necColdFactor(-40.5)).toBeUndefined();
  });

  it('is drawn as the staircase it is', () => {
    for (const [tempC, factor] of necColdSteps(-33)) {
      expect([necColdFactor(tempC), necColdFactor(tempC - 0.01)]).toContain(factor);
    }
    expect(necColdSteps(-33).at(-1)).toEqual([-33, 1.23]);
  });
});
