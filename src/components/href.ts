/**
 * The address of a page or file of this site, whatever folder the site is served from.
 * `path` is site-absolute without the base: `href('guides/pv-start/')` and `href('/guides/pv-start/')` are the same.
 */
export function href(path: string): string {
  return joinBase(import.meta.env.BASE_URL, path);
}

/** Join a base (`/` or `/guide/`, with or without its last slash) and a path. */
export function joinBase(base: string, path: string): string {
  return `${base.replace(/\/+$/, '')}/${path.replace(/^\/+/, '')}`;
}
