import { plantNow } from '../../visit/ending.ts';
import type { RunState } from '../../visit/fold.ts';
import { deviceNames } from '../../words/en/devices.ts';
import { runLater } from '../../words/en/run-later.ts';
import { make } from './dom.ts';

const words = runLater.menu;

/** How the plant stands, as far as the run was told: what is open, what is locked, what is live. */
export function plantList(state: RunState): HTMLElement {
  const now = plantNow(state);
  const names = (list: readonly string[]) =>
    list.length === 0 ? words.none : list.map((device) => deviceNames[device] ?? device).join('; ');
  const row = (term: string, text: string) => make('p', {}, make('b', { textContent: `${term}: ` }), text);
  return make(
    'div',
    { className: 'plant-now' },
    row(words.heldOpen, names(now.heldOpen)),
    now.openNotHeld.length > 0 && row(words.openNotHeld, names(now.openNotHeld)),
    row(words.closed, names(now.closed)),
    make('p', { textContent: now.inverterOn ? words.inverterOn : words.inverterOff }),
    now.resistorOn && make('p', { textContent: words.resistorOn }),
    now.danger && make('p', { textContent: words.danger }),
  );
}
