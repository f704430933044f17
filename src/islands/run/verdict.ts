import { attemptsOf } from '../../visit/attempts.ts';
import type { RuledOutShown } from '../../visit/input.ts';
import { ruledOut, verdictOf } from '../../visit/verdict.ts';
import { runLater } from '../../words/en/run-later.ts';
import { triedText } from '../../words/en/tried.ts';
import { againstOf } from './against.ts';
import { choices } from './choices.ts';
import { make, ours } from './dom.ts';
import type { BuildControls, Host } from './host.ts';
import { readingLine } from './last-answer.ts';
import type { Stage } from './stage.ts';

const words = runLater.verdict;

/** The readings that the verdict rests on, as they were typed and judged. */
export function groundsList(host: Host, stage: Stage): HTMLElement | undefined {
  const verdict = verdictOf(host.know, host.state);
  if (!verdict) return undefined;
  const { units } = host.state.sheet;
  const lines = verdict.because.map(({ block, outcome, readings }) => {
    const plate = stage.plate(block);
    const label = outcome === undefined ? '' : (plate?.outcomeLabel(outcome) ?? outcome);
    const values = readings.map((each) => readingLine(each, plate?.readingLabel(each.id) ?? each.id, units));
    return make(
      'li',
      {},
      make('b', { textContent: plate?.title ?? block }),
      `: ${[label, ...values].join('. ')}`,
    );
  });
  const tried = attemptsOf(host.state.trail).findLast(({ block }) => block === verdict.block);
  const title = stage.plate(verdict.block)?.title ?? verdict.block;
  return make(
    'div',
    {},
    tried?.result !== undefined && make('p', {}, make('b', { textContent: triedText(title, tried.result) })),
    make('p', { className: 'plate-label', textContent: words.rests }),
    make('ul', {}, ...lines),
    !verdict.supported && make('p', { className: 'notice-line', textContent: words.unsupported }),
  );
}

type Standing = Pick<Host, 'know' | 'state'>;

/** Causes that the readings speak against, each with the steps that do, by their titles. */
export async function ruledOutShown({ know, state }: Standing, stage: Stage): Promise<RuledOutShown[]> {
  const against = await againstOf(know.compiled.flat.machine.id);
  return ruledOut(know, state, against).map(({ cause, by }) => ({
    cause: stage.titleOfCause(cause),
    by: by.map(({ block }) => stage.plate(block)?.title ?? block),
  }));
}

/** The same as a list to unfold; filled in as soon as the guide's own lists are here. */
export function ruledOutList({ know, state }: Standing, stage: Stage): HTMLElement {
  const place = make('div');
  void ruledOutShown({ know, state }, stage).then((list) => {
    if (list.length === 0) return;
    const lines = list.map(({ cause, by }) =>
      make('li', { textContent: `${cause}, ${words.by(by.join('; '))}` }),
    );
    const summary = make('summary', { textContent: `${words.ruledOut}: ${list.length}` });
    place.append(make('details', {}, summary, make('ul', {}, ...lines)));
  });
  return place;
}

/** A verdict: what it rests on, what is ruled out, and what may follow. */
export const verdict =
  (stage: Stage): BuildControls =>
  (host, plate, view) => {
    const grounds = groundsList(host, stage);
    const against = ruledOutList(host, stage);
    const box = ours(make('div', { className: 'run-grounds' }, grounds, against));
    return { elements: [box, ...choices(host, plate, view).elements] };
  };
