import { proveAgainAt, undoable } from '../../visit/returning.ts';
import type { StepView } from '../../visit/step.ts';
import { sayRun } from '../../words/en/run.ts';
import { runWords } from '../../words/en/run-page.ts';
import { states } from '../../words/en/states.ts';
import { button, make, ours } from './dom.ts';
import type { Host } from './host.ts';

/** Why the present step is barred, and what opens it. */
export function barPanel(host: Host, view: StepView): HTMLElement | undefined {
  if (!view.barred) return undefined;
  const { know, state } = host;
  const needs = view.node.step.state ?? 'any';
  const again = proveAgainAt(know, state);
  const undo = undoable(state);
  return ours(
    make(
      'div',
      { className: 'notice-line run-bar', tabIndex: -1, attrs: { role: 'group' } },
      make('h4', { textContent: runWords.barred.title }),
      make('p', {
        textContent: [
          sayRun({ id: `run.bar.${view.barred}` }),
          view.barred === 'state' ? runWords.barred.needs(states[needs]?.label ?? needs) : '',
          runWords.barred.out,
        ].join(' '),
      }),
      make(
        'div',
        { className: 'btn-row' },
        again &&
          button(
            runWords.ways.proveAgain,
            'btn',
            () => void host.give({ type: 'correct', toSeq: again.seq }),
          ),
        undo &&
          button(
            runWords.ways.undo(host.titleOf(undo.block)),
            'btn btn-quiet',
            () => void host.give({ type: 'undoAct' }),
          ),
      ),
    ),
  );
}
