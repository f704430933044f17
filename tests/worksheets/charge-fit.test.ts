import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type ChargeCircuit,
  finalVolts,
  timeConstantS,
  voltsAt,
} from '../../src/worksheets/battery-dc/capacitor-charge.ts';
import { type ChargeFitInput, fitCharge } from '../../src/worksheets/battery-dc/charge-fit.ts';

const bank: ChargeCircuit = { sourceVolts: 51.2, resistorOhms: 33, capacitanceF: 0.02 };
const tenth = (volts: number): number => Math.round(10 * volts) / 10;

/** Readings as a person takes them: rounded to a tenth of a volt. */
const read = (circuit: ChargeCircuit, times: readonly number[]): ChargeFitInput => ({
  ...circuit,
  readings: times.map((tS) => ({ tS, volts: tenth(voltsAt(circuit, tS)) })),
});

function fitOf(input: ChargeFitInput) {
  const fit = fitCharge(input);
  if (!fit.ok) throw new Error(fit.reason.id);
  return fit.out;
}

describe('fitting a pre-charge', () => {
  it('gives back time constant and end of an exact curve', () => {
    const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(
        range(40, 60),
        range(10, 150),
        range(0.003, 0.06),
        fc.option(range(1, 500)),
        (v, r, c, load) => {
          const circuit: ChargeCircuit = {
            sourceVolts: v,
            resistorOhms: r,
            capacitanceF: c,
            ...(load === null ? {} : { loadOhms: load }),
          };
          const tau = timeConstantS(circuit);
          fc.pre(tau > 0.05);
          const readings = [0.4, 0.9, 1.6, 3, 6].map((taus) => ({
            tS: taus * tau,
            volts: voltsAt(circuit, taus * tau),
          }));
          const fit = fitOf({ ...circuit, readings });
          expect(fit.tauS.value / tau).toBeCloseTo(1, 3);
          expect(fit.vInfVolts.value / finalVolts(circuit)).toBeCloseTo(1, 3);
          expect(fit.capacitanceF.value / c).toBeCloseTo(1, 2);
          expect(fit.rmseVolts).toBeLessThan(0.01);
        },
      ),
      { numRuns: 60, seed: 11 },
    );
  });

  it('holds the truth inside its range for readings a tenth of a volt coarse and a quarter of a second off', () => {
    const late = (by: number) =>
      [1, 2, 4, 7].map((tS) => ({ tS, volts: tenth(voltsAt({ ...bank, resistorOhms: 100 }, tS + by)) }));
    for (const by of [-0.25, -0.1, 0, 0.1, 0.25]) {
      const fit = fitOf({ ...bank, resistorOhms: 100, readings: late(by) });
      expect(fit.tauS.low).toBeLessThanOrEqual(2);
      expect(fit.tauS.high).toBeGreaterThanOrEqual(2);
      expect(fit.plateau.kind).toBe('none');
    }
  });

  it.each<[string, ChargeCircuit, readonly number[], string]>([
    ['a bus that reaches the source', bank, [1, 2, 4], 'none'],
    ['a bus read too early', { ...bank, resistorOhms: 100, capacitanceF: 0.06 }, [2, 4, 6], 'rising'],
    ['a bus held at two thirds', { ...bank, loadOhms: 60 }, [1, 2, 5], 'load'],
    ['a bus held near the source by a light load', { ...bank, loadOhms: 400 }, [2, 4, 8], 'load'],
    ['a bus held down', { ...bank, loadOhms: 0.5 }, [1, 2, 5], 'short'],
    ['a bus that stays at nothing', { ...bank, loadOhms: 0.0001 }, [1, 2, 5, 10], 'short'],
  ])('calls %s by its name', (_, circuit, times, kind) => {
    expect(fitOf(read(circuit, times)).plateau.kind).toBe(kind);
  });

  it('sizes the load that holds the bus', () => {
    const plateau = fitOf(read({ ...bank, loadOhms: 60 }, [1, 2, 3, 5])).plateau;
    expect('ohms' in plateau && plateau.ohms).toBeCloseTo(60, 0);
    expect('watts' in plateau && plateau.watts).toBeCloseTo(33.03 ** 2 / 60, 1);
  });

  it('gives no lower end for a rise that was over before the first reading', () => {
    const fit = fitOf(read({ ...bank, capacitanceF: 0.001 }, [2, 4, 6]));
    expect(fit.tauS.low).toBeUndefined();
    expect(fit.plateau.kind).toBe('none');
  });

  it('starts from the volts that were there', () => {
    const circuit = { ...bank, startVolts: 22, resistorOhms: 100 };
    expect(fitOf(read(circuit, [1, 2, 4, 8])).tauS.value).toBeCloseTo(2, 1);
  });

  it.each<[string, Partial<ChargeFitInput>]>([
    [
      'tooFewReadings',
      {
        readings: [
          { tS: 0, volts: 0 },
          { tS: 2, volts: 30 },
        ],
      },
    ],
    [
      'timesNotRising',
      {
        readings: [
          { tS: 2, volts: 30 },
          { tS: 1, volts: 40 },
        ],
      },
    ],
    [
      'badReading',
      {
        readings: [
          { tS: 1, volts: Number.NaN },
          { tS: 2, volts: 40 },
        ],
      },
    ],
    [
      'badReading',
      {
        readings: [
          { tS: -1, volts: 3 },
          { tS: 2, volts: 40 },
        ],
      },
    ],
    [
      'negativeVolts',
      {
        readings: [
          { tS: 1, volts: -0.7 },
          { tS: 2, volts: -0.7 },
        ],
      },
    ],
    [
      'aboveSource',
      {
        readings: [
          { tS: 1, volts: 30 },
          { tS: 2, volts: 60 },
        ],
      },
    ],
    ['noSource', { sourceVolts: 0 }],
    ['noResistor', { resistorOhms: 0 }],
  ])('refuses with %s', (reason, change) => {
    const fit = fitCharge({ ...read(bank, [1, 2, 3]), ...change });
    expect(!fit.ok && fit.reason.id).toBe(`worksheet.pre-charge.${reason}`);
  });
});
