import { describe, expect } from 'vitest';
import { overflow, pageKinds, settled } from './support/pages.ts';
import { test } from './support/visitor.ts';

describe('a narrow or enlarged page never scrolls sideways', () => {
  test('at 320 pixels', async ({ newVisitor }) => {
    const visitor = await newVisitor({ phone: { viewport: { width: 320, height: 640 } } });
    const page = await visitor.context.newPage();
    for (const path of await pageKinds(2)) {
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
