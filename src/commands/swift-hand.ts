/**
 * Answers one step of a run inside the page, by the page's own controls, in one go: what a driver's fingers do over many
 * messages to the browser takes a fifth of the time so. Only for what a person could see and reach: a control that is
 * hidden, or that something else covers, is an error.
 */
import type { Page } from 'playwright-core';
import type { WalkAnswers } from '../visit/walk.ts';
import { runStep } from '../words/en/run-step.ts';

type Answer = WalkAnswers['answers'][string];
/** The answer to a step come to once. */
export type OneAnswer = Exclude<Answer, readonly unknown[]>;

export interface SwiftAnswer {
  kind: string;
  answer: OneAnswer;
}

/** Presses what the answer asks for. False where the step has no such control. Throws where it cannot be reached. */
export const answerSwiftly = (page: Page, given: SwiftAnswer): Promise<boolean> =>
  page.evaluate(inPage, { ...given, addRow: runStep.series.add });

/** Runs in the page, so it stands on nothing from outside itself. */
function inPage({ kind, answer, addRow }: SwiftAnswer & { addRow: string }): boolean {
  const plate = document.querySelector<HTMLElement>('section.plate[data-now="now"]');
  if (!plate) return false;
  const words = (element: Element | null | undefined, without = '') => {
    const copy = element?.cloneNode(true) as Element | undefined;
    if (without) for (const extra of copy?.querySelectorAll(without) ?? []) extra.remove();
    return copy?.textContent?.trim().replace(/\s+/g, ' ') ?? '';
  };
  const reach = (control: HTMLElement): void => {
    control.scrollIntoView({ block: 'center', behavior: 'instant' });
    const { left, top, width, height } = control.getBoundingClientRect();
    const over = document.elementFromPoint(left + width / 2, top + height / 2);
    if (!over || !(control.contains(over) || over.closest('label')?.contains(control)))
      throw new Error(`${control.outerHTML.slice(0, 120)} lies under ${over?.outerHTML.slice(0, 120)}`);
  };
  const press = (control: HTMLElement | undefined | null): boolean => {
    if (!control?.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return false;
    reach(control);
    control.click();
    return true;
  };
  const type = (input: HTMLInputElement, text: string): void => {
    reach(input);
    input.focus();
    input.value = text;
    input.dispatchEvent(new InputEvent('input', { bubbles: true }));
    input.dispatchEvent(new Event('change', { bubbles: true }));
  };
  const outcome = (id: string) =>
    words(plate.querySelector(`[data-role="outcomes"] [data-outcome="${id}"] a`), '.go, .go-no');
  const named = (among: string, label: string) => {
    const all = [...plate.querySelectorAll<HTMLElement>(among)];
    return all.find((each) => words(each) === label) ?? all.find((each) => words(each).includes(label));
  };

  if (typeof answer === 'string' && ['cant', 'unsure', 'stop'].includes(answer))
    return press(named('.run-ways button', outcome(answer)));
  if (kind === 'hold' || kind === 'end')
    for (const item of plate.querySelectorAll<HTMLElement>('[data-item]')) {
      const box = item.querySelector<HTMLInputElement>('input[type="checkbox"]');
      const met = typeof answer === 'string' || answer[item.dataset.item ?? ''] === true;
      if (box && box.checked !== met && !press(box)) return false;
    }
  // The screen wakes when the wait is over, and the press comes while the page still writes what it then notices.
  if (kind === 'wait') document.dispatchEvent(new Event('visibilitychange'));
  if (['hold', 'end', 'wait', 'workOut'].includes(kind))
    return press(plate.querySelector<HTMLElement>('.run-go button'));
  if (kind === 'measure' || kind === 'display') {
    const first = plate.querySelector<HTMLElement>('[data-reading]')?.dataset.reading ?? '';
    for (const [id, value] of Object.entries(typeof answer === 'string' ? { [first]: answer } : answer)) {
      const place = plate.querySelector(`[data-reading="${id}"]`);
      if (Array.isArray(value)) {
        for (const [at, [seconds, shown]] of value.entries()) {
          const rows = () => place?.querySelectorAll('tbody tr') ?? [];
          if (rows().length <= at)
            press([...(place?.querySelectorAll('button') ?? [])].find((each) => words(each) === addRow));
          const [time, text] = rows()[at]!.querySelectorAll('input');
          type(time!, String(seconds));
          type(text!, String(shown));
        }
      } else type(place!.querySelector<HTMLInputElement>('.meter-window input')!, String(value));
    }
    return press(plate.querySelector<HTMLElement>('form.run-readings button[type="submit"]'));
  }
  return press(
    named(
      '.choice button[data-run-ui], [data-run-ui] .choice button, ul.choice[data-run-ui] button, .run-go button',
      outcome(typeof answer === 'string' ? answer : ''),
    ),
  );
}
