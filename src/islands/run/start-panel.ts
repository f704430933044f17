import { href } from '../../components/href.ts';
import type { BeginState } from '../../safety/energy.ts';
import type { SiteSheet } from '../../site/sheet.ts';
import type { VisitCard } from '../../visit/db.ts';
import { openDb } from '../../visit/db.ts';
import type { Knowledge } from '../../visit/knowledge.ts';
import { startNeeds } from '../../visit/run.ts';
import { runWords } from '../../words/en/run-page.ts';
import { button, freshId, make, ours } from './dom.ts';
import { isSheet } from './kept-sheet.ts';

const words = runWords.start;

/** What a person chose to start with. */
export interface Chosen {
  sheet: SiteSheet;
  subject?: string;
  begins: BeginState;
}

interface SiteChoice {
  sheet: SiteSheet;
  demo: boolean;
}

/** The sites kept here, the one in use first, and then the demos. */
export async function siteChoices(): Promise<SiteChoice[]> {
  const { demoSites } = await import('../../site/demo.ts');
  const demos = demoSites.map((sheet) => ({ sheet, demo: true }));
  try {
    const db = await openDb();
    const kept: { id: string }[] = await db.getAll('sites');
    const current = await db.get('settings', 'current-site');
    const sheets = kept.filter(isSheet).sort((a, b) => a.name.localeCompare(b.name));
    sheets.sort((a, b) => Number(b.id === current) - Number(a.id === current));
    const ids = new Set(sheets.map((sheet) => sheet.id));
    return [
      ...sheets.map((sheet) => ({ sheet, demo: false })),
      ...demos.filter(({ sheet }) => !ids.has(sheet.id)),
    ];
  } catch {
    return demos; // Nothing is kept here: the demos are in the program.
  }
}

interface RadioOption {
  value: string;
  label: string;
  note?: string;
}

function radios(
  legend: string,
  options: readonly RadioOption[],
  chosen: string | undefined,
  onPick: (value: string) => void,
) {
  const name = freshId('choice');
  const error = make('p', { className: 'field-error', id: `${name}-error` });
  const lines = options.map(({ value, label, note }) => {
    const input = make('input', { type: 'radio', name, value, checked: value === chosen });
    input.addEventListener('change', () => onPick(value));
    const text = make(
      'span',
      {},
      label,
      note !== undefined && make('span', { className: 'choice-note', textContent: note }),
    );
    return make('label', {}, input, text);
  });
  const element = make(
    'fieldset',
    { className: 'field', attrs: { 'aria-describedby': error.id } },
    make('legend', { textContent: legend }),
    error,
    make('div', { className: 'choice' }, ...lines),
  );
  return {
    element,
    complain(text: string) {
      error.textContent = text;
      element.querySelector('input')?.focus();
    },
  };
}

/**
 * The form a run is started with: site, string, how the plant stands, and the facts the guide cannot do without.
 * @param states the words of plant states, where there are several to choose from
 * @param onStart called once everything is chosen
 */
export function startPanel(
  know: Knowledge,
  sites: readonly SiteChoice[],
  states: Readonly<Record<string, { label: string; live: string }>>,
  onStart: (chosen: Chosen) => void,
): HTMLElement {
  const { machine } = know.compiled.flat;
  const panel = ours(
    make('section', { className: 'plate run-start', attrs: { 'aria-labelledby': 'run-start' } }),
  );
  let sheet = sites[0] && !sites[0].demo ? sites[0].sheet : undefined;
  let subject: string | undefined;
  let begins = machine.begins[0] ?? 'any';

  const build = () => {
    const site = radios(
      words.site,
      sites.map((each) => ({
        value: each.sheet.id,
        label: each.sheet.name,
        ...(each.demo ? { note: words.demo } : {}),
      })),
      sheet?.id,
      (id) => {
        sheet = sites.find((each) => each.sheet.id === id)?.sheet;
        const names = sheet?.strings.map((each) => each.name) ?? [];
        subject = names.length === 1 ? names[0] : undefined;
        build();
        panel.querySelector<HTMLInputElement>('input:checked')?.focus();
      },
    );
    const names = sheet?.strings.map((each) => each.name) ?? [];
    if (names.length === 1) subject = names[0];
    const asksString = machine.subject === 'pvString' && sheet !== undefined && names.length > 0;
    const string = asksString
      ? radios(
          words.subject,
          names.map((name) => ({ value: name, label: name })),
          subject,
          (name) => {
            subject = name;
          },
        )
      : undefined;
    const plant =
      machine.begins.length > 1
        ? radios(
            words.begins,
            machine.begins.map((state) => ({
              value: state,
              label: states[state]?.label ?? state,
              ...(states[state] ? { note: states[state].live } : {}),
            })),
            begins,
            (state) => {
              begins = state as BeginState;
            },
          )
        : undefined;
    const begin = make('button', { type: 'submit', className: 'btn btn-primary', textContent: words.begin });
    const form = make(
      'form',
      { noValidate: true },
      sites.every((each) => each.demo) && make('p', { textContent: words.noSites }),
      site.element,
      make('p', {}, make('a', { className: 'btn', href: href('site/'), textContent: words.editSite })),
      string?.element,
      plant?.element,
      begin,
    );
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      if (!sheet) return site.complain(words.chooseSite);
      if (string && subject === undefined) return string.complain(words.chooseSubject);
      const needs = startNeeds(know, sheet, subject);
      if (needs.facts.length > 0) return askFacts(needs.facts);
      onStart({ sheet, begins, ...(machine.subject && subject !== undefined ? { subject } : {}) });
    });
    const askFacts = (missing: readonly string[]) => {
      const asked = sheet!;
      void Promise.all([import('../site/fact-form.ts'), import('./keep-sheet.ts')]).then(
        ([{ renderFactForm }, { keepFacts }]) => {
          // Beside the start form, not in it: forms do not nest.
          begin.hidden = true;
          renderFactForm(beside, missing, asked, {
            sheetHref: href('site/'),
            onSave: async (saved, given) => {
              await keepFacts(saved.id, given);
              sheet = saved;
              onStart({ sheet, begins, ...(machine.subject && subject !== undefined ? { subject } : {}) });
            },
          });
          beside.querySelector<HTMLElement>('input, a')?.focus();
        },
      );
    };
    const beside = make('div', { className: 'run-facts' });
    panel.replaceChildren(
      make('h2', { className: 'plate-title', id: 'run-start', textContent: words.title }),
      make('div', {}, form, beside),
    );
  };
  build();
  return panel;
}

/** The visits of this guide that are still open, to go on with. */
export function resumePanel(cards: readonly VisitCard[], onResume: (id: string) => void): HTMLElement {
  const when = new Intl.DateTimeFormat('en', { dateStyle: 'medium', timeStyle: 'short' });
  const items = cards.map((card) => {
    const note = `${words.begun(when.format(new Date(card.begunAt)))}. ${words.standsAt(card.stepTitle)}`;
    const press = button('', '', () => onResume(card.id));
    press.append(
      make(
        'span',
        {},
        `${words.resume}: ${[card.siteName, card.subject].filter(Boolean).join(', ')}`,
        make('span', { className: 'choice-note', textContent: note }),
      ),
    );
    return make('li', {}, press);
  });
  return ours(
    make(
      'section',
      { className: 'run-resume', attrs: { 'aria-label': words.resumeTitle } },
      make('h2', { textContent: words.resumeTitle }),
      make('ul', { className: 'choice' }, ...items),
    ),
  );
}
