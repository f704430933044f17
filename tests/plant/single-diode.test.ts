import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type ModuleParams, translated } from '../../src/plant/pv/de-soto.ts';
import { fitModule } from '../../src/plant/pv/module-fit.ts';
import {
  inSeries,
  maximumPower,
  openVolts,
  pointAtAmps,
  pointAtVolts,
  shortAmps,
} from '../../src/plant/pv/single-diode.ts';

interface Row {
  index: number;
  photocurrentA: number;
  saturationCurrentA: number;
  seriesOhm: number;
  shuntOhm: number;
  idealityN: number;
  cellsInSeries: number;
  cellTempK: number;
  vOc: number;
  iSc: number;
  vMp: number;
  iMp: number;
  pMp: number;
}

const { rows } = JSON.parse(
  readFileSync(new URL('./data/single-diode-reference.json', import.meta.url), 'utf8'),
) as { rows: Row[] };

const paramsOf = (row: Row) => ({
  photoA: row.photocurrentA,
  satA: row.saturationCurrentA,
  seriesOhm: row.seriesOhm,
  shuntOhm: row.shuntOhm,
  slopeV: (row.idealityN * row.cellsInSeries * 1.380649e-23 * row.cellTempK) / 1.602176634e-19,
});

const off = (value: number, reference: number) => Math.abs(value / reference - 1);

describe('single-diode solver', () => {
  it('has every reference curve', () => expect(rows.length).toBeGreaterThanOrEqual(32));

  it.each(rows)('meets reference curve $index to 1e-6', (row) => {
    const p = paramsOf(row);
    const best = maximumPower(p);
    expect(off(openVolts(p), row.vOc)).toBeLessThan(1e-6);
    expect(off(shortAmps(p), row.iSc)).toBeLessThan(1e-6);
    expect(off(best.volts, row.vMp)).toBeLessThan(1e-6);
    expect(off(best.amps, row.iMp)).toBeLessThan(1e-6);
    expect(off(best.volts * best.amps, row.pMp)).toBeLessThan(1e-6);
  });

  const direct = { photoA: 7, satA: 6e-7, seriesOhm: 0.1, shuntOhm: 20, slopeV: 0.5 };
  it('meets the direct vectors of pvlib, tests/test_pvsystem.py', () => {
    expect(shortAmps(direct)).toBeCloseTo(6.965172322, 8);
    expect(openVolts(direct)).toBeCloseTo(8.106300147, 8);
    const best = maximumPower(direct);
    expect(best.amps).toBeCloseTo(6.13626736, 6);
    expect(best.volts).toBeCloseTo(6.224339375, 6);
    expect(pointAtVolts(direct, openVolts(direct) / 2).amps).toBeCloseTo(6.7558815684, 8);
    expect(pointAtVolts(direct, 7.504987519345052).amps).toBeCloseTo(3, 10);
    expect(
      pointAtVolts({ ...direct, shuntOhm: Number.POSITIVE_INFINITY }, 7.504987519345052).amps,
    ).toBeCloseTo(3.2244873645510923, 10);
    expect(pointAtAmps({ ...direct, seriesOhm: 0 }, 3).volts).toBeCloseTo(7.804987519345062, 10);
  });

  it('does not overflow where the closed form does', () => {
    const p = { photoA: 1.2, satA: 6e-10, seriesOhm: 10, shuntOhm: 500, slopeV: 4.06 };
    expect(pointAtAmps(p, 0).volts).toBeCloseTo(86.32000049352108, 9);
  });

  it.each([-5000, -50, -1, 0, 5, 12, 20, 60, 5000])('agrees with itself at %s V', (volts) => {
    const there = pointAtVolts(direct, volts);
    expect(Number.isFinite(there.amps)).toBe(true);
    const vd = volts + there.amps * direct.seriesOhm;
    const residual =
      direct.photoA - direct.satA * Math.expm1(vd / direct.slopeV) - vd / direct.shuntOhm - there.amps;
    expect(Math.abs(residual) / (1 + Math.abs(there.amps))).toBeLessThan(1e-8);
  });

  it('is zero at night', () => {
    expect(openVolts({ ...direct, photoA: 0 })).toBeCloseTo(0, 9);
    expect(maximumPower({ ...direct, photoA: 0 }).amps).toBe(0);
  });

  it('adds equal modules to one', () => {
    const eight = inSeries(direct, 8);
    expect(pointAtVolts(eight, 8 * 6.1).amps).toBeCloseTo(pointAtVolts(direct, 6.1).amps, 10);
  });
});

