import { answer } from '../../src/visit/answer.ts';
import type { Entry } from '../../src/visit/entries.ts';
import type { RunState } from '../../src/visit/fold.ts';
import type { Answered, Input } from '../../src/visit/input.ts';
import type { Knowledge } from '../../src/visit/knowledge.ts';
import { advance, beginVisit } from '../../src/visit/run.ts';
import { fixtureKnowledge, plainSite } from '../support/fixture-guide.ts';

/** A run in a test: a clock that goes on a little with each answer, and the whole log. */
export class Drive {
  know: Knowledge;
  log: Entry[];
  state: RunState;
  nowMs: number;

  constructor(know: Knowledge = fixtureKnowledge(), sheet = plainSite()) {
    this.know = know;
    this.nowMs = Date.parse('2031-03-04T09:00:00.000Z');
    const begun = beginVisit(know, { visit: 'visit-000001', sheet }, this.nowMs);
    this.log = begun.entries;
    this.state = begun.state;
  }

  get path(): string {
    return this.state.position.path;
  }

  /** Gives an input, writes what it comes to, and says how it went. */
  give(input: Input, afterS = 10): Answered {
    this.nowMs += afterS * 1000;
    const result = answer(this.know, this.state, input, this.nowMs);
    this.log.push(...result.entries);
    this.state = advance(this.know, this.state, result.entries);
    return result;
  }

  /** The same for an input that has to be accepted. */
  take(input: Input, afterS = 10): this {
    const result = this.give(input, afterS);
    if (!result.ok) throw new Error(`${this.path}: ${JSON.stringify(result.problems)}`);
    return this;
  }

  choose = (outcome: string) => this.take({ type: 'choice', outcome });
  read = (texts: Record<string, string>) => this.take({ type: 'readings', texts });

  /** Ticks every item that can be ticked and goes on. */
  meet(...items: string[]): this {
    for (const item of items) this.take({ type: 'confirm', item, met: true });
    return this.take({ type: 'goOn' });
  }

  /** From the start to the hold before hands go on conductors, proved dead. */
  toReady(): this {
    this.choose('quiet').read({ v: '150' }).meet('named').take({ type: 'goOn' }, 301);
    this.read({ known: '52.4' });
    this.read({ pair: '0.0', 'plus-earth': '0.0', 'minus-earth': '0.0', 'pair-ac': '0.0' });
    return this.read({ known: '52.4' });
  }

  /** On from there, over the work and the closing of the battery, to the last reading. */
  toClosed(): this {
    this.toReady().meet('nobody-near').choose('done').read({ s1: '52.40', s2: '52.30' });
    return this.meet('tools-out', 'covers-on', 'people-told').choose('done').meet('clear').choose('done');
  }
}
