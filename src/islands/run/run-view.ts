import type { Input, InputProblem } from '../../visit/input.ts';
import { proofEndsMs } from '../../visit/proof-age.ts';
import { type StepView, stepView } from '../../visit/step.ts';
import { runWords } from '../../words/en/run-page.ts';
import { controlsOf } from './controls.ts';
import { make, ours } from './dom.ts';
import { drawingPanel } from './drawing-panel.ts';
import { expectedHere } from './expected-here.ts';
import type { Controls, Host } from './host.ts';
import { lastAnswer } from './last-answer.ts';
import { fetchPart } from './parts.ts';
import { Places } from './places.ts';
import type { Plate } from './plate.ts';
import { RunHead } from './run-head.ts';
import type { Session } from './session.ts';
import { blockOf, type Stage } from './stage.ts';
import { afterPaint, whenQuiet } from './timing.ts';
import { wakeSwitch } from './wake-switch.ts';
import { waysOut } from './ways-out.ts';

/** A step open for reading. `index` is its answer's place on the trail, or -1. */
interface ReadingOf {
  block: string;
  index: number;
}

/** A run on the page: one step at a time, from the page's own plates. */
export class RunView implements Host {
  readonly #stage: Stage;
  readonly #session: Session;
  readonly #places: Places;
  readonly #head: RunHead;
  readonly #live = make('p', { className: 'visually-hidden', attrs: { role: 'status' } });
  readonly #title = document.title;
  #controls: Controls | undefined;
  #reading: ReadingOf | undefined;
  /** How often a step was asked for: what is asked for last is shown, whatever comes in first. */
  #asked = 0;
  /** What the last answer came to, over the present plate. */
  #last: HTMLElement | undefined;
  /** Which step is built on the screen, and in which form. */
  #built = '';
  #stood = '';

  constructor(stage: Stage, session: Session) {
    this.#stage = stage;
    this.#session = session;
    this.#places = new Places(session.state.visit, (block) => stage.plate(block) !== undefined);
    this.#head = new RunHead(this, session, (index) => void this.#openAnswer(index));
  }

  get know() {
    return this.#session.know;
  }
  get state() {
    return this.#session.state;
  }
  titleOf(block: string): string {
    return this.#stage.titleOf(block);
  }
  announce(text: string): void {
    this.#live.textContent = text;
  }