describe('De Soto translation', () => {
  // "Example Module" of pvlib's tests/conftest.py; 800/50's I0 is the library's own 9.455e-8, not the test's.
  const ref: ModuleParams = {
    photoA: 7.545,
    satA: 1.94e-9,
    seriesOhm: 0.094,
    shuntOhm: 15.72,
    slopeV: 0.473,
    iscPerC: 0.003,
  };
  it.each([
    [1000, 25, 7.545, 1.94e-9, 15.72, 0.473, 7.50015, 10.40112, 6.6, 8.39952, 55.43684],
    [800, 25, 6.036, 1.94e-9, 19.65, 0.473, 6.00726, 10.29603, 5.29053, 8.40941, 44.4902],
    [800, 50, 6.096, 9.45497e-8, 19.65, 0.512661, 6.06698, 9.17769, 5.32366, 7.28982, 38.80849],
    [1000, -10, 7.44, 2.53328e-12, 15.72, 0.417474, 7.39578, 11.94005, 6.50307, 9.97874, 64.89246],
    [1000, 65, 7.665, 7.4507e-7, 15.72, 0.536458, 7.61944, 8.62206, 6.64422, 6.63285, 44.07014],
  ])('at %s W/m² and %s °C', (light, cellC, photo, sat, shunt, slope, isc, voc, imp, vmp, pmp) => {
    const p = translated(ref, light, cellC);
    const best = maximumPower(p);
    for (const [value, wanted] of [
      [p.photoA, photo],
      [p.satA, sat],
      [p.shuntOhm, shunt],
      [p.slopeV, slope],
      [shortAmps(p), isc],
      [openVolts(p), voc],
      [best.amps, imp],
      [best.volts, vmp],
      [best.volts * best.amps, pmp],
    ] as const)
      expect(off(value, wanted)).toBeLessThan(2e-5);
  });
});

describe('module from its label', () => {
  it.each([
    { vocV: 41, iscA: 11.5, vmpV: 34, impA: 10.8, vocPerC: -0.0028, iscPerC: 0.0005 },
    { vocV: 37.5, iscA: 10, vmpV: 31, impA: 9.5, vocPerC: -0.003, iscPerC: 0.0005 },
    { vocV: 49.5, iscA: 11.2, vmpV: 41.5, impA: 10.6, vocPerC: -0.0027, iscPerC: 0.00045 },
    { vocV: 22.3, iscA: 6.1, vmpV: 18.2, impA: 5.6, vocPerC: -0.0033, iscPerC: 0.0006 },
  ])('gives its own label back: $vocV V, $iscA A', (label) => {
    const p = fitModule(label)!;
    const best = maximumPower(p);
    expect(off(openVolts(p), label.vocV)).toBeLessThan(1e-9);
    expect(off(shortAmps(p), label.iscA)).toBeLessThan(1e-9);
    expect(off(best.volts, label.vmpV)).toBeLessThan(1e-6);
    expect(off(best.amps, label.impA)).toBeLessThan(1e-6);
    const hot = openVolts(translated(p, 1000, 65)) / label.vocV - 1;
    expect(hot / (40 * label.vocPerC)).toBeGreaterThan(0.95);
    expect(hot / (40 * label.vocPerC)).toBeLessThan(1.05);
  });
});
