import { describe, expect, test } from 'vitest';
import { meterFor, understand } from '../../src/guide/reading.ts';
import type { InstrumentMode, Reading } from '../../src/guide/vocabulary.ts';
import { plainSite } from '../support/fixture-guide.ts';

const reading = (mode: InstrumentMode, signed?: boolean): Reading => ({
  point: 'p1',
  scale: 's',
  mode,
  ...(signed ? { signed } : {}),
});
const read = (
  text: string,
  mode: InstrumentMode,
  signed = false,
  kind: 'voltage' | 'current' = 'voltage',
) => {
  const result = understand(text, reading(mode, signed), kind, plainSite());
  return result.ok ? result.reading : result.problem.id;
};

describe('a typed reading', () => {
  test('carries the uncertainty of this site’s meter: U = 2·a/√3 (GUM 4.3.7)', () => {
    const sheet = plainSite();
    sheet.meter.dcVolts = { ofReading: 0.005, counts: 2 };
    const result = understand('312.4 V', reading('dcVolts', true), 'voltage', sheet);
    const a = 0.005 * 312.4 + 2 * 0.1;
    expect(result.ok && result.reading.uncertaintyU).toBeCloseTo((2 * a) / Math.sqrt(3), 12);
  });

  test('takes a cautious accuracy where the sheet has none, and says so', () => {
    const sheet = plainSite();
    sheet.meter.dcClamp = { ofReading: null, counts: 5 };
    expect(meterFor(sheet, 'dcClamp')).toMatchObject({ assumed: true, percentOfReading: 3 });
    expect(meterFor(sheet, 'dcVolts').assumed).toBe(false);
  });

  test('keeps a sign that is asked for, and only the size of one that is not', () => {
    expect(read('-312,4', 'dcVolts', true)).toMatchObject({ value: -312.4 });
    expect(read('−0.2', 'dcVolts')).toMatchObject({ value: 0.2 });
    expect(read('-0.2', 'dcClamp', false, 'current')).toMatchObject({ value: 0.2 });
    expect(read('-120', 'acVolts')).toBe('quantity.negative');
  });

  test('takes a bare zero to a tenth: people write 0 for 0.0', () => {
    expect(read('0', 'acVolts')).toMatchObject({ value: 0, resolution: 0.1 });
    expect(read('0.00', 'acVolts')).toMatchObject({ value: 0, resolution: 0.01 });
    expect(read('3', 'acVolts')).toMatchObject({ value: 3, resolution: 1 });
  });

  test('takes over range from a meter as a finding, and from a screen as nothing', () => {
    expect(read('OL', 'dcVolts')).toMatchObject({ value: 'overRange' });
    expect(read('OL', 'display')).toBe('quantity.overRange');
  });
});
