/** Pictures of the main pages in .screens/, on a phone and on a desk, in each of the three lightings. */
import { mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { launchBrowser } from './browser.ts';
import { build } from './build.ts';
import { wantedBuild } from './build-options.ts';
import { isFresh } from './build-stamp.ts';
import { root } from './project.ts';
import { runScenes } from './run-scenes.ts';
import { serve } from './static-server.ts';

const pages = {
  front: '',
  guides: 'guides/',
  guide: 'guides/pv-no-start/',
  map: 'guides/pv-no-start/map/',
  'battery-link': 'guides/battery-link/',
  'fans-heat': 'guides/fans-heat/',
  'uneven-legs': 'guides/uneven-legs/',
  parts: 'parts/',
  search: 'search/?q=pannels%20no%20wattts',
  library: 'library/',
  article: 'library/end-resistors/',
  procedures: 'procedures/',
  isolate: 'procedures/isolate/',
  causes: 'causes/',
  worksheets: 'worksheets/',
  'string-window': 'worksheets/string-window/',
  sites: 'site/',
  'site-sheet': 'site/edit/?site=new',
  visits: 'visits/',
  offline: 'offline/',
  limits: 'about/limits/',
};

/** Pages about the site in use, which the run before has chosen. */
const ofSite = {
  'sheet-check': 'site/check/',
  'expected-card': 'site/card/',
  'leg-volts': 'worksheets/leg-volts/?units=us&neutral=open',
  trace: 'worksheets/trace/',
};

const sizes = { phone: { width: 390, height: 844 }, desk: { width: 1280, height: 900 } };
const lightings = ['sun', 'shade', 'dark'];

const options = wantedBuild();
if (!(await isFresh(options))) await build(options);
const folder = join(root, '.screens');
await rm(folder, { recursive: true, force: true });
await mkdir(folder);
const site = await serve({ ...options, port: 0 });
const browser = await launchBrowser();
try {
  for (const [size, viewport] of Object.entries(sizes))
    for (const lighting of lightings) {
      const context = await browser.newContext({ viewport, serviceWorkers: 'block' });
      await context.addInitScript((name) => localStorage.setItem('faultwright-lighting', name), lighting);
      const page = await context.newPage();
      const shoot = async (name: string, where: Page = page): Promise<void> => {
        await where.evaluate(() => document.fonts.ready);
        await where.screenshot({
          path: join(folder, `${name}-${size}-${lighting}.png`),
          animations: 'disabled',
        });
      };
      for (const [name, path] of Object.entries(pages)) {
        await page.goto(site.url + path, { waitUntil: 'networkidle' });
        await shoot(name);
      }
      await runScenes(page, site.url, shoot);
      for (const [name, path] of Object.entries(ofSite)) {
        await page.goto(site.url + path, { waitUntil: 'networkidle' });
        await shoot(name);
      }
      await context.close();
      console.log(`${size}, ${lighting}`);
    }
} finally {
  await browser.close();
  await site.close();
}
console.log(`Pictures are in ${folder}`);
