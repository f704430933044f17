import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatAsTyped, formatQuantity } from '../../src/quantity/format.ts';
import { kindFacts, type QuantityKind, quantityKinds } from '../../src/quantity/kinds.ts';
import { type ParseOptions, parseReading } from '../../src/quantity/parse.ts';
import { quantityMessages } from '../../src/words/en/quantity.ts';

const read = (text: string, kind: QuantityKind, more: Partial<ParseOptions> = {}) =>
  parseReading(text, { kind, ...more });

function value(text: string, kind: QuantityKind, more: Partial<ParseOptions> = {}): number {
  const result = read(text, kind, more);
  if (!result.ok) throw new Error(`${text}: ${result.reason.id}`);
  return result.value;
}

function reason(text: string, kind: QuantityKind, more: Partial<ParseOptions> = {}): string {
  const result = read(text, kind, more);
  return result.ok ? `taken as ${result.value}` : result.reason.id;
}

describe('what people type', () => {
  it.each<[string, QuantityKind, number]>([
    ['12.6', 'voltage', 12.6],
    ['12,6 V', 'voltage', 12.6],
    ['12.6v', 'voltage', 12.6],
    ['12600 mV', 'voltage', 12.6],
    ['+12.6', 'voltage', 12.6],
    ['  51.2 V  ', 'voltage', 51.2],
    ['51.2\u00a0V', 'voltage', 51.2],
    ['51.2\u202fV', 'voltage', 51.2],
    ['412 volts', 'voltage', 412],
    ['400VDC', 'voltage', 400],
    ['.5', 'voltage', 0.5],
    ['12.', 'voltage', 12],
    ['５１．２', 'voltage', 51.2],
    ['3,285', 'voltage', 3.285],
    ['0,500 kW', 'power', 500],
    ['1 234', 'power', 1234],
    ['1\u2009234,5 W', 'power', 1234.5],
    ["1'234", 'power', 1234],
    ['2 A', 'current', 2],
    ['350 mA', 'current', 0.35],
    ['80 amps', 'current', 80],
    ['25 R', 'resistance', 25],
    ['4.7k', 'resistance', 4700],
    ['4,7 kΩ', 'resistance', 4700],
    ['5 M', 'resistance', 5e6],
    ['5 MΩ', 'resistance', 5e6],
    ['5 M\u2126', 'resistance', 5e6],
    ['5 mΩ', 'resistance', 0.005],
    ['2 megohms', 'resistance', 2e6],
    ['2 Milliohms', 'resistance', 0.002],
    ['20 mF', 'capacitance', 0.02],
    ['20000 uF', 'capacitance', 0.02],
    ['20000 \u03bcF', 'capacitance', 0.02],
    ['20000 \u00b5F', 'capacitance', 0.02],
    ['280 Ah', 'charge', 280],
    ['1 kWh', 'energy', 3.6e6],
    ['200 J', 'energy', 200],
    ['72 °F', 'temperature', (72 - 32) / 1.8],
    ['-40F', 'temperature', -40],
    ['−5 ℃', 'temperature', -5],
    ['18 F', 'temperatureDifference', 10],
    ['-0.28 %/K', 'temperatureCoefficient', -0.0028],
    ['12 ft', 'length', 3.6576],
    ["12'", 'length', 3.6576],
    ['6 in', 'length', 0.1524],
    ['3 m', 'length', 3],
    ['2 min', 'time', 120],
    ['60 Hz', 'frequency', 60],
    ['5%', 'ratio', 0.05],
    ['16', 'count', 16],
    ['850 W/m2', 'irradiance', 850],
  ])('%s as %s is %f inside', (text, kind, inside) => {
    expect(value(text, kind)).toBeCloseTo(inside, 9);
  });

  it.each<[string, number]>([
    ['4/0', 107.22],
    ['2/0 AWG', 67.43],
    ['AWG 6', 13.3],
    ['#6', 13.3],
    ['6 ga', 13.3],
    ['0000', 107.22],
    ['12', 3.3088],
    ['35 mm²', 35],
    ['35 mm2', 35],
    ['2,5 mm²', 2.5],
    ['250 kcmil', 126.68],
  ])('wire size %s is %f mm² where sizes are American', (text, area) => {
    expect(value(text, 'wireSize', { system: 'us' })).toBeCloseTo(area, 1);
  });

  it('takes a bare wire size as mm² where sizes are metric, and 4/0 as a gauge all the same', () => {
    expect(value('35', 'wireSize')).toBe(35);
    expect(value('4/0', 'wireSize')).toBeCloseTo(107.22, 1);
  });

  it('takes a bare number in the unit asked for, and says which unit it took', () => {
    expect(read('20', 'capacitance', { unit: 'mF' })).toMatchObject({
      value: 0.02,
      unit: 'mF',
      unitTyped: false,
    });
    expect(read('20 uF', 'capacitance', { unit: 'mF' })).toMatchObject({ unit: 'µF', unitTyped: true });
    expect(value('50', 'temperature', { system: 'us' })).toBeCloseTo(10);
  });

  it('keeps what the last digit is worth', () => {
    expect(read('12.60', 'voltage')).toMatchObject({ resolution: 0.01 });
    expect(read('12600 mV', 'voltage')).toMatchObject({ resolution: 0.001 });
    expect(read('412', 'voltage')).toMatchObject({ resolution: 1 });
    const result = read('12.60', 'voltage');
    expect(result.ok && formatAsTyped(result.value, result.resolution, result.unit, 'voltage')).toBe(
      '12.60\u00a0V',
    );
  });

  it('reads any minus sign where a sign can be meant', () => {
    for (const minus of ['-', '−', '–', '—', '﹣', '－']) {
      expect(value(`${minus}3.5 V`, 'voltage', { allowNegative: true })).toBe(-3.5);
    }
    expect(value('- 5', 'voltage', { allowNegative: true })).toBe(-5);
    expect(Object.is(value('-0', 'voltage', { allowNegative: true }), 0)).toBe(true);
  });
});

