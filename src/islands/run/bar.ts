import { proveAgainAt, undoable } from '../../visit/returning.ts';
import type { StepView } from '../../visit/step.ts';
import { sayRun } from '../../words/en/run.ts';
import { runLater } from '../../words/en/run-later.ts';
import { states } from '../../words/en/states.ts';
import { button, make, ours } from './dom.ts';
import type { Host } from './host.ts';

/** Why the present step is barred, and what opens it. */
export function barPanel(host: Host, view: StepView): HTMLElement {
  const { know, state } = host;
  const needs = view.node.step.state ?? 'any';
  const again = proveAgainAt(know, state);
  const undo = undoable(state);
  return ours(
    make(
      'div',
      { className: 'notice-line run-bar', tabIndex: -1, attrs: { role: 'group' } },
      make('h4', { textContent: runLater.barred.title }),
      make('p', {
        textContent: [
          sayRun({ id: `run.bar.${view.barred}` }),
          view.barred === 'state' ? runLater.barred.needs(states[needs]?.label ?? needs) : '',
          runLater.barred.out,
        ].join(' '),
      }),
      make(
        'div',
        { className: 'btn-row' },
        again &&
          button(
            runLater.ways.proveAgain,
            'btn',
            () => void host.give({ type: 'correct', toSeq: again.seq }),
          ),
        undo &&
          button(
            runLater.ways.undo(host.titleOf(undo.block)),
            'btn btn-quiet',
            () => void host.give({ type: 'undoAct' }),
          ),
      ),
    ),
  );
}
