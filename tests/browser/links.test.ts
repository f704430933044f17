import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeSite } from '../../src/commands/build.ts';
import { type BuildOptions, wantedBuild } from '../../src/commands/build-options.ts';
import { isFresh, noteBuilt } from '../../src/commands/build-stamp.ts';
import { root } from '../../src/commands/project.ts';
import { brokenLinks, builtPages } from './support/built-pages.ts';
import { serveSite, test } from './support/visitor.ts';

describe('the link check', () => {
  it('finds a page that is not there, a place that is not there, another host and a wrong base', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'faultwright-'));
    await mkdir(join(folder, 'a'));
    await writeFile(
      join(folder, 'index.html'),
      '<h1 id="top">x</h1><a href="a/">fine</a><a href="#top">fine</a><a href="https://elsewhere.example/">fine</a>' +
        '<a href="a">no slash</a><a href="b/">none</a><a href="a/#gone">none</a><a href="/a/">base</a>' +
        '<script src="https://elsewhere.example/x.js"></script>',
    );
    await writeFile(join(folder, 'a/index.html'), '<a class="x" href="../#top">fine</a>');
    expect(await brokenLinks(folder, '/field/')).toEqual([
      ': <a> a leads nowhere',
      ': <a> b/ leads nowhere',
      ': <a> a/#gone has no such place',
      ': <a> /a/ leaves the path that the site stands under',
      ': <script> https://elsewhere.example/x.js would be asked of another host',
    ]);
    await rm(folder, { recursive: true });
  });
});

describe('the built site', () => {
  it('has no link that leads nowhere, without a script', async () => {
    expect(await brokenLinks(wantedBuild().folder, '/')).toEqual([]);
  });

  it('has a strict security policy on every page, and nothing that it would block', async () => {
    for (const { path, html } of await builtPages(wantedBuild().folder)) {
      const policy = /<meta http-equiv="content-security-policy" content="([^"]*)"/i.exec(html)?.[1] ?? '';
      for (const part of [
        "default-src 'self'",
        "object-src 'none'",
        "base-uri 'self'",
        'script-src ',
        'style-src ',
      ])
        expect([path, policy.includes(part)]).toEqual([path, true]);
      expect([path, policy]).not.toEqual([path, expect.stringMatching(/unsafe-|\*|https?:/)]);
      expect([path, /\sstyle="/.exec(html)?.[0]]).toEqual([path, undefined]);
      expect([path, /\son[a-z]+="/.exec(html)?.[0]]).toEqual([path, undefined]);
    }
  });

  it('has one main heading and a title of its own on every page', async () => {
    const pages = await builtPages(wantedBuild().folder);
    for (const { path, html } of pages) expect([path, html.match(/<h1\b/g)?.length]).toEqual([path, 1]);
    const titles = pages.map(({ html }) => /<title>(.*?)<\/title>/.exec(html)?.[1]);
    expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([]);
  });
});

describe('built for a host that gives no root of its own', () => {
  const options: BuildOptions = { base: '/field/', folder: join(root, '.cache/site-under-field') };
  beforeAll(async () => {
    if (await isFresh(options)) return;
    await writeSite(options);
    await noteBuilt(options);
  }, 180_000);

  it('every link stays under that path and leads somewhere', async () => {
    expect(await brokenLinks(options.folder, options.base)).toEqual([]);
  });

  test('opens, runs its scripts and works with no network', async ({ newVisitor }) => {
    const site = await serveSite(options.folder, options.base);
    const visitor = await newVisitor({ saves: true, site });
    const page = await visitor.open();
    await page.locator('fw-offline').getByText('Saved for offline use').waitFor();
    await visitor.context.setOffline(true);
    visitor.expected.push(/ERR_INTERNET_DISCONNECTED|Failed to load resource/);
    await page.getByRole('link', { name: 'Open the site sheet' }).click();
    await page.waitForURL(/\/field\/site\//);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await site.close();
  });
});
