import type { UnitSystem } from '../../quantity/kinds.ts';
import { type Fact, factOf } from '../../site/facts.ts';
import { siteWords } from '../../words/en/site.ts';
import { boxId, boxLabel, echoOf, hintOf, keypadOf, type Option, optionsOf } from './say.ts';

export interface BoxProps {
  /** Concrete id of the fact. */
  id: string;
  text: string;
  unknown: boolean;
  units: UnitSystem;
  error?: string;
  /** The answers, where they are not the schema's own: the trackers typed above. */
  options?: Option[];
  onType(id: string, text: string): void;
  onUnknown(id: string, unknown: boolean): void;
}

/** One question of the form: label, hint, error, box, what was understood, and "I don't know" where it is allowed. */
export function Box(props: BoxProps) {
  const fact = factOf(props.id);
  const { type } = fact.answer;
  const asChoice = type === 'choice' || type === 'yesNo' || props.options !== undefined;
  return asChoice ? <ChoiceBox {...props} fact={fact} /> : <TextBox {...props} fact={fact} />;
}

type Inner = BoxProps & { fact: Fact };

function TextBox({ id, text, unknown, units, error, onType, onUnknown, fact }: Inner) {
  const box = boxId(id);
  const hint = hintOf(fact);
  const echo = unknown ? '' : echoOf(fact, text, units);
  const isNumber = fact.answer.type === 'number';
  const common = {
    id: box,
    value: text,
    'aria-describedby':
      [hint && `${box}-hint`, error && `${box}-error`, isNumber && `${box}-echo`].filter(Boolean).join(' ') ||
      undefined,
    'aria-invalid': error ? ('true' as const) : undefined,
    autocomplete: 'off',
    onInput: (event: { currentTarget: { value: string } }) => onType(id, event.currentTarget.value),
  };
  return (
    <div class="field" data-error={error ? '' : undefined}>
      <label for={box}>{boxLabel(fact, units)}</label>
      {hint && (
        <p class="field-hint" id={`${box}-hint`}>
          {hint}
        </p>
      )}
      {error && (
        <p class="field-error" id={`${box}-error`}>
          {error}
        </p>
      )}
      {fact.id === 'notes' ? (
        <textarea {...common} />
      ) : (
        <input
          type="text"
          {...common}
          data-number={isNumber ? '' : undefined}
          inputMode={keypadOf(fact)}
          spellcheck={false}
        />
      )}
      {isNumber && (
        <p class="field-echo" id={`${box}-echo`}>
          {echo}
        </p>
      )}
      {fact.unknownAllowed && (
        <label class="tick">
          <input
            type="checkbox"
            checked={unknown}
            aria-label={`${siteWords.dontKnow}: ${boxLabel(fact, units)}`}
            onChange={(event) => onUnknown(id, event.currentTarget.checked)}
          />
          {siteWords.dontKnow}
        </label>
      )}
    </div>
  );
}

function ChoiceBox({
  id,
  text,
  unknown,
  units,
  error,
  onType,
  onUnknown,
  fact,
  options = optionsOf(fact),
}: Inner) {
  const box = boxId(id);
  const hint = hintOf(fact);
  const first = options[0]?.value;
  return (
    <fieldset
      class="field"
      id={first === undefined ? box : undefined}
      tabIndex={first === undefined ? -1 : undefined}
      aria-describedby={
        [hint && `${box}-hint`, error && `${box}-error`].filter(Boolean).join(' ') || undefined
      }
      data-error={error ? '' : undefined}
    >
      <legend>{boxLabel(fact, units)}</legend>
      {hint && (
        <p class="field-hint" id={`${box}-hint`}>
          {hint}
        </p>
      )}
      {error && (
        <p class="field-error" id={`${box}-error`}>
          {error}
        </p>
      )}
      <div class="choice">
        {options.map(({ value, label }) => (
          <label key={value}>
            <input
              type="radio"
              name={box}
              id={value === first ? box : undefined}
              checked={!unknown && text === value}
              onChange={() => onType(id, value)}
            />
            {label}
          </label>
        ))}
        {fact.unknownAllowed && (
          <label>
            <input type="radio" name={box} checked={unknown} onChange={() => onUnknown(id, true)} />
            {siteWords.dontKnow}
          </label>
        )}
      </div>
    </fieldset>
  );
}
