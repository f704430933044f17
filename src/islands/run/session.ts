import { type AskedOf, answer } from '../../visit/answer.ts';
import type { RunState } from '../../visit/fold.ts';
import type { Answered, Input } from '../../visit/input.ts';
import type { Knowledge } from '../../visit/knowledge.ts';
import { advance, beginVisit, openRun, type Start } from '../../visit/run.ts';
import { readVisit, VisitLog, type Written } from '../../visit/store.ts';

/** Why a run goes on in memory alone. */
export type Trouble = 'full' | 'blocked';

type Given = Answered | { ok: false; problems: []; entries: []; why: 'busy' | 'otherTab' };

/** The words of the page that a log keeps. */
export interface PageWords {
  titleOf(block: string): string;
  askedOf: AskedOf;
}

/** One visit being run in this tab: its log, the state it leads to, and what storage says. */
export class Session {
  readonly know: Knowledge;
  readonly #log: VisitLog;
  readonly #words: PageWords;
  #state: RunState;
  #busy = false;
  trouble: Trouble | undefined;
  /** Another tab has written to this visit and this one has followed it. */
  followed = false;
  onChange: () => void = () => {};

  private constructor(know: Knowledge, log: VisitLog, state: RunState, words: PageWords) {
    this.know = know;
    this.#log = log;
    this.#state = state;
    this.#words = words;
  }

  /** Begins a visit; its first entries are written before this resolves, or said to be in memory. */
  static async begin(know: Knowledge, start: Start, words: PageWords): Promise<Session> {
    const { state, entries } = beginVisit(know, start, Date.now(), words.askedOf);
    const session: Session = new Session(know, new VisitLog([], () => void session.#follow()), state, words);
    session.#note(await session.#log.append(entries, session.#title()));
    return session;
  }

  /** Goes on with a visit that is kept here; `undefined` when it is not, or is of another guide. */
  static async resume(know: Knowledge, visit: string, words: PageWords): Promise<Session | undefined> {
    const entries = await readVisit(visit);
    const begin = entries[0];
    if (begin?.kind !== 'begin' || begin.guide !== know.compiled.flat.machine.id) return undefined;
    const log = new VisitLog(entries, () => void session.#follow());
    const session = new Session(know, log, openRun(know, entries), words);
    return session;
  }

  get state(): RunState {
    return this.#state;
  }

  get entries() {
    return this.#log.entries;
  }

  /** Gives an input to the run. The entries are committed before the screen may move on. */
  async give(input: Input): Promise<Given> {
    if (this.#busy) return { ok: false, problems: [], entries: [], why: 'busy' };
    this.#busy = true;
    try {
      const result = answer(this.know, this.#state, input, Date.now(), this.#words.askedOf);
      if (result.entries.length === 0) return result;
      const next = advance(this.know, this.#state, result.entries);
      const written = await this.#log.append(result.entries, this.#title(next));
      if (!written.ok && written.why === 'otherTab') {
        await this.#follow();
        return { ok: false, problems: [], entries: [], why: 'otherTab' };
      }
      this.#note(written);
      this.followed = false;
      this.#state = next;
      this.onChange();
      return result;
    } finally {
      this.#busy = false;
    }
  }

  #note(written: Written): void {
    this.trouble = written.ok || written.why === 'otherTab' ? undefined : written.why;
  }

  #title(state: RunState = this.#state): string {
    const node = this.know.compiled.flat.nodes.get(state.position.path);
    return node ? this.#words.titleOf(node.block) : '';
  }

  /** Takes over what another tab wrote, unless entries of this one are in memory alone: those would be lost. */
  async #follow(): Promise<void> {
    if (this.#log.waiting > 0) return;
    const visit = this.#state.visit;
    const entries = await readVisit(visit).catch(() => []);
    if (entries.length === 0) return;
    this.#log.replace(entries);
    this.#state = openRun(this.know, entries);
    this.followed = true;
    this.onChange();
  }
}
