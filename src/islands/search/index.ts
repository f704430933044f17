import { href } from '../../components/href.ts';
import { Finder, type Found } from '../../search/finder.ts';
import type { SearchIndex } from '../../search/search-index.ts';
import { search as words } from '../../words/en/search.ts';
import { ResultList } from './results.ts';

/** Typing is answered at once, spoken only when it pauses, and put into the address then too. */
const pauseMs = 500;

/**
 * The search page at work: answers while the reader types, and keeps what was typed in the address, so that going back
 * from a result finds it again. Without it the page is a list of symptoms.
 */
class FwSearch extends HTMLElement {
  #finder: Finder | undefined;
  #list: ResultList | undefined;
  #pause: ReturnType<typeof setTimeout> | undefined;
  #shown = '';

  connectedCallback(): void {
    const { input } = this;
    const asked = new URL(location.href).searchParams.get('q');
    // What a browser kept in the box is older than the address.
    if (asked !== null) input.value = asked;
    input.addEventListener('input', () => this.#typed());
    this.#form.addEventListener('submit', (event) => this.#handedIn(event));
    this.addEventListener('keydown', (event) => this.#key(event));
    void this.#start();
  }

  /** The box that is typed in. */
  get input(): HTMLInputElement {
    return this.querySelector<HTMLInputElement>('input[name="q"]')!;
  }
  get #form(): HTMLFormElement {
    return this.querySelector('form')!;
  }
  get #results(): HTMLElement {
    return this.querySelector<HTMLElement>('[data-role="results"]')!;
  }
  get #status(): HTMLElement {
    return this.querySelector<HTMLElement>('[data-role="status"]')!;
  }

  async #start(): Promise<void> {
    this.#status.textContent = words.loading;
    try {
      const response = await fetch(href('search.json'));
      if (!response.ok) throw new Error(String(response.status));
      this.#finder = new Finder((await response.json()) as SearchIndex);
    } catch {
      this.#status.textContent = words.failed;
      return;
    }
    this.dataset.ready = '';
    this.#show();
    this.#say();
  }

  #typed(): void {
    this.#show();
    clearTimeout(this.#pause);
    this.#pause = setTimeout(() => this.#settled(), pauseMs);
  }

  #settled(): void {
    clearTimeout(this.#pause);
    this.#keepInAddress();
    this.#say();
  }

  #handedIn(event: SubmitEvent): void {
    if (!this.#finder) return; // The address then holds the words, and the next page may have better luck.
    event.preventDefault();
    this.#show();
    this.#settled();
    this.#links[0]?.focus();
  }

  #found: Found | undefined;

  #show(): void {
    if (!this.#finder) return;
    const text = this.input.value;
    if (text === this.#shown) return;
    this.#shown = text;
    this.#found = text.trim() === '' ? undefined : this.#finder.find(text);
    this.#list ??= new ResultList(this.#results);
    this.#list.show(this.#found);
  }

  /** How many there are, to those who cannot see them. */
  #say(): void {
    const found = this.#found;
    const said =
      found === undefined
        ? ''
        : found.verdict === 'fits'
          ? words.count(found.hits.length)
          : found.verdict === 'empty'
            ? words.empty
            : words.nothing;
    if (this.#status.textContent !== said) this.#status.textContent = said;
  }

  #keepInAddress(): void {
    const url = new URL(location.href);
    const text = this.input.value.trim();
    if (text === (url.searchParams.get('q') ?? '')) return;
    if (text === '') url.searchParams.delete('q');
    else url.searchParams.set('q', text);
    history.replaceState(history.state, '', url);
  }

  get #links(): HTMLAnchorElement[] {
    return [...this.#results.querySelectorAll('a')];
  }

  #key(event: KeyboardEvent): void {
    const links = this.#links;
    const at = links.indexOf(document.activeElement as HTMLAnchorElement);
    const inBox = document.activeElement === this.input;
    if (!inBox && at < 0) return;
    if (event.key === 'Escape' && !inBox) this.input.focus();
    else if (event.key === 'ArrowDown') links[Math.min(at + 1, links.length - 1)]?.focus();
    else if (event.key === 'ArrowUp' && !inBox) (links[at - 1] ?? this.input).focus();
    else return;
    event.preventDefault();
  }
}

customElements.define('fw-search', FwSearch);
