import type { Asked } from '../../visit/entries.ts';
import { zoneName } from '../../words/en/zones.ts';

/** The words of an element but for the parts that a selector names. */
function wordsOf(element: Element, without: string): string {
  const copy = element.cloneNode(true) as Element;
  for (const extra of copy.querySelectorAll(without)) extra.remove();
  return copy.textContent?.trim().replace(/\s+/g, ' ') ?? '';
}

/** The static plate of one step, and the words on it that the run shows again elsewhere. */
export class Plate {
  readonly section: HTMLElement;

  constructor(section: HTMLElement) {
    this.section = section;
  }

  get block(): string {
    return this.section.dataset.block ?? this.section.id;
  }

  get heading(): HTMLElement {
    return this.section.querySelector<HTMLElement>('.plate-title') ?? this.section;
  }

  /** During a run a step bears the number of its terminal on the trail, not its place in the book. */
  set number(value: number) {
    const no = this.heading.querySelector('.plate-no');
    if (no) no.textContent = String(value);
  }

  #title: string | undefined;
  /** The step's title, without its number and kind. */
  get title(): string {
    this.#title ??= wordsOf(this.heading, '.plate-no, .plate-kind') || this.block;
    return this.#title;
  }

  part(role: string): HTMLElement | null {
    return this.section.querySelector(`[data-role="${role}"]`);
  }

  reading(id: string): HTMLElement | null {
    return this.section.querySelector(`[data-reading="${CSS.escape(id)}"]`);
  }

  readingLabel(id: string): string {
    return this.reading(id)?.querySelector('.asked-label b')?.textContent?.trim() || id;
  }

  item(id: string): HTMLElement | null {
    return this.section.querySelector(`[data-item="${CSS.escape(id)}"]`);
  }

  itemText(id: string): string {
    const text = this.item(id)?.querySelector('p, div')?.textContent ?? id;
    return text.trim().replace(/\s+/g, ' ');
  }

  #outcome(id: string): HTMLElement | null {
    return this.section.querySelector(`[data-role="outcomes"] [data-outcome="${CSS.escape(id)}"]`);
  }

  readonly #labels = new Map<string, string>();
  /** The answer's words, as on its button. */
  outcomeLabel(id: string): string {
    let label = this.#labels.get(id);
    if (label === undefined) {
      const link = this.#outcome(id)?.querySelector('a');
      label = (link && wordsOf(link, '.go, .go-no')) || zoneName(id);
      this.#labels.set(id, label);
    }
    return label;
  }

  /** What the answer means, as the author wrote it. */
  outcomeNote(id: string): HTMLElement | undefined {
    const note = this.#outcome(id)?.querySelector('div.choice-note');
    if (!note) return undefined;
    const copy = note.cloneNode(true) as HTMLElement;
    for (const marked of [copy, ...copy.querySelectorAll('[id]')]) marked.removeAttribute('id');
    return copy;
  }

  /** What was asked and answered here, to stand in the log. */
  asked(outcome: string | undefined): Asked {
    const cut = (text: string) => text.slice(0, 400);
    const ids = (name: 'reading' | 'item') =>
      [...this.section.querySelectorAll<HTMLElement>(`[data-${name}]`)].map((each) => each.dataset[name]!);
    const [readings, items] = [ids('reading'), ids('item')];
    return {
      title: cut(this.title),
      ...(outcome === undefined ? {} : { answer: cut(this.outcomeLabel(outcome)) }),
      ...(readings.length > 0
        ? { readings: Object.fromEntries(readings.map((id) => [id, cut(this.readingLabel(id))])) }
        : {}),
      ...(items.length > 0
        ? { items: Object.fromEntries(items.map((id) => [id, cut(this.itemText(id))])) }
        : {}),
    };
  }

  /** Takes away everything the run put on the plate. */
  clear(): void {
    for (const each of this.section.querySelectorAll('[data-run-ui]')) each.remove();
    for (const each of this.section.querySelectorAll('[data-met]')) each.removeAttribute('data-met');
  }
}
