import { href } from '../../components/href.ts';
import { sayRun } from '../../words/en/run.ts';
import { runWords } from '../../words/en/run-page.ts';
import { fileName, saveFile } from '../site/file.ts';
import { button, freshId, make, ours } from './dom.ts';
import type { Host } from './host.ts';
import { plantList } from './plant-now.ts';
import { WakeLock } from './wake-lock.ts';

const words = runWords.menu;

/** What can be done with the visit beside answering: leave it, note something, export it, keep the screen on. */
export class VisitMenu {
  readonly element: HTMLElement;
  readonly #plant = make('div');
  readonly #host: Host;
  readonly #exportText: () => string;

  constructor(host: Host, exportText: () => string) {
    this.#host = host;
    this.#exportText = exportText;
    this.element = ours(
      make(
        'div',
        { className: 'run-foot' },
        this.#wakeSwitch(),
        make(
          'details',
          { className: 'run-menu' },
          make('summary', { textContent: words.title }),
          make('h4', { textContent: words.plant }),
          this.#plant,
          button(words.away, 'btn', () => void host.give({ type: 'away' })),
          make('p', { className: 'field-hint', textContent: words.awayNote }),
          this.#noteForm(),
          make(
            'div',
            { className: 'btn-row' },
            make('a', {
              className: 'btn',
              href: href(`visits/record/?visit=${host.state.visit}`),
              textContent: words.record,
            }),
            button(words.exportVisit, 'btn', () => this.exportVisit()),
            make('a', { className: 'btn', href: href(''), textContent: words.leave }),
          ),
          make('p', { className: 'field-hint', textContent: words.leaveNote }),
        ),
      ),
    );
    this.update();
  }

  exportVisit(): void {
    saveFile(fileName(`visit ${this.#host.state.sheet.name}`, new Date()), this.#exportText());
  }

  update(): void {
    this.#plant.replaceChildren(plantList(this.#host.state));
  }

  #wakeSwitch(): HTMLElement | false {
    if (!WakeLock.possible) return false;
    const box = make('input', { type: 'checkbox', attrs: { role: 'switch' } });
    const lock = new WakeLock((held) => {
      box.checked = held || (lock.wanted && document.visibilityState === 'hidden');
    });
    box.addEventListener('change', () => {
      void lock.want(box.checked).then(() => {
        if (lock.wanted && !box.checked) this.#host.announce(words.wakeFailed);
      });
    });
    void lock.want(true);
    return make('label', { className: 'tick' }, box, words.wake);
  }

  #noteForm(): HTMLElement {
    const id = freshId('note');
    const text = make('textarea', { id, attrs: { 'aria-describedby': `${id}-error` } });
    const error = make('p', { id: `${id}-error`, className: 'field-error' });
    const save = button(words.noteSave, 'btn', () => {
      const value = text.value;
      if (value.trim() === '') {
        error.textContent = sayRun({ id: 'run.problem.emptyNote' });
        text.focus();
        return;
      }
      void this.#host.give({ type: 'note', text: value }).then((kept) => {
        error.textContent = kept ? '' : sayRun({ id: 'run.problem.longNote', params: { longest: 2000 } });
        if (!kept) return;
        text.value = '';
        this.#host.announce(words.noteKept);
      });
    });
    return make(
      'div',
      { className: 'field' },
      make('label', { htmlFor: id, textContent: words.note }),
      error,
      text,
      save,
    );
  }
}
