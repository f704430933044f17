/** Remembers what a built folder was made from, so that `npm start` does not build the same again. */
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { workerFile } from '../offline/registration.ts';
import type { BuildOptions } from './build-options.ts';
import { filesUnder } from './build-worker.ts';
import { root } from './project.ts';

const folders = ['content', 'machines', 'src'];
const files = ['astro.config.mjs', 'package-lock.json', 'tsconfig.json'];

const stampFile = ({ folder }: BuildOptions): string =>
  join(root, '.cache', `built-${createHash('sha256').update(folder).digest('hex').slice(0, 8)}.txt`);

/** A hash over everything that a build reads. */
async function sources({ base }: BuildOptions): Promise<string> {
  const hash = createHash('sha256').update(`${base} ${process.version}\n`);
  const inFolders = await Promise.all(
    folders.map(async (folder) => (await filesUnder(join(root, folder))).map((path) => `${folder}/${path}`)),
  );
  for (const path of [...files, ...inFolders.flat()])
    hash.update(`${path}\n`).update(await readFile(join(root, path)));
  return hash.digest('hex');
}

export async function noteBuilt(options: BuildOptions): Promise<void> {
  await mkdir(join(root, '.cache'), { recursive: true });
  await writeFile(stampFile(options), await sources(options));
}

/** Was this folder built whole, from what stands here now? */
export async function isFresh(options: BuildOptions): Promise<boolean> {
  if (!existsSync(join(options.folder, workerFile))) return false;
  const noted = await readFile(stampFile(options), 'utf8').catch(() => '');
  return noted === (await sources(options));
}
