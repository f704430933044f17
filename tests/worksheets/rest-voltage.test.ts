import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restVoltage } from '../../src/worksheets/battery-dc/rest-voltage.ts';
import { chargeAt, lfpOcv, restVoltsAt } from '../../src/worksheets/tables/lfp-ocv.ts';

type In = Parameters<typeof restVoltage.compute>[0];
const usual: In = {
  cells: 16,
  volts: 52.8,
  voltsError: 0.1,
  restS: 7200,
  before: 'unknown',
  curveError: 0.03,
};

function outOf(change: Partial<In>) {
  const result = restVoltage.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('what a rest voltage says', () => {
  it.each<[string, Partial<In>, string]>([
    ['the flat middle', {}, 'middle'],
    ['nearly empty', { volts: 48 }, 'nearlyEmpty'],
    ['low', { volts: 51 }, 'low'],
    ['full, after a night', { volts: 54.6, restS: 36_000 }, 'nearlyFull'],
    ['charging volts', { volts: 56 }, 'notAtRest'],
    ['under its service limit', { volts: 38 }, 'underService'],
    ['the same volts on fifteen cells are no rest', { volts: 54.6, cells: 15 }, 'notAtRest'],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('leaves most of the charge open in the middle, however good the meter', () => {
    expect(outOf({ voltsError: 0, restS: 86_400 }).width).toBeGreaterThan(0.4);
  });

  it('gives no per cent for a bank that is not at rest', () => {
    expect(outOf({ volts: 57 }).leastCharge).toBeUndefined();
  });

  it('holds the charge that made the volts, whatever the errors within their bounds', () => {
    const signed = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.99, noNaN: true }),
        signed,
        signed,
        (charge, meter, curve) => {
          const cell = restVoltsAt(charge) + usual.curveError * curve;
          const out = outOf({ volts: usual.cells * cell + usual.voltsError * meter });
          if (out.leastCharge === undefined) return;
          expect(out.leastCharge).toBeLessThanOrEqual(charge + 1e-9);
          expect(out.mostCharge).toBeGreaterThanOrEqual(charge - 1e-9);
        },
      ),
    );
  });

  it('widens with a worse meter, a shorter rest and an unknown past', () => {
    expect(outOf({ voltsError: 0.5 }).width).toBeGreaterThan(outOf({}).width!);
    expect(outOf({ restS: 60 }).width).toBeGreaterThan(outOf({}).width!);
    expect(outOf({ before: 'charged' }).width).toBeLessThan(outOf({}).width!);
    expect(outOf({ before: 'charged' }).mostCharge).toBeLessThan(outOf({}).mostCharge!);
    expect(outOf({ before: 'discharged' }).leastCharge).toBeGreaterThan(outOf({}).leastCharge!);
  });
});

describe('the curve', () => {
  it('rises all the way, and reads back what it gave', () => {
    const { rows } = lfpOcv;
    for (const [at, row] of rows.entries()) {
      if (at > 0) expect(row.volts).toBeGreaterThan(rows[at - 1]!.volts);
    }
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (charge) => {
        expect(chargeAt(restVoltsAt(charge))).toBeCloseTo(charge, 9);
      }),
    );
    expect(chargeAt(1)).toBe(0);
    expect(chargeAt(4)).toBe(1);
  });
});
