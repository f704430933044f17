import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { prefill } from '../../expected/prefill.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { worksheetPage } from '../../words/en/worksheets-page.ts';
import type { WorksheetWords } from '../../words/worksheet-words.ts';
import { isRows, isTimed } from '../../worksheets/check-inputs.ts';
import type { AnyWorksheet } from '../../worksheets/define.ts';
import { FieldBox } from './FieldBox.tsx';
import { LinkAndPrint } from './LinkAndPrint.tsx';
import { ListRows } from './ListRows.tsx';
import { fromQuery, toQuery } from './link.ts';
import { ResultPlate } from './ResultPlate.tsx';
import { fieldError } from './sentences.ts';
import { TimedRows } from './TimedRows.tsx';
import { emptyForm, fieldsOf, readForm, type Typed, textOf, withUnits } from './typed.ts';

interface AppProps {
  worksheet: AnyWorksheet;
  words: WorksheetWords;
  /** The site in use, asked for once the page stands. Missing while the page is built. */
  currentSheet?: () => Promise<SiteSheet | null>;
}

/** Quiet time after a key before the address follows, so that typing stays quick. */
const addressPauseMs = 400;

/** One worksheet to fill in: form, result, plot, working. Rendered into the static page and taken over by its script. */
export function WorksheetApp({ worksheet, words, currentSheet }: AppProps) {
  const [typed, setTyped] = useState<Typed>(() => emptyForm(worksheet, 'metric'));
  const [sheet, setSheet] = useState<SiteSheet | null>(null);
  const [row, setRow] = useState(0);
  const [from, setFrom] = useState<'none' | 'site' | 'link'>('none');
  const touched = useRef(false);

  useEffect(() => {
    if (!currentSheet) return;
    const link = fromQuery(worksheet, location.search);
    if (link) setFrom('link');
    setTyped(merged(emptyForm(worksheet, link?.units ?? languageUnits()), link));
    // Without storage the worksheet works all the same, on what is typed.
    currentSheet()
      .catch(() => null)
      .then((found) => {
        if (!found) return;
        setSheet(found);
        // Numbers already typed or linked are the person's own: the site never writes over them.
        if (!link && !touched.current) {
          setTyped(filled(worksheet, found, 0));
          setFrom('site');
        }
      });
  }, []);

  useEffect(() => {
    if (!touched.current) return;
    const timer = setTimeout(() => {
      history.replaceState(history.state, '', `?${toQuery(worksheet, typed)}${location.hash}`);
    }, addressPauseMs);
    return () => clearTimeout(timer);
  }, [typed]);

  const change = (next: Typed): void => {
    touched.current = true;
    setTyped(next);
  };
  const fillFrom = (which: number): void => {
    if (!sheet) return;
    setRow(which);
    setFrom('site');
    change(filled(worksheet, sheet, which));
  };
  const read = useMemo(() => readForm(worksheet, typed), [typed]);
  const errors = read.ok ? {} : read.errors;
  const usesString = fieldsOf(worksheet).some(
    ([, field]) => 'from' in field && field.from?.some((id) => /^(string|tracker)\.|stringVoc/.test(id)),
  );

  return (
    <div class="worksheet">
      <form class="worksheet-form" noValidate onSubmit={(event) => event.preventDefault()}>
        <h2>{worksheetPage.numbers}</h2>
        <div class="worksheet-from">
          <p>
            {from === 'link'
              ? worksheetPage.from.link
              : from === 'site' && sheet
                ? worksheetPage.from.site(sheet.name)
                : worksheetPage.from.none}
          </p>
          {sheet && usesString && sheet.strings.length > 1 && (
            <label class="worksheet-pick">
              {worksheetPage.from.pick}{' '}
              <select value={String(row)} onChange={(event) => fillFrom(Number(event.currentTarget.value))}>
                {sheet.strings.map((string, at) => (
                  <option key={string.name} value={String(at)}>
                    {string.name}
                  </option>
                ))}
              </select>
            </label>
          )}
          {sheet && (
            <button type="button" class="btn btn-quiet no-print" onClick={() => fillFrom(row)}>
              {worksheetPage.from.again}
            </button>
          )}
          <UnitsChoice units={typed.units} onUnits={(units) => change(withUnits(worksheet, typed, units))} />
        </div>
        {fieldsOf(worksheet).map(([name, field]) => {
          const fieldWords = words.inputs[name]!;
          const box = `w-${name}`;
          const wrong = errors[name] && fieldError(errors[name], field, fieldWords, typed.units);
          return isTimed(field) ? (
            <TimedRows
              key={name}
              {...{ box, field, words: fieldWords, units: typed.units, error: wrong }}
              rows={typed.rows[name] ?? []}
              onRows={(rows) => change({ ...typed, rows: { ...typed.rows, [name]: rows } })}
            />
          ) : isRows(field) ? (
            <ListRows
              key={name}
              {...{ box, field, words: fieldWords, units: typed.units, error: wrong }}
              rows={typed.rows[name] ?? []}
              onRows={(rows) => change({ ...typed, rows: { ...typed.rows, [name]: rows } })}
            />
          ) : (
            <FieldBox
              key={name}
              {...{ box, field, words: fieldWords, units: typed.units, error: wrong }}
              text={typed.texts[name] ?? ''}
              onType={(text) => change({ ...typed, texts: { ...typed.texts, [name]: text } })}
            />
          );
        })}
      </form>
      <div class="worksheet-result">
        {read.ok ? (
          <ResultPlate worksheet={worksheet} words={words} inputs={read.inputs} units={typed.units} />
        ) : (
          <Waiting {...{ words, errors: Object.keys(read.errors), empty: read.empty }} />
        )}
        <LinkAndPrint query={() => toQuery(worksheet, typed)} />
      </div>
    </div>
  );
}

