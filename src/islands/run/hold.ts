import type { StepView } from '../../visit/step.ts';
import { runStep } from '../../words/en/run-step.ts';
import { button, freshId, make, ours } from './dom.ts';
import type { BuildControls, Host } from './host.ts';
import type { Plate } from './plate.ts';

const words = runStep.hold;

/** Puts a box to tick on each item of the plate, or what meets it, and keeps them true to the run. */
export function itemBoxes(host: Host, plate: Plate, view: StepView) {
  const boxes = new Map<string, HTMLInputElement>();
  const shown = new Map<string, HTMLElement>();
  /** Items whose tick is still being written: their boxes are ahead of the log. */
  const writing = new Set<string>();
  for (const { id, by } of view.items) {
    const item = plate.item(id);
    if (!item) continue;
    const text = item.querySelector<HTMLElement>('div');
    const textId = freshId('item');
    if (text) text.id ||= textId;
    if (by === 'reading') {
      const state = ours(make('p', { className: 'small' }));
      shown.set(id, state);
      item.append(state);
      continue;
    }
    const box = make('input', { type: 'checkbox', attrs: { 'aria-describedby': text?.id ?? '' } });
    box.addEventListener('change', () => {
      const met = box.checked;
      writing.add(id);
      void host.give({ type: 'confirm', item: id, met }).then((taken) => {
        writing.delete(id);
        if (!taken) box.checked = !met;
      });
    });
    boxes.set(id, box);
    item.append(ours(make('label', { className: 'tick' }, box, words.met)));
  }
  const update = ({ items }: StepView) => {
    for (const { id, met } of items) {
      plate.item(id)?.setAttribute('data-met', String(met));
      const box = boxes.get(id);
      if (box && !writing.has(id)) box.checked = met;
      const state = shown.get(id);
      if (state) state.textContent = met ? words.byReading : words.unmet;
    }
  };
  update(view);
  return {
    update,
    problemOf(id: string | undefined, message: string) {
      const box = id === undefined ? undefined : boxes.get(id);
      return {
        text: id === undefined ? message : `${plate.itemText(id)} ${message}`,
        go: () => {
          (box ?? plate.heading).focus();
        },
      };
    },
  };
}

/** A hold point: every item with its own box, and on only when all are met. */
export const hold: BuildControls = (host, plate, view) => {
  const boxes = itemBoxes(host, plate, view);
  const go = button(words.goOn, 'btn btn-primary', () => void host.give({ type: 'goOn' }));
  const update = (now: StepView) => {
    boxes.update(now);
    go.setAttribute('aria-disabled', String(now.items.some((item) => !item.met)));
  };
  update(view);
  return {
    elements: [ours(make('div', { className: 'run-go' }, go))],
    update,
    showProblems: (problems, say) =>
      problems.map(({ field, message }) => boxes.problemOf(field, say(message))),
  };
};
