import { type FileList, filesCache, inUseCache, inUseKey, isFilesCache, listKey } from './cache-names.ts';

/** What is saved in this browser; the worker and the pages both read it here. */

/** The version that pages are served from, or `undefined` before the first one is complete. */
export async function versionInUse(base: string): Promise<string | undefined> {
  const found = await caches.match(inUseKey(base), { cacheName: inUseCache(base) });
  return found?.text();
}

export async function setVersionInUse(base: string, version: string): Promise<void> {
  const cache = await caches.open(inUseCache(base));
  await cache.put(inUseKey(base), new Response(version));
}

/** The list of a version whose files have all been saved, or `undefined`: the list is written last. */
export async function completeList(base: string, version: string): Promise<FileList | undefined> {
  const cacheName = filesCache(base, version);
  if (!(await caches.has(cacheName))) return undefined;
  const found = await caches.match(listKey(base), { cacheName });
  return found && ((await found.json()) as FileList);
}

/** Delete every version of this base but those named. */
export async function dropVersionsBut(base: string, kept: readonly (string | undefined)[]): Promise<void> {
  const keptNames = kept
    .filter((version) => version !== undefined)
    .map((version) => filesCache(base, version));
  const names = await caches.keys();
  const old = names.filter((name) => isFilesCache(base, name) && !keptNames.includes(name));
  await Promise.all(old.map((name) => caches.delete(name)));
}

export interface Saved {
  version: string;
  /** Files present in the cache. */
  count: number;
  /** Files the version has. */
  expected: number;
  bytes: number;
}

/** What is saved of the version in use: complete when `count` is `expected`. `undefined` when none is. */
export async function savedNow(base: string): Promise<Saved | undefined> {
  const version = await versionInUse(base);
  const list = version === undefined ? undefined : await completeList(base, version);
  if (version === undefined || !list) return undefined;
  const cache = await caches.open(filesCache(base, version));
  const keys = new Set((await cache.keys()).map(({ url }) => new URL(url).pathname));
  const paths = Object.keys(list.files);
  const count = paths.filter((path) => keys.has(base + path)).length;
  return { version, count, expected: paths.length, bytes: list.bytes };
}
