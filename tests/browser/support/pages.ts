import type { Page } from 'playwright-core';
import { wantedBuild } from '../../../src/commands/build-options.ts';
import { filesUnder } from '../../../src/commands/build-worker.ts';
import type { Visitor } from './visitor.ts';

/** The path of every page of the built site. */
export const pagePaths = async (): Promise<string[]> =>
  (await filesUnder(wantedBuild().folder))
    .filter((path) => path.endsWith('.html'))
    .map((path) => path.replace(/index\.html$/, ''));

/** Folders whose pages are made from one template each. */
const templates = ['causes', 'guides', 'library', 'procedures', 'worksheets'];

/** Which pages come from one template: told by their folders. The chapters of guides are one kind. */
function kindOf(path: string): string {
  const [folder = '', name, rest] = path.split('/');
  if (!name || !templates.includes(folder) || path === 'worksheets/trace/') return path;
  const further = folder === 'guides' && rest && rest !== 'map' && rest !== 'whole' ? 'chapter' : rest;
  return `${folder}/*/${further ?? ''}`;
}

/** Pages of each kind, at most so many of one, spread over all there are. */
export async function pageKinds(most = 1): Promise<string[]> {
  const kinds = new Map<string, string[]>();
  for (const path of await pagePaths()) kinds.set(kindOf(path), [...(kinds.get(kindOf(path)) ?? []), path]);
  return [...kinds.values()].flatMap((paths) => {
    const count = Math.min(most, paths.length);
    return Array.from({ length: count }, (_, at) => paths[Math.floor((at * paths.length) / count)]!);
  });
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
