import type { Input, InputProblem } from '../../visit/input.ts';
import { proofEndsMs } from '../../visit/proof-age.ts';
import { staleAnswers } from '../../visit/stale.ts';
import { type StepView, stepView } from '../../visit/step.ts';
import { exportVisits } from '../../visit/visit-file.ts';
import { sayRun } from '../../words/en/run.ts';
import { runWords } from '../../words/en/run-page.ts';
import { barPanel } from './bar.ts';
import { controlsOf } from './controls.ts';
import { button, make, ours } from './dom.ts';
import { expectedHere } from './expected-here.ts';
import { factsPanel } from './facts-panel.ts';
import type { Controls, Host } from './host.ts';
import { lastAnswer } from './last-answer.ts';
import { Places } from './places.ts';
import type { Plate } from './plate.ts';
import { readingPanel } from './reading-panel.ts';
import type { Session } from './session.ts';
import type { Stage } from './stage.ts';
import { trailStrip } from './trail-strip.ts';
import { VisitMenu } from './visit-menu.ts';
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
  readonly #live = make('p', { className: 'visually-hidden', attrs: { role: 'status' } });
  readonly #head = make('div', { className: 'run-head' });
  readonly #menu: VisitMenu;
  readonly #title = document.title;
  #controls: Controls | undefined;
  #reading: ReadingOf | undefined;
  /** What the last answer came to, over the present plate. */
  #last: HTMLElement | undefined;
  /** Which step is built on the screen, and in which form. */
  #built = '';
  #stood = '';

  constructor(stage: Stage, session: Session) {
    this.#stage = stage;
    this.#session = session;
    this.#places = new Places(session.state.visit, (block) => stage.plate(block) !== undefined);
    this.#menu = new VisitMenu(this, () => exportVisits([session.entries]));
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
    this.#stage.frame([ours(this.#head), ours(this.#live)], this.#menu.element);
    this.#session.onChange = () => this.#onChange();
    addEventListener('popstate', () => this.#follow());
    root.addEventListener('click', (event) => this.#onLink(event));
    document.querySelector('.stop-bar')?.addEventListener('click', (event) => this.#onStop(event));
    setInterval(() => this.#tick(), 1000);
    document.addEventListener('visibilitychange', () => this.#tick());
    this.#stood = this.#standing;
    this.#follow();
    void this.#expire();
  }

  /** What the present step is, and which time it was come to. */
  get #standing(): string {
    const { trail, position, arrivedAt } = this.state;
    return `${trail.length}|${position.path}|${arrivedAt}`;
  }

  #onChange(): void {
    if (this.#standing !== this.#stood) this.#reading = undefined;
    this.#stood = this.#standing;
    this.#render();
  }

  get #block(): string {
    return this.know.compiled.flat.nodes.get(this.state.position.path)!.block;
  }

  async give(input: Input): Promise<boolean> {
    const before = this.#standing;
    const result = await this.#session.give(input);
    if (result.ok) {
      this.#showProblems([]);
      return true;
    }
    if ('why' in result) this.#showProblems([{ message: { id: `run.problem.${result.why}` } }]);
    else if (this.#standing === before) this.#showProblems(result.problems);
    return false;
  }

  read(block: string): void {
    this.#reading = block === this.#block ? undefined : { block, index: -1 };
    this.#render();
  }

  async #openAnswer(index: number): Promise<void> {
    const step = this.state.trail[index];
    if (!step) return;
    await this.#session.ready(step.path);
    this.#reading = { block: step.block, index };
    this.#render();
  }

  #goBack(): void {
    this.#reading = undefined;
    this.#places.replace(this.#block, this.state.trail.length);
    this.#render();
  }

  /** The browser's Back or Forward was pressed, or an address of this page typed. */
  #follow(): void {
    const pointed = this.#places.pointed(this.state.trail.length, this.#block);
    if (pointed.to === 'answer') {
      void this.#openAnswer(pointed.index);
      return;
    }
    this.#reading = pointed.to === 'block' ? { block: pointed.block, index: -1 } : undefined;
    this.#render();
  }

  /** A link to another step of the page opens it for reading. */
  #onLink(event: MouseEvent): void {
    const link = (event.target as Element).closest('a');
    const block = link ? blockOf(link) : undefined;
    if (!block || !this.#stage.plate(block) || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    const index = this.state.trail.findLastIndex((step) => step.block === block);
    if (index >= 0 && block !== this.#block) void this.#openAnswer(index);
    else this.read(block);
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
    this.#showProof(now);
    void this.#expire();
  }

  #render(): void {
    const view = stepView(this.know, this.state);
    const reading = this.#reading;
    const key = reading
      ? `reading ${reading.block} ${reading.index} ${this.state.lastSeq}`
      : [this.#standing, view.barred, view.missing, !!this.state.closed, !!this.state.misfit].join('|');
    this.#renderHead();
    this.#menu.update();
    this.#leaveTrail();
    if (key === this.#built) {
      this.#controls?.update?.(view);
      return;
    }
    const first = this.#built === '';
    const moved = this.#built.split('|').slice(0, 3).join('|') !== key.split('|').slice(0, 3).join('|');
    this.#built = key;
    document.title = this.#title;
    this.#controls = undefined;
    this.#last?.remove();
    if (reading) this.#renderReading(reading);
    else this.#renderStep(view, first);
    if (moved) this.#focus();
  }

  #renderReading(reading: ReadingOf): void {
    const plate = this.#stage.show(reading.block, 'reading');
    plate.heading.after(readingPanel(this, plate, reading.index, () => this.#goBack()));
  }

  #renderStep(view: StepView, first: boolean): void {
    const { block, step } = view.node;
    const plate = this.#stage.show(block, 'now');
    const at = this.state.trail.length;
    const { state } = history as { state: { step?: number } | null };
    if (!first && state?.step !== at) this.#places.push(block, at);
    else this.#places.replace(block, at);
    const plateOf = (each: string) => this.#stage.plate(each);
    const last = this.state.trail.at(-1);
    this.#last = last && lastAnswer(last, plateOf(last.block), this.state.sheet.units);
    if (this.#last) plate.section.before(this.#last);
    expectedHere(plate, view, this.state.sheet.units);
    const end: (HTMLElement | undefined)[] = [];
    if (this.state.misfit) end.push(this.#misfitPanel());
    else if (view.missing.length > 0 && step.kind !== 'end') end.push(factsPanel(this, view.missing));
    else if (view.barred && step.kind !== 'end') end.push(barPanel(this, view));
    else {
      this.#controls = controlsOf(step.kind, this.#stage.root, plateOf)(this, plate, view);
      end.push(...this.#controls.elements);
    }
    if (step.kind !== 'end' && !this.state.misfit) end.push(waysOut(this, plate));
    plate.section.append(...end.filter((each) => each !== undefined));
  }

  #misfitPanel(): HTMLElement {
    const words = runWords.misfit;
    return ours(
      make(
        'div',
        { className: 'notice-line' },
        make('h4', { textContent: words.title }),
        make('p', { textContent: words.text }),
        button(words.goOn, 'btn btn-primary', () => void this.give({ type: 'changed' })),
      ),
    );
  }

  readonly #proof = make('p', { className: 'run-proof small' });
  #showProof(now: number): void {
    const ends = proofEndsMs(this.state.proofs);
    const open = ends !== undefined && !this.state.closed;
    this.#proof.hidden = !open;
    if (open) this.#proof.textContent = runWords.proof.left(Math.ceil((ends - now) / 60_000));
  }

  #renderHead(): void {
    const { sheet, begin } = this.state;
    const { trouble, followed } = this.#session;
    const stale = staleAnswers(this.know, this.state);
    const site = [sheet.name, begin.subject].filter(Boolean).join(', ');
    const notice = (text: string) =>
      make('p', { className: 'notice-line', textContent: text, attrs: { role: 'alert' } });
    const strip = trailStrip(this, (index) => void this.#openAnswer(index));
    strip.querySelectorAll('li').forEach((item, index) => {
      const seq = this.state.trail[index]?.seq;
      if (seq !== undefined && stale.has(seq)) item.dataset.stale = '';
    });
    this.#head.replaceChildren(
      make('p', { className: 'run-site', textContent: site }),
      ...(trouble
        ? [
            notice(runWords.trouble[trouble]),
            button(runWords.menu.exportVisit, 'btn', () => this.#menu.exportVisit()),
          ]
        : []),
      ...(followed ? [notice(runWords.followed)] : []),
      ...(stale.size > 0 ? [make('p', { className: 'notice-line', textContent: runWords.stale })] : []),
      strip,
      this.#proof,
    );
    this.#showProof(Date.now());
    const now = strip.querySelector<HTMLElement>('[data-state="now"]');
    if (now) strip.scrollLeft = now.offsetLeft;
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

  #focus(): void {
    const block = this.#reading?.block ?? this.#block;
    const plate = this.#stage.plate(block);
    const over = this.#reading ? undefined : this.#last;
    (over?.isConnected ? over : plate?.section)?.scrollIntoView({ block: 'start' });
    plate?.heading.focus({ preventScroll: true });
    const number = this.#reading ? this.#reading.index + 1 : this.state.trail.length + 1;
    this.announce(runWords.step(number, this.titleOf(block)));
  }

  #showProblems(problems: readonly InputProblem[]): void {
    const plate = this.#stage.plate(this.#reading?.block ?? this.#block);
    plate?.section.querySelector('.error-summary')?.remove();
    this.#controls?.showProblems?.(problems);
    if (problems.length === 0 || !plate) return;
    const own = this.#controls?.showProblems?.(problems) ?? [];
    const lines =
      own.length > 0
        ? own
        : problems.map(({ message }) => ({ text: sayRun(message), go: undefined, id: '' }));
    const box = errorSummary(lines);
    plate.heading.after(box);
    document.title = runWords.errorTitle(this.#title);
    box.scrollIntoView({ block: 'start' });
    box.focus({ preventScroll: true });
  }

  /** The plate that a test or a part of the page may want. */
  plateOf(block: string): Plate | undefined {
    return this.#stage.plate(block);
  }
}

/** The step that a link speaks of: one of this page, or one of a procedure's page as it is called in this run. */
function blockOf(link: HTMLAnchorElement): string | undefined {
  const { origin, pathname, hash } = link;
  const step = decodeURIComponent(hash.slice(1));
  if (step === '' || origin !== location.origin) return undefined;
  if (pathname === location.pathname) return step;
  const procedure = /\/procedures\/([^/]+)\/$/.exec(pathname)?.[1];
  return procedure && `${procedure}--${step}`;
}

interface ErrorLine {
  text: string;
  go?: (() => void) | undefined;
}

/** The list of what is wrong, over the step, each line leading to its field. */
function errorSummary(lines: readonly ErrorLine[]): HTMLElement {
  const items = lines.map(({ text, go }) => {
    if (!go) return make('li', { textContent: text });
    return make('li', {}, button(text, 'btn btn-quiet', go));
  });
  return ours(
    make(
      'div',
      { className: 'error-summary', tabIndex: -1, attrs: { role: 'alert' } },
      make('h4', { textContent: runWords.errors(lines.length) }),
      make('ul', {}, ...items),
    ),
  );
}
