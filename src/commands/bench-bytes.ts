/** What a page costs to fetch: every file asked of the server, at gzip -9, by kind. */
import { readFile } from 'node:fs/promises';
import { extname } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser } from 'playwright-core';
import { sallowCreek } from '../site/demo.ts';
import { type BenchRun, benchRuns, guideRun } from './bench-runs.ts';
import { Driver } from './drive-run.ts';
import { pathIn, type Serving, serve } from './static-server.ts';

/** Kilobytes of 1000 bytes at gzip -9, without headers. Each file counts once: asked for again it answers 304, empty. */
export interface Weight {
  htmlKb: number;
  cssKb: number;
  jsKb: number;
  /** The machine that a run is judged by. */
  jsonKb: number;
  /** Icons and the manifest, where the browser asks for them. */
  otherKb: number;
  /** All of these together: what the budget is for. Fonts stand outside it. */
  totalKb: number;
  fontKb: number;
}

export interface PageWeight extends Weight {
  page: string;
  /** The blocks come to, the last of them after the first judged reading. */
  through: readonly string[];
}

const kinds: Readonly<Record<string, Exclude<keyof Weight, 'totalKb' | 'otherKb'>>> = {
  '.html': 'htmlKb',
  '.css': 'cssKb',
  '.js': 'jsKb',
  '.json': 'jsonKb',
  '.woff2': 'fontKb',
};

/** A path asked for, as the file of the site that answers it. */
export const fileOf = (urlPath: string): string => {
  const path = decodeURIComponent(urlPath.split('?', 1)[0] ?? '').replace(/^\//, '');
  return path === '' || path.endsWith('/') ? `${path}index.html` : path;
};

/** Weigh files of a site, each by its path from the folder. */
export async function weigh(folder: string, files: Iterable<string>): Promise<Weight> {
  const bytes = { htmlKb: 0, cssKb: 0, jsKb: 0, jsonKb: 0, otherKb: 0, fontKb: 0 };
  for (const file of new Set(files)) {
    const path = pathIn(folder, file);
    if (path === undefined) throw new Error(`${file} is no file of the site`);
    bytes[kinds[extname(file)] ?? 'otherKb'] += gzipSync(await readFile(path), { level: 9 }).length;
  }
  const { fontKb, ...others } = bytes;
  const kb = (count: number): number => Math.round(count / 10) / 100;
  const rounded = Object.fromEntries(Object.entries(others).map(([kind, count]) => [kind, kb(count)]));
  const total = Object.values(others).reduce((sum, count) => sum + count, 0);
  return { ...(rounded as Omit<Weight, 'totalKb' | 'fontKb'>), totalKb: kb(total), fontKb: kb(fontKb) };
}

/** Wait until nothing has been asked for during a second. */
async function idle(asked: readonly string[]): Promise<void> {
  for (let count = -1; count !== asked.length; ) {
    count = asked.length;
    await new Promise((done) => setTimeout(done, 1000));
  }
}

/** The pages' weights, and which HTML files the guide's run fetched. */
export interface Weighed {
  pages: PageWeight[];
  guideHtml: readonly string[];
}

/** Open each guide and procedure as a first visit with nothing kept, and run it through its first judged reading. */
export async function weighPages(browser: Browser, folder: string): Promise<Weighed> {
  const asked: string[] = [];
  const site = await serve({ folder, port: 0, onRequest: ({ url = '/' }) => asked.push(url) });
  const weighed: Weighed = { pages: [], guideHtml: [] };
  try {
    for (const run of benchRuns) {
      asked.length = 0;
      const through = await runOnce(browser, site, run, asked);
      const files = asked.map(fileOf);
      if (run === guideRun) weighed.guideHtml = [...new Set(files)].filter((file) => file.endsWith('.html'));
      weighed.pages.push({ page: run.page, ...(await weigh(folder, files)), through });
    }
  } finally {
    await site.close();
  }
  return weighed;
}

async function runOnce(
  browser: Browser,
  site: Serving,
  { page: path, answers, strings }: BenchRun,
  asked: readonly string[],
): Promise<string[]> {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  try {
    const page = await context.newPage();
    await page.clock.install();
    await page.goto(`${site.url}${path}/`, { waitUntil: 'networkidle' });
    const driver = new Driver(page);
    const subject = strings ? sallowCreek.strings[0]!.name : undefined;
    await driver.start({ site: sallowCreek.name, ...(subject ? { subject } : {}) });
    const through = await driver.drive({ answers });
    const judged = (await driver.log()).some((entry) => entry.kind === 'answer' && entry.readings?.length);
    if (!judged) throw new Error(`${path} came to no judged reading: ${through.join(', ')}`);
    await idle(asked);
    return through;
  } finally {
    await context.close();
  }
}
