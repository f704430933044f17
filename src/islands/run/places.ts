/** What stands in the browser's history for each step come to: its number on the trail of one visit. */
interface Place {
  visit: string;
  step: number;
}

const isPlace = (value: unknown): value is Place =>
  typeof (value as Place | null)?.visit === 'string' && typeof (value as Place).step === 'number';

/** Where an entry of the history, or an address typed, points to. */
export type Pointed =
  | { to: 'now' }
  /** An answer of the trail, by its place there. */
  | { to: 'answer'; index: number }
  | { to: 'block'; block: string }
  | { to: 'elsewhere' };

/**
 * The browser's own Back and Forward, and addresses, over a run. They open steps for reading; none of them moves the run.
 */
export class Places {
  readonly #visit: string;
  readonly #isStep: (block: string) => boolean;

  constructor(visit: string, isStep: (block: string) => boolean) {
    this.#visit = visit;
    this.#isStep = isStep;
  }

  #address(block: string): string {
    const url = new URL(location.href);
    url.searchParams.set('visit', this.#visit);
    url.hash = block;
    return url.href;
  }

  /** A step was come to, from another one or on the present entry. */
  come(block: string, step: number): void {
    const { state } = history;
    if (isPlace(state) && state.step === step) this.replace(block, step);
    else history.pushState({ visit: this.#visit, step } satisfies Place, '', this.#address(block));
  }

  /** The present entry stands for this step. */
  replace(block: string, step: number): void {
    history.replaceState({ visit: this.#visit, step } satisfies Place, '', this.#address(block));
  }

  /** What the present entry points to, with the run at step `now` of its trail, at `block`. */
  pointed(now: number, block: string): Pointed {
    const { state } = history;
    if (isPlace(state) && state.visit === this.#visit)
      return state.step < now ? { to: 'answer', index: state.step } : { to: 'now' };
    const hash = decodeURIComponent(location.hash.slice(1));
    if (hash === block) return { to: 'now' };
    return this.#isStep(hash) ? { to: 'block', block: hash } : { to: 'elsewhere' };
  }
}
