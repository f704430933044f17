import { href } from '../../components/href.ts';
import type { Entry } from '../../visit/entries.ts';
import { longestNote } from '../../visit/log-limits.ts';
import { exportVisits } from '../../visit/visit-file.ts';
import { sayRun } from '../../words/en/run.ts';
import { runLater } from '../../words/en/run-later.ts';
import { fileName, saveFile } from '../site/file.ts';
import { button, freshId, make } from './dom.ts';
import type { Host } from './host.ts';
import { plantList } from './plant-now.ts';

const words = runLater.menu;

/** Hands the visit to the person as a file. */
export function exportVisit(site: string, entries: readonly Entry[]): void {
  saveFile(fileName(`visit ${site}`, new Date()), exportVisits([entries]));
}

/** What can be done with the visit beside answering: leave it, note something, export it. Made when it is opened. */
export function visitMenu(host: Host, entries: () => readonly Entry[]): HTMLElement {
  return make(
    'div',
    {},
    make('h4', { textContent: words.plant }),
    plantList(host.state),
    button(words.away, 'btn', () => void host.give({ type: 'away' })),
    make('p', { className: 'field-hint', textContent: words.awayNote }),
    noteForm(host),
    make(
      'div',
      { className: 'btn-row' },
      make('a', {
        className: 'btn',
        href: href(`visits/record/?visit=${host.state.visit}`),
        textContent: words.record,
      }),
      button(words.exportVisit, 'btn', () => exportVisit(host.state.sheet.name, entries())),
      make('a', { className: 'btn', href: href(''), textContent: words.leave }),
    ),
    make('p', { className: 'field-hint', textContent: words.leaveNote }),
  );
}

function noteForm(host: Host): HTMLElement {
  const id = freshId('note');
  const text = make('textarea', { id, attrs: { 'aria-describedby': `${id}-error` } });
  const error = make('p', { id: `${id}-error`, className: 'field-error' });
  const complain = (what: string) => {
    error.textContent = sayRun({ id: `run.problem.${what}`, params: { longest: longestNote } });
    text.focus();
  };
  const save = button(words.noteSave, 'btn', () => {
    const note = text.value.trim();
    if (note === '') return complain('emptyNote');
    if (note.length > longestNote) return complain('longNote');
    error.textContent = '';
    void host.give({ type: 'note', text: note }).then((kept) => {
      if (!kept) return;
      text.value = '';
      host.announce(words.noteKept);
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
