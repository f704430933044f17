import { describe, expect, it } from 'vitest';
import { type FormatOptions, formatQuantity } from '../../src/quantity/format.ts';
import type { QuantityKind } from '../../src/quantity/kinds.ts';

describe('what people read', () => {
  it.each<[number, QuantityKind, FormatOptions, string]>([
    [51.2, 'voltage', {}, '51.2 V'],
    [0.1824, 'voltage', {}, '182.4 mV'],
    [-382.04, 'voltage', {}, '−382 V'],
    [0, 'voltage', {}, '0 V'],
    [105, 'power', {}, '105 W'],
    [2520, 'power', {}, '2.52 kW'],
    [999.9, 'power', {}, '1 kW'],
    [9.072e6, 'energy', {}, '2.52 kWh'],
    [200, 'energy', { unit: 'J' }, '200 J'],
    [0.02, 'capacitance', {}, '20 mF'],
    [0.012, 'resistance', {}, '12 mΩ'],
    [1e6, 'resistance', {}, '1 MΩ'],
    [-30, 'temperature', { system: 'us' }, '−22 °F'],
    [-30, 'temperature', {}, '−30 °C'],
    [10, 'temperatureDifference', { system: 'us' }, '18 °F'],
    [-0.0028, 'temperatureCoefficient', {}, '−0.28 %/°C'],
    [1.8288, 'length', { system: 'us' }, '6 ft'],
    [1.8288, 'length', {}, '1.83 m'],
    [0.1016, 'length', { system: 'us' }, '4 in'],
    [107.2, 'wireSize', { system: 'us' }, '4/0 AWG'],
    [13.3, 'wireSize', { system: 'us' }, '6 AWG'],
    [35, 'wireSize', { system: 'us' }, '35 mm²'],
    [35, 'wireSize', {}, '35 mm²'],
    [0.05, 'ratio', {}, '5 %'],
    [16, 'count', {}, '16'],
    [123456, 'count', {}, '123456'],
    [300, 'time', {}, '5 min'],
  ])('%f %s %o reads %s', (value, kind, options, shown) => {
    expect(formatQuantity(value, kind, options)).toBe(shown.replace(' ', '\u00a0'));
  });

  it('refuses a unit of another kind', () => {
    expect(() => formatQuantity(1, 'voltage', { unit: 'A' })).toThrow(/no unit/);
  });
});
