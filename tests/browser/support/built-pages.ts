import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { filesUnder } from '../../../src/commands/build-worker.ts';

/** A page as it was built: its path in the site, its text, and what it links to. */
export interface BuiltPage {
  /** `guides/pv-no-start/` or `404.html`. */
  path: string;
  html: string;
  ids: ReadonlySet<string>;
  /** Values of every `href` and `src`, with the element that holds them. */
  links: { tag: string; to: string }[];
}

const decode = (text: string): string =>
  text.replaceAll('&#38;', '&').replaceAll('&amp;', '&').replaceAll('&#x27;', "'").replaceAll('&quot;', '"');

export async function builtPages(folder: string): Promise<BuiltPage[]> {
  const paths = (await filesUnder(folder)).filter((path) => path.endsWith('.html'));
  return Promise.all(
    paths.map(async (path) => {
      const html = await readFile(join(folder, path), 'utf8');
      // What a script holds is no link of the page.
      const markup = html.replace(/(<script\b[^>]*>)[\s\S]*?<\/script>/g, '$1</script>');
      return {
        path: path.replace(/index\.html$/, ''),
        html,
        ids: new Set([...markup.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => decode(id!))),
        links: [...markup.matchAll(/<([a-z-]+)\b[^>]*?\s(?:href|src)="([^"]*)"/g)].map(([, tag, to]) => ({
          tag: tag!,
          to: decode(to!),
        })),
      };
    }),
  );
}

/** Everything wrong with the links of a built site that is served under `base`: each as a sentence. */
export async function brokenLinks(folder: string, base: string): Promise<string[]> {
  const files = new Set(await filesUnder(folder));
  const pages = new Map((await builtPages(folder)).map((page) => [page.path, page]));
  const origin = 'http://site';
  const wrong: string[] = [];
  for (const { path, links } of pages.values())
    for (const { tag, to } of links) {
      const say = (what: string): void => void wrong.push(`${path}: <${tag}> ${to} ${what}`);
      const url = new URL(to, origin + base + path);
      if (url.protocol === 'data:') continue;
      if (url.origin !== origin) {
        if (tag !== 'a') say('would be asked of another host');
        continue;
      }
      if (!url.pathname.startsWith(base)) {
        say('leaves the path that the site stands under');
        continue;
      }
      const target = decodeURIComponent(url.pathname.slice(base.length));
      const page = pages.get(target);
      if (!page && !files.has(target)) say('leads nowhere');
      else if (page && url.hash && !page.ids.has(decodeURIComponent(url.hash.slice(1))))
        say('has no such place');
    }
  return wrong;
}
