import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { cardOf } from '../../src/expected/card.ts';
import { checkSite } from '../../src/sheet-check/run.ts';
import { demoSites, sallowCreek, ternLedge } from '../../src/site/demo.ts';
import { sheetCheckWords as words } from '../../src/words/en/sheet-check.ts';
import { axeFindings } from './support/axe.ts';
import { overflow } from './support/pages.ts';
import { visitorWith } from './support/site-on-phone.ts';
import { test, type Visitor } from './support/visitor.ts';

/** The page once a site is chosen and judged. */
async function opened(visitor: Visitor, path: string): Promise<Page> {
  const page = await visitor.open(path);
  await page.locator('.sheet-check[data-ready]').waitFor();
  return page;
}

const countsOf = (sheet: (typeof demoSites)[number]): string => {
  const { broken, kept, notChecked } = checkSite(sheet);
  return words.counts(broken.length, kept.length, notChecked.length);
};

describe('the check of a whole site', () => {
  test('judges the site in use, and another by the keyboard alone', async ({ newVisitor }) => {
    const visitor = await visitorWith(newVisitor, sallowCreek);
    const page = await opened(visitor, 'site/check/');
    const status = page.getByRole('status').filter({ hasText: countsOf(sallowCreek) });
    await status.waitFor();
    const { broken } = checkSite(sallowCreek);
    expect(
      await page.locator('[data-finding]').evaluateAll((all) => all.map((each) => each.dataset.finding)),
    ).toEqual(broken.map(({ check }) => check));
    await page.locator('.sheet-check select').focus();
    await page.keyboard.type(ternLedge.name.slice(0, 4));
    await page
      .getByRole('status')
      .filter({ hasText: countsOf(ternLedge) })
      .waitFor();
    // Every finding leads to the worksheet behind it, with the site's numbers in.
    const link = page
      .locator('[data-finding] a[href*="/worksheets/"], .sheet-check a[href*="/worksheets/"]')
      .first();
    await link.click();
    await page.locator('[data-worksheet][data-ready]').waitFor();
    await page.locator('.headline dd').first().waitFor();
  });

  test('works with no network, and prints without the controls', async ({ saver: visitor }) => {
    await visitor.saved(await visitor.open());
    await visitor.context.setOffline(true);
    visitor.expected.push(/ERR_INTERNET_DISCONNECTED|Failed to load resource|ServiceWorker/);
    const page = await opened(visitor, 'site/check/');
    await page
      .getByRole('status')
      .filter({ hasText: countsOf(demoSites[0]!) })
      .waitFor();
    const print = page.getByRole('button', { name: words.print });
    expect(await print.isVisible()).toBe(true);
    await page.emulateMedia({ media: 'print' });
    expect(await print.isVisible()).toBe(false);
    expect(await page.locator('.topbar-search').isVisible()).toBe(false);
    expect(await page.locator('table').first().isVisible()).toBe(true);
  });

  for (const path of ['site/check/', 'site/card/'])
    test(`${path} is judged whole at 320 pixels: axe finds nothing, nothing reaches past`, async ({
      newVisitor,
    }) => {
      const visitor = await newVisitor({ phone: { bypassCSP: true, viewport: { width: 320, height: 640 } } });
      const page = await opened(visitor, path);
      await page.locator('table').first().waitFor();
      expect(await axeFindings(page)).toEqual([]);
      expect(await overflow(page)).toEqual([]);
    });
});

describe('the card of expected readings', () => {
  test('has a line for each reading that the sheet has, and follows the site chosen', async ({ visitor }) => {
    const page = await opened(visitor, 'site/card/');
    for (const sheet of demoSites) {
      await page.locator('.sheet-check select').selectOption(sheet.id);
      await page.getByRole('heading', { name: sheet.name }).first().waitFor();
      expect(await page.locator('.readings-card tbody tr:has(td)').count()).toBe(cardOf(sheet).length);
    }
  });
});
