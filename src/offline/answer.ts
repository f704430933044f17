import { filesCache } from './cache-names.ts';
import { versionInUse } from './saved-files.ts';

/** The page shown for an address that is neither saved nor to be had. */
const fallback = '404.html';

/** Does the worker answer this request at all? Everything else goes its usual way. */
export function isOurs(base: string, request: Request, origin: string): boolean {
  const url = new URL(request.url);
  return request.method === 'GET' && url.origin === origin && url.pathname.startsWith(base);
}

/** The file that a path of the site stands for. What follows a `?` never matters: no page of ours reads it there. */
const fileOf = (path: string): string => (path === '' || path.endsWith('/') ? `${path}index.html` : path);

/** Answer a request from the version in use; what it lacks comes from the network. */
export async function answer(base: string, request: Request): Promise<Response> {
  const version = await versionInUse(base);
  if (version === undefined) return fetch(request);
  const saved = (file: string) =>
    caches.match(base + file, { cacheName: filesCache(base, version), ignoreVary: true });
  const url = new URL(request.url);
  const path = url.pathname.slice(base.length);

  const hit = await saved(fileOf(path));
  if (hit) return hit;
  // A tab still open from another version asks for that version's script; a name with a hash in it fits any version.
  const elsewhere = path.startsWith('_astro/') && (await caches.match(url.pathname, { ignoreVary: true }));
  if (elsewhere) return elsewhere;
  const page = request.mode === 'navigate';
  if (page && (await saved(`${path}/index.html`))) {
    // Relative links in the page need the last slash.
    return Response.redirect(`${url.origin}${url.pathname}/${url.search}`, 302);
  }
  try {
    return await fetch(request);
  } catch (error) {
    const notFound = page ? await saved(fallback) : undefined;
    if (!notFound) throw error;
    return new Response(notFound.body, { status: 404, headers: notFound.headers });
  }
}