describe('what is refused, each with its own reason', () => {
  it.each<[string, QuantityKind, string]>([
    ['', 'voltage', 'quantity.empty'],
    ['   \u00a0', 'voltage', 'quantity.empty'],
    ['abc', 'voltage', 'quantity.notANumber'],
    ['NaN', 'voltage', 'quantity.notANumber'],
    ['Infinity', 'voltage', 'quantity.notANumber'],
    ['1e999', 'voltage', 'quantity.notANumber'],
    ['1e3', 'voltage', 'quantity.notANumber'],
    ['--5', 'voltage', 'quantity.notANumber'],
    ['V', 'voltage', 'quantity.notANumber'],
    ['9'.repeat(40), 'voltage', 'quantity.notANumber'],
    ['1'.repeat(500), 'voltage', 'quantity.notANumber'],
    ['1.234,5', 'voltage', 'quantity.twoSeparators'],
    ['1,234.5', 'voltage', 'quantity.twoSeparators'],
    ['12..6', 'voltage', 'quantity.twoSeparators'],
    ['6,000', 'power', 'quantity.thousandsOrDecimal'],
    ['12 6', 'voltage', 'quantity.spaceInside'],
    ['12 A', 'voltage', 'quantity.wrongKind'],
    ['12 m', 'voltage', 'quantity.wrongKind'],
    ['12 V', 'temperature', 'quantity.wrongKind'],
    ['12 furlongs', 'length', 'quantity.unknownUnit'],
    ['5 m', 'resistance', 'quantity.wrongKind'],
    ['5 MOHM', 'resistance', 'quantity.unknownUnit'],
    ['5 mw', 'power', 'quantity.unitCase'],
    ['-12', 'voltage', 'quantity.negative'],
    ['99999', 'voltage', 'quantity.tooLarge'],
    ['2.5', 'count', 'quantity.notWhole'],
    ['5/0', 'wireSize', 'quantity.noSuchGauge'],
    ['0 mm²', 'wireSize', 'quantity.noSuchGauge'],
  ])('%s as %s: %s', (text, kind, id) => {
    expect(reason(text, kind)).toBe(id);
  });

  it('knows no AWG 35 or 6.5', () => {
    expect(reason('35', 'wireSize', { system: 'us' })).toBe('quantity.noSuchGauge');
    expect(reason('6.5', 'wireSize', { system: 'us' })).toBe('quantity.noSuchGauge');
  });

  it.each([
    'OL',
    'O.L',
    'ol',
    '0L',
    '-OL',
    'OL MΩ',
    'overload',
    'Over range',
    'open',
    '---',
    '—'.repeat(3),
    '∞',
  ])('%s is over range, which is a finding and no number', (text) => {
    for (const kind of ['resistance', 'voltage'] as const) {
      expect(read(text, kind)).toMatchObject({ ok: false, overRange: true });
    }
  });

  it('has a sentence for every reason', () => {
    const bad = [
      '',
      'x',
      'OL',
      '1 2',
      '1.2.3',
      '6,000',
      '1 zz',
      '1 A',
      '1 mw',
      '-1',
      '99999999999',
      '1.5',
      '5/0',
      '77 AWG',
    ];
    for (const kind of quantityKinds) {
      for (const text of bad) {
        const result = read(text, kind);
        if (result.ok) continue;
        const sentence = quantityMessages[result.reason.id]?.(result.reason.params ?? {});
        expect(sentence, `${result.reason.id} for ${text} as ${kind}`).toMatch(/^[A-Z“].*\.$/);
        expect(sentence).not.toContain('undefined');
      }
    }
  });
});

describe('properties', () => {
  it('never gives NaN or an infinity, whatever is typed', () => {
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...'0123456789.,- +VmMkΩ%/OL°CF\u00a0e') }),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...quantityKinds), fc.boolean(), (typed, kind, allowNegative) => {
        const result = parseReading(typed, { kind, allowNegative });
        if (!result.ok) return;
        expect(Number.isFinite(result.value)).toBe(true);
        expect(Number.isFinite(result.resolution)).toBe(true);
        expect(Math.abs(result.value)).toBeLessThanOrEqual(kindFacts[kind].maxMagnitude);
      }),
    );
  });

  it('reads back what it shows', () => {
    const kinds = quantityKinds.filter((kind) => kind !== 'count' && kind !== 'wireSize');
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.double({ min: -0.99, max: 0.99, noNaN: true }),
        fc.integer({ min: 0, max: 9 }),
        fc.constantFrom('us' as const, 'metric' as const),
        (kind, part, decades, system) => {
          const inside = (part * kindFacts[kind].maxMagnitude) / 10 ** decades;
          const shown = formatQuantity(inside, kind, { system, digits: 6 });
          const result = parseReading(shown, { kind, allowNegative: true, system });
          if (!result.ok) throw new Error(`${shown}: ${result.reason.id}`);
          const span = kind === 'temperature' ? Math.abs(inside) + 20 : Math.abs(inside);
          expect(Math.abs(result.value - inside)).toBeLessThanOrEqual(6e-6 * span + 1e-15);
        },
      ),
    );
  });

  it('reads the same with a comma as with a point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1999 }), fc.integer({ min: 0, max: 99 }), (whole, part) => {
        const typed = `${whole}.${String(part).padStart(2, '0')}`;
        expect(read(typed.replace('.', ','), 'voltage')).toEqual(read(typed, 'voltage'));
      }),
    );
  });
});
