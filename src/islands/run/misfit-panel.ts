import { runLater } from '../../words/en/run-later.ts';
import { button, make, ours } from './dom.ts';
import type { Host } from './host.ts';

const words = runLater.misfit;

/** The guide has changed since the visit began: says so, and goes on only when told to. */
export const misfitPanel = (host: Host): HTMLElement =>
  ours(
    make(
      'div',
      { className: 'notice-line' },
      make('h4', { textContent: words.title }),
      make('p', { textContent: words.text }),
      button(words.goOn, 'btn btn-primary', () => void host.give({ type: 'changed' })),
    ),
  );
