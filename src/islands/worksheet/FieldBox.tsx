import type { UnitSystem } from '../../quantity/kinds.ts';
import { worksheetPage } from '../../words/en/worksheets-page.ts';
import type { InputWords } from '../../words/worksheet-words.ts';
import { isChoice } from '../../worksheets/check-inputs.ts';
import type { ChoiceField, NumberField } from '../../worksheets/define.ts';
import { echoOf, unitOf } from './typed.ts';

export interface FieldBoxProps {
  /** Id of the input; hint, error and echo hang on it. */
  box: string;
  field: NumberField | ChoiceField;
  words: InputWords;
  text: string;
  units: UnitSystem;
  error: string | undefined;
  onType(text: string): void;
}

/** One number or choice of a worksheet: label, hint, error, box with its unit, what was understood. */
export function FieldBox(props: FieldBoxProps) {
  const { field } = props;
  return isChoice(field) ? <ChoiceBox {...props} field={field} /> : <NumberBox {...props} field={field} />;
}

function NumberBox({
  box,
  field,
  words,
  text,
  units,
  error,
  onType,
}: FieldBoxProps & { field: NumberField }) {
  const unit = unitOf(field, units);
  const echo = echoOf(field, text, units);
  const describedBy = [words.hint && `${box}-hint`, error && `${box}-error`, `${box}-echo`];
  return (
    <div class="field" data-error={error ? '' : undefined}>
      <label for={box}>
        {words.label}
        {words.symbol && <i class="symbol"> {words.symbol}</i>}
        {unit !== '' && <span class="visually-hidden"> ({unit})</span>}
        {field.optional && <span class="small"> – {worksheetPage.optional}</span>}
      </label>
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
      <div class="field-with-unit">
        {field.signed && (
          <button
            type="button"
            class="btn sign"
            aria-label={`${worksheetPage.sign}: ${words.label}`}
            onClick={() => onType(flipped(text))}
          >
            ±
          </button>
        )}
        <input
          id={box}
          type="text"
          data-number=""
          autocomplete="off"
          spellcheck={false}
          inputMode={
            field.signed || field.kind === 'wireSize'
              ? undefined
              : field.kind === 'count'
                ? 'numeric'
                : 'decimal'
          }
          value={text}
          aria-invalid={error ? 'true' : undefined}
          aria-describedby={describedBy.filter(Boolean).join(' ')}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        {unit !== '' && (
          <span class="unit" aria-hidden="true">
            {unit}
          </span>
        )}
      </div>
      <p class="field-echo" id={`${box}-echo`}>
        {echo === '' ? '' : worksheetPage.readAs(echo)}
      </p>
    </div>
  );
}

function ChoiceBox({ box, field, words, text, onType }: FieldBoxProps & { field: ChoiceField }) {
  return (
    <fieldset class="field" aria-describedby={words.hint ? `${box}-hint` : undefined}>
      <legend>{words.label}</legend>
      {words.hint && (
        <p class="field-hint" id={`${box}-hint`}>
          {words.hint}
        </p>
      )}
      <div class="choice">
        {field.options.map((option) => (
          <label key={option}>
            <input
              type="radio"
              name={box}
              checked={(text || field.default) === option}
              onChange={() => onType(option)}
            />
            {words.options?.[option]}
          </label>
        ))}
      </div>
    </fieldset>
  );
}

/** The text with its sign turned; phone keypads lack a minus. */
function flipped(text: string): string {
  const trimmed = text.trim();
  return /^[-−–]/.test(trimmed) ? trimmed.slice(1).trim() : `−${trimmed.replace(/^\+/, '')}`;
}
