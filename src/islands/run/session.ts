import type { SiteSheet } from '../../site/sheet.ts';
import { type AskedOf, answer, answerFromSheet, type Draft } from '../../visit/answer.ts';
import type { Standing } from '../../visit/card.ts';
import { plantNow } from '../../visit/ending.ts';
import type { Entry } from '../../visit/entries.ts';
import type { RunState } from '../../visit/fold.ts';
import type { Answered, Input } from '../../visit/input.ts';
import type { Knowledge } from '../../visit/knowledge.ts';
import { advance, beginVisit, openRun, type Start } from '../../visit/run.ts';
import { sheetChanges } from '../../visit/sheet-changes.ts';
import { readVisit, VisitLog, type Written } from '../../visit/store.ts';
import type { Book } from './book.ts';
import { keptSheet } from './kept-sheet.ts';
import { fetchPart, partOf } from './parts.ts';
import type { Stage } from './stage.ts';

/** Why a run goes on in memory alone. */
export type Trouble = 'full' | 'blocked';

/** What became of an input. `notLoaded`: the next step could not be had, so nothing was written. */
type Given = Answered | { ok: false; problems: []; entries: []; why: 'busy' | 'otherTab' | 'notLoaded' };
const nothing = (why: 'busy' | 'otherTab' | 'notLoaded'): Given => ({
  ok: false,
  problems: [],
  entries: [],
  why,
});

/** Whether an input is meant for the step on the screen alone: not a tick, a stop or a note, nor what the page notices. */
const ofStep = ({ type }: Input): boolean =>
  !['confirm', 'stop', 'note', 'away', 'notice', 'facts'].includes(type);

/** A thumb that came down twice. */
const samePress = (one: Input, other: Input): boolean =>
  one.type === other.type ? one.type !== 'confirm' : ofStep(one) && ofStep(other);

/** One visit being run in this tab: its log, the state it leads to, and what storage says. */
export class Session {
  readonly #book: Book;
  readonly #stage: Stage;
  #log = new VisitLog([], () => void this.#follow());
  #state!: RunState;
  /** The input being written, and when it is. */
  #busy: { input: Input; done: Promise<unknown> } | undefined;
  trouble: Trouble | undefined;
  /** Another tab has written to this visit and this one has followed it. */
  followed = false;
  onChange: () => void = () => {};

  private constructor(book: Book, stage: Stage) {
    this.#book = book;
    this.#stage = stage;
  }

