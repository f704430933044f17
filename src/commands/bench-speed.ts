/**
 * How long a slow phone takes: with a processor four times slower, with no network, from the files it has saved. The
 * browser slows the page's own thread only; its service worker and its database run at the machine's speed.
 */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { exportVisits } from '../visit/visit-file.ts';
import { longLog, readingBlock } from './bench-log.ts';
import { guideRun } from './bench-runs.ts';
import { slowPage } from './bench-slow.ts';
import { Driver } from './drive-run.ts';
import { serve } from './static-server.ts';

const logEntries = 100;
const readingSamples = 15;
const loadSamples = 7;

/** Milliseconds. */
export interface Spread {
  median: number;
  min: number;
  max: number;
  samples: number;
}

export interface Speeds {
  /** A reading handed in, to the painted frame that shows the next step; its log entry is committed before. */
  readingToScreen: Spread;
  /** A visit gone on with, from the navigation's start to the frame that shows its reading form. */
  firstStepFromCache: Spread;
  /** The guide opened anew, from the navigation's start to the frame that shows its start form. */
  startFormFromCache: Spread;
  /** The bare page, from the navigation's start to the first frame after it is loaded; from a local server. */
  bareLoad: Spread;
  /** The bare page, from a press that does nothing to the next painted frame. */
  bareFrame: Spread;
  /** Entries in the log of the visits measured, before the reading. */
  logEntries: number;
  precacheMb: number;
  precacheFiles: number;
}

/** The middle and the ends of some times. */
export function spread(values: readonly number[]): Spread {
  const sorted = values.toSorted((a, b) => a - b);
  const round = (value: number | undefined): number => Math.round((value ?? 0) * 10) / 10;
  const half = sorted.length / 2;
  const median = ((sorted[Math.ceil(half) - 1] ?? 0) + (sorted[Math.floor(half)] ?? 0)) / 2;
  return { median: round(median), min: round(sorted[0]), max: round(sorted.at(-1)), samples: sorted.length };
}

/** A measure that the page makes of itself is kept under this name. */
const mark = 'bench';

/** The page's own measure, once it is made. */
const measured = (page: Page): Promise<number> =>
  page.evaluate(
    (name) =>
      new Promise<number>((done) => {
        new PerformanceObserver((list) => {
          const [made] = list.getEntriesByName(name);
          if (made) done(made.duration);
        }).observe({ type: 'measure', buffered: true });
      }),
    mark,
  );

/** A new tab on a slow processor, whose service worker has to be started again. */
async function slowTab(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  const devTools = await slowPage(page);
  await devTools.send('ServiceWorker.enable');
  await devTools.send('ServiceWorker.stopAllWorkers');
  return page;
}

/**
 * From the navigation's start until the frame is painted in which what `selector` names is first there, in ms. A message sent
 * from an animation frame arrives when that frame has been painted.
 */
async function timeToShow(context: BrowserContext, url: string, selector: string): Promise<number> {
  const page = await slowTab(context);
  await page.addInitScript(
    ({ wanted, name }) => {
      const look = (): void => {
        if (document.readyState === 'loading' || !document.querySelector(wanted)) return;
        observer.disconnect();
        removeEventListener('load', look);
        const painted = new MessageChannel();
        painted.port1.onmessage = () => performance.measure(name, { start: 0, end: performance.now() });
        requestAnimationFrame(() => painted.port2.postMessage(''));
      };
      const observer = new MutationObserver(look);
      observer.observe(document, { childList: true, subtree: true });
      addEventListener('load', look);
    },
    { wanted: selector, name: mark },
  );
  await page.goto(url);
  const ms = await measured(page);
  await page.close();
  return ms;
}

/** Have the page measure from the next press to the frame that shows a step other than the present one. */
const watchReading = (page: Page): Promise<void> =>
  page.evaluate((name) => {
    const present = (): string | undefined =>
      document.querySelector<HTMLElement>('section.plate[data-now="now"]')?.dataset.block;
    const before = present();
    let pressedMs = 0;
    addEventListener('click', ({ timeStamp }) => (pressedMs = timeStamp), { capture: true, once: true });
    const observer = new MutationObserver(() => {
      const block = present();
      if (block === undefined || block === before) return;
      observer.disconnect();
      const painted = new MessageChannel();
      painted.port1.onmessage = () => performance.measure(name, { start: pressedMs, end: performance.now() });
      requestAnimationFrame(() => painted.port2.postMessage(''));
    });
    observer.observe(document.body, {
      childList: true,
      subtree: true,
      attributes: true,
      attributeFilter: ['data-now'],
    });
  }, mark);

