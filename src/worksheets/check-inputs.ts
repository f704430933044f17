import type { MessageRef } from '../quantity/message.ts';
import type {
  AnyWorksheet,
  ChoiceField,
  Field,
  NumberField,
  RowsField,
  TimedReading,
  TimedReadingsField,
} from './define.ts';

/** What a form, an address or a guide's step offers for a field, already in its inside unit. */
export type OfferedRow = Readonly<Record<string, number | string | undefined>>;
export type Offered = number | string | readonly TimedReading[] | readonly OfferedRow[] | undefined;
export type OfferedInputs = Readonly<Record<string, Offered>>;

export type CheckedInputs =
  | { readonly ok: true; readonly inputs: Readonly<Record<string, Offered>> }
  | { readonly ok: false; readonly errors: Readonly<Record<string, MessageRef>> };

export const isChoice = (field: Field): field is ChoiceField => 'options' in field;
export const isTimed = (field: Field): field is TimedReadingsField => 'timed' in field;
export const isRows = (field: Field): field is RowsField => 'rows' in field;
export const isNumber = (field: Field): field is NumberField => 'kind' in field;

/** Checks every field against its definition and names each one that does not fit. `compute` may be called on what passes. */
export function checkInputs(worksheet: AnyWorksheet, offered: OfferedInputs): CheckedInputs {
  const fields = Object.entries(worksheet.inputs as Record<string, Field>);
  const errors = fields.flatMap(([name, field]) => {
    const error = errorOf(field, offered[name]);
    return error ? [[name, error] as const] : [];
  });
  if (errors.length > 0) return { ok: false, errors: Object.fromEntries(errors) };
  const inputs = fields.map(([name, field]) => [
    name,
    offered[name] ?? (isTimed(field) || isRows(field) ? [] : undefined),
  ]);
  return { ok: true, inputs: Object.fromEntries(inputs) };
}

function errorOf(field: Field, value: Offered): MessageRef | undefined {
  if (isChoice(field)) {
    return field.options.includes(String(value)) ? undefined : { id: 'worksheet.input.notAnOption' };
  }
  if (isTimed(field)) {
    const fits =
      value === undefined ||
      (Array.isArray(value) &&
        value.every((row: TimedReading) => Number.isFinite(row.tS) && Number.isFinite(row.value)));
    return fits ? undefined : { id: 'worksheet.input.notReadings' };
  }
  if (isRows(field)) return errorOfRows(field, value);
  if (value === undefined) return field.optional ? undefined : { id: 'worksheet.input.missing' };
  if (typeof value !== 'number' || !Number.isFinite(value)) return { id: 'worksheet.input.notANumber' };
  if (field.kind === 'count' && !Number.isInteger(value)) return { id: 'worksheet.input.notWhole' };
  if (value < field.min) return { id: 'worksheet.input.tooSmall', params: { min: field.min } };
  if (value > field.max) return { id: 'worksheet.input.tooLarge', params: { max: field.max } };
  return undefined;
}

/** The first thing wrong in a list, with its row (counted from 1) and column. */
function errorOfRows(field: RowsField, value: Offered): MessageRef | undefined {
  if (value === undefined) return undefined;
  if (!Array.isArray(value)) return { id: 'worksheet.input.notRows' };
  if (value.length > field.mostRows) return { id: 'worksheet.input.tooManyRows' };
  for (const [at, row] of (value as readonly OfferedRow[]).entries()) {
    for (const [column, kind] of Object.entries(field.rows)) {
      const cell = row[column];
      const error =
        'text' in kind
          ? typeof cell === 'string' && cell.length <= kind.most
            ? undefined
            : { id: 'worksheet.input.notText' }
          : errorOf(kind, cell);
      if (error) return { id: error.id, params: { ...error.params, row: at + 1, column } };
    }
  }
  return undefined;
}
