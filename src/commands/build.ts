/**
 * Build the site into dist/: check the words against the machines, prove the machines, let Astro write the pages, add the
 * service worker. Anything wrong on the way ends it with what is wrong, and leaves no site that looks whole.
 *   FAULTWRIGHT_BASE  the path to serve under, as /guide/
 *   FAULTWRIGHT_OUT   the folder to write to
 * `--proved` leaves out the proof, for a caller that has just made it. `--kill-switch` writes, over a built site, the worker that takes itself out (see DEVELOPERS.md).
 */
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import type { ContentFinding } from '../guide/content-finding.ts';
import { workerFile } from '../offline/registration.ts';
import { type BuildOptions, wantedBuild } from './build-options.ts';
import { noteBuilt } from './build-stamp.ts';
import { buildKillSwitch, buildWorker } from './build-worker.ts';
import { builtFindings, contentFindings, findingLine } from './check-content.ts';
import { preloadScripts } from './preload-scripts.ts';
import { runNode, tools } from './project.ts';

export class BuildFailed extends Error {}

/** Astro ends well although a reference is broken, and only says so. */
const complaint = /\[ERROR\].*/;

/** Astro's part alone, and the worker. The checks that come before a build are `build`'s. */
export async function writeSite({ base, folder }: BuildOptions): Promise<void> {
  await rm(join(folder, workerFile), { force: true });
  const astro = await runNode(tools.astro, ['build'], { FAULTWRIGHT_BASE: base, FAULTWRIGHT_OUT: folder });
  const found = complaint.exec(astro.output);
  if (astro.code !== 0 || found) throw new BuildFailed(found?.[0] ?? 'Astro could not build the pages.');
  await preloadScripts(folder, base);
  const { files, bytes, version } = await buildWorker(folder, base);
  console.log(
    `offline: ${Object.keys(files).length} files, ${(bytes / 1e6).toFixed(2)} MB to save, version ${version}`,
  );
}

function refuse(found: readonly ContentFinding[], because: string): void {
  for (const finding of found) console.error(findingLine(finding));
  if (found.length > 0) throw new BuildFailed(because);
}

/** The whole build; without the proof where `proved`. Throws `BuildFailed`. */
export async function build(options: BuildOptions, proved = false): Promise<void> {
  refuse(contentFindings(), 'The words and the machines do not fit; each place is named above.');
  if (!proved && (await runNode('src/commands/prove.ts', ['--no-mutants'])).code !== 0)
    throw new BuildFailed('A guide or procedure breaks a safety rule; the way there is above.');
  await writeSite(options);
  refuse(
    builtFindings(options.folder),
    'A page does not show its machine as it is; each place is named above.',
  );
  await noteBuilt(options);
}

if (import.meta.main) {
  const { values } = parseArgs({
    options: {
      'kill-switch': { type: 'boolean', default: false },
      proved: { type: 'boolean', default: false },
    },
  });
  const options = wantedBuild();
  try {
    if (values['kill-switch']) await buildKillSwitch(options.folder, options.base);
    else await build(options, values.proved);
  } catch (error) {
    if (!(error instanceof BuildFailed)) throw error;
    console.error(`\nBuild failed. ${error.message}`);
    process.exitCode = 1;
  }
}
