import { href } from '../../components/href.ts';
import type { WorksheetUse } from '../../expected/context.ts';
import type { UnitSystem } from '../../quantity/kinds.ts';
import { runStep } from '../../words/en/run-step.ts';
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
  const box = make(
    'div',
    { className: 'plate-expect' },
    make('p', { className: 'plate-label', textContent: runStep.work.title }),
    ...says,
    make('p', {}, make('b', { textContent: plate.outcomeLabel(shown.outcome) })),
    plate.outcomeNote(shown.outcome),
    shown.use && make('p', {}, linkTo(shown.use, host.state.sheet.units)),
  );
  const go = button(runStep.work.goOn, 'btn btn-primary', () => void host.give({ type: 'goOn' }));
  return { elements: [ours(box), ours(make('div', { className: 'run-go' }, go))] };
};

/**
 * To the worksheet on these very numbers. They are put into the address when the link is reached for: the worksheet's own
 * form, which that takes, is more than a step should wait for.
 */
function linkTo(use: WorksheetUse, units: UnitSystem): HTMLElement {
  const address = href(`worksheets/${use.worksheet}/`);
  const link = make('a', { href: address, textContent: runStep.work.open });
  let filling: Promise<void> | undefined;
  let filled = false;
  const fill = (): Promise<void> => {
    filling ??= import('../worksheet/address.ts')
      .then(({ worksheetQuery }) => worksheetQuery(use, units))
      .then((query) => {
        link.href = `${address}?${query}`;
        filled = true;
      });
    return filling;
  };
  for (const reached of ['pointerenter', 'focus']) link.addEventListener(reached, () => void fill());
  link.addEventListener('click', (event) => {
    if (filled) return;
    event.preventDefault();
    const go = () => location.assign(link.href);
    void fill().then(go, go);
  });
  return link;
}
