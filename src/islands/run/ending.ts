import { href } from '../../components/href.ts';
import { endingOf } from '../../visit/ending.ts';
import type { StepView } from '../../visit/step.ts';
import { runLater } from '../../words/en/run-later.ts';
import { steps as stepWords } from '../../words/en/steps.ts';
import { button, make, ours } from './dom.ts';
import { itemBoxes } from './hold.ts';
import type { BuildControls } from './host.ts';
import { plantList } from './plant-now.ts';
import type { Stage } from './stage.ts';
import { groundsList, ruledOutList, ruledOutShown } from './verdict.ts';

const words = runLater.end;

/** The end of a run: how the plant is left, what was found and ruled out, what is confirmed, and closing the visit. */
export const ending =
  (stage: Stage): BuildControls =>
  (host, plate, view) => {
    const { step } = view.node;
    if (step.kind !== 'end') return { elements: [] };
    const { state } = host;
    const { leaves } = endingOf(state, step, view.items);
    const boxes = itemBoxes(host, plate, view);
    const summary = ours(
      make(
        'div',
        { className: 'run-summary' },
        make('p', { className: 'plate-label', textContent: words.left }),
        make('p', { textContent: leaves ? (stepWords.leaves[leaves] ?? leaves) : words.notAsEnd }),
        plantList(state),
        groundsList(host, stage),
        ruledOutList(host, stage),
      ),
    );
    const close = button(words.close, 'btn btn-primary', async () => {
      // A list that cannot be had keeps nobody from closing the visit.
      const against = await ruledOutShown(host, stage).catch(() => []);
      await host.give({ type: 'close', ruledOut: against });
    });
    const record = href(`visits/record/?visit=${state.visit}`);
    const after = state.closed
      ? make(
          'div',
          { className: 'btn-row' },
          make('p', { textContent: words.closed }),
          make('a', { className: 'btn btn-primary', href: record, textContent: words.print }),
          make('a', { className: 'btn', href: href(''), textContent: words.front }),
          make('a', { className: 'btn', href: location.pathname, textContent: words.again }),
        )
      : make('div', { className: 'run-go' }, close);
    const update = (now: StepView) => {
      boxes.update(now);
      close.setAttribute('aria-disabled', String(now.items.some((item) => !item.met) || !leaves));
    };
    update(view);
    return {
      elements: [summary, ours(after)],
      update,
      showProblems: (problems, say) =>
        problems.map(({ field, message }) =>
          field === undefined
            ? { text: say(message), go: () => plate.heading.focus() }
            : boxes.problemOf(field, say(message)),
        ),
    };
  };
