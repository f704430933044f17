import type { UnitSystem } from '../../quantity/kinds.ts';
import { usualUnitOf } from '../../quantity/units.ts';
import { worksheetPage } from '../../words/en/worksheets-page.ts';
import type { InputWords } from '../../words/worksheet-words.ts';
import type { TimedReadingsField } from '../../worksheets/define.ts';
import type { TypedRow } from './typed.ts';

interface TimedRowsProps {
  box: string;
  field: TimedReadingsField;
  words: InputWords;
  rows: readonly TypedRow[];
  units: UnitSystem;
  error: string | undefined;
  onRows(rows: readonly TypedRow[]): void;
}

/** More readings than a rise ever needs. */
const mostRows = 20;

/** Readings at noted times, one a row, with a row to add. */
export function TimedRows({ box, field, words, rows, units, error, onRows }: TimedRowsProps) {
  const { timed } = worksheetPage;
  const change = (at: number, part: Partial<TypedRow>): void =>
    onRows(rows.map((row, each) => (each === at ? ({ ...row, ...part } as TypedRow) : row)));
  return (
    <fieldset class="field timed" data-error={error ? '' : undefined} aria-describedby={`${box}-hint`}>
      <legend>{words.label}</legend>
      <p class="field-hint" id={`${box}-hint`}>
        {words.hint}
      </p>
      {error && <p class="field-error">{error}</p>}
      {rows.map((row, at) => (
        <div class="timed-row" key={at}>
          <Cell
            label={`${timed.row(at + 1)}, ${timed.at}`}
            unit="s"
            text={row.at ?? ''}
            onType={(text) => change(at, { at: text })}
          />
          <Cell
            label={`${timed.row(at + 1)}, ${words.label}`}
            unit={usualUnitOf(field.timed, units)}
            text={row.value ?? ''}
            onType={(text) => change(at, { value: text })}
          />
          <button
            type="button"
            class="btn btn-quiet no-print"
            aria-label={`${timed.remove}: ${timed.row(at + 1)}`}
            onClick={() => onRows(rows.filter((_, each) => each !== at))}
          >
            ×
          </button>
        </div>
      ))}
      {rows.length < mostRows && (
        <button type="button" class="btn no-print" onClick={() => onRows([...rows, { at: '', value: '' }])}>
          {timed.add}
        </button>
      )}
    </fieldset>
  );
}

function Cell({
  label,
  unit,
  text,
  onType,
}: {
  label: string;
  unit: string;
  text: string;
  onType(text: string): void;
}) {
  return (
    <div class="field-with-unit">
      <input
        type="text"
        data-number=""
        autocomplete="off"
        inputMode="decimal"
        aria-label={`${label} (${unit})`}
        value={text}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      <span class="unit" aria-hidden="true">
        {unit}
      </span>
    </div>
  );
}
