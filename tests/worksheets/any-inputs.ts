import fc from 'fast-check';
import type { AnyWorksheet, Field } from '../../src/worksheets/define.ts';

/** Any inputs that a worksheet's fields admit, each number often at its ends, since that is where formulas break. */
export function anyInputs(worksheet: AnyWorksheet): fc.Arbitrary<Record<string, unknown>> {
  const fields = Object.entries(worksheet.inputs as Record<string, Field>);
  return fc.record(Object.fromEntries(fields.map(([name, field]) => [name, anyValue(field)])));
}

function anyValue(field: Field): fc.Arbitrary<unknown> {
  if ('options' in field) return fc.constantFrom(...field.options);
  if ('timed' in field) {
    const row = fc.record({
      tS: fc.double({ min: 0, max: 60, noNaN: true }),
      value: fc.double({ min: -5, max: 110, noNaN: true }),
    });
    return fc.array(row, { maxLength: 6 }).map((rows) => rows.toSorted((a, b) => a.tS - b.tS));
  }
  if ('rows' in field) {
    const cells = Object.entries(field.rows).map(([column, kind]) => [
      column,
      'text' in kind ? fc.constantFrom('', 'Freezer', 'Lights', 'Pump') : anyValue(kind),
    ]);
    return fc.array(fc.record(Object.fromEntries(cells)), { maxLength: Math.min(8, field.mostRows) });
  }
  const { min, max } = field;
  const inside =
    field.kind === 'count'
      ? fc.integer({ min, max })
      : fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
  const value = fc.oneof({ weight: 4, arbitrary: inside }, fc.constantFrom(min, max, field.default ?? min));
  return field.optional ? fc.option(value, { nil: undefined }) : value;
}
