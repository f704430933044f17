import fc from 'fast-check';
import { abs, add, type Complex, complex, divide, lusolve, multiply, subtract, unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { unitsOf } from '../../src/quantity/units.ts';
import {
  magnitude,
  minus,
  over,
  type Phasor,
  phasor,
  plus,
  solve,
  times,
} from '../../src/worksheets/ac/phasor.ts';

/** Ours by symbol, and how the library calls the same unit; the inside unit of the kind stands last. */
const named: Readonly<Record<string, { inside: string; units: Readonly<Record<string, string>> }>> = {
  voltage: { inside: 'V', units: { mV: 'mV', V: 'V', kV: 'kV' } },
  current: { inside: 'A', units: { mA: 'mA', A: 'A', kA: 'kA' } },
  resistance: { inside: 'ohm', units: { mΩ: 'mohm', Ω: 'ohm', kΩ: 'kohm', MΩ: 'Mohm', GΩ: 'Gohm' } },
  power: { inside: 'W', units: { mW: 'mW', W: 'W', hp: 'hp', kW: 'kW', MW: 'MW' } },
  energy: { inside: 'J', units: { J: 'J', kJ: 'kJ', Wh: 'W h', kWh: 'kW h' } },
  capacitance: { inside: 'F', units: { nF: 'nF', µF: 'uF', mF: 'mF', F: 'F' } },
  charge: { inside: 'A h', units: { mAh: 'mA h', Ah: 'A h' } },
  length: {
    inside: 'm',
    units: { mm: 'mm', cm: 'cm', in: 'inch', ft: 'foot', yd: 'yard', m: 'm', km: 'km' },
  },
  altitude: { inside: 'm', units: { ft: 'foot', m: 'm' } },
  area: { inside: 'mm^2', units: { 'mm²': 'mm^2' } },
  time: { inside: 's', units: { ms: 'ms', s: 's', min: 'minute', h: 'hour', d: 'day' } },
  frequency: { inside: 'Hz', units: { Hz: 'Hz', kHz: 'kHz' } },
  irradiance: { inside: 'W/m^2', units: { 'W/m²': 'W/m^2', 'kW/m²': 'kW/m^2' } },
  airflow: {
    inside: 'm^3/s',
    units: {
      'm³/h': 'm^3/hour',
      cfm: 'foot^3/minute',
      'l/s': 'L/s',
      'm³/min': 'm^3/minute',
      'm³/s': 'm^3/s',
    },
  },
};

describe('units against mathjs', () => {
  for (const [kind, { inside, units }] of Object.entries(named)) {
    const ours = unitsOf[kind as keyof typeof unitsOf];
    it(`${kind}: every one of ${ours.map((each) => each.symbol).join(', ')}`, () => {
      expect(Object.keys(units).sort()).toEqual(ours.map((each) => each.symbol).sort());
      for (const { symbol, factor, offset } of ours) {
        expect(offset).toBe(0);
        const theirs = unit(1, units[symbol]!).toNumber(inside);
        expect(Math.abs(factor / theirs - 1), symbol).toBeLessThan(1e-7);
      }
    });
  }

  it('temperature, with its shifted zero', () => {
    for (const { symbol, factor, offset } of unitsOf.temperature) {
      const theirs = symbol === '°F' ? 'degF' : 'degC';
      for (const typed of [-40, 0, 32, 77, 212])
        expect(factor * typed + offset).toBeCloseTo(unit(typed, theirs).toNumber('degC'), 9);
    }
  });
});

const part = fc.double({ min: -300, max: 300, noNaN: true }).filter((x) => x === 0 || Math.abs(x) > 1e-6);
const anyPhasor = fc.tuple(part, part);
const theirs = ([re, im]: Phasor): Complex => complex(re, im);
const same = (ours: Phasor, library: Complex, size = 1) => {
  expect(Math.abs(ours[0] - library.re)).toBeLessThanOrEqual(1e-9 * Math.max(1, size));
  expect(Math.abs(ours[1] - library.im)).toBeLessThanOrEqual(1e-9 * Math.max(1, size));
};

describe('phasors against mathjs', () => {
  it('add, take away, multiply, divide, measure', () => {
    fc.assert(
      fc.property(anyPhasor, anyPhasor, (a, b) => {
        same(plus(a, b), add(theirs(a), theirs(b)) as Complex, 600);
        same(minus(a, b), subtract(theirs(a), theirs(b)) as Complex, 600);
        same(times(a, b), multiply(theirs(a), theirs(b)) as Complex, 1e5);
        expect(magnitude(a)).toBeCloseTo(Number(abs(theirs(a))), 9);
        if (magnitude(b) > 1e-3) {
          const library = divide(theirs(a), theirs(b)) as Complex;
          same(over(a, b), library, magnitude(a) / magnitude(b));
        }
      }),
    );
  });

  it('stand at the angle they are given', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.integer({ min: -360, max: 360 }),
        (r, degrees) => {
          same(phasor(r, degrees), complex({ r, phi: (degrees * Math.PI) / 180 }), 500);
        },
      ),
    );
  });

  it('solve three nodes', () => {
    const row = fc.tuple(anyPhasor, anyPhasor, anyPhasor);
    fc.assert(
      fc.property(row, row, row, row, (one, two, three, right) => {
        // A heavy diagonal, as a network's own matrix has, so that both solve a regular system.
        const rows = [one, two, three].map((each, at) =>
          each.map((cell, column): Phasor => (column === at ? [cell[0] + 2000, cell[1]] : cell)),
        );
        const ours = solve(rows, right);
        const library = lusolve(
          rows.map((each) => each.map(theirs)) as never,
          right.map(theirs) as never,
        ) as unknown as Complex[][];
        for (const [at, each] of ours.entries()) same(each, library[at]![0]!);
      }),
      { numRuns: 200 },
    );
  });
});
