import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromQuery, toQuery } from '../../src/islands/worksheet/link.ts';
import { fieldError } from '../../src/islands/worksheet/sentences.ts';
import { emptyForm, readForm, type Typed, type TypedRow } from '../../src/islands/worksheet/typed.ts';
import { spreadLegs as words } from '../../src/words/en/worksheets/spread-legs.ts';
import { spreadLegs } from '../../src/worksheets/ac/spread-legs.ts';
import { checkInputs } from '../../src/worksheets/check-inputs.ts';

const form = (...rows: TypedRow[]): Typed => ({
  ...emptyForm(spreadLegs, 'us'),
  rows: { circuits: rows },
});

describe('a list in a worksheet', () => {
  it('begins with blank rows, which count for nothing', () => {
    const blank = emptyForm(spreadLegs, 'us');
    expect(blank.rows.circuits!.length).toBeGreaterThan(0);
    const read = readForm(spreadLegs, blank);
    expect(read.ok && read.inputs.circuits).toEqual([]);
  });

  it('reads names, numbers with units and commas, and cells left empty', () => {
    const read = readForm(
      spreadLegs,
      form({ name: ' Freezer ', amps: '3,5' }, {}, { amps: '500 mA', poles: '2', shares: '' }),
    );
    expect(read.ok && read.inputs.circuits).toEqual([
      { name: 'Freezer', amps: 3.5 },
      { name: '', amps: 0.5, poles: 2 },
    ]);
  });

  it.each([
    [{ name: 'Freezer' }, /Row 1, Amps: /],
    [{ amps: 'many' }, /Row 1, Amps: .*many/],
    [{ amps: '900' }, /Row 1, Amps: Too large\. Between 0\sA and 200\sA\./],
    [{ amps: '5', poles: '3' }, /Row 1, Poles: /],
    [{ amps: '5', shares: '1.5' }, /Row 1, Shared neutral: /],
  ] as [TypedRow, RegExp][])('says which cell of %o is wrong', (row, said) => {
    const read = readForm(spreadLegs, form(row));
    if (read.ok) throw new Error('read');
    const sentence = fieldError(
      read.errors.circuits!,
      spreadLegs.inputs.circuits,
      words.inputs.circuits!,
      'us',
    );
    expect(sentence).toMatch(said);
  });

  it('refuses what is no list, and more rows than it has room for', () => {
    const offer = (circuits: unknown) =>
      checkInputs(spreadLegs, { topology: 'opposed-120-240', circuits } as never);
    expect(offer('five')).toMatchObject({ ok: false });
    const many = Array.from({ length: 25 }, () => ({ name: '', amps: 1 }));
    expect(offer(many)).toMatchObject({
      ok: false,
      errors: { circuits: { id: 'worksheet.input.tooManyRows' } },
    });
    expect(offer([{ name: 'x'.repeat(25), amps: 1 }])).toMatchObject({ ok: false });
  });

  it('comes back from a link as it was typed', () => {
    const cell = fc.string({ maxLength: 20 }).map((text) => text.replace(/[~;]/g, '').trim());
    const row = fc
      .record({ name: cell, amps: cell, poles: cell, shares: cell })
      .filter((each) => Object.values(each).some((text) => text !== ''));
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 24 }), (rows) => {
        const back = fromQuery(spreadLegs, toQuery(spreadLegs, form(...rows)));
        expect(back?.rows.circuits).toEqual(rows);
      }),
      { seed: 3 },
    );
    const torn = fromQuery(spreadLegs, toQuery(spreadLegs, form({ name: 'a~b;c', amps: '4' })));
    expect(torn?.rows.circuits).toEqual([{ name: 'a b c', amps: '4', poles: '', shares: '' }]);
  });
});
