import { undoable, wayBack } from '../../visit/returning.ts';
import { runWords } from '../../words/en/run-page.ts';
import { button, make } from './dom.ts';
import type { Host } from './host.ts';

/**
 * The steps taken, as terminals on one conductor: each opens for reading, and from there for correcting where that is
 * open. A terminal once made is kept from answer to answer.
 */
export class TrailStrip {
  readonly element = make('ol', { className: 'trail', attrs: { 'aria-label': runWords.trail } });
  readonly #host: Host;
  readonly #open: (index: number) => void;
  readonly #made = new Map<number, HTMLLIElement>();

  constructor(host: Host, open: (index: number) => void) {
    this.#host = host;
    this.#open = open;
  }

  /** @param stale places in the log of answers judged on the old sheet */
  update(stale: ReadonlySet<number>): void {
    const { know, state } = this.#host;
    const undo = undoable(state)?.seq;
    const items = state.trail.map((step, index) => {
      const item = this.#terminal(step.seq, step.asked?.title ?? this.#host.titleOf(step.block));
      const way = wayBack(know, state, index);
      const barred = !way.open && way.why === 'barred' && step.seq !== undo;
      item.dataset.state = barred ? 'barred' : 'done';
      item.toggleAttribute('data-stale', stale.has(step.seq));
      return item;
    });
    const block = know.compiled.flat.nodes.get(state.position.path)?.block ?? '';
    const here = make('span', { textContent: this.#host.titleOf(block), attrs: { 'aria-current': 'step' } });
    this.element.replaceChildren(...items, make('li', { attrs: { 'data-state': 'now' } }, here));
  }

  #terminal(seq: number, title: string): HTMLLIElement {
    let item = this.#made.get(seq);
    if (!item) {
      const open = () => this.#open(this.#host.state.trail.findIndex((step) => step.seq === seq));
      item = make('li', {}, button(title, '', open));
      this.#made.set(seq, item);
    }
    return item;
  }
}
