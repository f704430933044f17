import type { UnitSystem } from '../../quantity/kinds.ts';
import { worksheetPage } from '../../words/en/worksheets-page.ts';
import type { InputWords } from '../../words/worksheet-words.ts';
import type { RowsField } from '../../worksheets/define.ts';
import { type TypedRow, unitOf } from './typed.ts';

interface ListRowsProps {
  box: string;
  field: RowsField;
  words: InputWords;
  rows: readonly TypedRow[];
  units: UnitSystem;
  error: string | undefined;
  onRows(rows: readonly TypedRow[]): void;
}

/** A list to fill in, one thing a row, with a row to add. */
export function ListRows({ box, field, words, rows, units, error, onRows }: ListRowsProps) {
  const { rows: said } = worksheetPage;
  const change = (at: number, column: string, text: string): void =>
    onRows(rows.map((row, each) => (each === at ? { ...row, [column]: text } : row)));
  return (
    <fieldset
      class="field"
      id={box}
      tabIndex={-1}
      data-error={error ? '' : undefined}
      aria-describedby={
        [words.hint && `${box}-hint`, error && `${box}-error`].filter(Boolean).join(' ') || undefined
      }
    >
      <legend>{words.label}</legend>
      {words.hint && (
        <p class="field-hint" id={`${box}-hint`}>
          {words.hint}
        </p>
      )}
      {error && (
        <p class="field-error" id={`${box}-error`}>
          {error}
        </p>
      )}
      {rows.map((row, at) => (
        <fieldset class="list-row" key={at} aria-label={said.row(at + 1)}>
          {Object.entries(field.rows).map(([column, kind]) => {
            const cell = words.columns![column]!;
            const text = 'text' in kind;
            const unit = text ? '' : unitOf(kind, units);
            return (
              <label key={column} class={text ? 'wide' : undefined}>
                {cell.label}
                {unit !== '' && ` (${unit})`}
                <input
                  type="text"
                  data-number={text ? undefined : ''}
                  autocomplete="off"
                  maxLength={text ? kind.most : undefined}
                  inputMode={text ? undefined : kind.kind === 'count' ? 'numeric' : 'decimal'}
                  value={row[column] ?? ''}
                  onInput={(event) => change(at, column, event.currentTarget.value)}
                />
              </label>
            );
          })}
          <button
            type="button"
            class="btn btn-quiet no-print"
            aria-label={`${said.remove}: ${said.row(at + 1)}`}
            onClick={() => onRows(rows.filter((_, each) => each !== at))}
          >
            ×
          </button>
        </fieldset>
      ))}
      {rows.length < field.mostRows && (
        <button type="button" class="btn no-print" onClick={() => onRows([...rows, {}])}>
          {said.add}
        </button>
      )}
    </fieldset>
  );
}
