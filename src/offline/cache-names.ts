/**
 * Where the saved files stand in the browser's cache storage. One cache a version, so that two versions can lie side by
 * side and a run goes on with the one it began with. The names hold the base path: two copies of the site on one host
 * keep apart.
 */

/** What one version consists of. `files` gives each path under the base and the hash of its content (`sha256-…`). */
export interface FileList {
  /** Hash over the list: the same files give the same version. */
  version: string;
  files: Readonly<Record<string, string>>;
  /** Sum of the files' sizes, in bytes. */
  bytes: number;
}

export const filesCache = (base: string, version: string): string => `faultwright ${base} files ${version}`;

export const isFilesCache = (base: string, name: string): boolean => name.startsWith(filesCache(base, ''));

/** The cache that holds nothing but which version is in use. */
export const inUseCache = (base: string): string => `faultwright ${base} in use`;

/** Keys of two entries that are no files of the site. A path of the site never begins like this. */
export const listKey = (base: string): string => `${base}.stored/files.json`;
export const inUseKey = (base: string): string => `${base}.stored/version.txt`;
