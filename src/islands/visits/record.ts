import { attemptsIn } from '../../visit/attempts.ts';
import type { Entry } from '../../visit/entries.ts';
import { longestNote } from '../../visit/log-limits.ts';
import { readableLog } from '../../visit/readable.ts';
import { readVisit, VisitLog } from '../../visit/store.ts';
import { exportVisits } from '../../visit/visit-file.ts';
import { sayRun } from '../../words/en/run.ts';
import { runWords } from '../../words/en/run-page.ts';
import { steps } from '../../words/en/steps.ts';
import { triedText } from '../../words/en/tried.ts';
import { visitWords as words } from '../../words/en/visit.ts';
import { button, freshId, make } from '../run/dom.ts';
import { fileName, saveFile } from '../site/file.ts';
import { clockText, sayVisit, whenText } from './say.ts';

/** The whole record of one visit, to read, print and export, and to add a note to. */
class FwVisitRecord extends HTMLElement {
  #entries: readonly Entry[] = [];
  readonly #status = make('p', { attrs: { role: 'status' } });

  async connectedCallback(): Promise<void> {
    const visit = new URL(location.href).searchParams.get('visit') ?? '';
    try {
      this.#entries = await readVisit(visit);
    } catch {
      this.replaceChildren(make('p', { className: 'notice-line', textContent: words.blocked }));
      return;
    }
    if (this.#entries.length === 0) {
      this.replaceChildren(make('p', { className: 'notice-line', textContent: words.noSuch }));
      return;
    }
    this.#show();
  }

  #show(): void {
    const begin = this.#entries[0];
    if (begin?.kind !== 'begin') return;
    const closed = this.#entries.findLast((entry) => entry.kind === 'closed');
    const row = (term: string, text: string) =>
      make('div', {}, make('dt', { textContent: term }), make('dd', { textContent: text }));
    const facts = make(
      'dl',
      { className: 'gear' },
      row(words.guide, begin.guideTitle ?? begin.guide),
      row(words.site, begin.sheet.name),
      begin.subject !== undefined && row(words.string, begin.subject),
      row(words.begun, whenText(begin.at)),
      ...attemptsIn(this.#entries).map(({ title, result }) =>
        row(words.found, triedText(title, result, closed?.result)),
      ),
      row(words.changed, whenText(this.#entries.at(-1)!.at)),
      row(
        words.result,
        closed
          ? `${steps.results[closed.result] ?? closed.result} ${steps.leaves[closed.leaves] ?? ''}`
          : words.stillOpen,
      ),
    );
    this.replaceChildren(
      facts,
      make(
        'div',
        { className: 'btn-row no-print' },
        button(words.print, 'btn', () => print()),
        button(words.exportOne, 'btn', () =>
          saveFile(fileName(`visit ${begin.sheet.name}`, new Date()), exportVisits([this.#entries])),
        ),
      ),
      this.#status,
      make('ol', { className: 'log-list' }, ...readableLog(this.#entries).map(lineItem)),
      this.#noteForm(),
    );
  }

  #noteForm(): HTMLElement {
    const id = freshId('note');
    const text = make('textarea', { id, attrs: { 'aria-describedby': `${id}-error` } });
    const error = make('p', { id: `${id}-error`, className: 'field-error' });
    const save = button(words.noteSave, 'btn', () => void this.#keep(text, error));
    const label = make('label', { htmlFor: id, textContent: words.noteLabel });
    return make('div', { className: 'field no-print' }, label, error, text, save);
  }

  async #keep(text: HTMLTextAreaElement, error: HTMLElement): Promise<void> {
    const note = text.value.trim();
    const problem = note === '' ? 'emptyNote' : note.length > longestNote ? 'longNote' : undefined;
    if (problem) {
      error.textContent = sayRun({ id: `run.problem.${problem}`, params: { longest: longestNote } });
      text.focus();
      return;
    }
    const last = this.#entries.at(-1)!;
    const at = new Date(Math.max(Date.now(), Date.parse(last.at))).toISOString();
    const log = new VisitLog(this.#entries, () => {});
    const entry: Entry = { kind: 'note', visit: last.visit, seq: last.seq + 1, at, text: note };
    const written = await log.append([entry]);
    if (!written.ok) {
      error.textContent = written.why === 'otherTab' ? runWords.followed : words.notKept;
      if (written.why === 'otherTab') this.#entries = await readVisit(last.visit);
      return;
    }
    this.#entries = log.entries;
    this.#show();
    this.#status.textContent = words.noteKept;
  }
}

function lineItem(line: ReturnType<typeof readableLog>[number]): HTMLElement {
  const details = line.details.map((each) => make('p', { className: 'small', textContent: sayVisit(each) }));
  const text = make('p', { className: line.isVoid ? 'is-void' : '', textContent: sayVisit(line.message) });
  const time = make('time', { dateTime: line.at, textContent: clockText(line.at), title: whenText(line.at) });
  return make(
    'li',
    {},
    time,
    make(
      'div',
      {},
      text,
      ...details,
      line.isVoid && make('p', { className: 'small', textContent: words.takenBack }),
    ),
  );
}

customElements.define('fw-visit-record', FwVisitRecord);
