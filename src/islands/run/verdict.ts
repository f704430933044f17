import { ruledOut, verdictOf } from '../../visit/verdict.ts';
import { runWords } from '../../words/en/run-page.ts';
import { choices } from './choices.ts';
import { make, ours } from './dom.ts';
import type { BuildControls, Host } from './host.ts';
import { readingLine } from './last-answer.ts';
import type { Plate } from './plate.ts';

const words = runWords.verdict;

/** The readings that the verdict rests on, as they were typed and judged. */
export function groundsList(
  host: Host,
  plateOf: (block: string) => Plate | undefined,
): HTMLElement | undefined {
  const verdict = verdictOf(host.know, host.state);
  if (!verdict) return undefined;
  const { units } = host.state.sheet;
  const lines = verdict.because.map(({ block, outcome, readings }) => {
    const plate = plateOf(block);
    const label = outcome === undefined ? '' : (plate?.outcomeLabel(outcome) ?? outcome);
    const values = readings.map((each) => readingLine(each, plate?.readingLabel(each.id) ?? each.id, units));
    return make(
      'li',
      {},
      make('b', { textContent: plate?.title ?? block }),
      `: ${[label, ...values].join('. ')}`,
    );
  });
  return make(
    'div',
    {},
    make('p', { className: 'plate-label', textContent: words.rests }),
    make('ul', {}, ...lines),
    !verdict.supported && make('p', { className: 'notice-line', textContent: words.unsupported }),
  );
}

/** Causes that the readings speak against, each with the steps that do. */
export function ruledOutList(
  host: Host,
  plateOf: (block: string) => Plate | undefined,
  titleOfCause: (cause: string) => string,
): HTMLElement | undefined {
  const list = ruledOut(host.know, host.state);
  if (list.length === 0) return undefined;
  const lines = list.map(({ cause, by }) => {
    const titles = by.map(({ block }) => plateOf(block)?.title ?? block).join('; ');
    return make('li', { textContent: `${titleOfCause(cause)}, ${words.by(titles)}` });
  });
  return make(
    'details',
    {},
    make('summary', { textContent: `${words.ruledOut}: ${list.length}` }),
    make('ul', {}, ...lines),
  );
}

/** A cause's title as a verdict's plate on this page links it. */
export function causeTitle(root: HTMLElement, cause: string): string {
  const link = root.querySelector(`[data-cause="${CSS.escape(cause)}"] a`);
  return link?.textContent?.trim() || cause.replaceAll('-', ' ');
}

/** A verdict: what it rests on, what is ruled out, and what may follow. */
export const verdict =
  (root: HTMLElement, plateOf: (block: string) => Plate | undefined): BuildControls =>
  (host, plate, view) => {
    const grounds = groundsList(host, plateOf);
    const against = ruledOutList(host, plateOf, (cause) => causeTitle(root, cause));
    const box = ours(make('div', { className: 'run-grounds' }, grounds, against));
    return { elements: [box, ...choices(host, plate, view).elements] };
  };