  /** Takes the page over. */
  open(): void {
    const { root } = this.#stage;
    this.#stage.open();
    this.#stage.frame([this.#head.element, ours(this.#live)], this.#foot());
    this.#session.onChange = () => this.#onChange();
    addEventListener('popstate', () => this.#follow());
    root.addEventListener('click', (event) => this.#onLink(event));
    document.querySelector('.stop-bar')?.addEventListener('click', (event) => this.#onStop(event));
    setInterval(() => this.#tick(), 1000);
    document.addEventListener('visibilitychange', () => {
      this.#tick();
      if (document.visibilityState === 'visible') void this.#session.followSheet();
    });
    this.#stood = this.#standing;
    this.#follow();
    void this.#expire();
    void this.#session.followSheet();
  }

  #foot(): HTMLElement {
    const place = make('div');
    const menu = make(
      'details',
      { className: 'run-menu' },
      make('summary', { textContent: runWords.menu }),
      place,
    );
    menu.addEventListener('toggle', () => {
      if (!menu.open) return place.replaceChildren();
      void fetchPart('aside').then(({ visitMenu }) =>
        place.replaceChildren(visitMenu(this, () => this.#session.entries)),
      );
    });
    return make(
      'div',
      { className: 'run-foot' },
      wakeSwitch((text) => this.announce(text)),
      menu,
    );
  }

  /** What the present step is, and which time it was come to. */
  get #standing(): string {
    const { trail, position, arrivedAt } = this.state;
    return `${trail.length}|${position.path}|${arrivedAt}`;
  }

  #onChange(): void {
    if (this.#standing !== this.#stood) this.#readNothing();
    this.#stood = this.#standing;
    this.#render();
  }

  get #block(): string {
    return this.know.compiled.flat.nodes.get(this.state.position.path)!.block;
  }

  async give(input: Input): Promise<boolean> {
    const before = this.#standing;
    const result = await this.#session.give(input);
    this.#clearProblems();
    if (result.ok) return true;
    // A second press while the first is being kept is the same press.
    if ('why' in result && result.why === 'busy') return false;
    if ('why' in result) this.#showProblems([{ message: { id: `run.problem.${result.why}` } }]);
    else if (this.#standing === before) this.#showProblems(result.problems);
    return false;
  }

  async #openAnswer(index: number): Promise<void> {
    const step = this.state.trail[index];
    if (!step) return;
    const asked = ++this.#asked;
    await this.#session.ready(step.path);
    await this.#read({ block: step.block, index }, asked);
  }

  async #read(reading: ReadingOf, asked = ++this.#asked): Promise<void> {
    await fetchPart('aside');
    if (asked !== this.#asked) return;
    this.#reading = reading;
    this.#render();
  }

  #readNothing(): void {
    this.#asked += 1;
    this.#reading = undefined;
  }

  #goBack(): void {
    this.#readNothing();
    this.#places.replace(this.#block, this.state.trail.length);
    this.#render();
  }

  /** The browser's Back or Forward was pressed, an address of this page typed, or the page opened. */
  #follow(): void {
    const pointed = this.#places.pointed(this.state.trail.length, this.#block);
    if (pointed.to === 'answer') void this.#openAnswer(pointed.index);
    else if (pointed.to === 'block') void this.#read({ block: pointed.block, index: -1 });
    else {
      this.#readNothing();
      this.#render();
    }
  }

  /** A link to another step of the run opens it for reading. */
  #onLink(event: MouseEvent): void {
    const link = (event.target as Element).closest('a');
    const block = link ? blockOf(link) : undefined;
    if (!block || !this.#stage.plate(block) || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    const index = this.state.trail.findLastIndex((step) => step.block === block);
    if (block === this.#block) this.#goBack();
    else if (index >= 0) void this.#openAnswer(index);
    else void this.#read({ block, index: -1 });
  }

  #onStop(event: Event): void {
    if (!(event.target as Element).closest('[data-outcome="stop"]')) return;
    event.preventDefault();
    if (this.know.compiled.flat.nodes.get(this.state.position.path)?.step.kind === 'end') this.#goBack();
    else void this.give({ type: 'stop' });
  }

