import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { test as base, expect } from 'vitest';
import { launchBrowser } from '../../../src/commands/browser.ts';
import { wantedBuild } from '../../../src/commands/build-options.ts';
import { type Serving, serve } from '../../../src/commands/static-server.ts';

/** The built site, served, with a count of what it was asked for. */
export interface Site extends Serving {
  /** Paths asked for since the last `requests.length = 0`. */
  requests: string[];
}

export async function serveSite(folder = wantedBuild().folder, basePath = '/'): Promise<Site> {
  const requests: string[] = [];
  const serving = await serve({
    folder,
    base: basePath,
    port: 0,
    onRequest: ({ url = '' }) => requests.push(url),
  });
  return { ...serving, requests };
}

/** One person with a phone: a browser of their own with nothing stored. Everything that goes wrong in it is noted. */
export class Visitor {
  /** What must not happen: errors in the console, requests to other hosts. */
  readonly wrong: string[] = [];
  /** Console messages that the test itself brings about (with the network off, say). */
  readonly expected: RegExp[] = [];
  readonly context: BrowserContext;
  readonly site: Site;

  constructor(context: BrowserContext, site: Site) {
    this.context = context;
    this.site = site;
    context.setDefaultTimeout(20_000);
    const { origin } = new URL(site.url);
    context.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(`${origin}/`) && !/^(data|blob|about):/.test(url))
        this.wrong.push(`request to ${url}`);
    });
    context.on('console', (message) => {
      if (message.type() === 'error') this.note(`console: ${message.text()} (${message.location().url})`);
    });
    context.on('weberror', (error) => this.note(`thrown: ${error.error().message}`));
  }

  private note(text: string): void {
    if (!this.expected.some((pattern) => pattern.test(text))) this.wrong.push(text);
  }

  /** A new tab at a path of the site. */
  async open(path = ''): Promise<Page> {
    const page = await this.context.newPage();
    await page.goto(this.site.url + path);
    return page;
  }

  /** Wait until every file of the site lies in this browser. */
  async saved(page: Page): Promise<void> {
    await page.evaluate(async () => {
      const { active } = await navigator.serviceWorker.ready;
      while (active?.state !== 'activated') await new Promise((done) => setTimeout(done, 10));
    });
  }
}

let browser: Promise<Browser> | undefined;
let site: Promise<Site> | undefined;

/** The phone in the visitor's hand. */
export const phone = { viewport: { width: 390, height: 844 }, locale: 'en-US', timezoneId: 'UTC' } as const;

export const lightings = ['sun', 'shade', 'dark'] as const;

export interface VisitorOptions {
  /** Let the page save itself for offline use. Off unless asked for: it takes two seconds of every test. */
  saves?: boolean;
  /** The lighting chosen, as if on an earlier visit. */
  lighting?: (typeof lightings)[number];
  /** Another site than the one built from here. */
  site?: Site;
  /** How the phone differs from the usual one. */
  phone?: BrowserContextOptions;
}

export type NewVisitor = (options?: VisitorOptions) => Promise<Visitor>;

/** Hands out visitors; when they are no longer used, nothing may have gone wrong that was not expected. */
async function visitors(use: (newVisitor: NewVisitor) => Promise<void>): Promise<void> {
  const all: Visitor[] = [];
  await use(async (options = {}) => {
    browser ??= launchBrowser();
    site ??= serveSite();
    const context = await (await browser).newContext({ ...phone, ...options.phone });
    // A browser that has no service workers, rather than one whose workers are never there when asked for.
    if (!options.saves)
      await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'serviceWorker'));
    if (options.lighting)
      await context.addInitScript((name) => {
        // A tab that shows no page yet has no storage.
        if (location.protocol === 'http:') localStorage.setItem('faultwright-lighting', name);
      }, options.lighting);
    const visitor = new Visitor(context, options.site ?? (await site));
    all.push(visitor);
    return visitor;
  });
  for (const { context } of all) await context.close();
  expect(all.flatMap(({ wrong }) => wrong)).toEqual([]);
}

/**
 * A test with a `visitor`, or with several made by `newVisitor`; each has a browser of its own with nothing stored. When
 * the test is over, nothing may have gone wrong in any of them that the test did not expect. The tests of a file that
 * change nothing may share one browser, by `newInFile`: each is then told so at the end of the file.
 */
export const test = base.extend<{
  newVisitor: NewVisitor;
  newInFile: NewVisitor;
  visitor: Visitor;
  /** A visitor whose browser saves the site for offline use. */
  saver: Visitor;
}>({
  // biome-ignore lint/correctness/noEmptyPattern: Vitest reads from the pattern which fixtures this one needs.
  newVisitor: async ({}, use) => visitors(use),
  // biome-ignore lint/correctness/noEmptyPattern: as above.
  newInFile: [async ({}, use) => visitors(use), { scope: 'file' }],
  visitor: async ({ newVisitor }, use) => use(await newVisitor()),
  saver: async ({ newVisitor }, use) => use(await newVisitor({ saves: true })),
});
