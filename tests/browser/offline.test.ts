import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect } from 'vitest';
import { wantedBuild } from '../../src/commands/build-options.ts';
import { buildKillSwitch, buildWorker, listFiles } from '../../src/commands/build-worker.ts';
import { pageKinds } from './support/pages.ts';
import { type NewVisitor, type Site, serveSite, test, type Visitor } from './support/visitor.ts';

/** What a browser says of itself when a request finds no network. */
const noNetwork = /ERR_INTERNET_DISCONNECTED|Failed to load resource|ServiceWorker/;

const statusLine = (page: Page) => page.locator('fw-offline [data-role="saved"]');

describe('after one visit, with the network off', () => {
  /** One visitor for all of these: none of them changes what the browser holds. */
  let away: Promise<Visitor> | undefined;
  const awayFromIt = (newInFile: NewVisitor): Promise<Visitor> => {
    away ??= newInFile({ saves: true }).then(async (visitor) => {
      await visitor.saved(await visitor.open());
      await visitor.context.setOffline(true);
      visitor.expected.push(noNetwork);
      return visitor;
    });
    return away;
  };

  test('every page opens from the phone alone, and the server is asked for nothing', async ({
    newInFile,
  }) => {
    const visitor = await awayFromIt(newInFile);
    const page = await visitor.context.newPage();
    const { files } = await listFiles(wantedBuild().folder);
    const pages = Object.keys(files).filter((path) => path.endsWith('index.html'));
    expect(pages.length).toBeGreaterThan(10);
    visitor.site.requests.length = 0;
    for (const path of await pageKinds()) {
      const response = await page.goto(visitor.site.url + path, { waitUntil: 'domcontentloaded' });
      expect([path, response?.status(), response?.fromServiceWorker()]).toEqual([path, 200, true]);
      expect(await page.locator('h1').count()).toBe(1);
    }
    // All the others by asking for them: to open each would only take longer.
    const missing = await page.evaluate(
      async ([root, paths]) => {
        const got = await Promise.all(
          paths.map(async (path) => {
            const answer = await fetch(root + path).catch(() => undefined);
            return answer?.ok && (await answer.text()).includes('<h1') ? [] : [path];
          }),
        );
        return got.flat();
      },
      [visitor.site.url, pages.map((path) => path.replace(/index\.html$/, ''))] as const,
    );
    expect(missing).toEqual([]);
    // The browser itself looks for a newer worker; the network that a test takes away is not the one it asks.
    expect(visitor.site.requests.filter((path) => path !== '/sw.js')).toEqual([]);
  });

  test('everything a page loads comes from the phone, in a tab opened with no network', async ({
    newInFile,
  }) => {
    const visitor = await awayFromIt(newInFile);
    const page = await visitor.context.newPage();
    const elsewhere: string[] = [];
    page.on('response', (response) => {
      if (!response.fromServiceWorker()) elsewhere.push(response.url());
    });
    await page.goto(`${visitor.site.url}guides/`);
    await page.evaluate(() => document.fonts.ready);
    await page.waitForLoadState('networkidle');
    expect(elsewhere).toEqual([]);
    expect(await page.evaluate(() => document.styleSheets.length)).toBeGreaterThan(0);
  });

  test.for(['guides/?from=mail&x=1', 'guides', 'guides?x=1'])(
    'an address written otherwise still works: %s',
    async (path, { newInFile }) => {
      const visitor = await awayFromIt(newInFile);
      const page = await visitor.context.newPage();
      const response = await page.goto(visitor.site.url + path);
      expect(response?.status()).toBe(200);
      expect(new URL(page.url()).pathname).toBe('/guides/');
    },
  );

  test('an address that leads nowhere gets the page that says so', async ({ newInFile }) => {
    const visitor = await awayFromIt(newInFile);
    const page = await visitor.context.newPage();
    const response = await page.goto(`${visitor.site.url}no/such/page/`);
    expect(response?.status()).toBe(404);
    await page.getByRole('link', { name: 'Front page' }).waitFor();
  });
});

