/**
 * A page names its scripts at its end, and each script names the next. Told of all of them in its head, the browser fetches
 * and compiles them while it still reads the page.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { join, posix } from 'node:path';
import { filesUnder } from './build-worker.ts';

const scriptsOf = /<script type="module" src="([^"]+)">/g;
const importsOf = /(?:^|[;}\s])import(?:[\w*{}\s,$]+from)?\s*"(\.[^"]+\.js)"/g;

/** Addresses of what a script imports at once, and what that imports, each after the one that asks for it. */
async function importedBy(address: string, fileAt: (address: string) => string): Promise<readonly string[]> {
  const found = new Set([address]);
  for (const each of found) {
    const code = await readFile(fileAt(each), 'utf8');
    for (const [, path] of code.matchAll(importsOf)) found.add(posix.join(posix.dirname(each), path!));
  }
  return [...found];
}

/** Write into every page of a built site, served under `base`, the list of the scripts that it starts with. */
export async function preloadScripts(folder: string, base: string): Promise<void> {
  const fileAt = (address: string): string => join(folder, address.slice(base.length));
  // Most pages start with the same scripts: each is followed once.
  const known = new Map<string, Promise<readonly string[]>>();
  const followed = (address: string): Promise<readonly string[]> => {
    const found = known.get(address) ?? importedBy(address, fileAt);
    known.set(address, found);
    return found;
  };
  for (const path of await filesUnder(folder)) {
    if (!path.endsWith('.html')) continue;
    const page = await readFile(join(folder, path), 'utf8');
    const named = [...page.matchAll(scriptsOf)].map(([, address]) => address!);
    const all = new Set((await Promise.all(named.map(followed))).flat());
    const links = [...all].map((address) => `<link rel="modulepreload" href="${address}">`).join('');
    await writeFile(join(folder, path), page.replace('</title>', `</title>${links}`));
  }
}
