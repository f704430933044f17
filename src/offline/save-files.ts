import { type FileList, filesCache, listKey } from './cache-names.ts';
import { completeList, dropVersionsBut, setVersionInUse, versionInUse } from './saved-files.ts';

/** Files fetched at a time: enough to fill a slow line, few enough not to starve the page being read. */
const atATime = 6;

/**
 * A response that can be kept. A host that redirects `/x/index.html` to `/x/` marks the response as redirected, and a
 * browser refuses such a one for a page; a copy is free of the mark. The content's hash has been checked, so the status
 * the host gave it (404 for `404.html`, with some) says nothing.
 */
async function keepable(response: Response): Promise<Response> {
  const headers = new Headers(response.headers);
  headers.delete('content-encoding');
  headers.delete('content-length');
  return new Response(await response.blob(), { headers });
}

/** Fetch one file; rejects unless its content is exactly what was built, so half a deploy is never saved. */
async function fetchFile(url: string, integrity: string): Promise<Response> {
  return keepable(await fetch(url, { integrity, cache: 'no-cache', credentials: 'same-origin' }));
}

/**
 * Save every file of a version. Files that the version in use has already are copied, files saved by an earlier try are
 * left, so a bad line costs only what is missing. Rejects when one cannot be had: nothing changes for the pages then.
 */
export async function saveFiles(base: string, list: FileList): Promise<void> {
  const inUse = await versionInUse(base);
  await dropVersionsBut(base, [inUse, list.version]);
  const target = await caches.open(filesCache(base, list.version));
  const before = inUse === undefined ? undefined : await completeList(base, inUse);
  const there = new Set((await target.keys()).map(({ url }) => new URL(url).pathname));

  const saveOne = async ([path, integrity]: [string, string]): Promise<void> => {
    const url = base + path;
    if (there.has(url)) return;
    const known =
      inUse !== undefined && before?.files[path] === integrity
        ? await caches.match(url, { cacheName: filesCache(base, inUse) })
        : undefined;
    await target.put(url, known ?? (await fetchFile(url, integrity)));
  };

  const queue = Object.entries(list.files);
  const line = async (): Promise<void> => {
    for (let next = queue.shift(); next; next = queue.shift()) await saveOne(next);
  };
  await Promise.all(Array.from({ length: atATime }, line));
  await target.put(listKey(base), new Response(JSON.stringify(list)));
  if (inUse === undefined || !(await completeList(base, inUse))) await setVersionInUse(base, list.version);
}
