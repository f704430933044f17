/** Weighs every worksheet's page, and times a keystroke on some of them and the sheet check, as a slow phone has them. */
import type { Browser, Page } from 'playwright-core';
import { worksheets } from '../worksheets/index.ts';
import { fileOf, type Weight, weigh } from './bench-bytes.ts';
import { slowPage } from './bench-slow.ts';
import { type Spread, spread } from './bench-speed.ts';
import { serve } from './static-server.ts';

const checkSamples = 7;

export interface WorksheetBench {
  /** Each worksheet opened with nothing kept, to network idle. */
  pages: readonly ({ page: string } & Weight)[];
  /** From a key's own time until the page says what comes of it; without layout and paint. */
  keystroke: Spread;
  /** From the choice of another site until every finding stands on the page; without layout and paint. */
  sheetCheck: Spread;
}

/** Worksheets typed into, with a field, values for it, and a link that fills the rest: with a curve, a list, tables. */
const typed: readonly { id: string; field: string; values: readonly string[]; query: string }[] = [
  {
    id: 'string-window',
    field: 'modules',
    values: ['9', '10', '11', '12'],
    query:
      'vocVolts=41&vmpVolts=34&vocPerC=-0.28&vmpPerC=-0.35&modules=8&recordLowC=-30&hotCellC=65&hotMargin=3&startVolts=150&trackLowVolts=120&trackHighVolts=425&maxVolts=500',
  },
  {
    id: 'dc-path',
    field: 'amps',
    values: ['90', '110', '125'],
    query: 'batteryVolts=52.4&inverterVolts=51.4&amps=120&lengthM=1.8&areaMm2=4/0 AWG',
  },
  {
    id: 'motor-start',
    field: 'lockedAmps',
    values: ['40', '52', '61'],
    query: 'motorVolts=240&lockedAmps=48&sourceVolts=240&lengthM=60&areaMm2=6 AWG&surgeVa=12000',
  },
  {
    id: 'leg-volts',
    field: 'watts1',
    values: ['1500', '700', '250'],
    query: 'neutral=open',
  },
];

/** Have the page note, for each `event`, how long after its own time the page last changed, two frames looked at. */
const watch = (page: Page, event: string): Promise<void> =>
  page.evaluate((name) => {
    const times: number[] = [];
    Object.assign(globalThis, { benchTimes: times });
    let changedMs = 0;
    new MutationObserver(() => {
      changedMs = performance.now();
    }).observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true });
    addEventListener(
      name,
      ({ timeStamp }) => {
        changedMs = 0;
        // Two frames: what the page puts off to the first is its work as well.
        requestAnimationFrame(() =>
          requestAnimationFrame(() => {
            if (changedMs > 0) times.push(changedMs - timeStamp);
          }),
        );
      },
      { capture: true },
    );
  }, event);

const timesOf = (page: Page): Promise<number[]> =>
  page.evaluate(() => (globalThis as unknown as { benchTimes: number[] }).benchTimes);

export async function measureWorksheets(browser: Browser, folder: string): Promise<WorksheetBench> {
  const asked: string[] = [];
  const site = await serve({ folder, port: 0, onRequest: ({ url = '/' }) => asked.push(url) });
  const newContext = () =>
    browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  try {
    const pages: ({ page: string } & Weight)[] = [];
    for (const { id } of worksheets) {
      const context = await newContext();
      const page = await context.newPage();
      asked.length = 0;
      await page.goto(`${site.url}worksheets/${id}/`, { waitUntil: 'networkidle' });
      await page.locator('[data-worksheet][data-ready]').waitFor();
      pages.push({ page: `worksheets/${id}`, ...(await weigh(folder, asked.map(fileOf))) });
      await context.close();
    }

    const keys: number[] = [];
    for (const { id, field, values, query } of typed) {
      const context = await newContext();
      const page = await context.newPage();
      await page.goto(`${site.url}worksheets/${id}/?units=metric&${query}`);
      await page.locator('.headline dd').first().waitFor();
      await slowPage(page);
      await watch(page, 'input');
      const box = page.locator(`#w-${field}`);
      for (const value of values) {
        await box.selectText();
        for (const key of value) {
          await page.keyboard.type(key);
          await page.waitForTimeout(400);
        }
      }
      const times = await timesOf(page);
      if (times.length < values.length) throw new Error(`${id} did not follow what was typed`);
      keys.push(...times);
      await context.close();
    }

    const context = await newContext();
    const page = await context.newPage();
    await page.goto(`${site.url}site/check/`);
    await page.locator('.sheet-check[data-ready] [role="status"]').waitFor();
    await slowPage(page);
    await watch(page, 'change');
    const pick = page.locator('.sheet-check select').first();
    for (let at = 0; at < checkSamples; at += 1) {
      await pick.selectOption({ index: (at + 1) % 2 });
      await page.waitForTimeout(1500);
    }
    const checks = await timesOf(page);
    if (checks.length < checkSamples) throw new Error('the sheet check did not follow the choice of a site');
    await context.close();
    return { pages, keystroke: spread(keys), sheetCheck: spread(checks) };
  } finally {
    await site.close();
  }
}
