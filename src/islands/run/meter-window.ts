import type { SiteSheet } from '../../site/sheet.ts';
import type { ReadingAsked } from '../../visit/step.ts';
import { runWords } from '../../words/en/run-page.ts';
import { bandBar, unitOf } from './band.ts';
import { freshId, make, ours } from './dom.ts';
import { echo } from './echo.ts';
import type { ReadingField } from './host.ts';
import { fetchPart } from './parts.ts';

const words = runWords.meter;

/** Turns the sign of what is typed. */
function turned(text: string): string {
  const bare = text.trimStart();
  return /^[-−–]/.test(bare) ? bare.slice(1).trimStart() : `−${bare}`;
}

/** The window of a meter for one reading: sign key, what is typed, its unit; below, what was understood and the band. */
export function meterWindow(
  asked: ReadingAsked,
  sheet: SiteSheet,
  text: string,
  label: string,
  onType: (text: string) => void,
): ReadingField {
  const inputId = freshId('reading');
  const unit = unitOf(asked.kind, sheet.units);
  const signed = asked.reading.signed === true;
  const input = make('input', {
    id: inputId,
    type: 'text',
    autocomplete: 'off',
    spellcheck: false,
    inputMode: 'decimal',
    value: text,
    attrs: { 'aria-describedby': `${inputId}-hint ${inputId}-echo ${inputId}-error`, autocapitalize: 'off' },
  });
  const said = make('p', {
    id: `${inputId}-echo`,
    className: 'meter-echo',
    attrs: { 'aria-live': 'polite' },
  });
  const bar = make('div', { className: 'band-bar' });
  const error = make('p', { id: `${inputId}-error`, className: 'field-error' });
  const sign = make('button', {
    type: 'button',
    className: 'sign-key',
    textContent: '±',
    attrs: { 'aria-label': words.sign },
  });
  sign.addEventListener('click', () => {
    input.value = turned(input.value);
    input.dispatchEvent(new Event('input', { bubbles: true }));
    input.focus();
  });
  const show = () => {
    const heard = echo(input.value, asked, sheet);
    said.textContent = heard.says;
    const { problem } = heard;
    // Why a text is not understood is worded in the later part, fetched when first wanted.
    if (problem)
      void fetchPart('aside').then(({ sayRun }) => {
        if (said.textContent === '') said.textContent = sayRun(problem);
      });
    if (asked.scale) bar.replaceChildren(bandBar(asked.scale, sheet.units, words.band, heard.value));
  };
  input.addEventListener('input', () => {
    onType(input.value);
    show();
  });
  const element = ours(
    make(
      'div',
      { className: 'field meter-field' },
      make('label', { className: 'meter-label', htmlFor: inputId, textContent: label }),
      make('p', {
        id: `${inputId}-hint`,
        className: 'field-hint',
        textContent: unit === '' ? words.wait : `${words.unit(unit)} ${words.wait}`,
      }),
      error,
      make(
        'div',
        { className: 'meter-window' },
        signed && sign,
        input,
        make('span', { className: 'meter-unit', textContent: unit, attrs: { 'aria-hidden': 'true' } }),
        said,
        bar,
      ),
    ),
  );
  show();
  return {
    id: asked.id,
    element,
    inputId,
    showProblem(message) {
      error.textContent = message;
      element.toggleAttribute('data-error', message !== '');
      input.setAttribute('aria-invalid', String(message !== ''));
    },
    focus() {
      element.scrollIntoView({ block: 'start' });
      input.focus({ preventScroll: true });
    },
  };
}