describe('what the page says of it', () => {
  test('"saved" only once every file is there, with their number and size', async ({ saver: visitor }) => {
    const page = await visitor.open('offline/');
    const { files, bytes } = await listFiles(wantedBuild().folder);
    const count = Object.keys(files).length;
    await statusLine(page)
      .filter({ hasText: `Saved for offline use: ${count} files` })
      .waitFor();
    const inCache = await page.evaluate(async () => {
      const name = (await caches.keys()).find((each) => each.includes(' files '));
      return name ? (await (await caches.open(name)).keys()).length : 0;
    });
    expect(inCache).toBe(count + 1);
    expect(await statusLine(page).textContent()).toContain(
      `${(bytes / 1e6).toFixed(1)} MB`.replace(/^0\..*/, 'kB'),
    );
  });

  test('files that the browser threw out are seen, and saved again', async ({ saver: visitor }) => {
    const page = await visitor.open('offline/');
    await statusLine(page).filter({ hasText: 'Saved for offline use' }).waitFor();
    const left = () =>
      page.evaluate(async () => {
        const name = (await caches.keys()).find((each) => each.includes(' files '))!;
        return (await (await caches.open(name)).keys()).length;
      });
    const before = await left();
    await page.evaluate(async () => {
      const name = (await caches.keys()).find((each) => each.includes(' files '))!;
      const cache = await caches.open(name);
      for (const key of (await cache.keys()).filter(({ url }) => url.includes('/guides/')))
        await cache.delete(key);
    });
    expect(await left()).toBeLessThan(before);
    await page.reload();
    await statusLine(page).filter({ hasText: 'Saved for offline use' }).waitFor();
    await expect.poll(left).toBe(before);
  });

  test('the page of what is stored counts sites and visits', async ({ saver: visitor }) => {
    const page = await visitor.open('offline/');
    for (const row of ['sites', 'visits', 'open', 'entries'])
      await page.locator(`[data-row="${row}"]`).filter({ hasText: '0' }).waitFor();
    await page
      .locator('[data-row="used"]')
      .filter({ hasText: /\d [kM]B/ })
      .waitFor();
  });
});