function Waiting({
  words,
  errors,
  empty,
}: {
  words: WorksheetWords;
  errors: string[];
  empty: readonly string[];
}) {
  const link = (name: string) => (
    <li key={name}>
      <a href={`#w-${name}`}>{words.inputs[name]?.label}</a>
    </li>
  );
  return (
    <div class="plate" role="status">
      <h2 class="plate-title">{worksheetPage.result}</h2>
      {errors.length > 0 && (
        <div>
          <p>{worksheetPage.fix}</p>
          <ul>{errors.map(link)}</ul>
        </div>
      )}
      {empty.length > 0 && (
        <div>
          <p>{worksheetPage.waiting}</p>
          <ul>{empty.map(link)}</ul>
        </div>
      )}
    </div>
  );
}

function UnitsChoice({ units, onUnits }: { units: UnitSystem; onUnits(units: UnitSystem): void }) {
  return (
    <fieldset class="worksheet-units">
      <legend>{worksheetPage.units.label}</legend>
      {(['us', 'metric'] as const).map((system) => (
        <label key={system} class="tick">
          <input
            type="radio"
            name="worksheet-units"
            checked={units === system}
            onChange={() => onUnits(system)}
          />
          {worksheetPage.units[system]}
        </label>
      ))}
    </fieldset>
  );
}

const languageUnits = (): UnitSystem => (navigator.language === 'en-US' ? 'us' : 'metric');

const merged = (form: Typed, over: Typed | undefined): Typed =>
  over
    ? { units: over.units, texts: { ...form.texts, ...over.texts }, rows: { ...form.rows, ...over.rows } }
    : form;

/** The form as the site sheet fills it, in the site's units; what the sheet does not know keeps its default. */
function filled(worksheet: AnyWorksheet, sheet: SiteSheet, row: number): Typed {
  const form = emptyForm(worksheet, sheet.units);
  const known = prefill(worksheet, sheet, row);
  const texts = fieldsOf(worksheet).flatMap(([name, field]) =>
    known[name] === undefined ? [] : [[name, textOf(field, known[name], sheet.units)] as const],
  );
  return { ...form, texts: { ...form.texts, ...Object.fromEntries(texts) } };
}
