import { button, make, ours } from './dom.ts';
import type { BuildControls } from './host.ts';

/** Buttons for the answers that the person chooses from; a step with one answer has one large button. */
export const choices: BuildControls = (host, plate, view) => {
  const { options } = view;
  const give = (outcome: string) => void host.give({ type: 'choice', outcome });
  const [only] = options;
  if (only !== undefined && options.length === 1 && !plate.outcomeNote(only)) {
    const press = button(plate.outcomeLabel(only), 'btn btn-primary', () => give(only));
    return { elements: [ours(make('div', { className: 'run-go' }, press))] };
  }
  const list = make(
    'ul',
    { className: 'choice' },
    ...options.map((outcome) =>
      make(
        'li',
        {},
        button(plate.outcomeLabel(outcome), '', () => give(outcome)),
        plate.outcomeNote(outcome),
      ),
    ),
  );
  return { elements: [ours(list)] };
};