describe('a site that changes on its host', () => {
  let folder: string;
  let served: Site;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'faultwright-site-'));
    await cp(wantedBuild().folder, folder, { recursive: true });
    served = await serveSite(folder);
  });
  afterAll(async () => {
    await served.close();
    await rm(folder, { recursive: true });
  });

  /** Publish a version whose limits page says something else, and have the visitor's browser find it. */
  async function publish(page: Page, heading: string): Promise<void> {
    const path = join(folder, 'about/limits/index.html');
    const html = await readFile(path, 'utf8');
    await writeFile(path, html.replace(/(<h1[^>]*>).*?(<\/h1>)/, `$1${heading}$2`));
    await buildWorker(folder, '/');
    await page.evaluate(async () => {
      const registration = (await navigator.serviceWorker.getRegistration())!;
      await registration.update();
    });
    await expect
      .poll(() => page.evaluate(async () => !!(await navigator.serviceWorker.getRegistration())?.waiting))
      .toBe(true);
  }

  const headingOf = async (page: Page): Promise<string | null> => {
    await page.goto(`${served.url}about/limits/`);
    return page.locator('h1').textContent();
  };

  const putVisit = (page: Page, more: object) =>
    page.evaluate(
      (card) =>
        new Promise<void>((done, fail) => {
          const opening = indexedDB.open('faultwright');
          opening.onerror = () => fail(opening.error);
          opening.onsuccess = () => {
            const tx = opening.result.transaction('visits', 'readwrite');
            tx.objectStore('visits').put(card);
            tx.oncomplete = () => {
              opening.result.close();
              done();
            };
          };
        }),
      {
        id: 'visit-1',
        guide: 'x',
        changedAt: '2030-01-01T00:00:00Z',
        begunAt: '2030-01-01T00:00:00Z',
        ...more,
      },
    );

  test('changes nothing while a visit is open, not even when every tab is closed', async ({ newVisitor }) => {
    const visitor = await newVisitor({ saves: true, site: served });
    const page = await visitor.open('offline/');
    await visitor.saved(page);
    await page.locator('[data-row="visits"]').filter({ hasText: '0' }).waitFor();
    await putVisit(page, {});
    const before = await headingOf(page);
    await publish(page, 'Changed once');
    expect(await headingOf(page)).toBe(before);
    await page.goto(`${served.url}offline/`);
    await page.getByText('waits until your open visit is closed').waitFor();
    expect(await page.getByRole('button', { name: 'Use the newer version' }).isVisible()).toBe(false);

    // With no tab left to hold it back, the new worker sets to work; the pages are still those of the visit.
    await page.close();
    const waits = async (): Promise<boolean> => {
      const later = await visitor.context.newPage();
      const heading = await headingOf(later);
      expect(heading).toBe(before);
      const waiting = await later.evaluate(
        async () => !!(await navigator.serviceWorker.getRegistration())?.waiting,
      );
      if (waiting) await later.close();
      return waiting;
    };
    await expect.poll(waits, { interval: 500 }).toBe(false);
    expect(await headingOf(visitor.context.pages()[0]!)).toBe(before);
  });

  test('goes over when the visit is closed and the person says so', async ({ newVisitor }) => {
    const visitor = await newVisitor({ saves: true, site: served });
    const page = await visitor.open('offline/');
    await visitor.saved(page);
    const before = await headingOf(page);
    await publish(page, 'Changed twice');
    await page.goto(`${served.url}offline/`);
    const button = page.getByRole('button', { name: 'Use the newer version' });
    await button.waitFor();
    expect(await headingOf(page)).toBe(before);
    await page.goto(`${served.url}offline/`);
    await Promise.all([page.waitForEvent('load'), button.click()]);
    await visitor.context.setOffline(true);
    visitor.expected.push(noNetwork);
    expect(await headingOf(page)).toBe('Changed twice');
    await page.goto(`${served.url}offline/`);
    await statusLine(page).filter({ hasText: 'Saved for offline use' }).waitFor();
    expect(await button.isVisible()).toBe(false);
  });

  test('is not saved from half a deploy, and is when the rest is there', async ({ newVisitor }) => {
    const visitor = await newVisitor({ saves: true, site: served });
    visitor.expected.push(/integrity|ServiceWorker|404/);
    const path = join(folder, 'guides/index.html');
    const html = await readFile(path);
    await writeFile(path, `${html}<!-- of another version -->`);
    const page = await visitor.open('offline/');
    await statusLine(page).filter({ hasText: 'Not saved' }).waitFor();
    await writeFile(path, html);
    await page.reload();
    await statusLine(page).filter({ hasText: 'Saved for offline use' }).waitFor();
  });

  test('is taken back by the kill switch, which leaves what the person entered', async ({ newVisitor }) => {
    const visitor = await newVisitor({ saves: true, site: served });
    const page = await visitor.open('offline/');
    await visitor.saved(page);
    await page.locator('[data-row="visits"]').filter({ hasText: '0' }).waitFor();
    await putVisit(page, {});
    await buildKillSwitch(folder, '/');
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())!.update());
    await expect.poll(() => page.evaluate(async () => (await caches.keys()).length)).toBe(0);
    await expect
      .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length))
      .toBe(0);
    const databases = await page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name));
    expect(databases).toContain('faultwright');
    await buildWorker(folder, '/');
  });
});

describe('a host that sends /x/index.html to /x/', () => {
  test('does not keep pages from opening with no network', async ({ saver: visitor, newVisitor }) => {
    const host = createServer(async (request, response) => {
      const url = request.url ?? '/';
      if (url.endsWith('/index.html')) {
        response.writeHead(308, { Location: url.replace(/index\.html$/, '') }).end();
        return;
      }
      const from = await fetch(new URL(url, visitor.site.url));
      response.writeHead(from.status, { 'Content-Type': from.headers.get('content-type') ?? '' });
      response.end(Buffer.from(await from.arrayBuffer()));
    });
    await new Promise<void>((done) => host.listen(0, '127.0.0.1', done));
    const address = host.address() as { port: number };
    const there = await newVisitor({
      saves: true,
      site: { ...visitor.site, url: `http://127.0.0.1:${address.port}/` },
    });
    const page = await there.open();
    await there.saved(page);
    await there.context.setOffline(true);
    const response = await page.goto(`${there.site.url}guides/`);
    expect([response?.status(), response?.fromServiceWorker()]).toEqual([200, true]);
    host.closeAllConnections();
    host.close();
  });
});
