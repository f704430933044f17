import type { Page } from 'playwright-core';
import { describe, expect } from 'vitest';
import { wantedBuild } from '../../src/commands/build-options.ts';
import { filesUnder } from '../../src/commands/build-worker.ts';
import { axeFindings } from './support/axe.ts';
import { plateau, started } from './support/pre-charge.ts';
import { lightings, test, type Visitor } from './support/visitor.ts';

const pagePaths = async (): Promise<string[]> =>
  (await filesUnder(wantedBuild().folder))
    .filter((path) => path.endsWith('.html'))
    .map((path) => path.replace(/index\.html$/, ''));

/** One page of each kind, told by its folder. */
async function pageKinds(): Promise<string[]> {
  const kinds = new Map<string, string>();
  for (const path of await pagePaths()) {
    const [folder, name, rest] = path.split('/');
    const kind = name ? `${folder}/*/${rest ?? ''}` : path;
    if (!kinds.has(kind)) kinds.set(kind, path);
  }
  return [...kinds.values()];
}

/** Go to a page and wait until its islands are at work. */
async function settled(visitor: Visitor, page: Page, path: string): Promise<void> {
  await page.goto(visitor.site.url + path);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
  // Plates out of sight are laid out when they are scrolled to; here they are looked at all at once.
  await page.evaluate(() => {
    for (const plate of document.querySelectorAll<HTMLElement>('.plate'))
      plate.style.contentVisibility = 'visible';
  });
}

describe('axe', () => {
  for (const lighting of lightings)
    test(`finds nothing on ${lighting === 'shade' ? 'any page in the shade' : `a page of each kind lit for ${lighting}`}`, async ({
      newVisitor,
    }) => {
      const visitor = await newVisitor({ lighting, phone: { bypassCSP: true } });
      const page = await visitor.context.newPage();
      const found: string[] = [];
      // Pages of causes differ in words alone, and the whole of a guide holds the plates of its chapters again.
      const all = (await pagePaths()).filter((path) => !/^causes\/(?!h)|\/whole\/$/.test(path));
      // A guide's plates are those of a procedure; of the two, the shorter page is looked at in every light.
      const kinds = (await pageKinds()).filter((path) => !/^guides\/[^/]+\/(?!map)/.test(path));
      for (const path of lighting === 'shade' ? all : kinds) {
        await settled(visitor, page, path);
        found.push(...(await axeFindings(page)).map((finding) => `${path} ${finding}`));
      }
      expect(found).toEqual([]);
    }, 180_000);
});

/** How far the page reaches past its right edge, in pixels, with the elements that do. */
const overflow = (page: Page) =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    const wide = [...document.querySelectorAll('body *')].filter(
      (element) => element.getBoundingClientRect().right > clientWidth + 0.5,
    );
    return [
      `${scrollWidth - clientWidth} px`,
      ...wide.slice(0, 5).map((element) => element.outerHTML.slice(0, 80)),
    ];
  });

describe('a narrow or enlarged page never scrolls sideways', () => {
  test('at 320 pixels', async ({ newVisitor }) => {
    const visitor = await newVisitor({ phone: { viewport: { width: 320, height: 640 } } });
    const page = await visitor.context.newPage();
    for (const path of await pagePaths()) {
      await settled(visitor, page, path);
      expect([path, ...(await overflow(page))]).toEqual([path]);
    }
  });

  test('zoomed to 200 %, and with text alone at 200 %', async ({ newVisitor }) => {
    const desk = { width: 1280, height: 900 };
    // A browser zoomed to 200 % lays the page out in half as many pixels, each twice as large.
    const zoomed = { viewport: { width: desk.width / 2, height: desk.height / 2 }, deviceScaleFactor: 2 };
    const visitor = await newVisitor({ phone: zoomed });
    const page = await visitor.context.newPage();
    for (const path of await pageKinds()) {
      await settled(visitor, page, path);
      expect([path, ...(await overflow(page))]).toEqual([path]);
      await page.evaluate(() => document.documentElement.style.setProperty('font-size', '200%', 'important'));
      expect([path, 'large text', ...(await overflow(page))]).toEqual([path, 'large text']);
    }
  });
});

describe('hands in gloves', () => {
  test('whatever is tapped, other than a link in a sentence, is at least 48 pixels each way', async ({
    visitor,
  }) => {
    const page = await visitor.context.newPage();
    const found: string[] = [];
    for (const path of await pageKinds()) {
      await settled(visitor, page, path);
      const small = await page.evaluate(() =>
        [...document.querySelectorAll('button, summary, input, select, textarea, .btn, .choice a, nav a')]
          .filter((element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
          .map((element) => ({ element, box: (element.closest('label') ?? element).getBoundingClientRect() }))
          // Half a pixel: where a border falls between two pixels.
          .filter(({ box }) => box.height < 47.5 || box.width < 47.5)
          .map(({ element, box }) => `${element.outerHTML.slice(0, 90)} ${box.width} × ${box.height}`),
      );
      found.push(...small.map((each) => `${path} ${each}`));
    }
    expect(found).toEqual([]);
  });
});

describe('a run', () => {
  test('step by step, with an error shown and to its end: axe finds nothing, and nothing reaches past 320 pixels', async ({
    newVisitor,
  }) => {
    const visitor = await newVisitor({ phone: { bypassCSP: true, viewport: { width: 320, height: 640 } } });
    const driver = await started(visitor);
    const { page } = driver;
    const found: string[] = [];
    const look = async (what: string): Promise<void> => {
      found.push(...(await axeFindings(page)).map((finding) => `${what} ${finding}`));
      found.push(...(await overflow(page)).map((wide) => `${what} reaches too far: ${wide}`));
    };
    // One step of each kind is looked at, and the field of timed values.
    const seen = new Set<string>();
    await driver.drive(plateau(25), async (block) => {
      const kind = block === 'rise' ? 'series' : ((await driver.plate.getAttribute('data-kind')) ?? '');
      if (seen.has(kind)) return;
      seen.add(kind);
      await look(`${block} (${kind})`);
      if (kind !== 'measure') return;
      await driver.give({ s1: 'fifty' });
      await page.locator('.error-summary').waitFor();
      await look(`${block} with an error`);
    });
    await look('after the end');
    expect([...seen].sort()).toEqual(['end', 'hold', 'look', 'measure', 'operate', 'series', 'workOut']);
    expect(found).toEqual([]);
  }, 120_000);
});
