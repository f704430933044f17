import { runWords } from '../../words/en/run-page.ts';
import { button, make, ours } from './dom.ts';
import type { Host } from './host.ts';
import type { Plate } from './plate.ts';

/** "I can't do this", "Not sure" and "Stop": on every step before an end, whatever else is open. */
export function waysOut(host: Host, plate: Plate): HTMLElement {
  const ways = (['cant', 'unsure', 'stop'] as const).map((type) =>
    make(
      'div',
      { className: 'way-out' },
      button(
        plate.outcomeLabel(type),
        type === 'stop' ? 'btn way-stop' : 'btn',
        () => void host.give({ type }),
      ),
      plate.outcomeNote(type),
    ),
  );
  return ours(
    make(
      'div',
      { className: 'run-ways' },
      make('p', { className: 'plate-label', textContent: runWords.waysTitle }),
      make('div', { className: 'btn-row' }, ...ways),
    ),
  );
}
