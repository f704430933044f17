/** The last step of a build: the service worker, with the list of every file it has to save. */
import { createHash } from 'node:crypto';
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { type FileList, filesCache } from '../offline/cache-names.ts';
import { workerFile } from '../offline/registration.ts';

/** Hosts read these themselves and do not serve them. */
const notServed = ['_headers', '_redirects', '.nojekyll'];

/** The paths of all files under a folder, with forward slashes, in the same order on every machine. */
export async function filesUnder(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** Every file that the site consists of, with the hash of its content. */
export async function listFiles(folder: string): Promise<FileList> {
  const paths = (await filesUnder(folder)).filter((path) => path !== workerFile && !notServed.includes(path));
  const whole = createHash('sha256');
  const files: Record<string, string> = {};
  let bytes = 0;
  for (const path of paths) {
    const content = await readFile(join(folder, path));
    const integrity = `sha256-${createHash('sha256').update(content).digest('base64')}`;
    // The browser asks for an address, so the list holds it as an address is written.
    files[path.split('/').map(encodeURIComponent).join('/')] = integrity;
    whole.update(`${path} ${integrity}\n`);
    bytes += content.length;
  }
  return { version: whole.digest('hex').slice(0, 12), files, bytes };
}

async function bundle(source: string, target: string, define: Record<string, unknown>): Promise<void> {
  const entry = fileURLToPath(new URL(`../offline/${source}`, import.meta.url));
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    target: 'es2022',
    logLevel: 'error',
    define: Object.fromEntries(Object.entries(define).map(([name, value]) => [name, JSON.stringify(value)])),
  });
  await writeFile(target, outputFiles[0]!.contents);
}

/** Write the worker into a built site that is served under `base`, and say what it will save. */
export async function buildWorker(folder: string, base: string): Promise<FileList> {
  await rm(join(folder, workerFile), { force: true });
  const list = await listFiles(folder);
  for (const needed of ['index.html', '404.html'])
    if (!(needed in list.files))
      throw new Error(`The built site has no ${needed}, which working offline needs.`);
  await bundle('worker.ts', join(folder, workerFile), { __BASE__: base, __FILES__: list });
  return list;
}

/** Write the worker that takes itself out (src/offline/kill-switch.ts) in place of the real one. */
export async function buildKillSwitch(folder: string, base: string): Promise<void> {
  const start = filesCache(base, '').replace(/files $/, '');
  await bundle('kill-switch.ts', join(folder, workerFile), { __CACHE_START__: start });
}
