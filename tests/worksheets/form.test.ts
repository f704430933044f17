import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromQuery, toQuery } from '../../src/islands/worksheet/link.ts';
import { loadWorksheet } from '../../src/islands/worksheet/load.ts';
import { roundStep, scaleOf } from '../../src/islands/worksheet/plot-scale.ts';
import { fill } from '../../src/islands/worksheet/say.ts';
import { fieldError } from '../../src/islands/worksheet/sentences.ts';
import {
  emptyForm,
  fieldsOf,
  readForm,
  readText,
  type Typed,
  textOf,
  withUnits,
} from '../../src/islands/worksheet/typed.ts';
import { awgAreaMm2 } from '../../src/quantity/wire.ts';
import { worksheetWords } from '../../src/words/en/worksheets.ts';
import { isNumber } from '../../src/worksheets/check-inputs.ts';
import { worksheetById, worksheets } from '../../src/worksheets/index.ts';

const stringWindow = worksheetById('string-window');
const preCharge = worksheetById('pre-charge');

const filled = (over: Record<string, string> = {}): Typed => ({
  units: 'metric',
  rows: {},
  texts: {
    ...emptyForm(stringWindow, 'metric').texts,
    vocVolts: '41',
    vmpVolts: '34,0',
    vocPerC: '-0.28',
    vmpPerC: '−0.35 %',
    modules: '8',
    recordLowC: '-30',
    startVolts: '150 V',
    trackLowVolts: '120',
    trackHighVolts: '425',
    maxVolts: '0.5 kV',
    ...over,
  },
});

describe('the form of a worksheet', () => {
  it('reads what people type: comma, minus sign, unit', () => {
    const read = readForm(stringWindow, filled());
    if (!read.ok) throw new Error(JSON.stringify(read));
    expect(read.inputs).toMatchObject({ vmpVolts: 34, maxVolts: 500, recordLowC: -30 });
    expect(read.inputs.vmpPerC).toBeCloseTo(-0.0035, 12);
  });

  it('tells an empty field from a wrong one', () => {
    const read = readForm(
      stringWindow,
      filled({ vocVolts: '', modules: '8.5', maxVolts: '9000', startVolts: 'soon' }),
    );
    if (read.ok) throw new Error('read');
    expect(read.empty).toEqual(['vocVolts']);
    expect(Object.keys(read.errors).sort()).toEqual(['maxVolts', 'modules', 'startVolts']);
  });

  it('has a sentence for whatever can be wrong with a field', () => {
    for (const worksheet of worksheets) {
      for (const [name, field] of fieldsOf(worksheet)) {
        if (!isNumber(field)) continue;
        for (const text of [
          '',
          'banana',
          '1.2.3',
          '5 furlongs',
          '-7777777',
          '7777777',
          '1e9',
          '0,5,5',
          'OL',
          '3.7',
        ]) {
          for (const units of ['us', 'metric'] as const) {
            const form = emptyForm(worksheet, units);
            const read = readForm(worksheet, { ...form, texts: { ...form.texts, [name]: text } });
            const error = read.ok ? undefined : read.errors[name];
            const words = worksheetWords[worksheet.id]!.inputs[name]!;
            if (error)
              expect(fieldError(error, field, words, units).length, `${name} ${text}`).toBeGreaterThan(9);
          }
        }
      }
    }
  });

  it('changes units without changing the numbers', () => {
    const there = withUnits(stringWindow, filled(), 'us');
    expect(there.texts.recordLowC).toBe('−22');
    const [before, after] = [readForm(stringWindow, filled()), readForm(stringWindow, there)];
    if (!before.ok || !after.ok) throw new Error('not read');
    for (const [name, value] of Object.entries(before.inputs)) {
      expect(after.inputs[name], name).toBeCloseTo(value as number, 6);
    }
    const torn = withUnits(stringWindow, filled({ recordLowC: 'cold' }), 'us');
    expect(torn.texts.recordLowC).toBe('cold');
  });

  it('writes every value of the site sheet so that it reads back as the same', () => {
    const numbers = worksheets
      .flatMap((worksheet) => fieldsOf(worksheet).map(([, field]) => field))
      .filter(isNumber);
    expect(numbers.length).toBeGreaterThan(40);
    for (const field of numbers) {
      const { kind, min, max } = field;
      const sizes = fc.constantFrom(awgAreaMm2(-3), awgAreaMm2(6), 35, 4, 70);
      const value =
        kind === 'wireSize'
          ? sizes
          : kind === 'count'
            ? fc.integer({ min, max })
            : fc.integer({ min: 0, max: 1000 }).map((step) => min + ((max - min) * step) / 1000);
      fc.assert(
        fc.property(value, fc.constantFrom('us' as const, 'metric' as const), (inside, units) => {
          const text = textOf(field, inside, units);
          const read = readText(field, text, units);
          if (!read.ok) throw new Error(`${kind} ${text}: ${read.reason.id}`);
          expect(Math.abs(read.value - inside), text).toBeLessThanOrEqual(
            2e-5 * Math.max(Math.abs(inside), 1e-3 * (max - min)),
          );
        }),
        { numRuns: 30, seed: 5 },
      );
    }
  });

  it('reads readings over time and refuses half a row', () => {
    const form = emptyForm(preCharge, 'metric');
    const texts = { ...form.texts, sourceVolts: '51.2', resistorOhms: '33', capacitanceF: '20' };
    const whole = readForm(preCharge, {
      ...form,
      texts,
      rows: {
        readings: [
          { at: '1', value: '39,9' },
          { at: '', value: '' },
        ],
      },
    });
    expect(whole.ok && whole.inputs.readings).toEqual([{ tS: 1, value: 39.9 }]);
    const half = readForm(preCharge, { ...form, texts, rows: { readings: [{ at: '1', value: '' }] } });
    expect(!half.ok && half.errors.readings?.id).toBe('worksheet.input.notReadings');
  });
});

