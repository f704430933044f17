import type { Page } from 'playwright-core';
import { wantedBuild } from '../../../src/commands/build-options.ts';
import { filesUnder } from '../../../src/commands/build-worker.ts';
import type { Visitor } from './visitor.ts';

/** The path of every page of the built site. */
export const pagePaths = async (): Promise<string[]> =>
  (await filesUnder(wantedBuild().folder))
    .filter((path) => path.endsWith('.html'))
    .map((path) => path.replace(/index\.html$/, ''));

/** One page of each kind, told by its folder. */
export async function pageKinds(): Promise<string[]> {
  const kinds = new Map<string, string>();
  for (const path of await pagePaths()) {
    const [folder, name, rest] = path.split('/');
    const kind = name ? `${folder}/*/${rest ?? ''}` : path;
    if (!kinds.has(kind)) kinds.set(kind, path);
  }
  return [...kinds.values()];
}

/** Go to a page and wait until its islands are at work. */
export async function settled(visitor: Visitor, page: Page, path: string): Promise<void> {
  await page.goto(visitor.site.url + path);
  await page.waitForFunction(() => !document.querySelector('astro-island[ssr]'));
  // Plates out of sight are laid out when they are scrolled to; here they are looked at all at once.
  await page.evaluate(() => {
    for (const plate of document.querySelectorAll<HTMLElement>('.plate'))
      plate.style.contentVisibility = 'visible';
  });
}

/** How far the page reaches past its right edge, in pixels, with the elements that do. */
export const overflow = (page: Page) =>
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
