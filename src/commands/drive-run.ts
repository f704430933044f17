/**
 * Runs a guide in a real browser by the answers file that `walk` takes, the way a person would: it types, ticks and
 * presses what the page shows, and reads where it is from the page alone. For the browser tests, the bench and the
 * pictures.
 */
import type { Locator, Page } from 'playwright-core';
import type { Entry } from '../visit/entries.ts';
import type { WalkAnswers } from '../visit/walk.ts';
import { runWords } from '../words/en/run-page.ts';
import { pairingWords } from '../words/en/run-pairing.ts';
import { runStep } from '../words/en/run-step.ts';
import { answerSwiftly, type OneAnswer } from './swift-hand.ts';

export interface Begin {
  /** `guides/pv-no-start`, `procedures/pre-charge`. */
  page: string;
  /** The site's name as the start form shows it. */
  site: string;
  /** The string it is about, where the guide asks and the site has several. */
  subject?: string;
  /** The state the plant stands in, by the words of its choice. */
  begins?: string;
}

const always = ['cant', 'unsure', 'stop'];

/** A run on a page: what a person sees and does. */
export class Driver {
  readonly page: Page;
  readonly #swift: boolean;
  readonly #taken = new Map<string, number>();

  /** `swift`: answer each step inside the page, where it is the way taken that is tested and not the fingers. */
  constructor(page: Page, { swift = false }: { swift?: boolean } = {}) {
    this.page = page;
    this.#swift = swift;
  }

  /** The plate of the present step. */
  get plate(): Locator {
    return this.page.locator('section.plate[data-now="now"]');
  }

