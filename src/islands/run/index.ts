import { openDb } from '../../visit/db.ts';
import type { Entry } from '../../visit/entries.ts';
import { listVisits, newVisitId, readVisit } from '../../visit/store.ts';
import { runWords } from '../../words/en/run-page.ts';
import { Book } from './book.ts';
import { make, ours } from './dom.ts';
import { RunView } from './run-view.ts';
import { Session } from './session.ts';
import { Stage } from './stage.ts';
import { type Chosen, resumePanel, siteChoices, startPanel } from './start-panel.ts';

/** Runs the guide or procedure that stands inside it: the same plates, one at a time, with a meter window. */
class FwRun extends HTMLElement {
  connectedCallback(): void {
    if (this.dataset.state !== undefined) return;
    this.dataset.state = 'loading';
    this.#boot().catch((error: unknown) => {
      console.error(error);
      this.dataset.state = 'failed';
      this.prepend(
        ours(
          make('p', {
            className: 'notice-line',
            textContent: runWords.start.failed,
            attrs: { role: 'alert' },
          }),
        ),
      );
    });
  }

  async #boot(): Promise<void> {
    const guide = this.dataset.guide ?? '';
    const asked = new URL(location.href).searchParams.get('visit');
    // Saved files and the database are asked at once: each takes its time, and neither needs the other.
    const opening = Book.open(this.dataset.kind === 'procedure' ? 'procedure' : 'guide', guide);
    const log = asked === null ? undefined : readVisit(asked).catch(() => []);
    const visits = listVisits().catch(() => []);
    const sites = asked === null ? siteChoices() : undefined;
    const stage = new Stage(this);
    const book = await opening;
    const run = (session: Session) => {
      for (const own of this.querySelectorAll(':scope > [data-run-ui]')) own.remove();
      this.dataset.state = 'running';
      new RunView(stage, session).open();
    };
    const resume = async (entries: readonly Entry[]): Promise<boolean> => {
      const session = await Session.resume(book, stage, entries).catch(() => undefined);
      if (session) run(session);
      return session !== undefined;
    };
    if (log !== undefined && (await resume(await log))) return;
    delete document.documentElement.dataset.resuming;

    const start = async ({ sheet, subject, begins }: Chosen) => {
      void navigator.storage?.persist?.();
      const guideTitle = document.querySelector('h1')?.textContent?.trim() ?? guide;
      const visit = newVisitId();
      const chosen = { visit, sheet, begins, guideTitle, ...(subject === undefined ? {} : { subject }) };
      run(await Session.begin(book, stage, chosen));
    };
    const open = (await visits).filter((card) => card.guide === guide && card.result === undefined);
    const panels = [
      asked !== null && ours(make('p', { className: 'notice-line', textContent: runWords.start.gone })),
      open.length > 0 && resumePanel(open, (id) => void readVisit(id).then(resume)),
      !(await openDb().catch(() => undefined)) &&
        ours(
          make('p', {
            className: 'notice-line',
            textContent: runWords.trouble.blocked,
            attrs: { role: 'alert' },
          }),
        ),
      startPanel(
        book.know,
        await (sites ?? siteChoices()),
        await statesFor(book),
        (chosen) => void start(chosen),
      ),
    ];
    this.prepend(...panels.filter((panel) => panel !== false));
    this.dataset.state = 'ready';
  }
}

/** The words of plant states, fetched only where there are several to begin from. */
async function statesFor(book: Book) {
  if (book.know.compiled.flat.machine.begins.length < 2) return {};
  return (await import('../../words/en/states.ts')).states;
}

customElements.define('fw-run', FwRun);
