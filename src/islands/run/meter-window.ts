import { judgeOn, understand } from '../../guide/reading.ts';
import { formatAsTyped, formatQuantity } from '../../quantity/format.ts';
import type { MessageRef } from '../../quantity/message.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import type { ReadingAsked } from '../../visit/step.ts';
import { runWords } from '../../words/en/run-page.ts';
import { zoneName } from '../../words/en/zones.ts';
import { bandBar, unitOf } from './band.ts';
import { freshId, make, ours } from './dom.ts';
import { fetchLater } from './fetch-later.ts';

const words = runWords.meter;

/** A field of a step that a reading is typed in. */
export interface ReadingField {
  id: string;
  element: HTMLElement;
  /** Shows what is wrong with it; nothing takes the message away. */
  showProblem(message: string): void;
  focus(): void;
  /** The id to link to in an error summary. */
  inputId: string;
}

/** What is said of a text while it is typed, and where its value lands on the bar. */
interface Echo {
  says: string;
  value?: { value: number; u: number };
  /** Not understood: the words for why are in the later part of the run. */
  problem?: MessageRef;
}

/** What was understood of a typed text; nothing for an empty one. */
export function echo(text: string, asked: ReadingAsked, sheet: SiteSheet): Echo {
  if (text.trim() === '') return { says: '' };
  const read = understand(text, asked.reading, asked.kind, sheet);
  if (!read.ok) return { says: '', problem: read.problem };
  const { reading } = read;
  const judged = asked.scale && judgeOn(reading, asked.scale);
  const zone = !judged
    ? ''
    : judged.between
      ? words.between(zoneName(judged.between[0]), zoneName(judged.between[1]))
      : words.isZone(zoneName(judged.outcome));
  const assumed = reading.meter.assumed && asked.reading.mode !== 'display' ? ` ${words.assumed}` : '';
  if (reading.value === 'overRange') return { says: `${words.overRange}${zone}.${assumed}` };
  const value = formatAsTyped(reading.value, reading.resolution, reading.unit, asked.kind);
  const u = formatQuantity(reading.uncertaintyU, uncertaintyKind(asked.kind), {
    system: sheet.units,
    digits: 2,
  });
  return {
    says: `${words.readAs(value, u)}${zone}.${assumed}`,
    value: { value: reading.value, u: reading.uncertaintyU },
  };
}

/** Shows what was understood; why a text was not is fetched when first wanted. */
export function showEcho(place: HTMLElement, { says, problem }: Echo): void {
  place.textContent = says;
  if (!problem) return;
  void fetchLater().then(({ sayRun }) => {
    if (place.textContent === '') place.textContent = sayRun(problem);
  });
}

/** An uncertainty of a temperature is a difference: 1 °C of it is 1.8 °F, and not 33.8. */
export const uncertaintyKind = (kind: ReadingAsked['kind']): ReadingAsked['kind'] =>
  kind === 'temperature' ? 'temperatureDifference' : kind;

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
    showEcho(said, heard);
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
