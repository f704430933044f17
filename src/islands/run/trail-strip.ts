import { undoable, wayBack } from '../../visit/returning.ts';
import { runWords } from '../../words/en/run-page.ts';
import { button, make } from './dom.ts';
import type { Host } from './host.ts';

/** The steps taken, as terminals on one conductor: each opens for reading, and from there for correcting where that is open. */
export function trailStrip(host: Host, open: (index: number) => void): HTMLElement {
  const { know, state } = host;
  const undo = undoable(state)?.seq;
  const items = state.trail.map((step, index) => {
    const way = wayBack(know, state, index);
    const barred = !way.open && way.why === 'barred' && step.seq !== undo;
    const press = button(step.asked?.title ?? host.titleOf(step.block), '', () => open(index));
    return make('li', { attrs: { 'data-state': barred ? 'barred' : 'done' } }, press);
  });
  const node = know.compiled.flat.nodes.get(state.position.path);
  const here = make('span', {
    textContent: host.titleOf(node?.block ?? ''),
    attrs: { 'aria-current': 'step' },
  });
  items.push(make('li', { attrs: { 'data-state': 'now' } }, here));
  return make('ol', { className: 'trail', attrs: { 'aria-label': runWords.trail } }, ...items);
}
