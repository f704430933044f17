import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { guides } from '../../machines/index.ts';
import { wantedBuild } from '../../src/commands/build-options.ts';
import { readIndex } from '../../src/commands/search-input.ts';
import type { SearchIndex } from '../../src/search/search-index.ts';
import { axeFindings } from './support/axe.ts';
import { builtPages } from './support/built-pages.ts';
import { overflow } from './support/pages.ts';
import { test, type Visitor } from './support/visitor.ts';

const box = (page: Page) => page.locator('input[name="q"]');
const hits = (page: Page) => page.locator('.search-hits > li');
const status = (page: Page) => page.locator('[data-role="status"]');

/** The search page once its index is there. */
async function opened(visitor: Visitor, query = ''): Promise<Page> {
  const page = await visitor.open(`search/${query}`);
  await page.locator('fw-search[data-ready]').waitFor({ state: 'attached' });
  return page;
}

describe('the index', () => {
  test('is that of the files, and every address in it leads to its page and place', async () => {
    const { folder } = wantedBuild();
    const index = JSON.parse(await readFile(join(folder, 'search.json'), 'utf8')) as SearchIndex;
    expect(index).toEqual(JSON.parse(JSON.stringify(readIndex())));
    const pages = new Map((await builtPages(folder)).map((page) => [page.path, page]));
    const lost = index.entries
      .map(([, , url]) => url)
      .filter((url) => {
        const [path = '', place] = url.split('#');
        const page = pages.get(path);
        return !page || (place !== undefined && !page.ids.has(place));
      });
    expect(lost).toEqual([]);
  });
});

describe('typing', () => {
  test('finds in a person’s own words, slips and all, with kind and reason', async ({ visitor }) => {
    const page = await opened(visitor);
    await box(page).pressSequentially('pannels no wattts');
    const first = hits(page).first();
    await first.filter({ hasText: 'PV volts are there' }).waitFor();
    expect(await first.locator('a').getAttribute('href')).toBe('/guides/pv-no-start/');
    expect(await first.locator('.search-kind').textContent()).toBe('Find the fault');
    expect(await first.textContent()).toContain('“wattts” read as “watts”');
    expect(await first.locator('mark').count()).toBeGreaterThan(0);
  });

  test('is told to those who cannot see it, once it pauses, and the address keeps it', async ({
    visitor,
  }) => {
    const page = await opened(visitor);
    await box(page).pressSequentially('neutral');
    await expect.poll(() => status(page).textContent()).toMatch(/^\d+ results?$/);
    await expect.poll(() => new URL(page.url()).searchParams.get('q')).toBe('neutral');
    expect(await status(page).getAttribute('role')).toBe('status');
  });

  test('nothing fits: says so, names the words it does not know, and the symptoms stand below', async ({
    visitor,
  }) => {
    const page = await opened(visitor);
    await box(page).pressSequentially('washing turnips');
    await page.locator('.search-nothing').filter({ hasText: 'Nothing here fits' }).waitFor();
    expect(await page.locator('.search-nothing').textContent()).toContain('“turnips”');
    await expect.poll(() => status(page).textContent()).toContain('Nothing here fits');
    const symptoms = page.locator('.search-symptoms a');
    expect(await symptoms.count()).toBe(guides.length);
    await symptoms.first().click();
    await page.waitForURL(`**/guides/${guides[0]!.id}/`);
  });

  test('what is typed is shown as text, whatever it is', async ({ visitor }) => {
    const page = await opened(
      visitor,
      `?q=${encodeURIComponent('<img src=x onerror=document.title=1> ((( fuse')}`,
    );
    await page.locator('fw-search h2').waitFor();
    expect(await page.locator('fw-search img').count()).toBe(0);
    expect(await box(page).inputValue()).toContain('<img src=x');
    expect(await page.title()).toContain('Search');
  });
});

describe('with the keyboard alone', () => {
  test('from the box to the results and back; a result opens, and going back finds the words again', async ({
    visitor,
  }) => {
    const page = await opened(visitor);
    await box(page).focus();
    await page.keyboard.type('pre-charge resistor');
    await hits(page).nth(1).waitFor();
    const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
    await page.keyboard.press('ArrowDown');
    const first = await focused();
    await page.keyboard.press('ArrowDown');
    expect(await focused()).not.toBe(first);
    await page.keyboard.press('ArrowUp');
    expect(await focused()).toBe(first);
    await page.keyboard.press('Escape');
    expect(await box(page).evaluate((input) => input === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    expect(await focused()).toBe(first);
    await page.keyboard.press('Enter');
    await page.waitForURL((url) => !url.pathname.startsWith('/search/'));
    await page.goBack();
    await hits(page).nth(1).waitFor();
    expect(await box(page).inputValue()).toBe('pre-charge resistor');
    expect(await hits(page).first().locator('a').textContent()).toBe(first);
  });
});

describe('reached from anywhere', () => {
  test('by a plain link, and without a script the page offers the symptoms', async ({ newVisitor }) => {
    const visitor = await newVisitor({ phone: { javaScriptEnabled: false } });
    const page = await visitor.open('causes/');
    await page.locator('.topbar a[href="/search/"]').click();
    await page.waitForURL('**/search/');
    expect(await page.locator('noscript').textContent()).toContain('needs a script');
    expect(await page.locator('.search-symptoms a').count()).toBe(guides.length);
    await box(page).fill('fans');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/search/?q=fans');
  });

  test('with no network', async ({ saver: visitor }) => {
    visitor.expected.push(/ERR_INTERNET_DISCONNECTED|Failed to load resource|ServiceWorker/);
    const front = await visitor.open();
    await visitor.saved(front);
    await visitor.context.setOffline(true);
    const page = await opened(visitor, '?q=lost%20nuetral');
    await hits(page).first().waitFor();
    expect(await page.locator('.search-hits').textContent()).toContain('neutral');
  });
});

describe('seen', () => {
  test('axe finds nothing with results and with none, nothing reaches past 320 pixels, and results are large enough to tap', async ({
    newVisitor,
  }) => {
    const visitor = await newVisitor({ phone: { bypassCSP: true, viewport: { width: 320, height: 640 } } });
    const page = await opened(visitor);
    for (const words of [
      'lights dim when the pump starts',
      'washing powder',
      'powder fuse washing machine door',
    ]) {
      await box(page).fill(words);
      expect([words, ...(await axeFindings(page)), ...(await overflow(page))]).toEqual([words]);
    }
    await box(page).fill('fuse');
    const heights = await page
      .locator('.search-hits a')
      .evaluateAll((links) => links.map((link) => link.getBoundingClientRect().height));
    expect(heights.length).toBeGreaterThan(0);
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(47.5);
  });
});
