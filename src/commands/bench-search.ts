/** Times the search as a slow phone has it: the shipped page letter by letter, then the engine alone beside MiniSearch. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import { buildIndex } from '../search/build-index.ts';
import type { Entry, SearchIndex } from '../search/search-index.ts';
import type { benchEngines, EngineResult } from './bench-engines.ts';
import { slowPage } from './bench-slow.ts';
import { root } from './project.ts';
import { readAliases, readEntries } from './search-input.ts';
import { firstPlaces, readPhrases } from './search-phrases.ts';
import { serve } from './static-server.ts';

/** Every so many-th phrase is typed into the page; the engines get all of them. */
const typedEvery = 9;

/** Milliseconds. */
export interface Keystroke {
  median: number;
  worst: number;
}

export interface SearchBench {
  /**
   * Work of the page for one more letter, until the results are painted: from the key's own time to the end of the search
   * and the change of the page, and from the start of the next frame to its painting. The wait between them for the screen's
   * refresh is no work, and is in `toFrame`.
   */
  work: Keystroke;
  /** The same with the wait: from the key to the painted frame. */
  toFrame: Keystroke;
  /** The work for a letter typed into a page that holds a box and nothing else. */
  bare: Keystroke;
  keystrokes: number;
  entries: number;
  words: number;
  /** Of the index, gzip is the server's. */
  indexKb: number;
  /** The engines over the shipped index and over one ten times as large, in the same page. */
  engines: Readonly<Record<'shipped' | 'tenfold', { ours: EngineResult; miniSearch: EngineResult }>>;
}

interface Timed {
  work: number;
  toFrame: number;
}

const round = (value: number): number => Math.round(value * 10) / 10;

function keystroke(times: readonly number[]): Keystroke {
  const sorted = times.toSorted((a, b) => a - b);
  return { median: round(sorted[sorted.length >> 1]!), worst: round(sorted.at(-1)!) };
}

const searchReady = (page: Page): Promise<void> =>
  page.locator('fw-search[data-ready]').waitFor({ state: 'attached' });
const bareBox = (page: Page): Promise<void> => page.setContent('<input name="q">');

/** Types phrases into the box of a page as a person does, a letter at a time, each waited for. */
async function typeIntoPage(
  browser: Browser,
  url: string,
  ready: (page: Page) => Promise<void>,
  phrases: readonly string[],
): Promise<Timed[]> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await page.goto(url);
  await ready(page);
  await page.evaluate(() => {
    const times: { work: number; toFrame: number }[] = [];
    Object.assign(globalThis, { keystrokes: times });
    // Heard last: the page's own listener has searched and changed the page by then.
    addEventListener('input', ({ timeStamp }) => {
      const changed = performance.now();
      requestAnimationFrame(() => {
        const frame = performance.now();
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => {
          const painted = performance.now();
          times.push({ work: changed - timeStamp + painted - frame, toFrame: painted - timeStamp });
        };
        port2.postMessage(null);
      });
    });
  });
  await slowPage(page);
  const box = page.locator('input[name="q"]');
  const typedSoFar = (count: number) =>
    page.waitForFunction(
      (due) => (globalThis as unknown as { keystrokes: unknown[] }).keystrokes.length >= due,
      count,
    );
  let count = 0;
  for (const phrase of phrases) {
    // Emptied without a word of it to the page: only letters are counted.
    await box.evaluate((input: HTMLInputElement) => {
      input.value = '';
    });
    await box.focus();
    for (const letter of phrase) {
      await page.keyboard.type(letter);
      count += 1;
      await typedSoFar(count);
    }
  }
  const times = await page.evaluate(() => (globalThis as unknown as { keystrokes: Timed[] }).keystrokes);
  await context.close();
  return times;
}

/** Ten of every entry. In each copy two words in five are others, as more pages bring more words. */
function tenfold(entries: readonly Entry[]): Entry[] {
  const turned = (text: string, turn: number): string =>
    text.replace(/[a-z]{3,}/g, (word) =>
      (word.charCodeAt(0) + word.length * 7 + turn) % 5 < 2
        ? word.replace(/[a-z]/g, (letter) =>
            String.fromCharCode(((letter.charCodeAt(0) - 97 + turn) % 26) + 97),
          )
        : word,
    );
  return Array.from({ length: 10 }, (_, turn) =>
    entries.map((entry) => ({
      ...entry,
      id: turn === 0 ? entry.id : `${entry.id}~${turn}`,
      phrases: entry.phrases.map(({ field, text }) => ({
        field,
        text: turn === 0 ? text : turned(text, turn),
      })),
    })),
  ).flat();
}

async function runEngines(browser: Browser, index: SearchIndex) {
  const { outputFiles } = await build({
    entryPoints: [join(root, 'src/commands/bench-engines.ts')],
    bundle: true,
    write: false,
    format: 'iife',
    minify: true,
  });
  const sets = readPhrases();
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.evaluate(outputFiles[0]!.text);
  await slowPage(page);
  const work = {
    index,
    fits: sets.flatMap(({ fits }) => fits),
    nothing: sets.flatMap(({ nothing }) => nothing),
    places: firstPlaces,
  };
  const found = await page.evaluate(
    (given) => (globalThis as unknown as { benchEngines: typeof benchEngines }).benchEngines(given),
    work,
  );
  await context.close();
  const rounded = ({
    loadMs,
    medianMs,
    worstMs,
    keystrokes,
    recall,
    nothingRight,
  }: EngineResult): EngineResult => ({
    loadMs: round(loadMs),
    medianMs: round(medianMs),
    worstMs: round(worstMs),
    keystrokes,
    recall: Math.round(recall * 1000) / 1000,
    nothingRight: Math.round(nothingRight * 1000) / 1000,
  });
  return { ours: rounded(found.ours), miniSearch: rounded(found.miniSearch) };
}

/** Measures the search of the site in `folder`. */
export async function measureSearch(browser: Browser, folder: string): Promise<SearchBench> {
  const site = await serve({ folder, port: 0 });
  try {
    const sets = readPhrases();
    const all = sets.flatMap(({ fits, nothing }) => [...fits.map(({ say }) => say), ...nothing]);
    const typed = all.filter((_, at) => at % typedEvery === 0);
    const times = await typeIntoPage(browser, `${site.url}search/`, searchReady, typed);
    const bare = await typeIntoPage(browser, 'about:blank', bareBox, typed);
    const text = await readFile(join(folder, 'search.json'), 'utf8');
    const index = JSON.parse(text) as SearchIndex;
    return {
      work: keystroke(times.map(({ work }) => work)),
      toFrame: keystroke(times.map(({ toFrame }) => toFrame)),
      bare: keystroke(bare.map(({ work }) => work)),
      keystrokes: times.length,
      entries: index.entries.length,
      words: index.stems.split(' ').length,
      indexKb: round(text.length / 1000),
      engines: {
        shipped: await runEngines(browser, index),
        tenfold: await runEngines(browser, buildIndex(tenfold(readEntries()), readAliases())),
      },
    };
  } finally {
    await site.close();
  }
}