  /** Begins a visit; its first entries are written before this resolves, or said to be in memory. */
  static async begin(book: Book, stage: Stage, start: Start): Promise<Session> {
    const session = new Session(book, stage);
    const begun = beginVisit(book.know, start, Date.now(), session.#askedOf);
    const draft = await session.#arrive({ state: begun.state, entries: begun.entries });
    session.#note(await session.#log.append(draft.entries, session.#standing(draft.state)));
    session.#state = draft.state;
    return session;
  }

  /** Goes on with the visit whose log this is; `undefined` when it is empty, or of another guide. */
  static async resume(book: Book, stage: Stage, entries: readonly Entry[]): Promise<Session | undefined> {
    const begin = entries[0];
    if (begin?.kind !== 'begin' || begin.guide !== book.know.compiled.flat.machine.id) return undefined;
    const session = new Session(book, stage);
    session.#log.replace(entries);
    await session.#replay(entries);
    return session;
  }

  get know(): Knowledge {
    return this.#book.know;
  }

  get state(): RunState {
    return this.#state;
  }

  get entries(): readonly Entry[] {
    return this.#log.entries;
  }

  /** Sees to it that a step can be shown. */
  async ready(path: string): Promise<void> {
    await this.#book.prepare([path]);
    const node = this.know.compiled.flat.nodes.get(path);
    if (!node) return;
    await this.#stage.prepare(node);
    const name = partOf(node);
    if (name) await fetchPart(name);
  }

  /** Begins to fetch what the steps after the present one are judged by, while the person reads, probes and types. */
  anticipate(): void {
    const own = this.know.compiled.flat.machine.id;
    const next = this.#book.after(this.#state.position.path).filter(({ machine }) => machine === own);
    // What cannot be had now is asked for again, and missed aloud, when the run comes to it.
    void this.#book.prepare(next.map(({ path }) => path)).catch(() => undefined);
    const parts = new Set(next.map(partOf));
    // What a run comes to in the end is fetched at its end: most steps may lead there, and few do.
    for (const name of parts) if (name && name !== 'ends') void fetchPart(name).catch(() => undefined);
  }

  /**
   * Gives an input to the run. The entries are committed before the screen may move on. Ticks come as fast as a thumb
   * does, and what the page itself notices comes at any time: each waits for what is being written, and what follows
   * waits for it. A second press for the step while the first is being written counts as the same press.
   */
  async give(input: Input): Promise<Given> {
    const { path } = this.#state.position;
    while (this.#busy) {
      if (samePress(input, this.#busy.input)) return nothing('busy');
      await this.#busy.done;
      // It was meant for the step that the person saw.
      if (ofStep(input) && this.#state.position.path !== path) return nothing('busy');
    }
    const given = this.#take(input);
    this.#busy = { input, done: given.catch(() => undefined) };
    try {
      return await given;
    } finally {
      this.#busy = undefined;
    }
  }

  async #take(input: Input): Promise<Given> {
    const result = answer(this.know, this.#state, input, Date.now(), this.#askedOf);
    if (result.entries.length === 0) return result;
    const draft = await this.#arrive({
      state: advance(this.know, this.#state, result.entries),
      entries: [...result.entries],
    }).catch(() => undefined);
    if (!draft) return nothing('notLoaded');
    const written = await this.#log.append(draft.entries, this.#standing(draft.state));
    if (!written.ok && written.why === 'otherTab') {
      await this.#follow();
      return nothing('otherTab');
    }
    this.#note(written);
    this.followed = false;
    this.#state = draft.state;
    this.onChange();
    return result;
  }

  /**
   * Takes over the site sheet when it was changed since, on its own page or in another tab. The change is logged; answers
   * judged on the old sheet are flagged and stay as they are.
   */
  async followSheet(): Promise<void> {
    const { sheet, begin, closed, misfit } = this.#state;
    if (closed || misfit) return;
    const kept = await keptSheet(sheet.id);
    const hasSubject = (each: SiteSheet) =>
      begin.subject === undefined || each.strings.some(({ name }) => name === begin.subject);
    if (kept && hasSubject(kept) && sheetChanges(sheet, kept).length > 0)
      await this.give({ type: 'facts', sheet: kept });
  }

  readonly #askedOf: AskedOf = (block, outcome) => this.#stage.plate(block)?.asked(outcome);

  /** Fetches what the step come to needs, and goes on while the sheet answers what is come to. */
  async #arrive(draft: Draft): Promise<Draft> {
    const next: Draft = { ...draft, askedOf: this.#askedOf };
    for (;;) {
      const { path } = next.state.position;
      await this.ready(path);
      answerFromSheet(this.know, next, Date.now());
      if (next.state.position.path === path) return next;
    }
  }

  /** The run that a log leads to, with everything it needs to be shown. */
  async #replay(entries: readonly Entry[]): Promise<void> {
    const paths = entries.flatMap((entry) => (entry.kind === 'answer' ? [entry.path] : []));
    await this.#book.prepare(paths);
    this.#state = openRun(this.know, entries);
    await this.ready(this.#state.position.path);
    const last = this.#state.trail.at(-1);
    if (last) await this.ready(last.path);
  }

  #note(written: Written): void {
    this.trouble = written.ok || written.why === 'otherTab' ? undefined : written.why;
  }

  /** What the list of visits shows of where this one stands. */
  #standing(state: RunState): Standing {
    const node = this.know.compiled.flat.nodes.get(state.position.path);
    const { heldOpen, openNotHeld } = plantNow(state);
    return { stepTitle: node ? this.#stage.titleOf(node.block) : '', open: [...heldOpen, ...openNotHeld] };
  }

  /** Takes over what another tab wrote, unless entries of this one are in memory alone: those would be lost. */
  async #follow(): Promise<void> {
    if (this.#log.waiting > 0) return;
    const entries = await readVisit(this.#state.visit).catch(() => []);
    if (entries.length === 0) return;
    this.#log.replace(entries);
    await this.#replay(entries);
    this.followed = true;
    this.onChange();
  }
}
