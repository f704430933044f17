import type { BrowserContextOptions, Page } from 'playwright-core';
import { demoSites } from '../../../src/site/demo.ts';
import { exportSites } from '../../../src/site/exchange.ts';
import type { SiteSheet } from '../../../src/site/sheet.ts';
import { siteWords } from '../../../src/words/en/site.ts';
import type { NewVisitor, Visitor } from './visitor.ts';

/** From the front page: keep a site on this phone and use it, as a demo where it is one, else from its file. */
export async function keepSite(page: Page, root: string, sheet: SiteSheet): Promise<void> {
  await page.goto(root);
  await page.locator('main a[href$="/site/"]').first().click();
  if (demoSites.includes(sheet)) {
    await page.getByRole('button', { name: siteWords.takeDemo(sheet.name) }).click();
  } else {
    await page.locator('#import-file').setInputFiles({
      name: 'sites.json',
      mimeType: 'application/json',
      buffer: Buffer.from(exportSites([sheet])),
    });
    await page.getByRole('button', { name: `${siteWords.use}: ${sheet.name}` }).click();
  }
  await page.locator('.tag', { hasText: siteWords.current }).waitFor();
}

/** A site as it is kept on a phone: a demo as it is; a sheet that is none is another site, and goes there as a file. */
export const asKept = (sheet: SiteSheet): SiteSheet =>
  demoSites.find((demo) => JSON.stringify(demo) === JSON.stringify(sheet)) ?? {
    ...sheet,
    id: 'changed-site',
    name: 'Changed site',
  };

const kept = new Map<string, Promise<BrowserContextOptions['storageState']>>();

/** A visitor whose phone keeps a site and uses it, as the site page leaves it; done on that page once for each site. */
export async function visitorWith(newVisitor: NewVisitor, sheet: SiteSheet): Promise<Visitor> {
  const name = JSON.stringify(sheet);
  if (!kept.has(name)) {
    const visitor = await newVisitor();
    await keepSite(await visitor.context.newPage(), visitor.site.url, sheet);
    kept.set(name, visitor.context.storageState({ indexedDB: true }));
  }
  const storageState = await kept.get(name);
  return newVisitor(storageState ? { phone: { storageState } } : {});
}
