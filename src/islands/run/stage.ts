import { Plate } from './plate.ts';

/** The page's plates, of which a run shows one at a time. */
export class Stage {
  readonly root: HTMLElement;
  readonly #plates: ReadonlyMap<string, Plate>;
  #shown: Plate | undefined;

  constructor(root: HTMLElement) {
    this.root = root;
    const sections = [...root.querySelectorAll<HTMLElement>('section.plate[data-block]')];
    this.#plates = new Map(sections.map((section) => [section.dataset.block!, new Plate(section)]));
  }

  plate(block: string): Plate | undefined {
    return this.#plates.get(block);
  }

  titleOf(block: string): string {
    return this.#plates.get(block)?.title ?? block;
  }

  /** Hides the whole decision book, once, before its first step is shown. */
  open(): void {
    if (this.root.dataset.running !== undefined) return;
    this.root.dataset.running = '';
    document.body.dataset.running = '';
    for (const child of this.root.querySelectorAll<HTMLElement>('section.plate, .no-run, .section-head'))
      child.hidden = true;
  }

  /** Shows one plate, with nothing on it that the run had put on the last one. */
  show(block: string, how: 'now' | 'reading'): Plate {
    const plate = this.#plates.get(block);
    if (!plate) throw new Error(`the page has no step ${block}`);
    if (this.#shown && this.#shown !== plate) {
      this.#shown.clear();
      this.#shown.section.hidden = true;
      delete this.#shown.section.dataset.now;
    }
    plate.clear();
    plate.section.hidden = false;
    plate.section.dataset.now = how;
    plate.heading.tabIndex = -1;
    this.#shown = plate;
    return plate;
  }
}
