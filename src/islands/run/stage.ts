import { href } from '../../components/href.ts';
import type { FlatNode } from '../../guide/flatten.ts';
import { ours } from './dom.ts';
import { Plate } from './plate.ts';

/** The step that a link speaks of: one of this page, or one of a procedure's page as it is called in this run. */
export function blockOf({ origin, pathname, hash }: HTMLAnchorElement): string | undefined {
  const step = decodeURIComponent(hash.slice(1));
  if (step === '' || origin !== location.origin) return undefined;
  // The guide's further pages lie below its first one.
  if (pathname.startsWith(location.pathname)) return step;
  const procedure = /\/procedures\/([^/]+)\/$/.exec(pathname)?.[1];
  return procedure && `${procedure}--${step}`;
}

/**
 * The plates of a run, of which one shows at a time: those of the page itself, and those of the guide's further pages and
 * of its procedures' pages, which are brought in when the run comes to them.
 */
export class Stage {
  readonly root: HTMLElement;
  readonly #plates = new Map<string, Plate>();
  readonly #brought = new Map<string, Promise<void>>();
  #shown: Plate | undefined;

  constructor(root: HTMLElement) {
    this.root = root;
    for (const section of root.querySelectorAll<HTMLElement>('section.plate[data-block]'))
      this.#plates.set(section.dataset.block!, new Plate(section));
  }

  plate(block: string): Plate | undefined {
    return this.#plates.get(block);
  }

  titleOf(block: string): string {
    return this.#plates.get(block)?.title ?? block;
  }

  /** A cause's title, as the verdict that names it links it. */
  titleOfCause(cause: string): string {
    for (const { section } of this.#plates.values()) {
      const title = section.querySelector(`[data-cause="${CSS.escape(cause)}"] a`)?.textContent?.trim();
      if (title) return title;
    }
    return cause.replaceAll('-', ' ');
  }

  /** Sees to it that a step's plate is here. Rejects when its page cannot be had. */
  async prepare({ block, machine, step }: FlatNode): Promise<void> {
    if (machine !== this.root.dataset.guide)
      await this.#once(`procedures/${machine}/`, (page) => this.#borrow(machine, page));
    else {
      // A verdict and an end speak of steps and causes that may stand on any page of the guide.
      const all = step.kind === 'verdict' || step.kind === 'end';
      for (const chapter of (this.root.dataset.chapters ?? '').split(' ').filter(Boolean)) {
        if (!all && this.#plates.has(block)) break;
        await this.#once(`guides/${machine}/${chapter}/`, (page) => this.#take(page));
      }
    }
    if (!this.#plates.has(block)) throw new Error(`no page of ${machine} has the step ${block}`);
  }

  /** Reads a page of this site, once. */
  async #once(path: string, use: (page: Document) => void): Promise<void> {
    let bringing = this.#brought.get(path);
    if (!bringing) {
      bringing = this.#fetch(href(path)).then(use);
      this.#brought.set(path, bringing);
      bringing.catch(() => this.#brought.delete(path));
    }
    await bringing;
  }

  async #fetch(url: string): Promise<Document> {
    const answer = await fetch(url);
    if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
    return new DOMParser().parseFromString(await answer.text(), 'text/html');
  }

  /** Takes in the plates of a further page of the guide; their links are made to hold from here. */
  #take(page: Document): void {
    for (const section of page.querySelectorAll<HTMLElement>('section.plate[data-block]'))
      this.#plates.set(section.dataset.block!, new Plate(document.adoptNode(section)));
  }

  /** Borrows the plates of a procedure's page, under the names they have in this run. */
  #borrow(procedure: string, page: Document): void {
    for (const section of page.querySelectorAll<HTMLElement>('fw-run section.plate[data-block]')) {
      const block = `${procedure}--${section.dataset.block}`;
      for (const marked of [section, ...section.querySelectorAll<HTMLElement>('[id], [aria-labelledby]')]) {
        if (marked.id) marked.id = `${procedure}--${marked.id}`;
        const labelled = marked.getAttribute('aria-labelledby');
        if (labelled) marked.setAttribute('aria-labelledby', `${procedure}--${labelled}`);
      }
      for (const link of section.querySelectorAll<HTMLAnchorElement>('a[href^="#"]'))
        link.setAttribute('href', `#${procedure}--${link.getAttribute('href')!.slice(1)}`);
      section.dataset.block = block;
      this.#plates.set(block, new Plate(document.adoptNode(section)));
    }
  }

  /** Puts the decision book away, once, before its first step is shown: a page of one plate is quick on a slow phone. */
  open(): void {
    if (this.root.dataset.running !== undefined) return;
    this.root.dataset.running = '';
    document.body.dataset.running = '';
    for (const { section } of this.#plates.values()) section.remove();
    for (const child of this.root.children) if (child instanceof HTMLElement) child.hidden = true;
  }

  /** Shows one plate, with nothing on it that the run had put on the last one. */
  show(block: string, how: 'now' | 'reading'): Plate {
    const plate = this.#plates.get(block);
    if (!plate) throw new Error(`there is no plate ${block}`);
    if (this.#shown && this.#shown !== plate) {
      this.#shown.clear();
      this.#shown.section.remove();
      delete this.#shown.section.dataset.now;
    }
    plate.clear();
    if (!plate.section.isConnected) this.#foot.before(plate.section);
    plate.section.dataset.now = how;
    plate.heading.tabIndex = -1;
    this.#shown = plate;
    return plate;
  }

  /** What stands under the plates. */
  readonly #foot = ours(document.createElement('div'));

  /** Puts the run's own parts over and under the plates. */
  frame(head: readonly HTMLElement[], foot: HTMLElement): void {
    this.root.prepend(...head);
    this.#foot.append(foot);
    this.root.append(this.#foot);
  }
}