/** One reading handed in on a visit that stands at it; fails where the answer does not lie in the log afterwards. */
async function timeReading(context: BrowserContext, url: string): Promise<number> {
  const page = await slowTab(context);
  const driver = new Driver(page);
  await page.goto(url);
  await driver.plate.and(page.locator(`[data-block="${readingBlock}"]`)).waitFor();
  const before = (await driver.log()).length;
  await driver.type(guideRun.answers[readingBlock] as Record<string, string>);
  await page.waitForTimeout(1000);
  await watchReading(page);
  await driver.plate.locator('form.run-readings button[type="submit"]').click();
  const ms = await measured(page);
  const log = await driver.log();
  const added = log.slice(before).some((entry) => entry.kind === 'answer' && entry.block === readingBlock);
  if (before < logEntries || !added) throw new Error(`the reading is not in the log of ${before} entries`);
  await page.close();
  return ms;
}

async function timeFrame(context: BrowserContext, url: string): Promise<number> {
  const page = await slowTab(context);
  await page.goto(url);
  await page.evaluate((name) => {
    const press = ({ timeStamp }: Event): void => {
      const painted = new MessageChannel();
      painted.port1.onmessage = () => performance.measure(name, { start: timeStamp, end: performance.now() });
      requestAnimationFrame(() => painted.port2.postMessage(''));
    };
    addEventListener('click', press, { capture: true, once: true });
  }, mark);
  await page.locator('h1').click();
  const ms = await measured(page);
  await page.close();
  return ms;
}

/** Visit the site once so that it is saved, and keep the visits' logs in it as a person would bring them in. */
async function prepare(context: BrowserContext, root: string, file: string): Promise<void> {
  const page = await context.newPage();
  await page.goto(root);
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    while (active?.state !== 'activated') await new Promise((done) => setTimeout(done, 20));
  });
  await page.goto(`${root}visits/`);
  const buffer = Buffer.from(file);
  await page.locator('fw-visits input[type="file"]').setInputFiles({
    name: 'visits.json',
    mimeType: 'application/json',
    buffer,
  });
  await page.locator('fw-visits a[href*="?visit="]').first().waitFor();
  await page.close();
}

/** What lies in the browser's cache storage. */
async function saved(context: BrowserContext, root: string): Promise<{ bytes: number; files: number }> {
  const page = await context.newPage();
  await page.goto(root);
  const found = await page.evaluate(async () => {
    let bytes = 0;
    let files = 0;
    for (const name of await caches.keys())
      for (const answer of await (await caches.open(name)).matchAll()) {
        files += 1;
        bytes += (await answer.blob()).size;
      }
    return { bytes, files };
  });
  await page.close();
  return found;
}

/** Measure the guide of the site in `folder` beside the bare page in `bareFolder`, turn by turn, so that what else the machine does falls on both. */
export async function measureSpeeds(browser: Browser, folder: string, bareFolder: string): Promise<Speeds> {
  const asked: string[] = [];
  const site = await serve({ folder, port: 0, onRequest: ({ url = '/' }) => asked.push(url) });
  const bareSite = await serve({ folder: bareFolder, port: 0 });
  const phone = { viewport: { width: 390, height: 844 } };
  const context = await browser.newContext(phone);
  const bareContext = await browser.newContext(phone);
  const made = Array.from({ length: readingSamples + 1 }, (_, at) =>
    longLog(`bench-visit-${String(at).padStart(2, '0')}`, logEntries),
  );
  const guide = `${site.url}${guideRun.page}/`;
  const visit = (at: number): string => `${guide}?visit=${made[at]![0]!.visit}`;
  const times = { reading: [], first: [], start: [], load: [], frame: [] } as Record<string, number[]>;
  const keep = async (name: string, taking: Promise<number>): Promise<void> =>
    void times[name]!.push(await taking);
  try {
    await prepare(context, site.url, exportVisits(made));
    const cache = await saved(context, site.url);
    await context.setOffline(true);
    asked.length = 0;
    for (let turn = 0; turn < loadSamples; turn += 1) {
      await keep('load', timeToShow(bareContext, bareSite.url, 'h1'));
      await keep(
        'first',
        timeToShow(context, visit(readingSamples), 'form.run-readings button[type="submit"]'),
      );
      await keep('start', timeToShow(context, guide, '.run-start button[type="submit"]'));
    }
    for (let turn = 0; turn < readingSamples; turn += 1) {
      await keep('frame', timeFrame(bareContext, bareSite.url));
      await keep('reading', timeReading(context, visit(turn)));
    }
    const online = asked.filter((path) => !path.endsWith('/sw.js'));
    if (online.length > 0) throw new Error(`asked of the network while offline: ${online.join(', ')}`);
    return {
      readingToScreen: spread(times.reading!),
      firstStepFromCache: spread(times.first!),
      startFormFromCache: spread(times.start!),
      bareLoad: spread(times.load!),
      bareFrame: spread(times.frame!),
      logEntries: made[0]!.length,
      precacheMb: Math.round(cache.bytes / 1e4) / 100,
      precacheFiles: cache.files,
    };
  } finally {
    await context.close();
    await bareContext.close();
    await site.close();
    await bareSite.close();
  }
}