describe('a link that carries the numbers', () => {
  it('gives back what was typed', () => {
    const typed = { ...filled(), rows: {} };
    const back = fromQuery(stringWindow, toQuery(stringWindow, typed))!;
    expect(back.units).toBe('metric');
    expect(readForm(stringWindow, { ...typed, texts: back.texts })).toEqual(readForm(stringWindow, typed));
  });

  it('carries readings', () => {
    const typed: Typed = {
      units: 'us',
      texts: { sourceVolts: '51.2' },
      rows: {
        readings: [
          { at: '1', value: '29.9' },
          { at: '2', value: '' },
        ],
      },
    };
    expect(fromQuery(preCharge, toQuery(preCharge, typed))).toEqual(typed);
  });

  it('leaves out what no form here has, and gives nothing when nothing is left', () => {
    expect(fromQuery(stringWindow, '?utm=1&vocVolts=')).toBeUndefined();
    expect(fromQuery(stringWindow, `?vocVolts=${'9'.repeat(500)}`)).toBeUndefined();
    expect(fromQuery(worksheetById('dc-path'), '?coating=gold&lengthM=3')).toEqual({
      units: 'metric',
      texts: { lengthM: '3' },
      rows: {},
    });
    const long = Array.from({ length: 500 }, () => '1~2').join(';');
    expect(fromQuery(preCharge, `?readings=${long}`)!.rows.readings!.length).toBeLessThanOrEqual(20);
  });

  it('never throws on a hostile query', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), fc.constantFrom(...worksheets), (query, worksheet) => {
        const typed = fromQuery(worksheet, query) ?? emptyForm(worksheet, 'us');
        readForm(worksheet, typed);
      }),
    );
  });
});

describe('sentences with numbers in them', () => {
  it('shows each number in the reader’s units', () => {
    expect(
      fill(
        '{t:temperature} {v:voltage} {j:energy:J} {n:plain:1}',
        { t: -30, v: 378.5, j: 26.2144, n: 2.987 },
        'us',
      ),
    ).toBe('−22\u00a0°F 378.5\u00a0V 26.2\u00a0J 3.0');
  });

  it('throws where a number is missing, rather than print a gap', () => {
    expect(() => fill('{v:voltage}', {}, 'us')).toThrow(/no number "v"/);
  });
});

describe('axes', () => {
  it('take round steps', () => {
    expect([0.13, 1.9, 2.1, 7, 10].map(roundStep)).toEqual([0.2, 2, 5, 10, 10]);
  });

  it('put round values of the reader’s own unit at their places', () => {
    const scale = scaleOf({ kind: 'temperature', low: -30, high: 70 }, 'us', 0, 100, 6);
    expect(scale.ticks.map((tick) => tick.label)).toEqual(['0', '50', '100', '150']);
    expect(scale.place(20)).toBeCloseTo(50, 9);
  });
});

describe('loading one worksheet alone', () => {
  it('knows every worksheet of the shelf, and gives that one', async () => {
    expect(Object.keys(loadWorksheet)).toEqual(worksheets.map((worksheet) => worksheet.id));
    for (const worksheet of worksheets) {
      const loaded = await loadWorksheet[worksheet.id]!();
      expect(loaded.worksheet).toBe(worksheet);
      expect(loaded.words).toBe(worksheetWords[worksheet.id]);
    }
  });
});
