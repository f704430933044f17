import type { InputProblem } from '../../visit/input.ts';
import { sayRun } from '../../words/en/run.ts';
import { runLater } from '../../words/en/run-later.ts';
import { button, make, ours } from './dom.ts';
import type { Controls } from './host.ts';
import type { Plate } from './plate.ts';

interface Line {
  text: string;
  go?: (() => void) | undefined;
}

/** The list of what is wrong, over the step, each line leading to its field; it takes the focus. */
export function showProblems(
  plate: Plate,
  controls: Controls | undefined,
  problems: readonly InputProblem[],
): void {
  const own = controls?.showProblems?.(problems, sayRun) ?? [];
  const lines: readonly Line[] =
    own.length > 0 ? own : problems.map(({ message }) => ({ text: sayRun(message) }));
  const items = lines.map(({ text, go }) => make('li', {}, go ? button(text, 'btn btn-quiet', go) : text));
  const box = ours(
    make(
      'div',
      { className: 'error-summary', tabIndex: -1, attrs: { role: 'alert' } },
      make('h4', { textContent: runLater.errors(lines.length) }),
      make('ul', {}, ...items),
    ),
  );
  plate.heading.after(box);
  box.scrollIntoView({ block: 'start' });
  box.focus({ preventScroll: true });
}
