import type { UnitSystem } from '../../quantity/kinds.ts';
import { checkSheet } from '../../site/check.ts';
import { readFact } from '../../site/draft.ts';
import type { FactValue } from '../../site/fact-paths.ts';
import { factOf, setFact } from '../../site/facts.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import { factLabel, siteWords } from '../../words/en/site.ts';
import { boxId, boxLabel, echoOf, hintOf, keypadOf, optionsOf, say, sayOf } from './say.ts';

/** A fact as it was given in place. */
export interface GivenFact {
  id: string;
  typed: string;
  value: FactValue;
}

export interface FactFormOptions {
  /** Where the whole sheet is edited, for lists that have no row yet. */
  sheetHref: string;
  /** Called with the sheet that holds the facts, checked whole; what it does with them is the caller's. */
  onSave(sheet: SiteSheet, given: readonly GivenFact[]): void | Promise<void>;
}

/**
 * Asks in place for the facts a step still needs. `factIds` are concrete, as `missingFacts` gives them. Plain
 * DOM, so that a page that runs a guide need not carry a component library for it. Replaces what `container`
 * held; typed text stays through every error.
 */
export function renderFactForm(
  container: HTMLElement,
  factIds: readonly string[],
  sheet: SiteSheet,
  { sheetHref, onSave }: FactFormOptions,
): void {
  const lists = factIds.filter((id) => id === 'strings' || id === 'trackers');
  const ids = factIds.filter((id) => id !== 'strings' && id !== 'trackers');
  const form = make('form', { noValidate: true, className: 'fact-form' });
  form.append(make('h3', { textContent: siteWords.needFactsTitle }));
  for (const list of lists) {
    const line = make('p', { textContent: `${siteWords.listMissing(list)} ` });
    line.append(make('a', { href: sheetHref, className: 'btn', textContent: siteWords.openSheet }));
    form.append(line);
  }
  const fields = ids.map((id) => field(id, sheet.units));
  form.append(...fields.map((each) => each.element));
  if (fields.length > 0) {
    form.append(
      make('button', { type: 'submit', className: 'btn btn-primary', textContent: siteWords.saveHere }),
    );
    form.append(make('p', { className: 'field-hint', textContent: siteWords.stillUnknown }));
  }
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const { faults, changed, given } = readAll(fields, sheet);
    for (const each of fields) each.show(faults.get(each.id) ?? '');
    form.querySelector('.error-summary')?.remove();
    if (faults.size === 0) {
      void onSave(changed, given);
      return;
    }
    const summary = summaryOf(faults, fields);
    form.prepend(summary);
    summary.focus();
  });
  container.replaceChildren(form);
}

interface Field {
  id: string;
  element: HTMLElement;
  text(): string;
  show(error: string): void;
  focus(): void;
}

function readAll(fields: readonly Field[], sheet: SiteSheet) {
  const faults = new Map<string, string>();
  const given: GivenFact[] = [];
  let changed = sheet;
  for (const { id, text } of fields) {
    const reading = readFact(factOf(id), text(), sheet.units);
    if (reading.ok) {
      changed = setFact(changed, id, reading.value);
      given.push({ id, typed: text(), value: reading.value });
    } else {
      // In place there is no "I don't know": the step needs the fact, and has its own way out.
      const reason =
        reading.reason.id === 'site.missingOrUnknown'
          ? { ...reading.reason, id: 'site.missing' }
          : reading.reason;
      faults.set(id, sayOf(reason, id));
    }
  }
  const whole = checkSheet(changed);
  for (const { factIds, reason } of whole.ok ? [] : whole.problems) {
    const asked = factIds.find((id) => fields.some((each) => each.id === id)) ?? fields[0]?.id;
    // A box that is wrong by itself says that first.
    if (asked !== undefined && !faults.has(asked)) faults.set(asked, say(reason));
  }
  return { faults, changed, given };
}

function summaryOf(faults: ReadonlyMap<string, string>, fields: readonly Field[]): HTMLElement {
  const box = make('div', { className: 'error-summary', tabIndex: -1 });
  box.setAttribute('role', 'alert');
  box.append(make('h4', { textContent: siteWords.errorTitle(faults.size) }));
  const list = make('ul', {});
  for (const [id, text] of faults) {
    const link = make('a', { href: `#${boxId(id)}`, textContent: text });
    link.addEventListener('click', (event) => {
      event.preventDefault();
      fields.find((each) => each.id === id)?.focus();
    });
    const item = make('li', {});
    item.append(link);
    list.append(item);
  }
  box.append(list);
  return box;
}

function field(id: string, units: UnitSystem): Field {
  const fact = factOf(id);
  const isChoice = fact.answer.type === 'choice' || fact.answer.type === 'yesNo';
  const box = boxId(id);
  const rowed = factLabel(id).split(': ')[0];
  const label = id.includes('[') ? `${rowed}: ${boxLabel(fact, units)}` : boxLabel(fact, units);
  const hintText = hintOf(fact);
  const hint = make('p', { className: 'field-hint', id: `${box}-hint`, textContent: hintText ?? '' });
  const error = make('p', { className: 'field-error', id: `${box}-error` });
  const element = make(isChoice ? 'fieldset' : 'div', { className: 'field' });
  const described = [hintText ? hint.id : '', error.id].filter(Boolean).join(' ');
  const show = (text: string): void => {
    error.textContent = text;
    element.toggleAttribute('data-error', text !== '');
    for (const each of element.querySelectorAll('input'))
      each.setAttribute('aria-invalid', String(text !== ''));
  };
  const heads = hintText ? [hint, error] : [error];
  if (!isChoice) {
    const input = make('input', { type: 'text', id: box, autocomplete: 'off', spellcheck: false });
    const keypad = keypadOf(fact);
    if (keypad) input.inputMode = keypad;
    const echo = make('p', { className: 'field-echo', id: `${box}-echo` });
    input.setAttribute('aria-describedby', `${described} ${echo.id}`);
    input.toggleAttribute('data-number', fact.answer.type === 'number');
    input.addEventListener('input', () => {
      echo.textContent = echoOf(fact, input.value, units);
    });
    element.append(make('label', { htmlFor: box, textContent: label }), ...heads, input, echo);
    return { id, element, show, text: () => input.value, focus: () => reveal(element, input) };
  }
  const choices = make('div', { className: 'choice' });
  element.setAttribute('aria-describedby', described);
  optionsOf(fact).forEach((option, at) => {
    const radio = make('input', {
      type: 'radio',
      name: box,
      value: option.value,
      id: at === 0 ? box : `${box}-${at}`,
    });
    const line = make('label', {});
    line.append(radio, option.label);
    choices.append(line);
  });
  element.append(make('legend', { textContent: label }), ...heads, choices);
  const chosen = (): string => element.querySelector<HTMLInputElement>('input:checked')?.value ?? '';
  return { id, element, show, text: chosen, focus: () => reveal(element, choices.querySelector('input')) };
}

function reveal(element: HTMLElement, input: HTMLElement | null): void {
  element.scrollIntoView({ block: 'start' });
  input?.focus({ preventScroll: true });
}

function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  props: Partial<HTMLElementTagNameMap[K]>,
): HTMLElementTagNameMap[K] {
  return Object.assign(document.createElement(tag), props);
}
