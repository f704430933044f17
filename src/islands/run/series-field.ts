import type { SiteSheet } from '../../site/sheet.ts';
import type { ReadingAsked } from '../../visit/step.ts';
import { sayRun } from '../../words/en/run.ts';
import { runStep } from '../../words/en/run-step.ts';
import { unitOf } from './band.ts';
import { button, freshId, make, ours } from './dom.ts';
import { echo } from './echo.ts';
import type { ReadingField } from './host.ts';

const words = runStep.series;

/** What a series field keeps over a reload: its rows, and when its clock was started. */
export interface SeriesDraft {
  rows: [string, string][];
  startedMs?: number;
}

const secondsSince = (startedMs: number) => ((Date.now() - startedMs) / 1000).toFixed(1);

/** A field for time-stamped values: a clock to stamp them with, and rows that can be typed and mended. */
export function seriesField(
  asked: ReadingAsked,
  sheet: SiteSheet,
  draft: SeriesDraft,
  label: string,
  onType: (draft: SeriesDraft) => void,
): ReadingField {
  const inputId = freshId('series');
  const least = asked.reading.series ?? 1;
  const unit = unitOf(asked.kind, sheet.units);
  let { startedMs } = draft;
  const error = make('p', { id: `${inputId}-error`, className: 'field-error' });
  const body = make('tbody');
  const clock = make('output', { className: 'series-clock' });
  const said = make('p', { className: 'meter-echo', attrs: { 'aria-live': 'polite' } });

  const rows = (): [string, string][] =>
    [...body.rows].map((row) => {
      const [time, value] = row.querySelectorAll('input');
      return [time?.value ?? '', value?.value ?? ''];
    });
  const keep = () => onType({ rows: rows(), ...(startedMs === undefined ? {} : { startedMs }) });
  const cell = (row: number, what: string, value: string, id?: string) => {
    const input = make('input', {
      type: 'text',
      inputMode: 'decimal',
      autocomplete: 'off',
      value,
      attrs: {
        'aria-label': words.row(row, what),
        'aria-describedby': `${inputId}-error`,
        'data-number': '',
      },
    });
    if (id) input.id = id;
    input.addEventListener('input', keep);
    return input;
  };
  const addRow = (time: string, value: string) => {
    const number = body.rows.length + 1;
    const shown = cell(number, words.value(unit), value);
    shown.addEventListener('input', () => {
      const { says, problem } = echo(shown.value, asked, sheet);
      said.textContent = problem ? sayRun(problem) : says;
    });
    const at = cell(number, words.time, time, number === 1 ? inputId : undefined);
    body.append(make('tr', {}, make('td', {}, at), make('td', {}, shown)));
    return shown;
  };
  for (const [time, value] of draft.rows) addRow(time, value);
  while (body.rows.length < least) addRow('', '');

  const start = button(startedMs === undefined ? words.start : words.restart, 'btn', () => {
    startedMs = Date.now();
    start.textContent = words.restart;
    keep();
  });
  const take = button(words.take, 'btn', () => {
    startedMs ??= Date.now();
    start.textContent = words.restart;
    const free = [...body.rows].find((row) => row.querySelector('input')?.value === '');
    const stamp = secondsSince(startedMs);
    const shown = free?.querySelectorAll('input')[1] ?? addRow(stamp, '');
    const [time] = free?.querySelectorAll('input') ?? [];
    if (time) time.value = stamp;
    keep();
    shown.focus();
  });
  const tick = setInterval(() => {
    if (!element.isConnected) return clearInterval(tick);
    if (startedMs !== undefined) clock.textContent = words.running(secondsSince(startedMs));
  }, 200);

  const element = ours(
    make(
      'fieldset',
      { className: 'field series-field' },
      make('legend', { textContent: label }),
      make('p', { className: 'field-hint', textContent: words.hint(least) }),
      error,
      make('div', { className: 'btn-row' }, start, take, clock),
      make(
        'table',
        {},
        make(
          'thead',
          {},
          make(
            'tr',
            {},
            make('th', { scope: 'col', textContent: words.time }),
            make('th', { scope: 'col', textContent: words.value(unit) }),
          ),
        ),
        body,
      ),
      said,
      button(words.add, 'btn btn-quiet', () => {
        addRow('', '').closest('tr')?.querySelector('input')?.focus();
        keep();
      }),
    ),
  );
  return {
    id: asked.id,
    element,
    inputId,
    showProblem(message) {
      error.textContent = message;
      element.toggleAttribute('data-error', message !== '');
    },
    focus() {
      element.scrollIntoView({ block: 'start' });
      body.querySelector('input')?.focus({ preventScroll: true });
    },
  };
}
