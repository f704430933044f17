import { href } from '../../components/href.ts';
import { runWords } from '../../words/en/run-page.ts';
import { button, make, ours } from './dom.ts';
import type { BuildControls } from './host.ts';
import { sayExpected } from './say-expected.ts';

/** What a worksheet makes of this site's numbers, and on by it. */
export const work: BuildControls = (host, plate, { work: shown }) => {
  if (!shown) return { elements: [] };
  const says = shown.says.map((each) =>
    make('p', { textContent: sayExpected(each, host.state.sheet.units) }),
  );
  const link = make('a', {
    href: href(`worksheets/${shown.worksheet}/`),
    textContent: runWords.work.open,
  });
  const box = make(
    'div',
    { className: 'plate-expect' },
    make('p', { className: 'plate-label', textContent: runWords.work.title }),
    ...says,
    make('p', {}, make('b', { textContent: plate.outcomeLabel(shown.outcome) })),
    plate.outcomeNote(shown.outcome),
    make('p', {}, link),
  );
  const go = button(runWords.work.goOn, 'btn btn-primary', () => void host.give({ type: 'goOn' }));
  return { elements: [ours(box), ours(make('div', { className: 'run-go' }, go))] };
};
