import { href } from '../../components/href.ts';
import { runLater } from '../../words/en/run-later.ts';
import { button, make, ours } from './dom.ts';
import type { BuildControls } from './host.ts';
import { sayExpected } from './say-expected.ts';

/** What a worksheet makes of this site's numbers, and on by it. */
export const work: BuildControls = (host, plate, { work: shown }) => {
  if (!shown) return { elements: [] };
  const says = shown.says.map((each) => {
    const line = make('p');
    void sayExpected(each, host.state.sheet.units).then((text) => {
      line.textContent = text;
    });
    return line;
  });
  const link = make('a', {
    href: href(`worksheets/${shown.worksheet}/`),
    textContent: runLater.work.open,
  });
  const box = make(
    'div',
    { className: 'plate-expect' },
    make('p', { className: 'plate-label', textContent: runLater.work.title }),
    ...says,
    make('p', {}, make('b', { textContent: plate.outcomeLabel(shown.outcome) })),
    plate.outcomeNote(shown.outcome),
    make('p', {}, link),
  );
  const go = button(runLater.work.goOn, 'btn btn-primary', () => void host.give({ type: 'goOn' }));
  return { elements: [ours(box), ours(make('div', { className: 'run-go' }, go))] };
};
