import { proofEndsMs } from '../../visit/proof-age.ts';
import { staleAnswers } from '../../visit/stale.ts';
import { runWords } from '../../words/en/run-page.ts';
import { button, make, ours } from './dom.ts';
import type { Host } from './host.ts';
import { fetchPart } from './parts.ts';
import type { Session } from './session.ts';
import { TrailStrip } from './trail-strip.ts';

const alert = (textContent: string) =>
  make('p', { className: 'notice-line', textContent, attrs: { role: 'alert' } });

/** What stands over the plate: the site, what storage says, the steps taken, how long proofs still hold. */
export class RunHead {
  readonly element = ours(make('div', { className: 'run-head' }));
  readonly #proof = make('p', { className: 'run-proof small' });
  readonly #host: Host;
  readonly #session: Session;
  readonly #strip: TrailStrip;

  constructor(host: Host, session: Session, open: (index: number) => void) {
    this.#host = host;
    this.#session = session;
    this.#strip = new TrailStrip(host, open);
  }

  update(): void {
    const { state, know } = this.#host;
    const stale = staleAnswers(know, state);
    this.#strip.update(stale);
    this.element.replaceChildren(
      // The heading over the step: without it a plate's own would hang under nothing.
      make('h2', {
        className: 'run-site',
        textContent: [state.sheet.name, state.begin.subject].filter(Boolean).join(', '),
      }),
      ...this.#trouble(),
      this.#session.followed ? alert(runWords.followed) : '',
      stale.size > 0 ? make('p', { className: 'notice-line', textContent: runWords.stale }) : '',
      this.#strip.element,
      this.#proof,
    );
    this.tick(Date.now());
  }

  /** Brings the present step's terminal into sight. Measures the page: to be called once it is as it shall be. */
  showPresent(): void {
    this.#strip.element.scrollLeft = this.#strip.element.scrollWidth;
  }

  tick(nowMs: number): void {
    const { state } = this.#host;
    const ends = proofEndsMs(state.proofs);
    const open = ends !== undefined && !state.closed;
    this.#proof.hidden = !open;
    if (open) this.#proof.textContent = runWords.proof.left(Math.ceil((ends - nowMs) / 60_000));
  }

  #trouble(): HTMLElement[] {
    const { trouble } = this.#session;
    if (!trouble) return [];
    const save = () =>
      void fetchPart('aside').then(({ exportVisit }) =>
        exportVisit(this.#host.state.sheet.name, this.#session.entries),
      );
    return [alert(runWords.trouble[trouble]), button(runWords.exportVisit, 'btn', save)];
  }
}
