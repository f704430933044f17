/** A bare page of the same words as the guide: no script, no style, no drawing. What the bench's figures are held against. */
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';

/** Write into `target` one page of the words of these built pages, in their order. */
export async function writeBare(
  browser: Browser,
  folder: string,
  files: readonly string[],
  target: string,
): Promise<void> {
  const pages = await Promise.all(files.map((file) => readFile(join(folder, file), 'utf8')));
  const page = await browser.newPage();
  const html = await page.evaluate((sources) => {
    const kept = ['href', 'id', 'lang', 'scope', 'colspan', 'rowspan'];
    const bodies = sources.map((source, at) => {
      const read = new DOMParser().parseFromString(source, 'text/html');
      for (const each of read.querySelectorAll('script, style, link, svg, template')) each.remove();
      for (const each of read.querySelectorAll('*'))
        for (const { name } of [...each.attributes]) if (!kept.includes(name)) each.removeAttribute(name);
      const part = at === 0 ? read.body : (read.querySelector('main') ?? read.body);
      return part.innerHTML.replace(/<!--[\s\S]*?-->/g, '').replace(/\s+/g, ' ');
    });
    const title = new DOMParser().parseFromString(sources[0] ?? '', 'text/html').title;
    const head = `<meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title>`;
    return `<!doctype html><html lang="en"><head>${head}</head><body>${bodies.join('\n')}</body></html>`;
  }, pages);
  await page.close();
  await rm(target, { recursive: true, force: true });
  await mkdir(target, { recursive: true });
  await writeFile(join(target, 'index.html'), html);
}
