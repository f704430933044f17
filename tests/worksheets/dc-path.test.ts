import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { awgAreaMm2, awgGauges } from '../../src/quantity/wire.ts';
import { cableResistance } from '../../src/worksheets/battery-dc/cable-resistance.ts';
import { dcPath } from '../../src/worksheets/battery-dc/dc-path.ts';
import { copperResistivity, iec60228class5, necTable8 } from '../../src/worksheets/tables/conductors.ts';

type In = Parameters<typeof dcPath.compute>[0];

const usual: In = {
  batteryVolts: 52.4,
  inverterVolts: 52.2,
  amps: 100,
  voltsError: 0.02,
  lengthM: 1.8,
  areaMm2: 107.2,
  coating: 'plain',
  conductorC: 40,
  joints: 8,
  devicesOhms: 0.0006,
};

function outOf(change: Partial<In>) {
  const result = dcPath.compute({ ...usual, ...change });
  if (!result.ok) throw new Error(result.reason.id);
  return result.out;
}

describe('DC path', () => {
  it.each<[string, Partial<In>, string]>([
    ['what its parts add up to', {}, 'sound'],
    ['two volts lost at 150 A', { amps: 150, inverterVolts: 50.4 }, 'high'],
    ['a higher reading at the inverter while charging', { amps: -100, inverterVolts: 52.6 }, 'sound'],
    ['a higher reading at the inverter while discharging', { inverterVolts: 53 }, 'wrongSign'],
    ['a lower reading at the inverter while charging', { amps: -100, inverterVolts: 52 }, 'wrongSign'],
    [
      'a difference inside the meter’s error',
      { amps: 10, inverterVolts: 52.38, voltsError: 0.1 },
      'undetermined',
    ],
  ])('%s', (_, change, verdict) => {
    expect(outOf(change).verdict).toBe(verdict);
  });

  it('puts the heat of one bad joint at I²R: 1 mΩ at 150 A is 22 W', () => {
    const expectedOhms = outOf({}).expectedOhms!;
    const out = outOf({ amps: 150, inverterVolts: 52.4 - 150 * (expectedOhms + 0.001) });
    expect(out.excessOhms).toBeCloseTo(0.001, 6);
    expect(out.excessWatts).toBeCloseTo(22.5, 3);
  });

  it('gives no resistance from readings of the wrong sign', () => {
    expect(outOf({ inverterVolts: 53 }).pathOhms).toBeUndefined();
  });

  it('refuses to judge a path with no current in it', () => {
    const result = dcPath.compute({ ...usual, amps: 0.3 });
    expect(!result.ok && result.reason.id).toBe('worksheet.dc-path.noCurrent');
  });
});

describe('copper tables', () => {
  it('hold to the law of area and resistivity, a few per cent up for stranding', () => {
    for (const { gauge, plain } of necTable8.rows) {
      const solid = (copperResistivity * (1 + 0.00393 * 55)) / awgAreaMm2(gauge) / 3.28084;
      expect(plain / solid, `gauge ${gauge}`).toBeGreaterThan(1.017);
      expect(plain / solid, `gauge ${gauge}`).toBeLessThan(1.027);
    }
    for (const { areaMm2, plain, tinned } of iec60228class5.rows) {
      expect((plain * areaMm2) / copperResistivity, `${areaMm2} mm²`).toBeGreaterThan(1.05);
      expect((plain * areaMm2) / copperResistivity, `${areaMm2} mm²`).toBeLessThan(1.17);
      expect(tinned).toBeGreaterThan(plain);
    }
  });

  it('use each coefficient with its own base, which makes one copper of the two', () => {
    for (const tempC of [0, 20, 50, 75, 90]) {
      const nec = 1 + necTable8.coefficientPerC * (tempC - necTable8.baseC);
      expect(nec / ((234.5 + tempC) / 309.5)).toBeCloseTo(1, 3);
    }
  });

  it('look up an AWG size, a metric size, and work out any other', () => {
    expect(cableResistance(awgAreaMm2(-3), 75)).toEqual({ ohmsPerM: 0.0608 / 304.8, basis: 'nec' });
    expect(cableResistance(107.2, 75).basis).toBe('nec');
    expect(cableResistance(35, 20)).toEqual({ ohmsPerM: 0.554e-3, basis: 'iec' });
    expect(cableResistance(126.7, 75).basis).toBe('area');
    expect(cableResistance(33.62, 75, 'tinned').basis).toBe('area');
  });

  it('fall with area and rise with temperature and tinning', () => {
    const gauges = fc.constantFrom(
      ...awgGauges.filter((gauge) => gauge <= 14).map(awgAreaMm2),
      4,
      6,
      16,
      35,
      70,
      130,
    );
    fc.assert(
      fc.property(gauges, fc.double({ min: -40, max: 110, noNaN: true }), (area, tempC) => {
        const here = cableResistance(area, tempC).ohmsPerM;
        expect(cableResistance(2 * area, tempC).ohmsPerM).toBeLessThan(here);
        expect(cableResistance(area, tempC + 5).ohmsPerM).toBeGreaterThan(here);
        expect(cableResistance(area, tempC, 'tinned').ohmsPerM).toBeGreaterThan(here);
      }),
    );
  });
});
