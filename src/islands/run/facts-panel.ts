import { href } from '../../components/href.ts';
import { runLater } from '../../words/en/run-later.ts';
import { make, ours } from './dom.ts';
import type { Host } from './host.ts';

/** Asks in place for the facts of the sheet that the step needs; the form is fetched only when one is missing. */
export function factsPanel(host: Host, missing: readonly string[]): HTMLElement {
  const place = make('div');
  const panel = ours(
    make(
      'div',
      { className: 'notice-line run-facts' },
      make('p', { className: 'plate-label', textContent: runLater.facts }),
      place,
    ),
  );
  void showForm(host, place, missing);
  return panel;
}

async function showForm(host: Host, place: HTMLElement, missing: readonly string[]): Promise<void> {
  const [{ renderFactForm }, { keepFacts }] = await Promise.all([
    import('../site/fact-form.ts'),
    import('./keep-sheet.ts'),
  ]);
  renderFactForm(place, missing, host.state.sheet, {
    sheetHref: href('site/'),
    onSave: async (sheet, given) => {
      await keepFacts(sheet.id, given);
      await host.give({ type: 'facts', sheet });
    },
  });
}