  /** The block the run stands at, and its kind. */
  async #look(): Promise<{ block: string; kind: string }> {
    await this.plate.waitFor({ state: 'attached' });
    return this.page.evaluate(() => {
      const { block = '', kind = '' } =
        document.querySelector<HTMLElement>('section.plate[data-now="now"]')?.dataset ?? {};
      return { block, kind };
    });
  }

  /** The block the run stands at. */
  async block(): Promise<string> {
    return (await this.#look()).block;
  }

  /** The present step, by what changes with each answer: its number on the trail and its block. */
  async #standing(): Promise<string> {
    return this.page.evaluate(() => {
      // What was refused before is none of the next answer's doing.
      document.querySelector('.error-summary')?.setAttribute('data-earlier', '');
      const plate = document.querySelector('section.plate[data-now="now"]');
      return `${plate?.querySelector('.plate-no')?.textContent} ${plate?.getAttribute('data-block')}`;
    });
  }

  /** Open the page and start a visit there. `root` is the site's address. */
  async begin(root: string, { page: path, site, subject, begins }: Begin): Promise<void> {
    await this.page.goto(`${root}${path}/`);
    await this.start({ site, ...(subject ? { subject } : {}), ...(begins ? { begins } : {}) });
  }

  /** Start a visit on the page that is open. */
  async start({ site, subject, begins }: Omit<Begin, 'page'>): Promise<void> {
    const panel = this.page.locator('.run-start');
    const choose = async (legend: string, label: string): Promise<void> => {
      await panel
        .getByRole('group', { name: legend })
        .locator('label', { hasText: label })
        .locator('input')
        .check();
    };
    await choose(runWords.start.site, site);
    if (subject) await choose(runWords.start.subject, subject);
    if (begins) await choose(runWords.start.begins, begins);
    await panel.getByRole('button', { name: runWords.start.begin }).click();
    await this.plate.waitFor();
  }

  /** The answer for a block: a list holds one for each time the block is come to. */
  #next({ answers }: WalkAnswers, block: string): OneAnswer | undefined {
    const given = answers[block];
    if (!Array.isArray(given)) return given as OneAnswer | undefined;
    const count = this.#taken.get(block) ?? 0;
    this.#taken.set(block, count + 1);
    return given[count] as OneAnswer | undefined;
  }

  /**
   * Go on by the answers until one is missing, an answer is refused or the visit is closed; tells `each` of every step
   * before it is answered. Returns the blocks come to.
   */
  async drive(file: WalkAnswers, each?: (block: string) => Promise<void>): Promise<string[]> {
    const path: string[] = [];
    for (;;) {
      const { block, kind } = await this.#look();
      path.push(block);
      await each?.(block);
      const given = this.#next(file, block);
      if (given === undefined && kind !== 'wait' && kind !== 'workOut') return path;
      if (!(await this.give(given ?? 'done')) || kind === 'end') return path;
    }
  }

  /** Answer the present step. False when the page refused it, or is barred; a visit that closes counts as taken. */
  async give(answer: OneAnswer): Promise<boolean> {
    const before = await this.#standing();
    const { kind } = await this.#look();
    if (this.#swift && kind !== 'pair') {
      if (kind === 'wait')
        await this.page.clock.setSystemTime(await this.page.evaluate(() => Date.now() + 6 * 3600_000));
      return (await answerSwiftly(this.page, { kind, answer })) && this.#moved(before);
    }
    const press = await this.#fill(kind, answer);
    if (!press || !(await press.isVisible())) return false;
    // A button that says it is not ready yet can be pressed all the same, and answers with what is missing.
    await press.click({ force: (await press.getAttribute('aria-disabled')) === 'true' });
    return this.#moved(before);
  }

  /** Fill the step's fields in and give the control that hands the answer in. */
  async #fill(kind: string, answer: OneAnswer): Promise<Locator | undefined> {
    const { plate } = this;
    if (typeof answer === 'string' && always.includes(answer))
      return plate.locator('.run-ways').getByText(await this.label(answer), { exact: true });
    const go = plate.locator('.run-go').getByRole('button');
    if (kind === 'wait') await this.page.clock.fastForward('06:00:00');
    if (kind === 'wait' || kind === 'workOut') return go;
    if (kind === 'hold' || kind === 'end') {
      await this.#tick(answer);
      return go;
    }
    if (kind === 'pair') {
      if (typeof answer !== 'string') await this.#pair(answer);
      return go;
    }
    if (kind === 'measure' || kind === 'display') {
      await this.type(answer);
      return plate.locator('form.run-readings button[type="submit"]');
    }
    const label = await this.label(typeof answer === 'string' ? answer : '');
    const buttons = plate.locator(
      '.choice button[data-run-ui], [data-run-ui] .choice button, ul.choice[data-run-ui] button, .run-go button',
    );
    return buttons
      .getByText(label, { exact: true })
      .or(buttons.filter({ hasText: label }))
      .first();
  }

  /** Type the lists of a pairing grid and choose what is set, what the papers name and the pair, where they are given. */
  async #pair(answer: Exclude<OneAnswer, string>): Promise<void> {
    const pairing = pairingWords;
    const field = (label: string) => this.plate.locator('.run-go').getByLabel(label);
    const lines = (text: unknown) =>
      String(text)
        .split(';')
        .map((each) => each.trim())
        .join('\n');
    const sides = (text: unknown) =>
      String(text)
        .split(' / ')
        .map((each) => each.trim());
    if (answer.inverter !== undefined) await field(pairing.inverterOptions).fill(lines(answer.inverter));
    if (answer.pack !== undefined) await field(pairing.packOptions).fill(lines(answer.pack));
    const choose = async (text: unknown, inverterLabel: string, packLabel: string) => {
      if (text === undefined) return;
      const [inverter, pack] = sides(text);
      if (inverter) await field(inverterLabel).selectOption(inverter);
      if (pack) await field(packLabel).selectOption(pack);
    };
    await choose(answer.found, pairing.foundInverter, pairing.foundPack);
    await choose(answer.named, pairing.namedInverter, pairing.namedPack);
    if (answer.pair !== undefined) {
      const options = await field(pairing.next).locator('option').allTextContents();
      const wanted = sides(answer.pair).join(' × ');
      await field(pairing.next).selectOption(options.find((each) => each.startsWith(wanted)) ?? wanted);
    }
  }

  /** The words that the page has for an outcome of the present step. */
  async label(outcome: string): Promise<string> {
    return this.plate
      .locator(`[data-role="outcomes"] [data-outcome="${outcome}"] a`)
      .first()
      .evaluate((link) => {
        const copy = link.cloneNode(true) as HTMLElement;
        for (const extra of copy.querySelectorAll('.go, .go-no')) extra.remove();
        return copy.textContent?.trim().replace(/\s+/g, ' ') ?? '';
      });
  }

  async #tick(answer: OneAnswer): Promise<void> {
    for (const item of await this.plate.locator('[data-item]').all()) {
      const id = (await item.getAttribute('data-item')) ?? '';
      const box = item.getByRole('checkbox');
      if ((await box.count()) === 0) continue;
      await box.setChecked(typeof answer === 'string' || answer[id] === true);
    }
  }

  /** Type readings, without handing them in. */
  async type(answer: OneAnswer): Promise<void> {
    const fields = this.plate.locator('[data-reading]');
    const values =
      typeof answer === 'string'
        ? { [(await fields.first().getAttribute('data-reading')) ?? '']: answer }
        : answer;
    for (const [id, value] of Object.entries(values)) {
      const place = this.plate.locator(`[data-reading="${id}"]`);
      if (!Array.isArray(value)) {
        await place.locator('.meter-window input').fill(String(value));
        continue;
      }
      const rows = place.locator('tbody tr');
      for (const [at, [seconds, shown]] of value.entries()) {
        if ((await rows.count()) <= at) await place.getByRole('button', { name: runStep.series.add }).click();
        const cells = rows.nth(at).locator('input');
        await cells.first().fill(String(seconds));
        await cells.last().fill(String(shown));
      }
    }
  }

  /** Wait for what becomes of an answer: another step (true), a closed visit (true) or a refusal (false). */
  async #moved(before: string): Promise<boolean> {
    const result = await this.page.waitForFunction((was) => {
      if (document.querySelector('.error-summary:not([data-earlier])')) return 'refused';
      const plate = document.querySelector('section.plate[data-now="now"]');
      const number = plate?.querySelector('.plate-no')?.textContent;
      // The browser's history is told after the step is shown; until it is, the answer is not through.
      if (history.state?.step !== Number(number) - 1) return false;
      const closed = plate?.getAttribute('data-kind') === 'end' && !plate.querySelector('.run-go');
      return `${number} ${plate?.getAttribute('data-block')}` !== was || closed ? 'taken' : false;
    }, before);
    return (await result.jsonValue()) === 'taken';
  }

  /** The log of the visit on the page, as it lies in the browser's database. */
  async log(): Promise<Entry[]> {
    const visit = new URL(this.page.url()).searchParams.get('visit') ?? '';
    return this.page.evaluate(
      (id) =>
        new Promise<Entry[]>((done, fail) => {
          const opening = indexedDB.open('faultwright');
          opening.onerror = () => fail(opening.error);
          opening.onsuccess = () => {
            const db = opening.result;
            const asked = db.transaction('entries').objectStore('entries').index('byVisit').getAll(id);
            asked.onsuccess = () => {
              db.close();
              done(asked.result as Entry[]);
            };
          };
        }),
      visit,
    );
  }
}
