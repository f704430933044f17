import { formatAsTyped, formatQuantity, showQuantity } from '../../quantity/format.ts';
import { kindFacts, type QuantityKind, type UnitSystem } from '../../quantity/kinds.ts';
import type { MessageRef } from '../../quantity/message.ts';
import { type ParsedReading, parseReading } from '../../quantity/parse.ts';
import { usualUnitOf } from '../../quantity/units.ts';
import { awgOfArea } from '../../quantity/wire.ts';
import {
  checkInputs,
  isChoice,
  isNumber,
  isRows,
  isTimed,
  type Offered,
  type OfferedRow,
} from '../../worksheets/check-inputs.ts';
import type { AnyWorksheet, Field, NumberField, RowsField, TimedReading } from '../../worksheets/define.ts';

/** A row as typed: `at` and `value` of a reading over time, or the columns of a list. A missing cell is an empty one. */
export type TypedRow = Readonly<Record<string, string>>;

/** What stands in the form, unread. */
export interface Typed {
  readonly units: UnitSystem;
  readonly texts: Readonly<Record<string, string>>;
  readonly rows: Readonly<Record<string, readonly TypedRow[]>>;
}

/** A form read: inputs for `compute`, or what is still empty and what is wrong. */
export type ReadForm =
  | { readonly ok: true; readonly inputs: Readonly<Record<string, unknown>> }
  | {
      readonly ok: false;
      /** Fields nobody has filled in: not an error yet. */
      readonly empty: readonly string[];
      readonly errors: Readonly<Record<string, MessageRef>>;
    };

export const fieldsOf = (worksheet: AnyWorksheet): [string, Field][] =>
  Object.entries(worksheet.inputs as Record<string, Field>);

/** Unit in which a bare number is taken, and which stands beside the box. */
export const unitOf = (field: NumberField, units: UnitSystem): string =>
  field.unit ?? usualUnitOf(field.kind, units);

/** A list is shown with this many rows to begin with. */
const blankRows = 3;

export const isBlank = (row: TypedRow): boolean => Object.values(row).every((cell) => cell.trim() === '');

/** The form before anybody types: the definition's own defaults. */
export function emptyForm(worksheet: AnyWorksheet, units: UnitSystem): Typed {
  const texts = fieldsOf(worksheet).flatMap(([name, field]) => {
    if (isTimed(field) || isRows(field)) return [];
    return [[name, field.default === undefined ? '' : textOf(field, field.default, units)] as const];
  });
  const rows = fieldsOf(worksheet).flatMap(([name, field]): [string, readonly TypedRow[]][] => {
    if (isTimed(field)) return [[name, []]];
    return isRows(field) ? [[name, Array.from({ length: blankRows }, () => ({}))]] : [];
  });
  return { units, texts: Object.fromEntries(texts), rows: Object.fromEntries(rows) };
}

/** A value from its inside unit to what a person would have typed. */
export function textOf(field: Field, value: number | string, units: UnitSystem): string {
  if (!isNumber(field) || typeof value !== 'number') return String(value);
  if (field.kind === 'wireSize') {
    // A gauge stays a gauge on a metric site too: no metric size lies within a hundredth of one.
    const system = awgOfArea(value) === undefined ? 'metric' : 'us';
    return formatQuantity(value, 'wireSize', { system }).replace('\u00a0', ' ');
  }
  return showQuantity(value, field.kind, { system: units, unit: unitOf(field, units), digits: 6 }).number;
}

/** Reads one box. */
export function readText(field: NumberField, text: string, units: UnitSystem): ParsedReading {
  return parseReading(text, {
    kind: field.kind,
    unit: unitOf(field, units),
    system: units,
    allowNegative: field.signed ?? false,
    // What the field takes is no slip, though few readings of its kind come so high: a short circuit's amps.
    maxMagnitude: Math.max(kindFacts[field.kind].maxMagnitude, field.max),
  });
}

