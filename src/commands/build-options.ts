import { resolve } from 'node:path';
import { joinBase } from '../components/href.ts';
import { root } from './project.ts';

/** What to build: the path it will be served under, with both slashes, and the folder to write to. */
export interface BuildOptions {
  base: string;
  folder: string;
}

/** What the environment asks for. */
export const wantedBuild = (): BuildOptions => ({
  base: joinBase(`/${process.env.FAULTWRIGHT_BASE ?? ''}`.replace(/^\/+/, '/'), ''),
  folder: resolve(root, process.env.FAULTWRIGHT_OUT ?? 'dist'),
});
