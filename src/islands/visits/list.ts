import { href } from '../../components/href.ts';
import type { VisitCard } from '../../visit/db.ts';
import { addEntries, listVisits, newVisitId, readVisit } from '../../visit/store.ts';
import { exportVisits } from '../../visit/visit-file.ts';
import { steps } from '../../words/en/steps.ts';
import { triedText } from '../../words/en/tried.ts';
import { visitWords as words } from '../../words/en/visit.ts';
import { button, freshId, make } from '../run/dom.ts';
import { fileName, saveFile } from '../site/file.ts';
import { sayVisit, whenText } from './say.ts';

/** Every visit of this phone: go on with an open one, read a record, export all, bring a file in. */
class FwVisits extends HTMLElement {
  readonly #status = make('p', { attrs: { role: 'status' } });

  connectedCallback(): void {
    void this.#show();
  }

  async #show(): Promise<void> {
    let cards: VisitCard[];
    try {
      cards = await listVisits();
    } catch {
      this.replaceChildren(make('p', { className: 'notice-line', textContent: words.blocked }));
      return;
    }
    const open = cards.filter((card) => card.result === undefined);
    const closed = cards.filter((card) => card.result !== undefined);
    this.replaceChildren(
      cards.length === 0 ? make('p', { textContent: words.none }) : '',
      ...section(words.openHeading, open),
      ...section(words.closedHeading, closed),
      cards.length > 0 ? button(words.exportAll, 'btn', () => void this.#exportAll(cards)) : '',
      this.#importField(),
      this.#status,
    );
  }

  async #exportAll(cards: readonly VisitCard[]): Promise<void> {
    const logs = await Promise.all(cards.map((card) => readVisit(card.id)));
    saveFile(fileName('visits', new Date()), exportVisits(logs.filter((log) => log.length > 0)));
  }

  #importField(): HTMLElement {
    const id = freshId('import');
    const error = make('p', { id: `${id}-error`, className: 'field-error', attrs: { role: 'alert' } });
    const file = make('input', {
      id,
      type: 'file',
      accept: '.json,application/json',
      attrs: { 'aria-describedby': `${id}-hint ${id}-error` },
    });
    file.addEventListener('change', () => {
      const [chosen] = file.files ?? [];
      if (chosen) void this.#bringIn(chosen, error).finally(() => (file.value = ''));
    });
    return make(
      'div',
      { className: 'field' },
      make('label', { htmlFor: id, textContent: words.importLabel }),
      make('p', { id: `${id}-hint`, className: 'field-hint', textContent: words.importHint }),
      error,
      file,
    );
  }

  async #bringIn(file: File, error: HTMLElement): Promise<void> {
    error.textContent = '';
    const text = await file.text().catch(() => undefined);
    if (text === undefined) {
      error.textContent = sayVisit({ id: 'visit.file.unreadable' });
      return;
    }
    // The reader of files is fetched when a file is there: it is larger than all the rest of this page.
    const { importVisits, mergeLog } = await import('../../visit/exchange.ts');
    const read = importVisits(text);
    if (!read.ok) {
      error.textContent = sayVisit(read.reason);
      return;
    }
    const count = { new: 0, longer: 0, had: 0, parted: 0 };
    for (const log of read.logs) {
      const kept = await readVisit(log[0]!.visit);
      const merge = mergeLog(kept, log, newVisitId());
      if (merge.how !== 'had') {
        const whole = merge.how === 'longer' ? log : merge.add;
        const written = await addEntries(merge.add, whole);
        if (!written.ok) {
          error.textContent = words.notKept;
          return;
        }
      }
      count[merge.how] += 1;
    }
    await this.#show();
    this.#status.textContent = words.imported(count.new, count.longer, count.had, count.parted);
  }
}

function section(title: string, cards: readonly VisitCard[]): HTMLElement[] {
  if (cards.length === 0) return [];
  const items = cards.map((card) => {
    const folder = card.guideKind === 'guide' ? 'guides' : 'procedures';
    const where = [card.siteName, card.subject].filter(Boolean).join(', ');
    const state =
      card.result === undefined ? words.standsAt(card.stepTitle) : (steps.results[card.result] ?? '');
    return make(
      'li',
      {},
      make('h3', { textContent: card.guideTitle }),
      make('p', { textContent: `${where}. ${whenText(card.changedAt)}, ${words.entries(card.entries)}.` }),
      make('p', { textContent: state }),
      ...(card.notCured ?? []).map((title) => make('p', { textContent: triedText(title, 'failed') })),
      card.open !== undefined && make('p', { textContent: words.stillOpenDevices(card.open) }),
      make(
        'div',
        { className: 'btn-row' },
        card.result === undefined &&
          make('a', {
            className: 'btn btn-primary',
            href: href(`${folder}/${card.guide}/?visit=${card.id}`),
            textContent: words.resume,
          }),
        make('a', {
          className: 'btn',
          href: href(`visits/record/?visit=${card.id}`),
          textContent: words.record,
        }),
      ),
    );
  });
  return [make('h2', { textContent: title }), make('ul', { className: 'card-list' }, ...items)];
}

customElements.define('fw-visits', FwVisits);