/** What was understood, where it is not simply what was typed; empty otherwise. */
export function echoOf(field: NumberField, text: string, units: UnitSystem): string {
  if (text.trim() === '') return '';
  const reading = readText(field, text, units);
  if (!reading.ok || !reading.unitTyped) return '';
  return formatAsTyped(reading.value, reading.resolution, reading.unit, field.kind);
}

/** Reads the whole form against the worksheet's definition. */
export function readForm(worksheet: AnyWorksheet, typed: Typed): ReadForm {
  const offered: Record<string, Offered> = {};
  const errors: Record<string, MessageRef> = {};
  const empty: string[] = [];
  for (const [name, field] of fieldsOf(worksheet)) {
    if (isChoice(field)) {
      offered[name] = typed.texts[name] || field.default;
    } else if (isTimed(field)) {
      const rows = readRows(typed.rows[name] ?? [], field.timed, typed.units);
      if (rows.ok) offered[name] = rows.readings;
      else errors[name] = rows.reason;
    } else if (isRows(field)) {
      const rows = readList(field, typed.rows[name] ?? [], typed.units);
      if (rows.ok) offered[name] = rows.rows;
      else errors[name] = rows.reason;
    } else {
      const text = typed.texts[name] ?? '';
      if (text.trim() === '') {
        if (!field.optional) empty.push(name);
        continue;
      }
      const reading = readText(field, text, typed.units);
      if (reading.ok) offered[name] = reading.value;
      else errors[name] = reading.reason;
    }
  }
  const checked = checkInputs(worksheet, offered);
  if (checked.ok && Object.keys(errors).length === 0) return { ok: true, inputs: checked.inputs };
  const ranged = checked.ok ? {} : checked.errors;
  for (const [name, error] of Object.entries(ranged)) {
    if (!empty.includes(name)) errors[name] ??= error;
  }
  return { ok: false, empty, errors };
}

function readRows(
  rows: readonly TypedRow[],
  kind: QuantityKind,
  units: UnitSystem,
): { ok: true; readings: readonly TimedReading[] } | { ok: false; reason: MessageRef } {
  const readings: TimedReading[] = [];
  for (const { at = '', value = '' } of rows) {
    if (at.trim() === '' && value.trim() === '') continue;
    if (at.trim() === '' || value.trim() === '')
      return { ok: false, reason: { id: 'worksheet.input.notReadings' } };
    const time = parseReading(at, { kind: 'time', unit: 's', system: units });
    const reading = parseReading(value, { kind, system: units, allowNegative: true });
    if (!time.ok) return { ok: false, reason: time.reason };
    if (!reading.ok) return { ok: false, reason: reading.reason };
    readings.push({ tS: time.value, value: reading.value });
  }
  return { ok: true, readings };
}

function readList(
  field: RowsField,
  typed: readonly TypedRow[],
  units: UnitSystem,
): { ok: true; rows: readonly OfferedRow[] } | { ok: false; reason: MessageRef } {
  const rows: OfferedRow[] = [];
  for (const row of typed.filter((each) => !isBlank(each))) {
    const cells: Record<string, number | string | undefined> = {};
    for (const [column, kind] of Object.entries(field.rows)) {
      const text = row[column]?.trim() ?? '';
      if ('text' in kind) cells[column] = text;
      else if (text !== '') {
        const read = readText(kind, text, units);
        if (!read.ok)
          return {
            ok: false,
            reason: { id: read.reason.id, params: { ...read.reason.params, row: rows.length + 1, column } },
          };
        cells[column] = read.value;
      }
    }
    rows.push(cells);
  }
  return { ok: true, rows };
}

/** The same numbers in the other units: each text that can be read is written anew, the rest stays as typed. */
export function withUnits(worksheet: AnyWorksheet, typed: Typed, units: UnitSystem): Typed {
  const texts = Object.fromEntries(
    fieldsOf(worksheet).flatMap(([name, field]) => {
      const text = typed.texts[name];
      if (text === undefined) return [];
      if (!isNumber(field) || field.kind === 'wireSize') return [[name, text]];
      const reading = readText(field, text, typed.units);
      return [[name, reading.ok ? textOf(field, reading.value, units) : text]];
    }),
  );
  return { ...typed, units, texts };
}
