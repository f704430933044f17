import { type Effect, isAct } from '../../safety/effects.ts';
import { reversalOf, undoable, wayBack } from '../../visit/returning.ts';
import { deedText } from '../../words/en/deeds.ts';
import { sayRun } from '../../words/en/run.ts';
import { runLater } from '../../words/en/run-later.ts';
import { states } from '../../words/en/states.ts';
import { button, make, ours } from './dom.ts';
import type { Host } from './host.ts';
import { readingLine } from './last-answer.ts';
import type { Plate } from './plate.ts';

const words = runLater.reading;

const deedList = (title: string, acts: readonly Effect[]) =>
  acts.length > 0 &&
  make(
    'div',
    {},
    make('p', { textContent: title }),
    make('ul', {}, ...acts.map((act) => make('li', { textContent: deedText(act) }))),
  );

/**
 * Over a step that is open for reading: what was answered there, and what may be done about it. Reading never moves the
 * run.
 * @param index the answer's place on the trail; -1 for a step that was not come to
 */
export function readingPanel(host: Host, plate: Plate, index: number, goBack: () => void): HTMLElement {
  const { know, state } = host;
  const step = state.trail[index];
  const back = button(words.back, 'btn btn-primary', goBack);
  if (!step)
    return ours(
      make('div', { className: 'notice-line run-reading' }, make('p', { textContent: words.title }), back),
    );
  const way = wayBack(know, state, index);
  const undo = undoable(state);
  const isDeed = step.does.some(isAct);
  const actions: (HTMLElement | false)[] = [];
  if (way.open) {
    actions.push(deedList(words.stays, way.since));
    actions.push(button(words.correct, 'btn', () => void host.give({ type: 'correct', toSeq: step.seq })));
  } else if (way.why === 'barred') {
    const needs =
      way.bar === 'state' ? ` ${runLater.barred.needs(states[way.needs]?.label ?? way.needs)}` : '';
    actions.push(
      make('p', {
        textContent: `${sayRun({ id: 'run.problem.back.barred' })} ${sayRun({ id: `run.bar.${way.bar}` })}${needs}`,
      }),
      deedList(words.reverses, way.reversedBy),
    );
  } else if (isDeed && undo?.seq === step.seq) {
    actions.push(button(words.undoHere, 'btn', () => void host.give({ type: 'undoAct' })));
  } else {
    actions.push(make('p', { textContent: isDeed ? words.undoLater : words.notAsked }));
    const reverse = step.does
      .filter(isAct)
      .map(reversalOf)
      .filter((act) => act !== undefined);
    actions.push(deedList(words.reverses, reverse));
  }
  return ours(
    make(
      'div',
      { className: 'notice-line run-reading' },
      make('p', { textContent: words.earlier }),
      make('p', {}, `${words.said}: `, make('b', { textContent: plate.outcomeLabel(step.outcome) })),
      ...step.readings.map((reading) =>
        make('p', {
          className: 'reading-line',
          textContent: readingLine(reading, plate.readingLabel(reading.id), state.sheet.units),
        }),
      ),
      ...actions,
      make('div', { className: 'btn-row' }, back),
    ),
  );
}