  /** A proof that has grown too old is noticed while nobody types anything, and written to the log. */
  async #expire(): Promise<void> {
    const ends = proofEndsMs(this.state.proofs);
    if (ends === undefined || this.state.closed || Date.now() < ends) return;
    const { lastSeq } = this.state;
    await this.#session.give({ type: 'notice' });
    if (this.state.lastSeq > lastSeq) this.announce(runWords.proof.gone);
  }

  #tick(): void {
    const now = Date.now();
    this.#controls?.tick?.(now);
    this.#head.tick(now);
    void this.#expire();
  }

  #render(): void {
    const view = stepView(this.know, this.state);
    const reading = this.#reading;
    const form = reading
      ? `reading ${reading.block} ${reading.index} ${this.state.lastSeq}`
      : [view.barred, view.missing, !!this.state.closed, !!this.state.misfit].join();
    const key = `${this.#standing} ${reading ? `${reading.block} ${reading.index}` : ''} / ${form}`;
    const first = this.#built === '';
    const moved = this.#built.split(' / ')[0] !== key.split(' / ')[0];
    // The button just pressed is about to go. Its focus taken first, and before anything else changes, costs the least.
    if (moved && document.activeElement instanceof HTMLElement) document.activeElement.blur();
    this.#head.update();
    afterPaint(() => this.#leaveTrail());
    if (key === this.#built) {
      this.#controls?.update?.(view);
      return;
    }
    this.#built = key;
    if (document.title !== this.#title) document.title = this.#title;
    this.#controls = undefined;
    this.#last?.remove();
    if (reading) void this.#renderReading(reading);
    else this.#renderStep(view, first);
    if (moved) this.#focus();
  }

  async #renderReading({ block, index }: ReadingOf): Promise<void> {
    const plate = this.#stage.show(block, 'reading');
    plate.number = index + 1;
    const { readingPanel } = await fetchPart('aside');
    plate.heading.after(readingPanel(this, plate, index, () => this.#goBack()));
  }

  #renderStep(view: StepView, first: boolean): void {
    const { block } = view.node;
    const plate = this.#stage.show(block, 'now');
    const at = this.state.trail.length;
    plate.number = at + 1;
    if (first) this.#places.replace(block, at);
    else afterPaint(() => this.#places.come(block, at));
    const last = this.state.trail.at(-1);
    this.#last = last && lastAnswer(last, this.#stage.plate(last.block), this.state.sheet.units);
    if (this.#last) plate.section.before(this.#last);
    expectedHere(plate, view, this.state.sheet.units);
    drawingPanel(this, plate, view);
    const isEnd = view.node.step.kind === 'end';
    const stopped = this.state.misfit || (!isEnd && (view.missing.length > 0 || view.barred !== undefined));
    const place = ours(make('div', { className: 'run-place' }));
    if (stopped) {
      plate.section.append(place);
      void this.#renderStop(view, place);
    } else {
      this.#controls = controlsOf(view.node.step.kind, this.#stage)(this, plate, view);
      plate.section.append(...this.#controls.elements);
    }
    if (!isEnd && !this.state.misfit) plate.section.append(waysOut(this, plate));
    whenQuiet(() => this.#session.anticipate());
  }

  /** Why the step cannot be answered as it stands, and what there is to do about it. */
  async #renderStop(view: StepView, place: HTMLElement): Promise<void> {
    const { barPanel, factsPanel, misfitPanel } = await fetchPart('aside');
    const panel = this.state.misfit
      ? misfitPanel(this)
      : view.missing.length > 0
        ? factsPanel(this, view.missing)
        : barPanel(this, view);
    place.replaceChildren(panel);
  }

  /** Leaves the way taken for the guide's map. */
  #leaveTrail(): void {
    const path = [...this.state.trail.map((step) => step.path), this.state.position.path];
    try {
      sessionStorage.setItem('faultwright-path', JSON.stringify({ guide: this.state.begin.guide, path }));
    } catch {
      // Storage is blocked: the map stands unmarked.
    }
  }

  get #plate(): Plate | undefined {
    return this.#stage.plate(this.#reading?.block ?? this.#block);
  }

  #focus(): void {
    const plate = this.#plate;
    const over = this.#reading ? undefined : this.#last;
    this.#head.showPresent();
    (over ?? plate?.section)?.scrollIntoView({ block: 'start' });
    plate?.heading.focus({ preventScroll: true });
    const number = this.#reading ? this.#reading.index + 1 : this.state.trail.length + 1;
    this.announce(runWords.step(number, plate?.title ?? ''));
  }

  #clearProblems(): void {
    this.#plate?.section.querySelector('.error-summary')?.remove();
    this.#controls?.showProblems?.([], () => '');
    document.title = this.#title;
  }

  #showProblems(problems: readonly InputProblem[]): void {
    const plate = this.#plate;
    if (!plate || problems.length === 0) return;
    document.title = runWords.errorTitle(this.#title);
    void fetchPart('aside').then(
      ({ showProblems }) => showProblems(plate, this.#controls, problems),
      () =>
        plate.heading.after(
          ours(
            make('p', { className: 'notice-line', textContent: runWords.refused, attrs: { role: 'alert' } }),
          ),
        ),
    );
  }
}
